import { bracketedRoot } from '../math/rootBracket';
import { type Radians, radians } from '../units';

type Curve = (pitch: number) => number;

/** Pitches at which bands are looked for: [from, to] in steps of at most `step`, ascending. */
export function bandKnots(from: Radians, to: Radians, step: number): Float64Array {
  const count = Math.max(1, Math.ceil((to - from) / step));
  return Float64Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
}

/**
 * Pitch intervals in [from, to] where friction holds the grip: |moment| <= friction. Ends by Brent's method. An interval
 * narrower than `step` is found where it holds one of the `equilibria` given (each does, where there is friction);
 * another that narrow, about a dip of |moment| that does not reach zero, may be missed. Where moment or friction is NaN
 * there is no band. `atKnots`: both at `bandKnots`, where the caller has them at hand.
 */
export function holdingBands(
  moment: Curve,
  friction: Curve,
  from: Radians,
  to: Radians,
  step: number,
  equilibria: readonly number[],
  atKnots?: {
    readonly knots: Float64Array;
    readonly moments: Float64Array;
    readonly frictions: Float64Array;
  },
): readonly (readonly [Radians, Radians])[] {
  const slack = (pitch: number) => friction(pitch) - Math.abs(moment(pitch));
  const slackAt = (k: number) =>
    atKnots ? atKnots.frictions[k] - Math.abs(atKnots.moments[k]) : slack(knots[k]);
  const knots = atKnots?.knots ?? bandKnots(from, to, step);
  const inside = equilibria.filter((pitch) => pitch > from).toSorted((a, b) => a - b);
  const bands: [Radians, Radians][] = [];
  let open = null as number | null;
  // Where it was looked last, and the slack there; numbers in an array, for a closure's own are made anew at every step.
  const was = Float64Array.of(from, Number.NaN);

  function look(mark: number, value: number): void {
    if (value >= 0) {
      // A gap just before ends nothing that could be bracketed: the band begins where numbers do.
      open ??= was[1] < 0 ? edge(slack, was[0], mark) : mark;
    } else if (open !== null) {
      const end = value < 0 ? edge(slack, was[0], mark) : was[0];
      if (end > open) bands.push([radians(open), radians(end)]);
      open = null;
    }
    was[0] = mark;
    was[1] = value;
  }

  let next = 0;
  for (let k = 0; k < knots.length; k++) {
    for (; next < inside.length && inside[next] < knots[k]; next++) {
      look(inside[next], slack(inside[next]));
    }
    look(knots[k], slackAt(k));
  }
  if (open !== null && to > open) bands.push([radians(open), to]);
  return bands;
}

function edge(slack: Curve, low: number, high: number): number {
  return bracketedRoot(slack, low, high)?.root ?? low;
}
