import fc from 'fast-check';
import type { NumberParameter, Parameter, ParameterValue, Problem } from '../../src/parts/contract';
import { partType } from '../../src/parts/registry';

export type Values = Record<string, ParameterValue>;

export function defaults(kind: string): Values {
  const entries = Object.entries(partType(kind).parameters);
  return Object.fromEntries(entries.map(([key, parameter]) => [key, parameter.default]));
}

/** What `problems` says of plain values: the registry's types are erased here on purpose. */
export function problemsOf(kind: string, values: Values): readonly Problem[] {
  return partType(kind).problems(values as never);
}

export function withinLimits(parameter: Parameter, value: ParameterValue): boolean {
  if (parameter.type === 'choice') return parameter.options.includes(value as string);
  if (parameter.type === 'text') return (value as string).length <= parameter.maxLength;
  const numbers = parameter.type === 'number' ? [value as number] : (value as readonly number[]);
  if (parameter.type === 'numbers' && numbers.length > parameter.maxCount) return false;
  return numbers.every((number) => number >= parameter.min && number <= parameter.max);
}

/** Near the default, anywhere on a logarithmic scale up to forty times it, or exactly a limit that a person may type. */
function numberNear(standard: number, limits: Pick<NumberParameter, 'min' | 'max'>) {
  const { min, max } = limits;
  const clamp = (value: number) => Math.min(max, Math.max(min, value));
  const scale = standard === 0 ? Math.min(max, 5) : Math.abs(standard);
  const sign = min < 0 ? fc.constantFrom(-1, 1) : fc.constant(1);
  return fc.oneof(
    { weight: 1, arbitrary: fc.constant(standard) },
    { weight: 1, arbitrary: fc.constant(min < 0 ? 0 : min) },
    {
      weight: 4,
      arbitrary: fc
        .tuple(sign, fc.double({ min: -1.5, max: 1.5, noNaN: true }))
        .map(([s, power]) => clamp(s * scale * 2 ** power)),
    },
    {
      weight: 2,
      arbitrary: fc
        .tuple(sign, fc.double({ min: -3, max: 3.7, noNaN: true }))
        .map(([s, power]) => clamp(s * scale * Math.exp(power))),
    },
  );
}

function parameterArbitrary(parameter: Parameter): fc.Arbitrary<ParameterValue> {
  if (parameter.type === 'choice') return fc.constantFrom(...parameter.options);
  if (parameter.type === 'number') return numberNear(parameter.default, parameter);
  // Data from files: what it may be is tested where it is read.
  if (parameter.type !== 'vector') return fc.constant(parameter.default);
  const [x, y, z] = parameter.default.map((standard) => numberNear(standard, parameter));
  return fc.tuple(x, y, z);
}

/**
 * Values within limits that break no rule. Values that do are mended as a person would: the field that the problem
 * names is set to the limit that it gives (or just inside it); what cannot be mended in 30 steps is dropped.
 */
export function validValues(kind: string): fc.Arbitrary<Values> {
  const { parameters } = partType(kind);
  const arbitraries = Object.entries(parameters).map(
    ([key, parameter]) => [key, parameterArbitrary(parameter)] as const,
  );
  return fc
    .record(Object.fromEntries(arbitraries))
    .map((values) => mend(kind, values as Values))
    .filter((values) => values !== null)
    .map((values) => values as Values);
}

export function mend(kind: string, typed: Values): Values | null {
  const { parameters } = partType(kind);
  const values = { ...typed };
  for (let step = 0; step < 30; step++) {
    const [problem] = problemsOf(kind, values);
    if (!problem) return values;
    if (problem.rule === 'unsound') return null;
    const { field, rule, limit } = problem;
    const inside = rule === 'below' ? -0.01 : rule === 'above' ? 0.01 : 0;
    values[field] = limit + inside * Math.abs(limit);
    if (!withinLimits(parameters[field], values[field])) return null;
  }
  return null;
}
