import { readdirSync, readFileSync } from 'node:fs';
import { EN } from '../../src/messages/en';
import { LATER } from '../../src/messages/en/later';
import { type LessonTexts, lessonCatalogue } from '../../src/messages/lessonTexts';
import { type OtherLanguage, type RoomTexts, spoken, type Texts } from '../../src/messages/spoken';
import { keptTexts } from './keptTexts';

export const ROOM_TEXTS = [
  'bench',
  'benchFit',
  'benchPlan',
  'benchRooms',
  'closeness',
  'designsRoom',
  'drawing',
  'help',
  'lessonFiles',
  'lessonRoom',
  'letGoRoom',
  'report',
] as const satisfies readonly RoomTexts[];

/**
 * English with every text between brackets, pieces between the places of a message each by themselves: what shows without
 * brackets is said past the language, or was put into a message in English.
 */
export function marked(text: string): string {
  return text
    .split(/(\{\w+\})/)
    .map((piece) => (/^\{\w+\}$/.test(piece) || !/\p{L}/u.test(piece) ? piece : `⟦${piece}⟧`))
    .join('');
}

/** A language of the page in which everything is marked. */
export function pseudo(): { readonly opening: Texts; readonly later: Texts } {
  const markAll = (texts: Texts) =>
    Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, marked(text)]));
  return {
    opening: markAll({ ...keptTexts(), ...EN }),
    later: markAll({ ...lessonTexts(), ...LATER }),
  };
}

function lessonTexts(): Texts {
  const folder = new URL('../../assets/lessons/', import.meta.url);
  const files = readdirSync(folder).filter((file) => /^\d.*\.json$/.test(file));
  return lessonCatalogue(
    Object.fromEntries(
      files.map((file) => {
        const { id, ...texts } = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
        return [file, { ...texts, lesson: id } as LessonTexts];
      }),
    ),
  );
}

/** Speaks another language until the function that it gives is called. */
export function speakOther(texts: Texts, decimalSign: '.' | ',' = ','): () => void {
  const before = { ...spoken };
  const other: OtherLanguage = {
    opening: texts,
    rooms: Object.fromEntries(ROOM_TEXTS.map((room) => [room, async () => texts])) as never,
  };
  Object.assign(spoken, { code: 'de', decimalSign, other, texts, fetched: new Set(ROOM_TEXTS) });
  return () => Object.assign(spoken, before);
}
