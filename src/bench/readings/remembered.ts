import { plainWords } from './headings';
import type { ReadingsMapping } from './types';

/** Mappings that a person made, by the signature of the headings they were made for. A plain object: it can be stored. */
export type RememberedMappings = Readonly<Record<string, ReadingsMapping>>;

/** Tables remembered; the oldest is forgotten first. */
const MOST = 100;

/** Tells tables of the same make apart: every heading with its unit, in order, without case, accents and blanks. */
export function headerSignature(headings: readonly string[]): string {
  const texts = headings.map((heading) => {
    const unit = /[([]\s*([^()[\]]*?)\s*[)\]]/.exec(heading)?.[1] ?? '';
    const words = plainWords(heading.replace(/[([].*/, '')) || heading.trim().toLowerCase();
    return unit === '' ? words : `${words} [${unit}]`;
  });
  return `${headings.length}: ${texts.join(' | ')}`;
}

/** The mapping that was made for such headings; null where there is none. */
export function rememberedMapping(
  memory: RememberedMappings,
  headings: readonly string[],
): ReadingsMapping | null {
  const key = headerSignature(headings);
  const mapping = Object.hasOwn(memory, key) ? memory[key] : null;
  return mapping?.length === headings.length ? mapping : null;
}

/** The memory with one more mapping; the given one is left as it is. */
export function rememberMapping(
  memory: RememberedMappings,
  headings: readonly string[],
  mapping: ReadingsMapping,
): RememberedMappings {
  const key = headerSignature(headings);
  const others = Object.entries(memory).filter(([old]) => old !== key);
  return Object.fromEntries([...others.slice(1 - MOST), [key, mapping]]);
}
