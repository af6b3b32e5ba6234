import {
  createHarmonics,
  featheringEnergy,
  featheringMoment,
  type Harmonics,
} from '../../../src/engine/feathering/harmonics';
import { createRelease, type Release } from '../../../src/engine/release/release';
import {
  constantInertia,
  type ReleaseStart,
  type ReleaseSystem,
} from '../../../src/engine/release/releaseSystem';
import { radians } from '../../../src/engine/units';

/** 10,200 rpm, the demo head's speed. */
export const SPEED = (10_200 * Math.PI) / 30;

/** A grip of which only the moments J_yy, J_zz, J_yz are told (kg m^2), without offset and precone, at `SPEED`. */
export function gripOf(Jyy: number, Jzz: number, Jyz = 0): ReleaseSystem {
  return harmonicGrip(
    Float64Array.of(0, 0, (-(SPEED ** 2) * (Jyy - Jzz)) / 2, -(SPEED ** 2) * Jyz),
    Jyy + Jzz,
  );
}

export function harmonicGrip(harmonics: Harmonics, inertia: number): ReleaseSystem {
  const h = createHarmonics();
  h.set(harmonics);
  return {
    moment: (pitch) => featheringMoment(h, pitch),
    energy: (pitch) => featheringEnergy(h, pitch),
    friction: () => 0,
    inertia: constantInertia(inertia),
    damping: 0,
    low: radians(-Infinity),
    high: radians(Infinity),
    restitution: 0,
  };
}

export function letGo(
  system: ReleaseSystem,
  pitch: number,
  more: Partial<ReleaseStart> = {},
): Release {
  const made = createRelease(system, { pitch: radians(pitch), rate: 0, ...more });
  if (!made.ok) throw new Error(`not let go: ${JSON.stringify(made.error)}`);
  return made.value;
}

/** Times of the standstills of a release within `duration`. */
export function standstills(release: Release, duration: number): readonly number[] {
  const times: number[] = [];
  let turns = release.turns;
  release.advance(duration, ({ turns: now, time }) => {
    if (now > turns) times.push(time);
    turns = now;
  });
  return times;
}
