import { EN } from './en';

/**
 * All text that the page shows. `EN` is the source; a second language is an object with the same keys. A message
 * may hold `{name}` places. Texts of part types live with the type and can be replaced here by key
 * `part.<kind>.label`, `part.<kind>.<parameter>.label` or `.help`; phrases of their rules by `phrase.<the phrase>`,
 * demo designs by `demo.<file>.title` or `.summary`.
 */
export type MessageKey = keyof typeof EN;
export type Catalogue = Readonly<Record<MessageKey, string>> & Readonly<Record<string, string>>;

let current: Readonly<Record<string, string>> = EN;

export function setCatalogue(catalogue: Catalogue): void {
  current = catalogue;
}

export function t(key: MessageKey, values?: Readonly<Record<string, string | number>>): string {
  return fill(current[key] ?? EN[key], values);
}

/** Text that comes with a part type or a demo design: the catalogue's, or its own English. */
export function partText(key: string, own: string): string {
  return current[key] ?? own;
}

function fill(template: string, values?: Readonly<Record<string, string | number>>): string {
  if (!values) return template;
  return template.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const value = values[name];
    return value === undefined ? whole : String(value);
  });
}
