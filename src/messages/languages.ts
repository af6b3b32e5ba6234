import { fetchRoomTexts, type OtherLanguage, spoken } from './spoken';

/** A language to choose. Adding one is a folder beside `en` and a line here. */
interface LanguageEntry {
  /** Its name in itself. */
  readonly name: string;
  readonly decimalSign: '.' | ',';
  /** Fetches it; null: English, which the page is written in. */
  readonly load: (() => Promise<OtherLanguage>) | null;
}

export const LANGUAGES = {
  en: { name: 'English', decimalSign: '.', load: null },
  de: {
    name: 'Deutsch',
    decimalSign: ',',
    load: () => import('./de').then(({ GERMAN }) => GERMAN),
  },
} as const satisfies Readonly<Record<string, LanguageEntry>>;

export type LanguageCode = keyof typeof LANGUAGES;
export const LANGUAGE_CODES = Object.keys(LANGUAGES) as readonly LanguageCode[];

/** The first of these tags ("de-AT") that is a language of the page; English without one. */
export function languageOf(tags: readonly string[]): LanguageCode {
  for (const tag of tags) {
    const code = LANGUAGE_CODES.find((known) => known === tag.toLowerCase().split(/[-_]/)[0]);
    if (code) return code;
  }
  return 'en';
}

/** The language that texts and numbers are in at present. */
export function spokenLanguage(): LanguageCode {
  return spoken.code as LanguageCode;
}

/**
 * Speaks the language from now on: fetches what the page opens with and what the rooms say that have come, then changes over
 * at once. Rejects, and changes nothing, where it cannot be fetched. Changes nothing and answers false where it is no longer
 * wanted by then. What shows text has to be drawn anew by the caller.
 */
export async function speak(code: LanguageCode, isWanted = () => true): Promise<boolean> {
  const { decimalSign, load } = LANGUAGES[code];
  const other = load === null ? null : await load();
  const rooms = other === null ? [] : [...spoken.rooms];
  const texts = await Promise.all(rooms.map((room) => other?.rooms[room]()));
  if (!isWanted()) return false;
  spoken.code = code;
  spoken.decimalSign = decimalSign;
  spoken.other = other;
  spoken.texts = Object.assign({}, other?.opening, ...texts);
  spoken.fetched = new Set(rooms);
  // A room that came meanwhile.
  await fetchRoomTexts();
  return true;
}
