import type { Solid } from '../engine/mass/solid';
import type { Pose } from '../engine/math/pose';
import type { Vec3 } from '../engine/math/vector';
import type { PartCatalogue } from './catalogue';
import type {
  BearingFacts,
  BladeRootFacts,
  FastenerFacts,
  ForkFacts,
  InnerThread,
  KeepOutFacts,
  LiftingStation,
  Retention,
  RodFacts,
} from './facts';

/**
 * The contract of a part type. A part type is one folder (`parts/<kind>/index.ts` exports the result of
 * `definePart`) and one line in `parts/registry.ts`; the Part union, the design file's schema, the fields, the
 * handles, the meshes and the contract test follow from it.
 *
 * Parameters hold what the person typed, in the unit that their key names (`lengthMm`, `massGrams`); `solids` turns
 * them into SI through `engine/units`. The part frame is the type's own business: say it in the folder's docstring.
 */
export type ParameterUnit = 'mm' | 'g' | 'deg' | 'kg/m3' | 'N' | '1';

interface ParameterText {
  /** Shown beside the field; the message catalogue may replace it by key `part.<kind>.<parameter>.label`. */
  readonly label: string;
  /** One sentence: what is measured, from where to where, which sign. */
  readonly help: string;
  /**
   * May be left out of a file: the default then holds. For extras, and for what came after the type's first version, whose
   * default must leave older designs as they were.
   */
  readonly optional?: boolean;
  /** Heading that the field stands under; fields without one come first. Key `group.<group>` of the message catalogue. */
  readonly group?: string;
  /** The parameter counts for something only then; its field is shown only then. Absent: always. */
  readonly usedWhen?: Condition;
}

/** Another parameter of the part has one of these choices, or (without `is`) is not 0. */
export interface Condition {
  readonly key: string;
  readonly is?: string;
}

export interface NumberParameter extends ParameterText {
  readonly type: 'number';
  readonly unit: ParameterUnit;
  readonly default: number;
  /**
   * For a density: the part's key that may name a material (`material`, `coreMaterial`) in its stead. A number
   * written beside it wins.
   */
  readonly materialKey?: string;
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

/** A list of numbers that comes from a file, such as the coordinates of a section. No field; `min` and `max` hold for each. */
export interface NumbersParameter extends ParameterText {
  readonly type: 'numbers';
  readonly unit: ParameterUnit;
  readonly default: readonly number[];
  readonly min: number;
  readonly max: number;
  /** Largest length of the list. */
  readonly maxCount: number;
}

/** Text that comes from a file, such as a packed mesh or the name of a file. No field. */
export interface TextParameter extends ParameterText {
  readonly type: 'text';
  readonly default: string;
  readonly maxLength: number;
}

export type Parameter =
  | NumberParameter
  | VectorParameter
  | ChoiceParameter
  | NumbersParameter
  | TextParameter;
export type ParameterSet = Readonly<Record<string, Parameter>>;

export type ValueOf<P extends Parameter> = P extends VectorParameter
  ? readonly [number, number, number]
  : P extends ChoiceParameter<infer Option>
    ? Option
    : P extends NumbersParameter
      ? readonly number[]
      : P extends TextParameter
        ? string
        : number;

export type ValuesOf<S extends ParameterSet> = { readonly [K in keyof S]: ValueOf<S[K]> };

/** Any value a parameter can hold. */
export type ParameterValue =
  | number
  | string
  | readonly [number, number, number]
  | readonly number[];

/** Whether a parameter counts for something beside the values of the others. */
export function isUsed(
  { usedWhen }: Pick<ParameterText, 'usedWhen'>,
  values: Readonly<Record<string, unknown>>,
): boolean {
  if (!usedWhen) return true;
  const value = values[usedWhen.key];
  return usedWhen.is === undefined ? value !== 0 : value === usedWhen.is;
}

/** The unit of a parameter's numbers; '1' where it has none. */
export function parameterUnit(parameter: Parameter | undefined): ParameterUnit {
  return parameter && 'unit' in parameter ? parameter.unit : '1';
}

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
  | 'bearingSeat'
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
  /** What a child has to go through or round here; `misfits` holds it against the child's own. */
  readonly size?: SeatSize;
  /** Children sit on one another in order, each raised by the `stackHeight` of those before it. */
  readonly stacks?: boolean;
}

/** A hole to go through, a thread to be screwed on, a shank to go round; mm. */
export type SeatSize =
  | { readonly kind: 'hole' | 'shank'; readonly diameterMm: number }
  | { readonly kind: 'thread'; readonly diameterMm: number; readonly pitchMm: number };

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
export interface LimitProblem {
  readonly field: string;
  readonly rule: 'below' | 'above' | 'atMost' | 'atLeast';
  /** The limit, in the field's unit. */
  readonly limit: number;
  /** The parameter that sets the limit, or a short noun phrase for it ("the width of the fork"). */
  readonly against: string;
}
/** Data (numbers, text) that cannot be what it should; `detail` ends "... because it " in a person's words. */
export interface DataProblem {
  readonly field: string;
  readonly rule: 'unsound';
  readonly detail: string;
}
export type Problem = LimitProblem | DataProblem;

/** Parameters, both in mm. */
export interface Trim<K extends string = string> {
  readonly length: K;
  readonly diameter: K;
}

/** Mass along a part's own x, for a plot: equal lengths, x ascending. */
export interface SpanProfile {
  /** Stations from the part's origin, m. */
  readonly x: Float64Array;
  /** Mass per length, kg/m. */
  readonly massPerLength: Float64Array;
  /** Where the centre of each slice lies on y, m; NaN where there is no mass. */
  readonly centreY: Float64Array;
}

/**
 * 'grip': turns with the grip. 'rod': hangs on its socket and stays parallel to the shaft; its mass then acts on the
 * grip as a lump at the socket. 'hub': turns with the shaft but not with the pitch; 'case': does not turn at all, and
 * is drawn where it stands when the feathering axis points along X. Of the last two the pose is in the rotor frame,
 * and they are in no sum.
 */
export type Carrier = 'grip' | 'rod' | 'hub' | 'case';

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
  /** What it puts through a hole, or the hole or thread that it has for what it sits on. */
  seatSize?(values: ValuesOf<Set>): SeatSize;
  /** Height a child of a stacking socket takes up along the socket's z, metres. */
  stackHeight?(values: ValuesOf<Set>): number;
  /** Name of the own stacking socket whose children come between this part and its seat (washers under a head). */
  readonly raisedBy?: string;
  /** What carries it, 'grip' by default; a function where its own values say so. Ask `carrierOf`. */
  readonly carriedBy?: Carrier | ((values: ValuesOf<Set>) => Carrier);
  /** It is a space that must stay free: which. It is not weighed, and its pose is in the rotor frame. */
  keepOut?(values: ValuesOf<Set>): KeepOutFacts;
  /** Of a part carried by 'rod': which side of its socket the slider lies on, +1 toward +Z, -1 toward -Z. */
  rodDirection?(values: ValuesOf<Set>): 1 | -1;
  /** It is a push rod: where its slider is and how long it is. */
  rod?(values: ValuesOf<Set>): RodFacts;
  /**
   * The same thing in another cast, from what is written of it: its new kind and values, for a body that may be a keep-out
   * instead and the other way round; null where it has none.
   */
  recast?(
    written: Readonly<Record<string, unknown>>,
  ): ({ readonly kind: string } & Readonly<Record<string, unknown>>) | null;
  /** It lifts: its sections from root to tip. */
  lifting?(values: ValuesOf<Set>): readonly LiftingStation[];
  /** It can swing about its seat's z axis through its origin (a blade on its bolt). */
  readonly hinged?: true;
  /** Its root sits between the cheeks of a fork. */
  bladeRoot?(values: ValuesOf<Set>): BladeRootFacts;
  /** It is a bolt. */
  fastener?(values: ValuesOf<Set>): FastenerFacts;
  /** It is screwed on: whether it keeps itself from turning. */
  retention?(values: ValuesOf<Set>): Retention;
  /** Its thread, where a bolt may end too soon in it. */
  innerThread?(values: ValuesOf<Set>): InnerThread;
  /** Of what is screwed on: where its thread ends, from its clamped face along z, m; null where it is open. */
  threadEnd?(values: ValuesOf<Set>): number | null;
  /** It has a fork that a bolt goes through. */
  fork?(values: ValuesOf<Set>): ForkFacts;
  /** It is a bearing on the feathering axis. */
  bearing?(values: ValuesOf<Set>): BearingFacts;
  /** Standard parts that this type can be, from published tables. */
  readonly catalogue?: PartCatalogue;
  /** The body's own axes in the part frame, where they differ: what was measured of the body was measured in these. */
  bodyPose?(values: ValuesOf<Set>): Pose;
  /** Where the mass lies along the body's x, for a plot; `count` stations. */
  spanProfile?(values: ValuesOf<Set>, count: number): SpanProfile;
  /**
   * Lengths that are turned to carry mass out along the part's z, each with the diameter that goes with it: what a search
   * for the weight that cancels begins with, the usual one first.
   */
  trims?(values: ValuesOf<Set>): readonly Trim<keyof Set & string>[];
  /** Made by reading a file: not added by itself. */
  readonly fromFile?: boolean;
  /** Selected when a design opens, so that its handles are at hand. */
  readonly selectedFirst?: boolean;
  /** Colour role on the stage. */
  readonly finish: 'metal' | 'plastic' | 'composite' | 'neutral';
}

/** What carries a part of these values. */
export function carrierOf(
  { carriedBy }: Pick<PartType, 'carriedBy'>,
  values: Readonly<Record<string, unknown>>,
): Carrier {
  return typeof carriedBy === 'function' ? carriedBy(values as never) : (carriedBy ?? 'grip');
}

/** Whether a part is a keep-out: placed in the rotor frame, weightless, in no sum. */
export function isKeepOut({ keepOut }: Pick<PartType, 'keepOut'>): boolean {
  return keepOut !== undefined;
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
/** A force in newtons. */
export function forceNewtons(options: NumberOptions): NumberParameter {
  return { type: 'number', unit: 'N', step: 1, ...options };
}
/** Density with the limits that every part shares: aerogel-light to denser than any metal, to catch unit slips. */
export function densityKgM3(
  standard: number,
  options: Partial<ParameterText> & { readonly materialKey?: string } = {},
): NumberParameter {
  return {
    type: 'number',
    unit: 'kg/m3',
    label: 'Density',
    help: 'Mass of one cubic metre of the material: steel 7850, aluminium 2700, nylon 1140.',
    default: standard,
    min: 1,
    max: 25000,
    step: 10,
    materialKey: 'material',
    ...options,
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
