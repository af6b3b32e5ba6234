import type { Part } from '../../design/design';
import { rowOf } from '../../design/resolve';
import { sameValue, valueOf } from '../../design/values';
import { catalogueRow } from '../../parts/catalogue';
import type { ParameterValue } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { type LengthPlace, placeOfLength } from './lengths';

/** A value written beside a row that has another, in the parameter's own unit. */
export interface Deviation {
  readonly field: string;
  readonly value: ParameterValue;
  readonly standard: ParameterValue;
}

/** What a written value stands in the place of: the row's own, where that is another; null otherwise. */
export function deviationOf(part: Part, field: string): Deviation | null {
  const value = valueOf(part, field);
  const standard = value === undefined ? undefined : rowOf(part)?.[field];
  if (value === undefined || standard === undefined || sameValue(value, standard)) return null;
  return { field, value, standard };
}

/** Everything in which a part differs from its row, in the order of its parameters. */
export function leftStandard(part: Part): Deviation[] {
  if (!part.catalogue) return [];
  return Object.keys(partType(part.kind).parameters)
    .map((field) => deviationOf(part, field))
    .filter((found) => found !== null);
}

/** A length asked of a size that does not list it. */
export interface OddLength {
  readonly field: string;
  readonly standard: string;
  readonly size: string;
  readonly lengthMm: number;
  readonly next: LengthPlace;
}

/** The length of a catalogue part where its standard has none such; null where it has, or where there is no length. */
export function oddLength(part: Part): OddLength | null {
  const type = partType(part.kind);
  const field = type.catalogue?.lengthParameter;
  if (!part.catalogue || field === undefined || part.catalogue.lengthMm === undefined) return null;
  const row = catalogueRow(type, part.catalogue);
  if (!row.ok) return null;
  const { standard, size, lengthMm } = part.catalogue;
  const next = placeOfLength(row.value.size.lengthsMm ?? [], lengthMm);
  return next.listed === undefined ? { field, standard, size, lengthMm, next } : null;
}

/** The listed length nearest to it. */
export function nearestListed({ lengthMm, next: { below, above } }: OddLength): number | undefined {
  if (below === undefined || above === undefined) return below ?? above;
  return lengthMm - below <= above - lengthMm ? below : above;
}
