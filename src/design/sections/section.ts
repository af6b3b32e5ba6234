import type { NumberLimits } from '../limits';

/**
 * A section of the design document holds numbers and choices that belong to no part: rotor, control, friction, air,
 * blade on its bolt, what is counted. Each section's set of fields is the one place where a field is written: the
 * document's type, its schema and checks, the order in the file, the rows in the panel and the texts follow from it.
 */
interface SectionText {
  readonly label: string;
  /** One sentence: what is measured, from where to where, which sign. */
  readonly help: string;
  /** Heading in the panel; fields without one come first. */
  readonly group?: string;
}

export interface SectionNumber extends SectionText, NumberLimits {
  readonly type: 'number';
  readonly step: number;
  /** Must stand in the file. */
  readonly required?: true;
  /** Holds where the file has none; null: then there is no such number, and what needs it is not computed. */
  readonly default: number | null;
}

export interface SectionChoice extends SectionText {
  readonly type: 'choice';
  readonly options: readonly string[];
  readonly optionLabels: Readonly<Record<string, string>>;
  readonly default: string;
}

export interface SectionSwitch extends SectionText {
  readonly type: 'switch';
  readonly default: boolean;
}

export type SectionField = SectionNumber | SectionChoice | SectionSwitch;
export type SectionSet = Readonly<Record<string, SectionField>>;

type Written<F extends SectionField> = F extends SectionSwitch
  ? boolean
  : F extends SectionChoice
    ? F['options'][number]
    : number;
type RequiredKeys<S extends SectionSet> = {
  [K in keyof S]: S[K] extends { readonly required: true } ? K : never;
}[keyof S];

/** A section as written in a document. */
export type SectionOf<S extends SectionSet> = {
  readonly [K in RequiredKeys<S>]: Written<S[K]>;
} & { readonly [K in Exclude<keyof S, RequiredKeys<S>>]?: Written<S[K]> };

type Filled<F extends SectionField> = F extends SectionNumber
  ? F['default'] extends number
    ? number
    : number | null
  : Written<F>;

/** The same with defaults filled in; null where there is no number. */
export type SectionValues<S extends SectionSet> = { readonly [K in keyof S]: Filled<S[K]> };

/** A section's values: what is written, or the default. */
export function sectionValues<S extends SectionSet>(
  set: S,
  written: SectionOf<S> | undefined,
): SectionValues<S> {
  const given: object = written ?? NOTHING_WRITTEN;
  let known = filled.get(set);
  if (!known) {
    known = new WeakMap();
    filled.set(set, known);
  }
  let values = known.get(given);
  if (!values) {
    values = withDefaults(set, given as Readonly<Record<string, unknown>>);
    known.set(given, values);
  }
  return values as SectionValues<S>;
}

/** A section that is written is never changed, so it is filled in once. */
const filled = new WeakMap<SectionSet, WeakMap<object, object>>();
const NOTHING_WRITTEN = {};

function withDefaults(set: SectionSet, given: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.keys(set).map((key) => [key, given[key] ?? set[key].default]));
}

/** Keeps the literal types of a set. */
export function defineSection<const S extends SectionSet>(set: S): S {
  return set;
}
