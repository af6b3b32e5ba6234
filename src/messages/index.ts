import { EN } from './en';
import { localNumber } from './numbers';
import { fetchRoomTexts, type MessageKey, type RoomTexts, spoken, type Texts } from './spoken';

/**
 * All text that the page shows. `EN` is the source of what it opens with; texts of `en/later` come with the rooms that
 * show them, which hand them to `addTexts`. Another language is a folder beside `en` and a line in `languages`. A message
 * may hold `{name}` places. English texts of part types, sections, faults and demos live with them; another language gives
 * them by key (`partText`), or by the English itself (`phrases`).
 */
export type { MessageKey } from './spoken';

type Values = Readonly<Record<string, string | number>>;

spoken.own = { ...EN, ...spoken.own };

/**
 * English texts that came later than the page. Whoever asks for one imports the module that hands it in. In another
 * language this fetches the same room's texts in it, for which `withTexts` waits.
 */
export function addTexts(room: RoomTexts, texts: Texts): void {
  spoken.own = { ...spoken.own, ...texts };
  spoken.rooms.add(room);
  // Where this fails and nobody waits for it, the room speaks English until the next try.
  fetchRoomTexts().catch(() => {});
}

/** A module that is fetched, and then the texts that it shows in the language spoken. Rejects where either does not come. */
export async function withTexts<T>(module: Promise<T>): Promise<T> {
  const fetched = await module;
  await fetchRoomTexts();
  return fetched;
}

export function t(key: MessageKey, values?: Values): string {
  return fill(spoken.texts[key] ?? spoken.own[key] ?? key, values);
}

/** Text that comes with a part type or a demo design: the language's, or its own English. */
export function partText(key: string, standard: string, values?: Values): string {
  return fill(spoken.texts[key] ?? spoken.own[key] ?? standard, values);
}

function fill(template: string, values?: Values): string {
  if (!values) return template;
  return template.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const value = values[name];
    if (value === undefined) return whole;
    return typeof value === 'number' ? localNumber(String(value)) : value;
  });
}
