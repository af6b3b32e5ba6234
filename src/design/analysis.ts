import type { Equilibria } from '../engine/feathering/equilibria';
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
import { fillCurve, headEquilibria } from './curve';
import type { Design, Rotor } from './design';
import type { DesignFault } from './fault';
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
  /** Everything that is modelled: as yet the inertial moment alone. */
  readonly totalMoment_Nm: number;
  /** Tension positive; null without an arm and where it is over centre. */
  readonly pushRodForce_N: number | null;
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
  const totals = model.totals(createMoments());
  return succeed({
    design: { name: design.name, rotor: design.rotor },
    totals: {
      mass_kg: totals[M],
      firstMoment_kg_m: [totals[SX], totals[SY], totals[SZ]],
      secondMoment_kg_m2: secondMoment(totals),
    },
    parts: partResults(model),
    curve: curvePoints(model, pitchGrid(range)),
    equilibria: equilibriumResults(headEquilibria(model, from, to)),
    warnings: findWarnings(model, from, to, materialsOf(design)).map(warningMessage),
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

function curvePoints(model: HeadModel, pitchesDeg: Float64Array): CurvePoint[] {
  const moment = new Float64Array(pitchesDeg.length);
  const force = new Float64Array(pitchesDeg.length);
  fillCurve(model, pitchesDeg.map(radiansFromDegrees), moment, force);
  return Array.from(pitchesDeg, (pitch, i) => ({
    pitch_deg: pitch,
    inertialMoment_Nm: moment[i],
    totalMoment_Nm: moment[i],
    pushRodForce_N: Number.isNaN(force[i]) ? null : force[i],
  }));
}

function partResults(model: HeadModel): PartResult[] {
  return model.parts
    .filter(({ part }) => !part.hidden)
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
