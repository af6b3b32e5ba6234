import { bracketedRoot } from '../math/rootBracket';
import { requireFinite } from '../result';
import { type Radians, radians } from '../units';
import { MARGIN, RESOLUTION, settleFlat } from './flatRoots';
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
  /** The curve touches zero without crossing, to within rounding: neither rest nor flee. */
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

/**
 * Every zero of the curve in the closed range [from, to], none missed, none twice, ascending.
 *
 * Intervals are halved until each is settled: no root, where |M| at the middle exceeds half-width x slopeBound; or
 * monotone, where |dM/dt| at the middle exceeds half-width x curvatureBound, and then at most one root, found by
 * Brent's method. What stays unsettled at the resolution (1e-7 rad) lies about an extremum or a flat crossing close
 * to zero, and is read off the signs of M at the cells' edges (see `settleFlat`): a change of sign is a rest
 * or a flee angle however small the slope; a touch without one is 'tangent'. Two roots that enclose a bulge lower than
 * about 5e-15 x scale cannot be told from a touch, and are one: they lie within 1e-7 rad unless the curvature is tiny.
 *
 * A root up to 1e-12 outside the range is put on its end, a tangent one up to the resolution. A range of no width is
 * a question about one angle. A range of a full turn or more is half open: the same orientation, to the resolution, is not
 * counted twice.
 * Throws for a reversed range and for bounds or scale that are not positive and finite (a curve that is zero
 * throughout has no roots to list: see `inertialEquilibria`).
 */
export function findEquilibria(
  curve: MomentCurve,
  from: Radians,
  to: Radians,
): readonly Equilibrium[] {
  if (!(from <= to && Number.isFinite(to - from))) {
    throw new RangeError(`findEquilibria(): range is reversed or not finite: ${from}, ${to}`);
  }
  for (const size of [curve.slopeBound, curve.curvatureBound, curve.scale]) {
    if (!(size > 0 && size < Infinity)) {
      throw new RangeError(`findEquilibria(): bound or scale is not positive and finite: ${size}`);
    }
  }
  const simple: number[] = [];
  const flat: number[] = [];
  const stack: number[] = [];
  const pieces = 8;
  const low = from - MARGIN;
  const high = to + MARGIN;
  for (let i = pieces - 1; i >= 0; i--) {
    stack.push(low + ((high - low) * i) / pieces, low + ((high - low) * (i + 1)) / pieces);
  }
  while (stack.length > 0) {
    const b = stack.pop() as number;
    const a = stack.pop() as number;
    const middle = (a + b) / 2;
    const half = (b - a) / 2;
    const rounding = 1e-15 * curve.scale;
    if (Math.abs(curve.value(middle)) > half * curve.slopeBound + rounding) continue;
    if (Math.abs(curve.slope(middle)) > half * curve.curvatureBound) {
      const root = bracketedRoot(curve.value, a, b);
      if (root !== null) simple.push(root.root);
    } else if (half < RESOLUTION / 4) {
      flat.push(a, b);
    } else {
      stack.push(middle, b, a, middle);
    }
  }
  const settled = settleFlat(curve, flat);
  const found: Equilibrium[] = [];
  for (const { pitch, kind, reach } of settled) {
    if (pitch >= from - reach && pitch <= to + reach)
      found.push(equilibrium(curve, pitch, kind, from, to));
  }
  for (const root of simple) {
    if (settled.some(({ low: l, high: h }) => root >= l && root <= h)) continue;
    found.push(equilibrium(curve, root, curve.slope(root) < 0 ? 'stable' : 'unstable', from, to));
  }
  found.sort((p, q) => p.pitch - q.pitch);
  // A root on the edge that two cells share was found in both.
  const single = found.filter(
    (root, i) => i === 0 || root.pitch - found[i - 1].pitch > RESOLUTION / 100,
  );
  const turn = 2 * Math.PI;
  return single.filter((root) => root.pitch < single[0].pitch + turn - RESOLUTION);
}

function equilibrium(
  curve: MomentCurve,
  root: number,
  kind: EquilibriumKind,
  from: number,
  to: number,
): Equilibrium {
  const pitch = radians(Math.min(to, Math.max(from, root)));
  return { pitch, kind, stiffness: -curve.slope(root) };
}

/**
 * Equilibria of the inertial moment. `scale` is the moment that the grip's largest part would make on its own
 * (N m): a total below 1e-12 of it is rounding, and the head is neutral at every pitch. Throws for harmonics that are
 * not finite.
 */
export function inertialEquilibria(
  harmonics: Harmonics,
  from: Radians,
  to: Radians,
  scale: number,
): Equilibria {
  const bound = requireFinite(
    featheringBound(harmonics),
    'inertialEquilibria(): bound of the moment',
  );
  if (!(bound > 1e-12 * scale)) return { kind: 'neutral' };
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
