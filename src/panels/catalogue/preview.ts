import type { Part } from '../../design/design';
import { type Materials, resolveValues } from '../../design/resolve';
import type { PartValues } from '../../design/values';
import { withCatalogue } from '../../design/writeValue';
import { createMoments, M } from '../../engine/mass/moments';
import { sumSolids } from '../../engine/mass/weigh';
import { type CatalogueReference, catalogueValues } from '../../parts/catalogue';
import { isUsed, type ParameterValue, type Problem } from '../../parts/contract';
import { partType } from '../../parts/registry';

/** What a part would be with a row taken, before it is. */
export interface Preview {
  /** The row's main values, those that stand under no heading and are not 0, in the order of the parameters. */
  readonly row: readonly (readonly [field: string, value: ParameterValue])[];
  readonly values: PartValues;
  /** Mass of what the dimensions give in the part's present materials, kg; null where they break a rule. */
  readonly mass: number | null;
  /** The rule of the type that the row breaks with what stays written in the part. */
  readonly problem: Problem | null;
}

/** Null where the reference leads nowhere. */
export function previewOf(
  part: Part,
  reference: CatalogueReference,
  materials: Materials,
): Preview | null {
  const type = partType(part.kind);
  const row = catalogueValues(type, reference);
  if (!row.ok) return null;
  const resolved = resolveValues(withCatalogue(part, reference), materials);
  if (!resolved.ok) return null;
  const values = resolved.value;
  const [problem = null] = type.problems(values);
  const mass = problem ? null : sumSolids(type.solids(values), createMoments())[M];
  const main = Object.entries(type.parameters).filter(
    ([field, parameter]) =>
      parameter.group === undefined && isUsed(parameter, values) && (row.value[field] ?? 0) !== 0,
  );
  return { row: main.map(([field]) => [field, row.value[field]]), values, mass, problem };
}
