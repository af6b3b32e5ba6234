import { localNumber } from './numbers';
import { type OtherLanguage, spoken } from './spoken';

/**
 * English phrases that their rules, readers and tables make themselves, beside what they say ("the width of the fork",
 * "has 12 bytes, less than a GLB header"). Another language gives each by key `phrase.<the English>`, with `{places}` for
 * what changes from time to time; what stands in a place is a phrase, a number or text from a file. Without one the English
 * stands as it is.
 */
export function phrase(english: string): string {
  const { other } = spoken;
  if (!other) return english;
  const exact = other.opening[`phrase.${english}`];
  if (exact !== undefined) return exact;
  if (NUMBER.test(english)) return localNumber(english);
  for (const { form, places, said } of formsOf(other)) {
    const found = form.exec(english);
    if (!found) continue;
    const values = Object.fromEntries(places.map((name, i) => [name, phrase(found[i + 1])]));
    return said.replace(PLACE, (whole, name: string) => values[name] ?? whole);
  }
  return english;
}

const NUMBER = /^-?\d+\.\d+$/;
const PLACE = /\{(\w+)\}/g;
const KEY = 'phrase.';

interface Form {
  readonly form: RegExp;
  readonly places: readonly string[];
  readonly said: string;
}
const known = new WeakMap<OtherLanguage, readonly Form[]>();

function formsOf(other: OtherLanguage): readonly Form[] {
  const before = known.get(other);
  if (before) return before;
  const forms = Object.entries(other.opening)
    .filter(([key]) => key.startsWith(KEY) && key.includes('{'))
    // The longest first: what says most is most likely meant.
    .toSorted(([a], [b]) => b.length - a.length)
    .map(([key, said]) => formOf(key.slice(KEY.length), said));
  known.set(other, forms);
  return forms;
}

function formOf(english: string, said: string): Form {
  const places = [...english.matchAll(PLACE)].map(([, name]) => name);
  const pattern = english
    .split(/\{\w+\}/)
    .map((piece) => piece.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('(.*?)');
  return { form: new RegExp(`^${pattern}$`, 's'), places, said };
}
