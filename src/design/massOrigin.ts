import { createMoments, M } from '../engine/mass/moments';
import { sumSolids } from '../engine/mass/weigh';
import type { Parameter } from '../parts/contract';
import { partType } from '../parts/registry';
import type { Part } from './design';
import { type ValueOrigin, valueOrigin } from './resolve';
import type { PartValues } from './values';

/**
 * Where a part's mass comes from. 'weighed' settles it alone. Else: 'massTyped' a mass that is a parameter;
 * 'catalogue' dimensions from a row of a standard; 'material' and 'densityTyped' the density; 'densityDefault' a
 * density that nobody chose. Several where the part is made of several things.
 */
export type MassOrigin =
  | 'weighed'
  | 'massTyped'
  | 'catalogue'
  | 'material'
  | 'densityTyped'
  | 'densityDefault';

const remembered = new WeakMap<
  Part,
  { readonly values: PartValues; readonly found: readonly MassOrigin[] }
>();

/** The origins of a checked part's mass, without repeats. Remembered by the part's identity. */
export function massOrigins(part: Part, values: PartValues): readonly MassOrigin[] {
  const known = remembered.get(part);
  if (known?.values === values) return known.found;
  const found = findOrigins(part, values);
  remembered.set(part, { values, found });
  return found;
}

function findOrigins(part: Part, values: PartValues): readonly MassOrigin[] {
  if (part.measured?.massGrams !== undefined) return ['weighed'];
  const found = new Set<MassOrigin>(part.catalogue ? ['catalogue'] : []);
  for (const [name, parameter] of Object.entries(partType(part.kind).parameters)) {
    if (!setsMass(parameter) || !weighsIn(part, values, name)) continue;
    found.add(parameter.unit === 'g' ? 'massTyped' : DENSITY[valueOrigin(part, name)]);
  }
  return [...found];
}

const DENSITY: Readonly<Record<ValueOrigin, MassOrigin>> = {
  written: 'densityTyped',
  catalogue: 'catalogue',
  material: 'material',
  default: 'densityDefault',
};

function setsMass(parameter: Parameter): parameter is Parameter & { readonly type: 'number' } {
  return parameter.type === 'number' && (parameter.unit === 'kg/m3' || parameter.unit === 'g');
}

/** Whether the number counts: the density of a core that the part does not have weighs nothing. */
function weighsIn(part: Part, values: PartValues, name: string): boolean {
  const doubled = { ...values, [name]: 2 * (values[name] as number) };
  return massOf(part, doubled) !== massOf(part, values);
}

function massOf(part: Part, values: PartValues): number {
  return sumSolids(partType(part.kind).solids(values), createMoments())[M];
}
