import { findEquilibria } from '../feathering/equilibria';
import type { RotorConditions } from '../feathering/rotor';
import { type Radians, radians } from '../units';
import { createLinkState, type Linkage, linkState } from './linkage';
import { type TrigPolynomial, trigPolynomialOf, trigSlope, trigValue } from './trigPolynomial';

const state = createLinkState();

/** L^2 less the square of the rod's reach across the shaft, m^2: the rod reaches where it is positive. Degree 2 in t. */
function slack(linkage: Linkage, rotor: RotorConditions, pitch: number): number {
  const { ball } = linkState(linkage, rotor, radians(pitch), state);
  const dx = linkage.sliderX - ball[0];
  const dy = linkage.sliderY - ball[1];
  return (linkage.length as number) ** 2 - dx * dx - dy * dy;
}

/**
 * Pitch intervals in [from, to] that the rod reaches, ascending. Ends inside the range are where the rod lies square to
 * the shaft.
 */
export function reachableIntervals(
  linkage: Linkage,
  rotor: RotorConditions,
  from: Radians,
  to: Radians,
): readonly (readonly [Radians, Radians])[] {
  if (linkage.length === null) return [[from, to]];
  const free = (pitch: number) => slack(linkage, rotor, pitch);
  const edges = zerosOf(trigPolynomialOf(free, 2), from, to);
  const marks = [from, ...edges, to];
  const found: [Radians, Radians][] = [];
  for (let i = 1; i < marks.length; i++) {
    const [low, high] = [marks[i - 1], marks[i]];
    if (!(free((low + high) / 2) > 0)) continue;
    const last = found.at(-1);
    // A touch of the edge does not part two intervals.
    if (last && last[1] === low) last[1] = high;
    else found.push([low, high]);
  }
  return found;
}

/**
 * Pitch angles in the closed range [from, to] where the arm goes over centre: the rod has no lever, dZs/dt = 0. Ascending,
 * none twice; a range of a full turn is half open, as for equilibria. Empty for a ball on the feathering axis, which has
 * no lever anywhere.
 *
 * With A = dX X' + dY Y' (d from slider to ball) the lever vanishes where side q B_z' = A, q the root of `slack`. Its
 * square, A^2 - q^2 B_z'^2 = 0, is a trigonometric polynomial of degree 4, whose zeros are all found by the certified
 * search; those that belong to the other assembly are dropped. The lever there is below 1e-12 of the arm (1.2e-13 at most in
 * 5,000 seeded linkages), but near the end of reach, where two zeros meet and half the digits go (2e-7 seen).
 */
export function overCentreAngles(
  linkage: Linkage,
  rotor: RotorConditions,
  from: Radians,
  to: Radians,
): readonly Radians[] {
  const [, y, z] = linkage.ball_G;
  if (linkage.length === null) {
    const reach = trigPolynomialOf((t) => y * Math.cos(t) - z * Math.sin(t), 1);
    return zerosOf(reach, from, to);
  }
  const [s, c] = [Math.sin(rotor.precone), Math.cos(rotor.precone)];
  const parts = (pitch: number) => {
    const { ball } = linkState(linkage, rotor, radians(pitch), state);
    const h = y * Math.cos(pitch) - z * Math.sin(pitch);
    const k = y * Math.sin(pitch) + z * Math.cos(pitch);
    const across = -(ball[0] - linkage.sliderX) * h * s - (ball[1] - linkage.sliderY) * k;
    return { across, up: h * c };
  };
  const squared = (pitch: number) => {
    const { across, up } = parts(pitch);
    return across * across - slack(linkage, rotor, pitch) * up * up;
  };
  return zerosOf(trigPolynomialOf(squared, 4), from, to).filter((pitch) => {
    const free = slack(linkage, rotor, pitch);
    const { across, up } = parts(pitch);
    // Same sign on both sides, or both nothing; and the rod must reach.
    return free > 0 && across * up * linkage.side >= -1e-9 * (across * across + up * up * free);
  });
}

/** Zeros of a trigonometric polynomial in [from, to], ascending; none where it is constant. */
function zerosOf(polynomial: TrigPolynomial, from: Radians, to: Radians): Radians[] {
  const { slopeBound, curvatureBound, scale } = polynomial;
  if (!(slopeBound > 1e-14 * scale)) return [];
  return findEquilibria(
    {
      value: (pitch) => trigValue(polynomial, pitch),
      slope: (pitch) => trigSlope(polynomial, pitch),
      slopeBound,
      curvatureBound,
      scale,
    },
    from,
    to,
  ).map(({ pitch }) => pitch);
}
