import type { BenchSetup } from '../engine/identify/benchDesign';
import { benchFit } from '../engine/identify/benchFit';
import type { BenchFit } from '../engine/identify/benchFitTypes';
import type { BenchReading, Gauge } from '../engine/identify/benchReading';
import { chiSquareAbove } from '../engine/identify/distributions';
import { distinctPitches, SAME_PITCH } from '../engine/identify/reduce';
import { degreesFromRadians } from '../engine/units';
import { type Excess, excessBeyond } from './excess';

/** How the excess goes with speed, at pitches that were read at two speeds. */
export type SpeedScaling =
  | { readonly kind: 'oneSpeed' }
  /** Chance of as much scatter if it goes with the square, and if it is the same moment at every speed. */
  | { readonly kind: 'tested'; readonly squarePValue: number; readonly constantPValue: number };

export type ReturningForce =
  /** Too few readings about flat pitch, or they do not determine J_yy - J_zz and J_yz. */
  | { readonly kind: 'tooFew' }
  /** Even about flat pitch mass and friction do not explain the readings: drag, noise or calibration are not as told. */
  | { readonly kind: 'unexplained'; readonly innerDeg: number }
  /** Mass and friction explain every pitch: nothing returns, whatever J_yy - J_zz and J_yz came out as. */
  | { readonly kind: 'none'; readonly upToDeg: number }
  | {
      readonly kind: 'returns';
      /** Mass alone explains the readings as far as this, either way. */
      readonly innerDeg: number;
      /** First pitch read from which the excess is beyond doubt and stays on its side, on either side; null: not there. */
      readonly fromDeg: { readonly low: number | null; readonly high: number | null };
      /** It drives the pitch back toward flat on every side on which it is. */
      readonly restoring: boolean;
      readonly excess: readonly Excess[];
      readonly scaling: SpeedScaling;
      readonly looks: 'aerodynamic' | 'notWithSpeedSquared' | 'cannotTell';
    };

/** A fit this unlikely does not explain its readings. */
const UNLIKELY = 0.01;
/** Standard uncertainties beyond which an excess is one. */
const BEYOND_DOUBT = 3;
/** A scaling is told from the other by these. */
const SCALING_DOUBT = 0.05;

/**
 * Whether force comes back past some pitch, and what it looks like. The shape of mass (sin 2t and cos 2t with friction and
 * zeros) is fitted to the readings within the widest pitch either way at which it explains them; what the readings beyond
 * have more is the excess. A wrong J_yy - J_zz or J_yz is fitted away and leaves none. It *looks* aerodynamic only where the
 * shape is not that of mass (that is what an excess is) and it goes with the square of the speed, and a moment that is the
 * same at every speed (a spring, a stop, friction) is ruled out: with one speed nobody can tell. Within the inner range a
 * part of the air goes with mass's shape and is taken for it.
 *
 * `readings` must have the modelled air left in them (`AirUse` 'left'). A gauge whose noise is not known is judged by the
 * scatter about mass with three more harmonics.
 */
export function returningForce(
  readings: readonly BenchReading[],
  gauge: Gauge,
  setup: BenchSetup,
  pitchSigma = 0,
): ReturningForce {
  const noise = gauge.noise ?? freeNoise(readings, gauge, setup);
  const known = { ...gauge, noise, pitchSigma };
  const sizes = distinctPitches(readings.map(({ pitch }) => Math.abs(pitch)));
  let unexplained: number | null = null;
  for (const limit of sizes.toReversed()) {
    const inside = readings.filter(({ pitch }) => Math.abs(pitch) <= limit + SAME_PITCH);
    const fitted = benchFit({ readings: inside, gauge: known, pitchSigma }, setup);
    if (!fitted.ok || !isWhole(fitted.value)) break;
    const innerDeg = degreesFromRadians(limit as BenchReading['pitch']);
    if (!((fitted.value.pValue ?? 1) >= UNLIKELY)) {
      unexplained = innerDeg;
      continue;
    }
    if (limit === sizes[sizes.length - 1]) return { kind: 'none', upToDeg: innerDeg };
    const excess = excessBeyond(readings, limit, known, setup, fitted.value);
    return excess === null ? { kind: 'tooFew' } : describe(excess, innerDeg, sizes);
  }
  return unexplained === null ? { kind: 'tooFew' } : { kind: 'unexplained', innerDeg: unexplained };
}

/** Mass determined, and enough left over to judge by. */
function isWhole(fit: BenchFit): boolean {
  const mass = fit.estimates.filter(({ key }) => key.kind === 'spread' || key.kind === 'product');
  return fit.freedom >= 4 && mass.every(({ determined }) => determined);
}

/** Noise by a fit with sin 4t, cos 4t and sin 6t beside mass: what no smooth curve explains. */
function freeNoise(readings: readonly BenchReading[], gauge: Gauge, setup: BenchSetup): number {
  const free = readings.map((reading) => {
    const { forcePerMoment, angularSpeed, pitch, extras = [] } = reading;
    const size = forcePerMoment * angularSpeed ** 2 * 1e-9;
    const more = [Math.sin(4 * pitch), Math.cos(4 * pitch), Math.sin(6 * pitch)];
    return { ...reading, extras: [...extras, ...more.map((one) => size * one)] };
  });
  const extras = [...setup.extras, 'sin 4t', 'cos 4t', 'sin 6t'];
  const fitted = benchFit({ readings: free, gauge }, { ...setup, extras });
  return fitted.ok ? fitted.value.noise : 0;
}

function describe(
  excess: readonly Excess[],
  innerDeg: number,
  sizes: readonly number[],
): ReturningForce {
  const high = sideOf(excess, 1);
  const low = sideOf(excess, -1);
  const found = [...low.beyond, ...high.beyond];
  const furthest = degreesFromRadians(sizes[sizes.length - 1] as BenchReading['pitch']);
  if (found.length === 0) return { kind: 'none', upToDeg: furthest };
  const scaling = scalingOf(found);
  return {
    kind: 'returns',
    innerDeg,
    fromDeg: { low: low.from, high: high.from },
    restoring: found.every(({ pitchDeg, perSpeedSquared }) => pitchDeg * perSpeedSquared < 0),
    excess,
    scaling,
    looks: looksLike(scaling),
  };
}

/** The outermost stretch of one side in which every excess is beyond doubt and of one sign. */
function sideOf(excess: readonly Excess[], side: 1 | -1) {
  const outward = excess
    .filter(({ pitchDeg }) => Math.sign(pitchDeg) === side)
    .toSorted((a, b) => Math.abs(b.pitchDeg) - Math.abs(a.pitchDeg));
  const sign = Math.sign(outward[0]?.perSpeedSquared ?? 0);
  const beyond: Excess[] = [];
  const pitches = [...new Set(outward.map(({ pitchDeg }) => pitchDeg))];
  for (const pitchDeg of pitches) {
    const here = outward.filter((one) => one.pitchDeg === pitchDeg);
    // The speeds together: a weighted mean with its own uncertainty.
    const weight = here.reduce((sum, { sigma }) => sum + sigma ** -2, 0);
    const mean = here.reduce((sum, one) => sum + one.perSpeedSquared / one.sigma ** 2, 0) / weight;
    if (!(sign * mean * Math.sqrt(weight) > BEYOND_DOUBT)) break;
    beyond.push(...here);
  }
  return { beyond, from: beyond.at(-1)?.pitchDeg ?? null };
}

function scalingOf(found: readonly Excess[]): SpeedScaling {
  const speeds = new Set(found.map(({ angularSpeed }) => angularSpeed));
  if (speeds.size < 2) return { kind: 'oneSpeed' };
  return { kind: 'tested', squarePValue: scatter(found, 0), constantPValue: scatter(found, 2) };
}

/** Chance of as much scatter over speeds at each pitch, the excess times speed^power being the same. */
function scatter(found: readonly Excess[], power: number): number {
  let chiSquare = 0;
  let freedom = 0;
  for (const pitchDeg of new Set(found.map((one) => one.pitchDeg))) {
    const here = found
      .filter((one) => one.pitchDeg === pitchDeg)
      .map(({ perSpeedSquared, sigma, angularSpeed }) => {
        const by = angularSpeed ** power;
        return { value: perSpeedSquared * by, sigma: sigma * by };
      });
    const weight = here.reduce((sum, { sigma }) => sum + sigma ** -2, 0);
    const mean = here.reduce((sum, { value, sigma }) => sum + value / sigma ** 2, 0) / weight;
    for (const { value, sigma } of here) chiSquare += ((value - mean) / sigma) ** 2;
    freedom += here.length - 1;
  }
  return freedom > 0 ? chiSquareAbove(chiSquare, freedom) : Number.NaN;
}

function looksLike(
  scaling: SpeedScaling,
): Extract<ReturningForce, { readonly kind: 'returns' }>['looks'] {
  if (scaling.kind === 'oneSpeed') return 'cannotTell';
  const { squarePValue, constantPValue } = scaling;
  if (squarePValue < SCALING_DOUBT) return 'notWithSpeedSquared';
  return constantPValue < SCALING_DOUBT ? 'aerodynamic' : 'cannotTell';
}
