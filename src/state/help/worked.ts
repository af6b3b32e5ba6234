/** What a number in a formula is a measure of; it decides how it is shown. SI in the program. */
export type Measure =
  | 'mass'
  | 'length'
  | 'firstMoment'
  | 'secondMoment'
  | 'moment'
  | 'force'
  /** Radians; shown in degrees. */
  | 'angle'
  /** rad/s. */
  | 'spin'
  /** Hz. */
  | 'frequency'
  | 'rpm'
  | 'energy'
  /** N m per radian. */
  | 'stiffness'
  /** m per radian. */
  | 'travelPerAngle'
  | 'pressure'
  /** kg m, shown in g mm. */
  | 'unbalance'
  /** m/s, shown in mm/s. */
  | 'grade'
  | 'count'
  | 'ratio'
  | 'time';

/** One number of a formula: how it is written, what it is, and how much. */
export interface Term {
  readonly symbol: string;
  readonly measure: Measure;
  readonly value: number;
}

/**
 * A formula with the numbers of the head put in. `formula` is the right-hand side with a `{place}` for each term; the
 * result is what the formula gives for the terms' values, worked out in SI.
 */
export interface Worked {
  readonly result: Term;
  readonly formula: string;
  readonly terms: Readonly<Record<string, Term>>;
  /** Where a value without a formula is from, if not as its measure says. */
  readonly note?: 'help.asSet' | 'help.foundByLever';
}

/** A result by its formula: `rule` is the formula once more, for numbers. */
export function work<Name extends string>(
  symbol: string,
  measure: Measure,
  formula: string,
  terms: Readonly<Record<Name, Term>>,
  rule: (values: Readonly<Record<Name, number>>) => number,
): Worked {
  const values = Object.fromEntries(
    Object.entries<Term>(terms).map(([name, { value }]) => [name, value]),
  ) as Record<Name, number>;
  return { result: { symbol, measure, value: rule(values) }, formula, terms };
}

/** A sum of so many terms, each with its own sign. */
export function workSum(symbol: string, measure: Measure, terms: readonly Term[]): Worked {
  const named = Object.fromEntries(terms.map((one, i) => [`t${i}`, one]));
  return {
    result: { symbol, measure, value: terms.reduce((sum, { value }) => sum + value, 0) },
    formula: terms.map((_, i) => `{t${i}}`).join(' + '),
    terms: named,
  };
}

export function term(symbol: string, measure: Measure, value: number): Term {
  return { symbol, measure, value };
}
