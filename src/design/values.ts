import type { ParameterSet, ParameterValue, PartType, ValuesOf } from '../parts/contract';
import type { Part } from './design';

/** A part's own parameters for its type's functions, which read nothing but the keys they declare. */
export function valuesOf(part: Part): ValuesOf<ParameterSet> {
  return part as unknown as ValuesOf<ParameterSet>;
}

/** One parameter of a part by name; undefined where the part does not have it. */
export function valueOf(part: Part, name: string): ParameterValue | undefined {
  return (part as unknown as Readonly<Record<string, ParameterValue | undefined>>)[name];
}

/** Whether two parts of one type have the same parameters, so that one need not be weighed again. */
export function sameValues(type: PartType, a: Part, b: Part): boolean {
  for (const name in type.parameters) {
    const x = valueOf(a, name);
    const y = valueOf(b, name);
    if (x === y) continue;
    if (!isVector(x) || !isVector(y)) return false;
    if (x[0] !== y[0] || x[1] !== y[1] || x[2] !== y[2]) return false;
  }
  return true;
}

function isVector(value: ParameterValue | undefined): value is readonly [number, number, number] {
  return Array.isArray(value);
}
