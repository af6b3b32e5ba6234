import type { RotorConditions } from '../../src/engine/feathering/rotor';
import type { Linkage } from '../../src/engine/linkage/linkage';
import { radians } from '../../src/engine/units';
import type { Seeded } from './seeded';

/** An even rod with thickness: a cylinder of this radius between the two balls. */
export function cylinderRod(mass: number, length: number, radius: number) {
  return {
    mass,
    first: (mass * length) / 2,
    second: (mass * length * length) / 3,
    transverse: (mass * radius * radius) / 4,
  };
}

export function randomRotor(random: Seeded): RotorConditions {
  return {
    angularSpeed: random.between(100, 1500),
    torqueOffset: random.between(-0.01, 0.01),
    precone: radians(random.between(-0.2, 0.2)),
  };
}

/** A rod that reaches at flat pitch, arm leading or trailing, slider above or below, anywhere within the rod's length. */
export function randomLinkage(random: Seeded, rotor: RotorConditions): Linkage {
  const x = random.between(0.01, 0.05);
  const y = random.pick([-1, 1]) * random.between(0.005, 0.03);
  const z = random.between(-0.015, 0.015);
  const length = random.between(0.01, 0.06);
  const lean = random.between(0, 0.95) * length;
  const way = random.between(-Math.PI, Math.PI);
  const c = Math.cos(rotor.precone);
  const s = Math.sin(rotor.precone);
  return {
    ball_G: [x, y, z],
    side: random.pick([-1, 1]),
    length,
    sliderX: x * c - z * s + lean * Math.cos(way),
    sliderY: rotor.torqueOffset + y + lean * Math.sin(way),
    rod: cylinderRod(random.between(0.0002, 0.004), length, random.between(0.0005, 0.002)),
  };
}
