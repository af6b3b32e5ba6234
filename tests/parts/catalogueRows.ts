import { createMoments, M } from '../../src/engine/mass/moments';
import type { Solid } from '../../src/engine/mass/solid';
import { sumSolids } from '../../src/engine/mass/weigh';
import type { CatalogueStandard } from '../../src/parts/catalogue';
import type { ParameterValue } from '../../src/parts/contract';
import { partType } from '../../src/parts/registry';
import { defaults, type Values } from './sample';

/** One standard part to try, with its full values (materials at their defaults: steel 7850, nylon 1140). */
export interface CatalogueCase {
  readonly name: string;
  readonly kind: string;
  readonly size: string;
  readonly standard: CatalogueStandard;
  readonly lengthMm: number | undefined;
  readonly values: Values;
}

export const CATALOGUE_KINDS = ['bolt', 'nut', 'washer'] as const;

export function standardsOf(kind: string): readonly CatalogueStandard[] {
  return partType(kind).catalogue?.standards ?? [];
}

export function standardNamed(kind: string, name: string): CatalogueStandard {
  const found = standardsOf(kind).find((one) => one.standard === name);
  if (!found) throw new Error(`no standard ${name}`);
  return found;
}

export function standardPart(
  kind: string,
  standard: CatalogueStandard,
  size: string,
  lengthMm?: number,
): CatalogueCase {
  const values = { ...defaults(kind), ...standard.values(size, lengthMm) };
  const name = `${standard.standard} ${size}${lengthMm === undefined ? '' : ` x ${lengthMm}`}`;
  return { name, kind, size, standard, lengthMm, values };
}

/** Every size of every standard at the lengths that `lengths` picks of those listed. */
export function catalogueCases(
  kind: string,
  lengths: (listed: readonly number[]) => readonly number[] = (listed) => listed,
): CatalogueCase[] {
  return standardsOf(kind).flatMap((standard) =>
    standard.sizes.flatMap(({ size, lengthsMm }) =>
      (lengthsMm ? lengths(lengthsMm) : [undefined]).map((length) =>
        standardPart(kind, standard, size, length),
      ),
    ),
  );
}

export function solidsOf(kind: string, values: Values): readonly Solid[] {
  return partType(kind).solids(values as never);
}

/** Mass in grams, the changes laid over the values. */
export function gramsOf(
  kind: string,
  values: Values,
  changes: Readonly<Record<string, ParameterValue>> = {},
): number {
  return sumSolids(solidsOf(kind, { ...values, ...changes }), createMoments())[M] * 1000;
}
