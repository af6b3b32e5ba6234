import { fail, type Result, succeed } from '../engine/result';
import type { ParameterValue, PartType } from './contract';

/**
 * Standard parts from published tables. A design refers to a row by standard, size and, where the part has one,
 * length; the row then gives the dimensions, and whatever is written beside the reference wins. Tables live in the
 * folder of the part type that they describe.
 */
export interface CatalogueReference {
  readonly standard: string;
  readonly size: string;
  readonly lengthMm?: number;
}

export interface CatalogueSize {
  /** As the standard writes it: "M3", "#4-40". */
  readonly size: string;
  /** Lengths that the standard lists, ascending; absent where the part has no length. Others can be asked for too. */
  readonly lengthsMm?: readonly number[];
  /** Where the row was read. */
  readonly source: string;
  /** True where a figure of the row was recalled and not read. */
  readonly fromMemory: boolean;
  readonly note?: string;
}

export interface CatalogueStandard {
  /** "ISO 4762". */
  readonly standard: string;
  /** What it describes: "Socket head cap screw". */
  readonly title: string;
  readonly sizes: readonly CatalogueSize[];
  /** Parameter values of a listed size (`lengthMm` present exactly when the size lists lengths). */
  values(size: string, lengthMm: number | undefined): Readonly<Record<string, ParameterValue>>;
}

export interface PartCatalogue {
  readonly standards: readonly CatalogueStandard[];
  /** The parameter that the reference's length gives; changing it changes the reference. */
  readonly lengthParameter?: string;
  /** Shortest and longest length that any reference may ask for, mm. */
  readonly lengthLimitsMm?: readonly [number, number];
}

export type CatalogueProblem =
  | { readonly key: 'standard'; readonly known: readonly string[] }
  | { readonly key: 'size'; readonly known: readonly string[] }
  | { readonly key: 'lengthMm'; readonly missing: boolean };

export type CatalogueValues = Readonly<Record<string, ParameterValue>>;

const remembered = new WeakMap<
  CatalogueReference,
  { readonly type: PartType; readonly values: CatalogueValues }
>();

/** The parameter values of a row, or which key of the reference leads nowhere. Remembered by the reference's identity. */
export function catalogueValues(
  type: PartType,
  reference: CatalogueReference,
): Result<CatalogueValues, CatalogueProblem> {
  const known = remembered.get(reference);
  if (known?.type === type) return succeed(known.values);
  const found = catalogueRow(type, reference);
  if (!found.ok) return found;
  const values = found.value.standard.values(reference.size, reference.lengthMm);
  remembered.set(reference, { type, values });
  return succeed(values);
}

/** The standard and the size that a reference names. */
export function catalogueRow(
  type: PartType,
  reference: CatalogueReference,
): Result<
  { readonly standard: CatalogueStandard; readonly size: CatalogueSize },
  CatalogueProblem
> {
  const standards = type.catalogue?.standards ?? [];
  const standard = standards.find((one) => one.standard === reference.standard);
  if (!standard) {
    return fail({ key: 'standard', known: standards.map((one) => one.standard) });
  }
  const size = standard.sizes.find((one) => one.size === reference.size);
  if (!size) return fail({ key: 'size', known: standard.sizes.map((one) => one.size) });
  const wanted = size.lengthsMm !== undefined;
  if (wanted !== (reference.lengthMm !== undefined)) {
    return fail({ key: 'lengthMm', missing: wanted });
  }
  return succeed({ standard, size });
}
