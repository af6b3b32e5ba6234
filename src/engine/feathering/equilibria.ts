import { bracketedRoot } from '../math/rootBracket';
import { type Radians, radians } from '../units';
import {
  COS1,
  COS2,
  featheringBound,
  featheringMoment,
  featheringSlope,
  type Harmonics,
  SIN1,
  SIN2,
} from './harmonics';

/** A smooth moment curve with bounds on its first two derivatives, as the certified search needs them. */
export interface MomentCurve {
  readonly value: (pitch: number) => number;
  readonly slope: (pitch: number) => number;
  /** max |dM/dt| and max |d2M/dt2| over the range, or anything larger. */
  readonly slopeBound: number;
  readonly curvatureBound: number;
  /** A size of moment that counts as one: residuals are judged against it. */
  readonly scale: number;
}

export type EquilibriumKind =
  /** Rest angle: the moment drives the grip back from both sides. */
  | 'stable'
  /** Flee angle: the moment drives it away on both sides. */
  | 'unstable'
  /** The curve touches zero without crossing (or crosses with zero slope): neither rest nor flee. */
  | 'tangent';

export interface Equilibrium {
  readonly pitch: Radians;
  readonly kind: EquilibriumKind;
  /** -dM/dt, N m/rad: positive where it drives back. */
  readonly stiffness: number;
}

/** Equilibria of a range, ascending; or, where the moment vanishes at every pitch, the fact that it is neutral. */
export type Equilibria =
  | { readonly kind: 'neutral' }
  | { readonly kind: 'found'; readonly roots: readonly Equilibrium[] };

/** Roots nearer to each other than this, and touches shallower than its square, are one tangent root. */
const RESOLUTION = 1e-7;

/**
 * Every zero of the curve in the closed range [from, to], none missed, none twice.
 *
 * Intervals are halved until each is settled: no root, where |M| at the middle exceeds half-width x slopeBound; or
 * monotone, where |dM/dt| at the middle exceeds half-width x curvatureBound, and then at most one root, found by
 * Brent's method. What stays unsettled at the resolution (1e-7 rad) is a tangent root: the curve touches zero
 * there to within scale x 1e-14, or two simple roots lie closer than the resolution. A range of a full turn or more
 * is half open, so the same orientation is not counted twice at its two ends.
 */
export function findEquilibria(curve: MomentCurve, from: Radians, to: Radians): readonly Equilibrium[] {
  const found: Equilibrium[] = [];
  const tangents: number[] = [];
  const stack: number[] = [];
  // A root that rounding has pushed just outside an end still belongs to the range.
  const margin = 1e-12;
  const pieces = 8;
  const low = from - margin;
  const high = to + margin;
  for (let i = pieces - 1; i >= 0; i--) {
    stack.push(low + ((high - low) * i) / pieces, low + ((high - low) * (i + 1)) / pieces);
  }
  while (stack.length > 0) {
    const b = stack.pop() as number;
    const a = stack.pop() as number;
    const middle = (a + b) / 2;
    const half = (b - a) / 2;
    const value = curve.value(middle);
    const rounding = 1e-15 * curve.scale;
    if (Math.abs(value) > half * curve.slopeBound + rounding) continue;
    if (Math.abs(curve.slope(middle)) > half * curve.curvatureBound) {
      const root = bracketedRoot(curve.value, a, b);
      if (root !== null) found.push(settle(curve, root.root, from, to));
      continue;
    }
    if (half < RESOLUTION / 4) {
      tangents.push(middle);
      continue;
    }
    stack.push(middle, b, a, middle);
  }
  addTangents(curve, tangents, found, from, to);
  found.sort((p, q) => p.pitch - q.pitch);
  const single = found.filter(
    (root, i) => i === 0 || root.pitch - found[i - 1].pitch > RESOLUTION / 100,
  );
  const turn = 2 * Math.PI;
  const first = single[0];
  return to - from >= turn - margin && first
    ? single.filter((root) => root.pitch < first.pitch + turn - RESOLUTION)
    : single;
}

function settle(curve: MomentCurve, root: number, from: number, to: number): Equilibrium {
  const pitch = radians(Math.min(to, Math.max(from, root)));
  const slope = curve.slope(root);
  return { pitch, kind: slope < 0 ? 'stable' : 'unstable', stiffness: -slope };
}

/** Neighbouring unsettled cells are one touch; it counts when the curve really reaches zero there. */
function addTangents(
  curve: MomentCurve,
  cells: readonly number[],
  found: Equilibrium[],
  from: number,
  to: number,
): void {
  const sorted = [...cells].sort((a, b) => a - b);
  for (let i = 0; i < sorted.length; ) {
    let j = i;
    while (j + 1 < sorted.length && sorted[j + 1] - sorted[j] < RESOLUTION) j++;
    const middle = (sorted[i] + sorted[j]) / 2;
    const reach = curve.curvatureBound * RESOLUTION * RESOLUTION;
    if (Math.abs(curve.value(middle)) <= reach + 1e-14 * curve.scale) {
      const pitch = radians(Math.min(to, Math.max(from, middle)));
      found.push({ pitch, kind: 'tangent', stiffness: -curve.slope(middle) });
    }
    i = j + 1;
  }
}

/**
 * Equilibria of the inertial moment. `scale` is the moment that the grip's largest part would make on its own
 * (N m): a total below 1e-12 of it is rounding, and the head is neutral at every pitch.
 */
export function inertialEquilibria(
  harmonics: Harmonics,
  from: Radians,
  to: Radians,
  scale: number,
): Equilibria {
  const bound = featheringBound(harmonics);
  if (!(bound > 1e-12 * scale) || bound === 0) return { kind: 'neutral' };
  const first = Math.hypot(harmonics[SIN1], harmonics[COS1]);
  const second = Math.hypot(harmonics[SIN2], harmonics[COS2]);
  return {
    kind: 'found',
    roots: findEquilibria(
      {
        value: (pitch) => featheringMoment(harmonics, radians(pitch)),
        slope: (pitch) => featheringSlope(harmonics, radians(pitch)),
        slopeBound: first + 2 * second,
        curvatureBound: first + 4 * second,
        scale: bound,
      },
      from,
      to,
    ),
  };
}
