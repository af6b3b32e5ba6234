import { expect, test } from 'vitest';
import { runRelease } from '../../../src/engine/release/outcome';
import { radians } from '../../../src/engine/units';
import { gripOf, SPEED } from './systems';

test('a damped grip settles by damping, and where there is friction, however little, by friction', () => {
  const grip = gripOf(6e-6, 2e-6);
  const damping = 0.2 * 8e-6 * SPEED;
  // Of the largest moment, W^2 A / 2: it holds within 1e-7 rad, a thousandth of what is called settled.
  const little = 2e-7 * ((SPEED ** 2 * 4e-6) / 2);
  for (const [friction, by] of [
    [0, 'damping'],
    [little, 'friction'],
  ] as const) {
    const system = { ...grip, damping, friction: () => friction };
    const made = runRelease(system, { pitch: radians(0.5), rate: 0 }, 1);
    if (!made.ok) throw new Error(made.error.kind);
    expect(made.value.release.ended?.by).toBe(by);
    expect(Math.abs(made.value.release.pitch)).toBeLessThan(1e-4);
  }
});
