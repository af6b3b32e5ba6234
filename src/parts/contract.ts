import type { Solid } from '../engine/mass/solid';
import type { Pose } from '../engine/math/pose';
import type { Vec3 } from '../engine/math/vector';

/**
 * The contract of a part type. A part type is one folder (`parts/<kind>/index.ts` exports the result of
 * `definePart`) and one line in `parts/registry.ts`; the Part union, the design file's schema, the fields, the
 * handles, the meshes and the contract test follow from it.
 *
 * Parameters hold what the person typed, in the unit that their key names (`lengthMm`, `massGrams`); `solids` turns
 * them into SI through `engine/units`. The part frame is the type's own business: say it in the folder's docstring.
 */
export type ParameterUnit = 'mm' | 'g' | 'deg' | 'kg/m3' | '1';

interface ParameterText {
  /** Shown beside the field; the message catalogue may replace it by key `part.<kind>.<parameter>.label`. */
  readonly label: string;
  /** One sentence: what is measured, from where to where, which sign. */
  readonly help: string;
}

export interface NumberParameter extends ParameterText {
  readonly type: 'number';
  readonly unit: ParameterUnit;
  readonly default: number;
  /** Limits in `unit`, both allowed values. */
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

/** Three numbers of one unit under one key (`sizeMm`). */
export interface VectorParameter extends ParameterText {
  readonly type: 'vector';
  readonly unit: ParameterUnit;
  readonly default: readonly [number, number, number];
  /** Names of the components on screen. */
  readonly axes: readonly [string, string, string];
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

export interface ChoiceParameter<Option extends string = string> extends ParameterText {
  readonly type: 'choice';
  readonly options: readonly Option[];
  readonly optionLabels: Readonly<Record<Option, string>>;
  readonly default: Option;
}

export type Parameter = NumberParameter | VectorParameter | ChoiceParameter;
export type ParameterSet = Readonly<Record<string, Parameter>>;

export type ValueOf<P extends Parameter> = P extends VectorParameter
  ? readonly [number, number, number]
  : P extends ChoiceParameter<infer Option>
    ? Option
    : number;

export type ValuesOf<S extends ParameterSet> = { readonly [K in keyof S]: ValueOf<S[K]> };

/** Any value a parameter can hold. */
export type ParameterValue = number | string | readonly [number, number, number];

/** What a part offers to children, or asks of a parent: they mate when the words are equal. */
export type Mating =
  | 'armSeat'
  | 'boltHole'
  | 'bladeSeat'
  | 'thread'
  | 'underHead'
  | 'nutFace'
  | 'boltEnd'
  | 'headTop'
  | 'ball';

/** A place on a part where children sit. The child's frame coincides with `pose`, moved along its z and turned about it. */
export interface Socket {
  readonly name: string;
  readonly label: string;
  readonly mates: Mating;
  /** Socket frame in the part's frame. */
  readonly pose: Pose;
  /** Where a new child sits along the socket's z, mm. */
  readonly defaultOffsetMm: number;
  /** Range along the socket's z in which a child may be put, mm; equal ends mean it is fixed. */
  readonly offsetRangeMm: readonly [number, number];
  /** Children sit on one another in order, each raised by the `stackHeight` of those before it. */
  readonly stacks?: boolean;
}

/** A straight drag: moving the pointer by 1 mm along `direction` changes the parameter by `perMm`. */
export interface LinearHandle<K extends string = string> {
  readonly kind: 'linear';
  readonly parameter: K;
  /** Component of a vector parameter. */
  readonly component?: 0 | 1 | 2;
  /** Where the handle sits and which way it goes, part frame, metres / unit vector. */
  readonly position: Vec3;
  readonly direction: Vec3;
  /** Parameter units (mm, g ...) for 1 mm of travel: 1 for a length, 2 for a diameter. */
  readonly perMm: number;
}

/** A turning drag about `axis` through `centre`: the parameter (degrees) grows with the right-hand turn x `sense`. */
export interface TurnHandle<K extends string = string> {
  readonly kind: 'turn';
  readonly parameter: K;
  readonly position: Vec3;
  readonly centre: Vec3;
  readonly axis: Vec3;
  readonly sense: 1 | -1;
}

export type Handle<K extends string = string> = LinearHandle<K> | TurnHandle<K>;

/** A rule between parameters that a value breaks. `field` is what the person should change. */
export interface Problem {
  readonly field: string;
  readonly rule: 'below' | 'above' | 'atMost' | 'atLeast';
  /** The limit, in the field's unit. */
  readonly limit: number;
  /** The parameter that sets the limit, or a short noun phrase for it ("the width of the fork"). */
  readonly against: string;
}

export interface PartType<Kind extends string = string, Set extends ParameterSet = ParameterSet> {
  readonly kind: Kind;
  /** Catalogue key `part.<kind>.label`. */
  readonly label: string;
  readonly help: string;
  readonly parameters: Set;
  /** Ways this part can sit on another; empty: free placement only. Every part may be placed freely. */
  readonly mates: readonly Mating[];
  /** Disjoint solids in the part frame; a hole that no outline can hold is a solid of negative density. */
  solids(values: ValuesOf<Set>): readonly Solid[];
  sockets(values: ValuesOf<Set>): readonly Socket[];
  handles(values: ValuesOf<Set>): readonly Handle<keyof Set & string>[];
  /** Rules between parameters; each one's own limits are checked from `parameters`. */
  problems(values: ValuesOf<Set>): readonly Problem[];
  /** Height a child of a stacking socket takes up along the socket's z, metres. */
  stackHeight?(values: ValuesOf<Set>): number;
  /** Name of the own stacking socket whose children come between this part and its seat (washers under a head). */
  readonly raisedBy?: string;
  /**
   * 'grip' (default): turns with the grip. 'rod': hangs on its socket and stays parallel to the shaft; its mass then
   * acts on the grip as a lump at the socket.
   */
  readonly carriedBy?: 'grip' | 'rod';
  /** Of a part carried by 'rod': which side of its socket the slider lies on, +1 toward +Z, -1 toward -Z. */
  rodDirection?(values: ValuesOf<Set>): 1 | -1;
  /** Selected when a design opens, so that its handles are at hand. */
  readonly selectedFirst?: boolean;
  /** Colour role on the stage. */
  readonly finish: 'metal' | 'plastic' | 'composite' | 'neutral';
}

/** Keeps the literal types of a definition. */
export function definePart<const Kind extends string, const Set extends ParameterSet>(
  type: PartType<Kind, Set>,
): PartType<Kind, Set> {
  return type;
}

type NumberOptions = ParameterText & {
  readonly default: number;
  readonly min: number;
  readonly max: number;
  readonly step?: number;
};

/** A length in mm. */
export function lengthMm(options: NumberOptions): NumberParameter {
  return { type: 'number', unit: 'mm', step: 0.1, ...options };
}
export function massGrams(options: NumberOptions): NumberParameter {
  return { type: 'number', unit: 'g', step: 0.01, ...options };
}
export function angleDeg(options: NumberOptions): NumberParameter {
  return { type: 'number', unit: 'deg', step: 1, ...options };
}
/** Density with the limits that every part shares: aerogel-light to denser than any metal, to catch unit slips. */
export function densityKgM3(standard: number): NumberParameter {
  return {
    type: 'number',
    unit: 'kg/m3',
    label: 'Density',
    help: 'Mass of one cubic metre of the material: steel 7850, aluminium 2700, nylon 1140.',
    default: standard,
    min: 1,
    max: 25000,
    step: 10,
  };
}

/** `problems` helper: `field` must be less than `other` (both of the same unit). */
export function below(
  values: Readonly<Record<string, unknown>>,
  field: string,
  other: string,
): Problem[] {
  const limit = values[other] as number;
  return (values[field] as number) < limit ? [] : [{ field, rule: 'below', limit, against: other }];
}
/** `problems` helper: `field` must not exceed `other`. */
export function atMost(
  values: Readonly<Record<string, unknown>>,
  field: string,
  other: string,
): Problem[] {
  const limit = values[other] as number;
  return (values[field] as number) <= limit
    ? []
    : [{ field, rule: 'atMost', limit, against: other }];
}
