import type { Part } from '../../design/design';
import type { PartCatalogue } from '../../parts/catalogue';
import { lengthNumber } from '../../state/words/catalogueText';
import type { CatalogueHit } from './catalogueSearch';
import { readLength } from './lengthDraft';
import { fittingLength, placeOfLength } from './lengths';
import { oddLengthText } from './standardText';

export function keyOf({ standard, size }: CatalogueHit): string {
  return keyOfReference({ standard: standard.standard, size: size.size });
}

export function keyOfReference(reference: {
  readonly standard: string;
  readonly size: string;
}): string {
  return `${reference.standard} ${reference.size}`;
}

/**
 * The row whose dimensions are nearest to those that a part has, its length left aside: where a choice begins for a part
 * that names no row. Null where the catalogue has none.
 */
export function nearestRow(
  catalogue: PartCatalogue,
  values: Readonly<Record<string, unknown>>,
): string | null {
  let nearest: string | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const standard of catalogue.standards) {
    for (const size of standard.sizes) {
      const row = standard.values(size.size, size.lengthsMm?.[0]);
      const away = Object.entries(row)
        .filter(([field]) => field !== catalogue.lengthParameter)
        .reduce((sum, [field, value]) => sum + apart(value, values[field]), 0);
      if (away < least) {
        least = away;
        nearest = keyOfReference({ standard: standard.standard, size: size.size });
      }
    }
  }
  return nearest;
}

/** 0 for the same; of two numbers by how many times one is the other, so that small sizes count as large ones do. */
function apart(a: unknown, b: unknown): number {
  if (a === b) return 0;
  if (typeof a !== 'number' || typeof b !== 'number' || a * b <= 0) return 1;
  return Math.abs(Math.log(a / b));
}

export interface ChosenLength {
  readonly text: string;
  readonly lengthMm: number | undefined;
  readonly fault: string | null;
}

/** What is typed; else what the search asked for; else the present length, or the next longer that is listed. */
export function lengthOf(
  { size, lengthMm }: CatalogueHit,
  typed: string | null,
  part: Part,
  catalogue: PartCatalogue,
  values: Readonly<Record<string, unknown>> | undefined,
): ChosenLength {
  const lengths = size.lengthsMm;
  if (!lengths) return { text: '', lengthMm: undefined, fault: null };
  if (typed !== null) {
    const read = readLength(typed, size.size, lengths, catalogue.lengthLimitsMm ?? [0, 0]);
    return read.ok
      ? { text: typed, lengthMm: read.value, fault: null }
      : { text: typed, lengthMm: undefined, fault: read.error };
  }
  const present = Number(values?.[catalogue.lengthParameter ?? ''] ?? lengths[0]);
  const same = part.catalogue?.size === size.size ? part.catalogue.lengthMm : undefined;
  const usual = lengthMm ?? same ?? fittingLength(lengths, present) ?? present;
  return { text: lengthNumber(size.size, usual), lengthMm: usual, fault: null };
}

export function referenceOf({ standard, size }: CatalogueHit, lengthMm: number | undefined) {
  const name = { standard: standard.standard, size: size.size };
  if (!size.lengthsMm) return name;
  return lengthMm === undefined ? null : { ...name, lengthMm };
}

export function oddNote(
  { standard, size }: CatalogueHit,
  lengthMm: number | undefined,
): string | null {
  if (lengthMm === undefined || !size.lengthsMm) return null;
  const next = placeOfLength(size.lengthsMm, lengthMm);
  if (next.listed !== undefined) return null;
  return oddLengthText({
    field: '',
    standard: standard.standard,
    size: size.size,
    lengthMm,
    next,
  });
}
