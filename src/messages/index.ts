import { EN } from './en';
import type { LATER } from './en/later';

/**
 * All text that the page shows. `EN` is the source of what it opens with; texts of `en/later` come with the rooms that
 * show them, which hand them to `addTexts`. A second language is an object with the keys of both. A message may hold `{name}` places. Texts of part types live with the type and can be replaced here by key
 * `part.<kind>.label`, `part.<kind>.<parameter>.label` or `.help`; phrases of their rules by `phrase.<the phrase>`,
 * demo designs by `demo.<file>.title` or `.summary`.
 */
export type MessageKey = keyof typeof EN | keyof typeof LATER;
export type Catalogue = Readonly<Record<MessageKey, string>> & Readonly<Record<string, string>>;

let own: Readonly<Record<string, string>> = EN;
let current: Readonly<Record<string, string>> = {};

/** Another language from now on; null: English. */
export function setCatalogue(catalogue: Catalogue | null): void {
  current = catalogue ?? {};
}

/** English texts that came later than the page. Whoever asks for one imports the module that hands it in. */
export function addTexts(texts: Partial<Readonly<Record<MessageKey, string>>>): void {
  own = { ...own, ...texts };
}

export function t(key: MessageKey, values?: Readonly<Record<string, string | number>>): string {
  return fill(current[key] ?? own[key] ?? key, values);
}

/** Text that comes with a part type or a demo design: the catalogue's, or its own English. */
export function partText(key: string, standard: string): string {
  return current[key] ?? own[key] ?? standard;
}

function fill(template: string, values?: Readonly<Record<string, string | number>>): string {
  if (!values) return template;
  return template.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const value = values[name];
    return value === undefined ? whole : String(value);
  });
}
