import { describe, expect, test } from 'vitest';
import { inertialEquilibria } from '../../../src/engine/feathering/equilibria';
import { featheringEnergy } from '../../../src/engine/feathering/harmonics';
import {
  landscape,
  rateAtEnergy,
  reachWithoutFriction,
} from '../../../src/engine/release/potential';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { gripOf, harmonicGrip, letGo } from './systems';

const [LOW, HIGH] = [radians(-1), radians(1)];

describe('hills and wells', () => {
  test('a blade-like grip has one well at flat, as deep as the lower end of the range stands above it', () => {
    // V = (W^2 A / 4)(1 - cos 2t): by hand from M = -(W^2 A / 2) sin 2t.
    const h = Float64Array.of(0, 0, -2, 0);
    const energy = (pitch: number) => featheringEnergy(h, radians(pitch));
    const found = landscape(energy, inertialEquilibria(h, LOW, radians(0.5), 2), LOW, radians(0.5));
    expect(found.length).toBe(1);
    expect(found[0].kind).toBe('well');
    expect(found[0].pitch).toBeCloseTo(0, 14);
    expect(found[0].energy).toBeCloseTo(0, 14);
    expect(found[0].depth).toBeCloseTo(1 - Math.cos(1), 14);
  });

  test('a bolt-like one has a hill at flat, and the wells on both sides of it are as deep as it is high', () => {
    const h = Float64Array.of(0, 0, 2, 0);
    const energy = (pitch: number) => featheringEnergy(h, radians(pitch));
    const [low, high] = [radians(-3), radians(3)];
    const found = landscape(energy, inertialEquilibria(h, low, high, 2), low, high);
    expect(found.map(({ kind }) => kind)).toEqual(['well', 'hill', 'well']);
    expect(found[0].depth).toBeCloseTo(energy(3) - energy(Math.PI / 2), 12);
    expect(found[1].depth).toBeNull();
  });

  test('where the rod reaches no further the well is as deep as the last pitch that has an energy', () => {
    // Bug: at that end the energy has no value, and the page said "NaN mJ deep".
    const h = Float64Array.of(0, 0, -2, 0);
    const energy = (pitch: number) =>
      pitch < 0.5 ? featheringEnergy(h, radians(pitch)) : Number.NaN;
    const found = landscape(energy, inertialEquilibria(h, LOW, radians(0.5), 2), LOW, radians(0.5));
    // Some 1e-12 rad inside, on a slope of no more than 2.
    expect(found[0].depth).toBeCloseTo(1 - Math.cos(1), 11);
    const beside = (pitch: number) =>
      Math.abs(pitch) < 0.1 ? featheringEnergy(h, radians(pitch)) : Number.NaN;
    const [only] = landscape(beside, inertialEquilibria(h, LOW, HIGH, 2), LOW, HIGH);
    expect(only.depth).toBeNull();
  });

  test('a neutral head has none', () => {
    expect(landscape(() => 0, { kind: 'neutral' }, LOW, HIGH)).toEqual([]);
  });
});

describe('how far it rolls without friction', () => {
  test('is where the integrated swing turns, for 200 random grips', () => {
    const random = seeded(61);
    let turned = 0;
    for (let i = 0; i < 200; i++) {
      const h = Float64Array.from({ length: 4 }, () => random.between(-1, 1));
      const system = { ...harmonicGrip(h, 8e-6), low: radians(-1.5), high: radians(1.5) };
      const from = radians(random.between(-1.4, 1.4));
      const reach = reachWithoutFriction(
        system.energy,
        system.energy(from),
        from,
        system.low,
        system.high,
      );
      const way = system.moment(from) > 0 ? 'high' : 'low';
      const release = letGo(system, from);
      for (let k = 0; k < 1000 && release.turns + release.hits === 0; k++) release.advance(1e-4);
      expect(release.lastEnd).toBeCloseTo(reach[way].pitch, 6);
      expect(reach[way].why).toBe(release.hits > 0 ? 'stop' : 'turns');
      // At rest it cannot climb the other way.
      expect(reach[way === 'high' ? 'low' : 'high'].pitch).toBe(from);
      if (release.hits === 0) turned++;
    }
    expect(turned).toBeGreaterThan(30);
    expect(turned).toBeLessThan(170);
  });

  test('a gap ends it and is named', () => {
    const energy = (pitch: number) => (pitch > 0.5 ? Number.NaN : -pitch);
    const reach = reachWithoutFriction(energy, 0.5, radians(0), LOW, HIGH);
    expect(reach.high.why).toBe('gap');
    expect(reach.high.pitch).toBeLessThanOrEqual(0.5);
    expect(reach.low.why).toBe('turns');
    expect(reach.low.pitch).toBeCloseTo(-0.5, 12);
  });
});

test('the rate at an energy is what the integrated motion has there, and none where it does not come', () => {
  const system = gripOf(6e-6, 2e-6, 5e-7);
  const total = system.energy(radians(0.7));
  const release = letGo(system, 0.7);
  release.advance(0.005, ({ pitch, rate, energy }) => {
    if (energy.kinetic < 1e-3 * energy.scale) return;
    expect(Math.abs(Math.abs(rate) / rateAtEnergy(system, total, pitch) - 1)).toBeLessThan(1e-7);
  });
  expect(release.turns).toBeGreaterThan(0);
  expect(rateAtEnergy(system, total, radians(0.8))).toBeNaN();
});
