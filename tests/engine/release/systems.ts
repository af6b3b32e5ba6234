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
import type { Seeded } from '../../support/seeded';

/** 10,200 rpm, the demo head's speed. */
export const SPEED = (10_200 * Math.PI) / 30;

/** A spring of 2 N m/rad about zero with an inertia of 0.5 kg m^2: w = 2 rad/s. */
export const SPRING: ReleaseSystem = {
  moment: (pitch) => -2 * pitch,
  energy: (pitch) => pitch * pitch,
  friction: () => 0,
  inertia: constantInertia(0.5),
  damping: 0,
  low: radians(-1),
  high: radians(1),
  restitution: 0.5,
};

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

/** A random grip with friction that depends on pitch, sometimes damped, sometimes with stops, sometimes pushed. */
export function randomSystem(random: Seeded): ReleaseSystem {
  const size = 10 ** random.between(-2, 1);
  const h = Float64Array.from({ length: 4 }, () => size * random.between(-1, 1));
  const inertia = 10 ** random.between(-6, -4);
  const level = size * random.between(0.01, 0.8);
  const wave = random.between(0, 0.9);
  const place = random.between(0, 6);
  const natural = Math.sqrt(size / inertia);
  return {
    ...harmonicGrip(h, inertia),
    friction: (pitch) => level * (1 + wave * Math.sin(3 * pitch + place)),
    damping: random.pick([0, 0, 0.02, 0.3]) * inertia * natural,
    ...random.pick([{}, { low: radians(-0.7), high: radians(0.7) }]),
    restitution: random.pick([0, 0.3, 0.8]),
  };
}
