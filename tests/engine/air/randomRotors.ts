import type { BladeGeometry, HoverConditions } from '../../../src/engine/air/hover';
import type { Seeded } from '../../support/seeded';
import { conditionsAt, DEGREE, plainBlade } from './rotors';

export const ELEMENTS = 12;

export function randomBlade(random: Seeded): BladeGeometry {
  const tip = random.between(0.03, 1.5);
  const root = tip * random.pick([0, 0.1, 0.19, random.between(0, 0.6)]);
  const chord = tip * random.between(0.02, 0.4);
  const blade = plainBlade(root, tip, chord, ELEMENTS, {
    y: random.between(-0.5, 0.5) * chord,
    z: random.between(-0.2, 0.2) * chord,
  });
  const taper = random.between(0, 0.8);
  const twist = random.between(-20, 20) * DEGREE;
  for (let i = 0; i < ELEMENTS; i++) {
    blade.chords[i] *= 1 - (taper * blade.stations[i]) / tip;
    blade.twist[i] = twist * (1 - blade.stations[i] / tip);
  }
  return blade;
}

export function randomConditions(random: Seeded): HoverConditions {
  return {
    ...conditionsAt(random.between(100, 20000), random.whole(1, 8)),
    tipLoss: random.unit() < 0.7,
    rootLoss: random.unit() < 0.5,
  };
}
