import type { ParameterSet, ParameterValue, PartType, ValuesOf } from '../parts/contract';
import type { Part } from './design';

/** Every parameter of a part with its value: what `resolveValues` gives and a type's functions take. */
export type PartValues = ValuesOf<ParameterSet>;

/** What is written of one parameter, or of a material's key; undefined where it is left to catalogue, material or default. */
export function valueOf(part: Part, name: string): ParameterValue | undefined {
  return (part as unknown as Readonly<Record<string, ParameterValue | undefined>>)[name];
}

/** Whether two sets of values of one type are the same, so that a part need not be weighed again. */
export function sameValues(type: PartType, a: PartValues, b: PartValues): boolean {
  if (a === b) return true;
  for (const name in type.parameters) {
    if (!sameValue(a[name], b[name])) return false;
  }
  return true;
}

export function sameValue(a: ParameterValue | undefined, b: ParameterValue | undefined): boolean {
  if (a === b) return true;
  if (!isList(a) || !isList(b) || a.length !== b.length) return false;
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return false;
  return true;
}

function isList(value: ParameterValue | undefined): value is readonly number[] {
  return Array.isArray(value);
}
