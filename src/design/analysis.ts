import type { Equilibria } from '../engine/feathering/equilibria';
import { featheringMoment } from '../engine/feathering/harmonics';
import {
  createMoments,
  JXX,
  JXY,
  JXZ,
  JYY,
  JYZ,
  JZZ,
  M,
  type Moments,
  SX,
  SY,
  SZ,
} from '../engine/mass/moments';
import { fail, type Result, succeed } from '../engine/result';
import { degreesFromRadians, radiansFromDegrees } from '../engine/units';
import type { PartKind } from '../parts/registry';
import type { Design, Rotor } from './design';
import type { DesignFault } from './fault';
import { HeadForces } from './forces/headForces';
import type { TermId } from './forces/momentTerm';
import { servoGeometry, servoHolding } from './forces/servo';
import { HeadModel } from './headModel';
import { materialsOf } from './resolve';
import { findWarnings } from './warnings';
import { warningMessage } from './warningText';

/** Second moment of mass J = int r r^T dm about the grip's origin, grip frame, kg m^2. */
export interface SecondMoment {
  readonly xx: number;
  readonly yy: number;
  readonly zz: number;
  readonly xy: number;
  readonly xz: number;
  readonly yz: number;
}

export interface PartResult {
  readonly id: string;
  readonly kind: PartKind;
  readonly mass_kg: number;
  readonly secondMoment_kg_m2: SecondMoment;
}

export interface CurvePoint {
  readonly pitch_deg: number;
  /** Inertial feathering moment, positive toward raising the leading edge. */
  readonly inertialMoment_Nm: number;
  /** Shares that the design counts; left out where it does not. Null where a share has no value. */
  readonly rodMoment_Nm?: number | null;
  readonly airMoment_Nm?: number | null;
  readonly lagMoment_Nm?: number | null;
  /** All of these; null where one has no value. */
  readonly totalMoment_Nm: number | null;
  /** What friction holds, either way; left out where it is not counted. */
  readonly friction_Nm?: number | null;
  /** Tension positive; null without an arm, where it is over centre and out of the rod's reach. */
  readonly pushRodForce_N: number | null;
  /** Along +Z, all grips; null as above. */
  readonly sliderForce_N: number | null;
  /** All grips; left out where the design has no servo arms. */
  readonly servoTorque_Nm?: number | null;
  /** Slider travel from flat pitch; null as above. */
  readonly sliderTravel_m: number | null;
}

export interface EquilibriumResult {
  readonly pitch_deg: number;
  readonly stable: boolean;
  readonly stiffness_Nm_per_rad: number;
  /** There where the curve touches zero without crossing it. */
  readonly tangent?: true;
}

/** What `npm run -s analyse` prints. Units stand in the names. */
export interface DesignAnalysis {
  readonly design: { readonly name: string; readonly rotor: Rotor };
  readonly totals: {
    readonly mass_kg: number;
    readonly firstMoment_kg_m: readonly [number, number, number];
    readonly secondMoment_kg_m2: SecondMoment;
  };
  /** Visible parts in list order; their numbers add up to the totals. */
  readonly parts: readonly PartResult[];
  readonly curve: readonly CurvePoint[];
  readonly equilibria: readonly EquilibriumResult[];
  readonly warnings: readonly string[];
}

/** Degrees; `stepDeg` > 0 and `fromDeg` <= `toDeg`. */
export interface PitchRange {
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly stepDeg: number;
}

/**
 * Everything that is computed of a design, as plain numbers, by the same model and functions that the page uses. The
 * fault of a design that breaks a rule. Equilibria are those in [fromDeg, toDeg].
 */
export function analyseDesign(
  design: Design,
  range: PitchRange,
): Result<DesignAnalysis, DesignFault> {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) return fail(loaded.error);
  const from = radiansFromDegrees(range.fromDeg);
  const to = radiansFromDegrees(range.toDeg);
  const forces = new HeadForces(model);
  const totals = model.totals(createMoments());
  return succeed({
    design: { name: design.name, rotor: design.rotor },
    totals: {
      mass_kg: totals[M],
      firstMoment_kg_m: [totals[SX], totals[SY], totals[SZ]],
      secondMoment_kg_m2: secondMoment(totals),
    },
    parts: partResults(model),
    curve: curvePoints(forces, pitchGrid(range)),
    equilibria: equilibriumResults(forces.equilibria(from, to)),
    warnings: findWarnings(forces, from, to, materialsOf(design)).map(warningMessage),
  });
}

/** How many pitches a range has. */
export function pitchCount({ fromDeg, toDeg, stepDeg }: PitchRange): number {
  return Math.floor((toDeg - fromDeg) / stepDeg + 1e-9) + 1;
}

/**
 * The pitches of a range, degrees: from + i step, so that rounding does not add up, to the nearest 1e-12 so that a step
 * of 0.1 meets whole numbers.
 */
export function pitchGrid(range: PitchRange): Float64Array {
  const { fromDeg, toDeg, stepDeg } = range;
  if (!(stepDeg > 0) || !(toDeg >= fromDeg)) {
    throw new RangeError(`pitchGrid(): range is not ascending: ${JSON.stringify(range)}`);
  }
  return Float64Array.from({ length: pitchCount(range) }, (_, i) =>
    Number((fromDeg + i * stepDeg).toFixed(12)),
  );
}

function curvePoints(forces: HeadForces, pitchesDeg: Float64Array): CurvePoint[] {
  return Array.from(pitchesDeg, (pitch) => curvePoint(forces, pitch));
}

const TERM_KEYS = {
  rod: 'rodMoment_Nm',
  air: 'airMoment_Nm',
  lag: 'lagMoment_Nm',
} as const satisfies Readonly<Record<TermId, string>>;

function curvePoint(forces: HeadForces, pitchDeg: number): CurvePoint {
  const pitch = radiansFromDegrees(pitchDeg);
  const moment = forces.moment(pitch);
  const slider = forces.sliderForce(pitch);
  const servo = servoHolding(forces, pitch, slider);
  const terms = forces.terms.map((term) => [TERM_KEYS[term.id], finite(term.moment(pitch))]);
  return {
    pitch_deg: pitchDeg,
    inertialMoment_Nm: featheringMoment(forces.model.harmonics, pitch),
    ...Object.fromEntries(terms),
    totalMoment_Nm: finite(moment),
    ...(forces.friction ? { friction_Nm: finite(forces.frictionAt(pitch)) } : {}),
    pushRodForce_N: forces.forceOf(moment, pitch),
    sliderForce_N: slider,
    ...(servoGeometry(forces.model.sections.control)
      ? { servoTorque_Nm: servo.kind === 'holds' ? servo.torque : null }
      : {}),
    sliderTravel_m: finite(forces.travelAt(pitch)),
  };
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

function partResults(model: HeadModel): PartResult[] {
  return model.parts
    .filter(({ part, carriedBy }) => !part.hidden && (carriedBy === 'grip' || carriedBy === 'rod'))
    .map(({ part, moments_G }) => ({
      id: part.id,
      kind: part.kind,
      mass_kg: moments_G[M],
      secondMoment_kg_m2: secondMoment(moments_G),
    }));
}

function equilibriumResults(equilibria: Equilibria): EquilibriumResult[] {
  if (equilibria.kind === 'neutral') return [];
  return equilibria.roots.map(({ pitch, kind, stiffness }) => ({
    pitch_deg: degreesFromRadians(pitch),
    stable: kind === 'stable',
    stiffness_Nm_per_rad: stiffness,
    ...(kind === 'tangent' ? { tangent: true as const } : {}),
  }));
}

function secondMoment(moments: Moments): SecondMoment {
  return {
    xx: moments[JXX],
    yy: moments[JYY],
    zz: moments[JZZ],
    xy: moments[JXY],
    xz: moments[JXZ],
    yz: moments[JYZ],
  };
}
