import type { HeadForces } from '../design/forces/headForces';
import { servoGeometry } from '../design/forces/servo';
import type { Vec3 } from '../engine/math/vector';
import { degreesFromRadians, type Radians, radians, radiansFromDegrees } from '../engine/units';
import type { LinkageReading } from './reading';

/** The linkage as it stands, for one revision of the model; null without an arm. */
export function createLinkageReading(
  forces: HeadForces,
  from: Radians,
  to: Radians,
): LinkageReading | null {
  const found = forces.linkage;
  const travel = forces.travel(from, to);
  if (!found || !travel) return null;
  const { linkage, rod } = found;
  const { model } = forces;
  const { ball_G } = linkage;
  const stateAt = (pitchDeg: number) => {
    const state = forces.linkAt(radiansFromDegrees(pitchDeg));
    return state?.reachable ? state : null;
  };
  return {
    ball_G,
    reach: Math.hypot(ball_G[1], ball_G[2]),
    rodPart: rod?.part.id ?? null,
    overCentreDeg: travel.overCentre.map(degreesFromRadians),
    unreachableDeg: gapsBetween(travel.reachable, from, to),
    hasServo: servoGeometry(model.sections.control) !== null,
    ends: travel.ends,
    travelAt: (pitchDeg) => forces.travelAt(radiansFromDegrees(pitchDeg)),
    ratioAt: (pitchDeg) => stateAt(pitchDeg)?.ratio ?? Number.NaN,
    sliderBallAt(pitchDeg) {
      const state = stateAt(pitchDeg);
      if (!state) return null;
      const [x, y] = state.ball;
      // A rod that stays parallel to the shaft has its slider straight under the ball.
      return linkage.length === null
        ? [x, y, state.sliderZ]
        : [linkage.sliderX, linkage.sliderY, state.sliderZ];
    },
    rodAxisAt(pitchDeg) {
      const state = stateAt(pitchDeg);
      return state && (Array.from(state.axis) as unknown as Vec3);
    },
  };
}

/** What of [from, to] the ascending intervals leave free, degrees. */
function gapsBetween(
  intervals: readonly (readonly [number, number])[],
  from: number,
  to: number,
): (readonly [number, number])[] {
  const gaps: (readonly [number, number])[] = [];
  let at = from;
  for (const [low, high] of intervals) {
    if (low > at) gaps.push([at, low]);
    at = high;
  }
  if (to > at) gaps.push([at, to]);
  return gaps.map(([a, b]) => [degreesFromRadians(radians(a)), degreesFromRadians(radians(b))]);
}
