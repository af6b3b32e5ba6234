import { describe, expect, test } from 'vitest';
import { completeElliptic } from '../../../src/engine/release/elliptic';
import { addInertia } from '../../../src/engine/release/linkInertia';
import { seeded } from '../../support/seeded';
import { gripOf, harmonicGrip, letGo, SPEED, standstills } from './systems';

/** Period over `swings` whole swings, from the times of the standstills. */
function periodOf(times: readonly number[], swings: number): number {
  expect(times.length).toBeGreaterThanOrEqual(2 * swings);
  return times[2 * swings - 1] / swings;
}

describe('small swings without friction', () => {
  test('a thin blade about flat pitch swings exactly once a turn of the rotor', () => {
    // J_zz = 0: "Pitch-Link Loads", R. Prouty; physics of a thin plate. Amplitude 1e-3 rad: the period of a pendulum in
    // 2 t is longer by t0^2 / 4 = 2.5e-7 of it.
    const release = letGo(gripOf(8e-6, 0), 1e-3);
    const period = periodOf(standstills(release, 0.062), 10);
    expect(Math.abs((period * SPEED) / (2 * Math.PI) - 1)).toBeLessThan(3e-7);
  });

  test('any grip has the period of w^2 = W^2 (J_yy - J_zz) / (J_yy + J_zz), to 1e-4 and far better', () => {
    const random = seeded(81);
    for (let i = 0; i < 40; i++) {
      const Jyy = random.between(1e-6, 1e-5);
      const Jzz = Jyy * random.between(0, 0.95);
      const amplitude = 10 ** random.between(-7, -3);
      const w = SPEED * Math.sqrt((Jyy - Jzz) / (Jyy + Jzz));
      const release = letGo(gripOf(Jyy, Jzz), amplitude);
      const period = periodOf(standstills(release, 5.5 * ((2 * Math.PI) / w)), 5);
      // t0^2 / 4 of a pendulum in 2 t, and the floor of the step's error (2e-16 rad a step) beside the amplitude.
      const allowed = amplitude ** 2 / 4 + 1e-9 + 1e-14 / amplitude;
      expect(Math.abs((period * w) / (2 * Math.PI) - 1)).toBeLessThan(allowed * 1.01);
    }
  });

  test('a product of inertia turns the rest angle and leaves the law as it is about the tilted axes', () => {
    // tan 2t = -2 J_yz / A, stiffness W^2 sqrt(A^2 + 4 J_yz^2): physics of the spread ellipse.
    const [Jyy, Jzz, Jyz] = [7e-6, 3e-6, 1e-6];
    const rest = Math.atan2(-2 * Jyz, Jyy - Jzz) / 2;
    const w = SPEED * Math.sqrt(Math.hypot(Jyy - Jzz, 2 * Jyz) / (Jyy + Jzz));
    const release = letGo(gripOf(Jyy, Jzz, Jyz), rest + 1e-4);
    const period = periodOf(standstills(release, 6 * ((2 * Math.PI) / w)), 5);
    expect(Math.abs((period * w) / (2 * Math.PI) - 1)).toBeLessThan(1e-8);
    expect((release.lastEnd + release.endBefore) / 2).toBeCloseTo(rest, 9);
  });
});

describe('large swings without friction', () => {
  // The grip is a pendulum in 2 t: period 4 K(sin^2 t0) / w. Known ratios to the small swing (2 / pi) K(sin^2 t0) of a
  // pendulum let go at 2 t0 = 90 and 150 degrees: 1.18034 and 1.76220 (handbook tables of pendulum periods, from memory).
  test.each([
    [45, 1.18034],
    [75, 1.7622],
  ])('let go at %d degrees it takes %d times as long as a small one', (degrees, ratio) => {
    const w = SPEED * Math.sqrt(0.5);
    const release = letGo(gripOf(6e-6, 2e-6), (degrees * Math.PI) / 180);
    const period = periodOf(standstills(release, (6 * 2 * Math.PI) / w), 3);
    expect(Math.abs((period * w) / (2 * Math.PI) - ratio)).toBeLessThan(6e-6);
  });

  test('periods follow the elliptic integral to 1e-9, up to a hair below the top of the hill', () => {
    for (const pitch of [0.01, 0.3, 0.9, 1.3, 1.5, 1.57, Math.PI / 2 - 1e-4]) {
      const w = SPEED * Math.sqrt(0.5);
      const complement = Math.cos(pitch) ** 2;
      const exact = (4 * completeElliptic(complement)) / w;
      const release = letGo(gripOf(6e-6, 2e-6), pitch);
      const period = periodOf(standstills(release, 2.1 * exact), 2);
      // Energy is kept to 4e-11 a swing, which is as if 1 - m were that much off: dK = d(1 - m) / (2 (1 - m)) near the top.
      const quarter = completeElliptic(complement);
      const allowed = 1e-9 + (2 * 4e-11) / (2 * complement * quarter);
      expect(Math.abs(period / exact - 1)).toBeLessThan(allowed);
    }
  });

  test('a bolt-like grip let go just off flat runs to the same distance on the far side of the well', () => {
    const release = letGo(gripOf(2e-6, 6e-6), 0.01);
    const [first] = standstills(release, 0.05);
    expect(first).toBeGreaterThan(0);
    // Symmetry about the rest angle of 90 degrees. Energy to 1e-11 of a hill 0.01 rad from the top: 1e-11 / 0.01 rad.
    const far = Math.max(release.lastEnd, release.endBefore);
    expect(far).toBeCloseTo(Math.PI - 0.01, 8);
  });
});

describe('energy', () => {
  test('an inertia that changes with pitch keeps I w^2 / 2 + V too', () => {
    const wave = {
      value: (pitch: number) => 3e-6 * (1 + 0.5 * Math.sin(3 * pitch)),
      slope: (pitch: number) => 4.5e-6 * Math.cos(3 * pitch),
    };
    const system = { ...gripOf(6e-6, 2e-6), inertia: addInertia(8e-6, [wave]) };
    const release = letGo(system, 1.2);
    for (let i = 0; i < 20; i++) expect(release.advance(0.1)).toBe(true);
    expect(release.turns).toBeGreaterThan(200);
    expect(Math.abs(release.energy.error) / release.energy.scale).toBeLessThan(1e-6);
    const end = Math.max(Math.abs(release.lastEnd), Math.abs(release.endBefore));
    expect(Math.abs(end - 1.2)).toBeLessThan(1e-6);
  });

  test('the ledger sees a potential that does not belong to the moment', () => {
    const system = { ...gripOf(6e-6, 2e-6), energy: (pitch: number) => 1e-3 * pitch };
    const release = letGo(system, 0.7);
    release.advance(0.001);
    expect(Math.abs(release.energy.error) / release.energy.scale).toBeGreaterThan(1e-3);
  });
});

describe('steps and frames', () => {
  test('the motion does not depend on how it is cut into frames', () => {
    const random = seeded(60);
    const system = { ...gripOf(6e-6, 2e-6, 5e-7), damping: 1e-4, friction: () => 0.02 };
    const whole = letGo(system, 0.8);
    const cut = letGo(system, 0.8);
    const duration = 0.006;
    whole.advance(duration);
    let passed = 0;
    while (passed < duration) {
      const frame = Math.min(duration - passed, random.between(1e-7, 3e-4));
      cut.advance(frame);
      passed += frame;
    }
    expect(cut.time).toBeCloseTo(duration, 15);
    // Both are good to some 1e-10 of the swing.
    expect(Math.abs(cut.pitch - whole.pitch)).toBeLessThan(1e-9);
    expect(Math.abs(cut.rate - whole.rate) / SPEED).toBeLessThan(1e-9);
  });

  test('time runs on to exactly what was asked, moving or at rest', () => {
    const release = letGo(gripOf(6e-6, 2e-6), 0.5);
    release.advance(0.0123);
    expect(release.time).toBe(0.0123);
    const still = letGo({ ...gripOf(6e-6, 2e-6), friction: () => 100 }, 0.5);
    still.advance(3);
    expect(still.time).toBe(3);
  });

  test('the same swing at a millionth and at a million times the size is the same swing', () => {
    for (const scale of [1e-6, 1, 1e6]) {
      const h = Float64Array.of(0.01, -0.02, -0.3, 0.05).map((value) => value * scale);
      const release = letGo(harmonicGrip(h, 8e-6 * scale), 0.6);
      release.advance(0.01);
      const reference = letGo(harmonicGrip(Float64Array.of(0.01, -0.02, -0.3, 0.05), 8e-6), 0.6);
      reference.advance(0.01);
      expect(Math.abs(release.pitch - reference.pitch)).toBeLessThan(1e-9);
    }
  });

  test('a release without moment, friction and damping coasts for ever at its rate', () => {
    const none = harmonicGrip(new Float64Array(4), 8e-6);
    const release = letGo(none, 0.1, { rate: 3 });
    expect(release.phase).toBe('sliding');
    release.advance(2);
    expect(release.pitch).toBeCloseTo(6.1, 12);
    expect(release.rate).toBe(3);
  });
});
