import type { EN } from './en';
import type { LATER } from './en/later';

/**
 * What is spoken at present. English is always there: `own` is its texts as far as they have come. Another language lies
 * over it; what it lacks is said in English. The files beside this one read and write it, nobody else.
 */
export type OpeningKey = keyof typeof EN;
export type MessageKey = OpeningKey | keyof typeof LATER;
export type Texts = Readonly<Record<string, string>>;

/** Groups of texts that come with the rooms that show them. */
export type RoomTexts =
  | 'bench'
  | 'benchFit'
  | 'benchPlan'
  | 'benchRooms'
  | 'closeness'
  | 'designsRoom'
  | 'drawing'
  | 'help'
  | 'lessonFiles'
  | 'lessonRoom'
  | 'letGoRoom'
  | 'report';

/** A language that is not English, as its folder gives it. */
export interface OtherLanguage {
  /** What the page opens with, and all texts of part types, sections, faults and demos, which English keeps with them. */
  readonly opening: Texts;
  /** Fetches what a room says. */
  readonly rooms: Readonly<Record<RoomTexts, () => Promise<Texts>>>;
}

export interface Spoken {
  code: string;
  decimalSign: '.' | ',';
  other: OtherLanguage | null;
  /** Texts of `other` that have come. */
  texts: Texts;
  own: Texts;
  /** Rooms whose English texts have come. */
  readonly rooms: Set<RoomTexts>;
  /** Rooms whose texts of `other` have come. */
  fetched: ReadonlySet<RoomTexts>;
}

export const spoken: Spoken = {
  code: 'en',
  decimalSign: '.',
  other: null,
  texts: {},
  own: {},
  rooms: new Set(),
  fetched: new Set(),
};

/** Fetches what the rooms that have come say in the language spoken, as far as it is not there. */
export async function fetchRoomTexts(): Promise<void> {
  const { other } = spoken;
  if (!other) return;
  const missing = [...spoken.rooms].filter((room) => !spoken.fetched.has(room));
  await Promise.all(
    missing.map(async (room) => {
      const texts = await other.rooms[room]();
      if (spoken.other !== other) return;
      spoken.texts = { ...spoken.texts, ...texts };
      spoken.fetched = new Set([...spoken.fetched, room]);
    }),
  );
}
