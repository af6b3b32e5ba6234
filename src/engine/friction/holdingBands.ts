import { bracketedRoot } from '../math/rootBracket';
import { type Radians, radians } from '../units';

type Curve = (pitch: number) => number;

/**
 * Pitch intervals in [from, to] where friction holds the grip: |moment| <= friction. Ends by Brent's method. An interval
 * narrower than `step` is found where it holds one of the `equilibria` given (each does, where there is friction);
 * another that narrow, about a dip of |moment| that does not reach zero, may be missed. Where moment or friction is NaN
 * there is no band.
 */
export function holdingBands(
  moment: Curve,
  friction: Curve,
  from: Radians,
  to: Radians,
  step: number,
  equilibria: readonly number[],
): readonly (readonly [Radians, Radians])[] {
  const slack = (pitch: number) => friction(pitch) - Math.abs(moment(pitch));
  const count = Math.max(1, Math.ceil((to - from) / step));
  const knots = Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
  const inside = equilibria.filter((pitch) => pitch > from && pitch < to);
  const marks = [...knots, ...inside].toSorted((a, b) => a - b);
  const bands: [Radians, Radians][] = [];
  let open: number | null = null;
  let before = Number.NaN;
  for (let i = 0; i < marks.length; i++) {
    const value = slack(marks[i]);
    if (value >= 0) {
      // A gap just before ends nothing that could be bracketed: the band begins where numbers do.
      open ??= before < 0 ? edge(slack, marks[i - 1], marks[i]) : marks[i];
    } else if (open !== null) {
      const end = value < 0 ? edge(slack, marks[i - 1], marks[i]) : marks[i - 1];
      if (end > open) bands.push([radians(open), radians(end)]);
      open = null;
    }
    before = value;
  }
  if (open !== null && to > open) bands.push([radians(open), to]);
  return bands;
}

function edge(slack: Curve, low: number, high: number): number {
  return bracketedRoot(slack, low, high)?.root ?? low;
}
