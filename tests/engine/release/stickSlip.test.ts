import { describe, expect, test } from 'vitest';
import { holdingBands } from '../../../src/engine/friction/holdingBands';
import type { ReleaseSystem } from '../../../src/engine/release/releaseSystem';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { gripOf, harmonicGrip, letGo, randomSystem, SPEED } from './systems';

describe('stick and slip', () => {
  test('it stays exactly inside the holding bands and leaves exactly outside them', () => {
    const random = seeded(7);
    let outside = 0;
    for (let i = 0; i < 100; i++) {
      const system = { ...randomSystem(random), low: radians(-1), high: radians(1) };
      const bands = holdingBands(
        (pitch) => system.moment(radians(pitch)),
        (pitch) => system.friction(radians(pitch)),
        radians(-1),
        radians(1),
        0.001,
        [],
      );
      for (let k = 0; k < 10; k++) {
        const pitch = random.between(-0.999, 0.999);
        const held = bands.some(([low, high]) => pitch >= low && pitch <= high);
        expect(letGo(system, pitch).phase).toBe(held ? 'stuck' : 'sliding');
        if (!held) outside++;
      }
    }
    expect(outside).toBeGreaterThan(100);
  });

  test('constant friction on a spring takes 4 F / k off every swing and sticks within F / k', () => {
    // The textbook's block on a rough table (L. Meirovitch, Elements of Vibration Analysis, Coulomb damping, from memory):
    // each half swing ends 2 F / k nearer to the middle; its time is pi / w as if there were no friction.
    const [k, inertia, F] = [2, 8e-6, 0.03];
    const spring: ReleaseSystem = {
      ...gripOf(8e-6, 0),
      moment: (pitch) => -k * pitch,
      energy: (pitch) => (k * pitch * pitch) / 2,
      friction: () => F,
    };
    const release = letGo(spring, 0.1);
    const ends: number[] = [];
    const times: number[] = [];
    let turns = 0;
    release.advance(0.1, (now) => {
      if (now.turns > turns) {
        ends.push(now.pitch);
        times.push(now.time);
      }
      turns = now.turns;
    });
    // 0.1 -> -0.07 -> 0.04 -> -0.01, and |k 0.01| = 0.02 <= F.
    expect(ends.length).toBe(3);
    [-0.07, 0.04, -0.01].forEach((end, i) => expect(ends[i]).toBeCloseTo(end, 10));
    const half = Math.PI / Math.sqrt(k / inertia);
    times.forEach((time, i) => expect(time / ((i + 1) * half)).toBeCloseTo(1, 9));
    expect(release.phase).toBe('stuck');
    expect(release.ended?.by).toBe('friction');
  });

  test('viscous damping takes exp(-zeta w t) of the swing and the period of w sqrt(1 - zeta^2)', () => {
    // Damped oscillator, any textbook of vibrations.
    const [k, inertia, zeta] = [2, 8e-6, 0.05];
    const w = Math.sqrt(k / inertia);
    const spring: ReleaseSystem = {
      ...gripOf(8e-6, 0),
      moment: (pitch) => -k * pitch,
      energy: (pitch) => (k * pitch * pitch) / 2,
      damping: 2 * zeta * w * inertia,
    };
    const release = letGo(spring, 0.1);
    const damped = w * Math.sqrt(1 - zeta * zeta);
    for (const time of [0.001, 0.004, 0.0063]) {
      release.advance(time - release.time);
      const angle = damped * time;
      const shape = Math.cos(angle) + ((zeta * w) / damped) * Math.sin(angle);
      expect(release.pitch).toBeCloseTo(0.1 * Math.exp(-zeta * w * time) * shape, 10);
    }
  });

  test('friction alone brings a coasting grip to rest after I w^2 / (2 F), in I w / F', () => {
    // A sliding block: uniform deceleration.
    const inertia = 8e-6;
    const system = { ...harmonicGrip(new Float64Array(4), inertia), friction: () => 0.02 };
    const release = letGo(system, 0.2, { rate: -40 });
    release.advance(1);
    expect(release.phase).toBe('stuck');
    expect(release.pitch).toBeCloseTo(0.2 - (inertia * 1600) / 0.04, 12);
    expect(release.ended?.time).toBeCloseTo((inertia * 40) / 0.02, 12);
  });

  test('work of friction: where it turns first is where the potential has paid for it', () => {
    // Energy alone, without an integrator: V(t0) - V(t1) = int F dt, F = f (1 + a t^2), solved by halving.
    const system = {
      ...gripOf(6e-6, 2e-6, 8e-7),
      friction: (pitch: number) => 0.1 * (1 + pitch * pitch),
    };
    const left = (pitch: number) =>
      system.energy(radians(0.9)) -
      system.energy(radians(pitch)) -
      0.1 * (0.9 - pitch + (0.9 ** 3 - pitch ** 3) / 3);
    let [low, high] = [-1.2, -0.2];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (left(middle) > 0) high = middle;
      else low = middle;
    }
    const release = letGo(system, 0.9);
    while (release.turns === 0) release.advance(1e-5);
    expect(release.lastEnd).toBeCloseTo(low, 9);
  });
});

describe('a hand', () => {
  const system = { ...gripOf(6e-6, 2e-6), friction: () => 0.05 };

  test('holds what it holds: up to moment + friction nothing moves, a hair above it does', () => {
    const pitch = 0.3;
    const moment = system.moment(radians(pitch));
    const release = letGo(system, pitch, { hand: -moment });
    for (const more of [0.049999, -0.049999, 0.05 * (1 - 1e-12)]) {
      release.push(-moment + more);
      release.advance(1);
      expect(release.phase).toBe('stuck');
      expect(release.pitch).toBe(pitch);
    }
    release.push(-moment + 0.05 * (1 + 1e-9));
    expect(release.phase).toBe('sliding');
    release.advance(0.01);
    expect(release.pitch).toBeGreaterThan(pitch);
  });

  test('its work is in the ledger, changed in mid-swing or not', () => {
    const random = seeded(12);
    const release = letGo(system, 0.5);
    for (let i = 0; i < 50; i++) {
      release.push(random.between(-0.5, 0.5));
      release.advance(random.between(1e-5, 1e-3));
    }
    expect(Math.abs(release.energy.given)).toBeGreaterThan(1e-3);
    expect(Math.abs(release.energy.error) / release.energy.scale).toBeLessThan(1e-8);
  });

  test('taking the hand away lets a held grip go', () => {
    const release = letGo(system, 0.4, { hand: 0.8 });
    const held = letGo(system, 0.4, { hand: -system.moment(radians(0.4)) });
    release.advance(0.01);
    held.advance(0.01);
    expect(held.pitch).toBe(0.4);
    held.push(0);
    held.advance(0.001);
    expect(held.pitch).toBeLessThan(0.4);
    expect(held.ended).toBeNull();
  });
});

test('friction of next to nothing changes the first half swing by next to nothing', () => {
  // Continuity: friction of 1e-9 of the moment changes the first half swing by no more than that share.
  const free = letGo(gripOf(6e-6, 2e-6), 0.4);
  const rough = letGo({ ...gripOf(6e-6, 2e-6), friction: () => 1e-9 }, 0.4);
  const duration = 3 / SPEED;
  free.advance(duration);
  rough.advance(duration);
  expect(Math.abs(free.pitch - rough.pitch)).toBeLessThan(1e-8);
});
