import { describe, expect, test } from 'vitest';
import { servoState } from '../../../src/engine/linkage/servo';

const arms = { outputArm: 0.01, inputArm: 0.014, servoArm: 0.015, midTravel: 0.001 };

/** Exact: arms square to a link of length L at mid travel; the bell-crank angle for a servo angle (four-bar, by bisection). */
function exactCrank(servoAngle: number, link: number): number {
  const { inputArm, servoArm } = arms;
  const [sx, sy] = [servoArm * Math.cos(servoAngle), servoArm * Math.sin(servoAngle)];
  const gap = (crank: number) => {
    // Pivots apart so that both arms are square to the link at zero; arms point the same way, the link along y.
    const [cx, cy] = [inputArm * Math.cos(crank), inputArm * Math.sin(crank) + link];
    return Math.hypot(cx - sx - (inputArm - servoArm), cy - sy) - link;
  };
  let [low, high] = [-1.5, 1.5];
  for (let i = 0; i < 100; i++) {
    const middle = (low + high) / 2;
    if (gap(low) * gap(middle) <= 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

describe('the servo through a bell crank', () => {
  test('does the work of the slider: torque is F dz/dq, by central difference', () => {
    for (const travel of [-0.006, 0.001, 0.004]) {
      const h = 1e-7;
      const angle = (z: number) => {
        const state = servoState(arms, z, 20);
        if (!state.ok) throw new Error('out of reach');
        return state.value.servoAngle;
      };
      const slope = (angle(travel + h) - angle(travel - h)) / (2 * h);
      const state = servoState(arms, travel, 20);
      expect(state.ok && state.value.torque * slope).toBeCloseTo(20, 5);
    }
    const middle = servoState(arms, 0.001, 20);
    expect(middle.ok && middle.value.torque).toBeCloseTo((20 * 0.01 * 0.015) / 0.014, 15);
  });

  test('says how far it reaches where it does not', () => {
    expect(servoState(arms, 0.012, 1)).toEqual({
      ok: false,
      error: { limit: 0.01, travel: 0.011 },
    });
    expect(servoState({ ...arms, outputArm: 0.02, servoArm: 0.005 }, 0.02, 1).ok).toBe(false);
  });

  // Derived: an exact four-bar with a link of five servo arms.
  test('differs from an exact linkage by less than a tenth within 30 degrees when its link is five arms long', () => {
    const h = 1e-5;
    let worst = 0;
    for (let deg = -30; deg <= 30; deg += 5) {
      const q = (deg * Math.PI) / 180;
      const exact = (exactCrank(q + h, 0.075) - exactCrank(q - h, 0.075)) / (2 * h);
      const crank = exactCrank(q, 0.075);
      // r_in cos p dp = r_servo cos q dq in the model.
      const model =
        (arms.servoArm * Math.cos(q)) /
        (arms.inputArm * Math.cos(Math.asin((arms.servoArm / arms.inputArm) * Math.sin(q))));
      worst = Math.max(worst, Math.abs(model / exact - 1));
      expect(Math.abs(crank)).toBeLessThan(1);
    }
    expect(worst).toBeLessThan(0.1);
  });
});

describe('the reach of the servo', () => {
  // At mid travel all arms stand square; the slider can go as far as the shorter of its own arm and, through the
  // crank, the servo's arm: 0.015 x 0.01 / 0.014 = 10.714 mm against 10 mm here.
  test.each([0.01, -0.01, 0.0100001])(
    'a travel of %d m is at or past the limit of 10 mm',
    (travel) => {
      const state = servoState({ ...arms, midTravel: 0 }, travel, 1);
      expect(state).toEqual({ ok: false, error: { limit: 0.01, travel } });
    },
  );

  test('ends where the servo\u2019s own arm is the shorter one, and its torque with it', () => {
    const short = { ...arms, servoArm: 0.007 };
    const beyond = servoState(short, 0.0061, 1);
    expect(!beyond.ok && beyond.error.limit).toBeCloseTo(0.005, 15);
    const near = servoState(short, 0.001 + 0.005 * Math.sin(1.5), 20);
    if (!near.ok) throw new Error('out of reach');
    expect(near.value.servoAngle).toBeCloseTo(1.5, 12);
    expect(near.value.torque).toBeCloseTo(20 * 0.005 * Math.cos(1.5), 14);
  });
});
