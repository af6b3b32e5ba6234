import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/engine/math/vector';
import { createFreeBody, type FreeBody } from '../../../src/engine/release/freeBody';
import { createTumbling } from '../../../src/engine/release/tumbling';
import { quaternionMatrix, type Seeded, seeded } from '../../support/seeded';

function bodyOf(inertia: Vec3, spin: Vec3): FreeBody {
  const made = createFreeBody(inertia, spin);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}

/** Principal moments of a random box, in random order. */
function randomInertia(random: Seeded): Vec3 {
  const [a, b, c] = [0, 1, 2].map(() => random.between(0.1, 1) ** 2);
  return [b + c, c + a, a + b];
}

const ORDERS: readonly Vec3[] = [
  [1, 2, 2.5],
  [2, 1, 2.5],
  [2.5, 2, 1],
  [1, 2.5, 2],
  [2, 2.5, 1],
  [2.5, 1, 2],
];

describe('the exact spin of a free body', () => {
  test('satisfies the equations of Euler at any time, for every order of the axes', () => {
    const random = seeded(758);
    const [before, now, after] = [0, 1, 2].map(() => new Float64Array(3));
    for (let i = 0; i < 300; i++) {
      const inertia = i < 6 ? ORDERS[i] : randomInertia(random);
      const spin: Vec3 = [random.between(-3, 3), random.between(-3, 3), random.between(-3, 3)];
      const body = bodyOf(inertia, spin);
      const time = random.between(-20, 20);
      const h = 1e-4;
      body.spinAt(time - h, before);
      body.spinAt(time, now);
      body.spinAt(time + h, after);
      for (let k = 0; k < 3; k++) {
        const [l, m] = [(k + 1) % 3, (k + 2) % 3];
        const rate = ((inertia[l] - inertia[m]) / inertia[k]) * now[l] * now[m];
        // Central difference: h^2 / 6 of a third derivative below 100 (spin below 5), and rounding 1e-15 / h.
        expect(Math.abs((after[k] - before[k]) / (2 * h) - rate)).toBeLessThan(1e-6);
      }
    }
  });

  test('starts at the spin given and keeps energy and momentum to rounding', () => {
    const random = seeded(4);
    const out = new Float64Array(3);
    for (let i = 0; i < 500; i++) {
      const inertia = randomInertia(random);
      const spin: Vec3 = [random.between(-3, 3), random.between(-3, 3), random.between(-3, 3)];
      const body = bodyOf(inertia, spin);
      body.spinAt(0, out);
      // The start's phase is found by one elliptic integral and given back by another: some ten roundings of 5 rad/s.
      spin.forEach((w, k) => expect(Math.abs(out[k] - w)).toBeLessThan(1e-13 * 5));
      body.spinAt(random.between(-50, 50), out);
      const energy = inertia.reduce((sum, I, k) => sum + I * out[k] ** 2, 0);
      const momentum = inertia.reduce((sum, I, k) => sum + (I * out[k]) ** 2, 0);
      expect(Math.abs(energy / body.twiceEnergy - 1)).toBeLessThan(1e-12);
      expect(Math.abs(momentum / body.momentumSquared - 1)).toBeLessThan(1e-12);
    }
  });

  test('comes back after the period, and the middle spin is turned round after the flip time', () => {
    const random = seeded(44);
    const out = new Float64Array(3);
    for (let i = 0; i < 200; i++) {
      const spin: Vec3 = [random.between(-3, 3), random.between(-3, 3), random.between(-3, 3)];
      const body = bodyOf(randomInertia(random), spin);
      const { period, flipTime, middle } = body;
      if (period === null || flipTime === null) throw new Error('a random body tumbles');
      expect(flipTime).toBe(period / 2);
      body.spinAt(period, out);
      spin.forEach((w, k) => expect(Math.abs(out[k] - w)).toBeLessThan(1e-11));
      body.spinAt(flipTime, out);
      expect(Math.abs(out[middle] + spin[middle])).toBeLessThan(1e-11);
    }
  });

  test('a round body precesses at (I3 - I1) w3 / I1, the Euler rate', () => {
    // Textbook of the symmetric top (earth wobble), both flat and long.
    for (const [inertia, odd] of [
      [[1, 1, 1.6], 2],
      [[1, 1, 0.4], 2],
      [[0.4, 1, 1], 0],
      [[1, 1.6, 1], 1],
    ] as const) {
      const spin: Vec3 = [0.3, 0.7, -1.2];
      const body = bodyOf(inertia, spin);
      const own = inertia[(odd + 1) % 3];
      const rate = ((inertia[odd] - own) / own) * spin[odd];
      expect(body.period).toBeCloseTo((2 * Math.PI) / Math.abs(rate), 12);
      const out = body.spinAt(2.5, new Float64Array(3));
      const [i, j] = [(odd + 1) % 3, (odd + 2) % 3];
      const angle = rate * 2.5;
      expect(out[odd]).toBeCloseTo(spin[odd], 12);
      expect(out[i]).toBeCloseTo(spin[i] * Math.cos(angle) - spin[j] * Math.sin(angle), 12);
      expect(out[j]).toBeCloseTo(spin[i] * Math.sin(angle) + spin[j] * Math.cos(angle), 12);
    }
  });

  test('a steady spin stays: about any axis, the middle one too, and of a ball in any direction', () => {
    const cases: readonly [Vec3, Vec3][] = [
      [
        [1, 2, 2.5],
        [0, 3, 0],
      ],
      [
        [1, 2, 2.5],
        [-3, 0, 0],
      ],
      [
        [1, 2, 2.5],
        [0, 0, 0],
      ],
      [
        [1, 1, 1],
        [1, 2, 3],
      ],
      [
        [2, 2, 1],
        [1, 2, 0],
      ],
    ];
    for (const [inertia, spin] of cases) {
      const body = bodyOf(inertia, spin);
      expect(body.motion).toBe('steady');
      expect(body.period).toBeNull();
      expect(Array.from(body.spinAt(7, new Float64Array(3)))).toEqual([...spin]);
    }
  });

  test('small wobble about the outer axes has the period of the linear law', () => {
    // W^2 (I3 - I1)(I3 - I2) / (I1 I2) about axis 3: any textbook. The wobble is 1e-5 of the spin: second order 1e-10.
    for (const axis of [0, 2]) {
      const inertia: Vec3 = [1, 2, 2.5];
      const spin: [number, number, number] = [1e-5, 1e-5, 1e-5];
      spin[axis] = 2;
      const [I, J] = [0, 1, 2].filter((k) => k !== axis).map((k) => inertia[k]);
      const rate = 2 * Math.sqrt(((inertia[axis] - I) * (inertia[axis] - J)) / (I * J));
      const body = bodyOf(inertia, spin);
      expect(body.motion).toBe(axis === 0 ? 'aroundSmallest' : 'aroundLargest');
      expect(body.period).toBeCloseTo((2 * Math.PI) / rate, 8);
    }
  });

  test('about the middle axis each tenth of the push makes it flip later by ln 10 / rate', () => {
    // Linear growth about the middle axis: rate W sqrt((I2 - I1)(I3 - I2) / (I1 I3)); the time to grow from a push of d goes
    // as ln(1 / d), there and back: two halves of a flip.
    const inertia: Vec3 = [1, 2, 2.5];
    const rate = 2 * Math.sqrt(((2 - 1) * (2.5 - 2)) / (1 * 2.5));
    const times = [1e-4, 1e-5, 1e-6, 1e-7].map((d) => bodyOf(inertia, [d, 2, 0]).flipTime ?? 0);
    for (let i = 1; i < times.length; i++) {
      expect((times[i] - times[i - 1]) * rate).toBeCloseTo(2 * Math.LN10, 6);
    }
  });

  test('exactly between the two kinds it turns to the middle axis once and for all, without a period', () => {
    // (I3 - I2) I3 w3^2 = (I2 - I1) I1 w1^2 is 0.25 x 2.25 = 1 x 1 x 0.75^2, exact in binary.
    const out = new Float64Array(3);
    for (const [w1, w3] of [
      [0.75, 1],
      [-0.75, 1],
      [0.75, -1],
      [-0.75, -1],
    ]) {
      const body = bodyOf([1, 2, 2.25], [w1, 0.5, w3]);
      expect(body.motion).toBe('separatrix');
      expect([body.period, body.flipTime]).toEqual([null, null]);
      body.spinAt(0, out);
      [w1, 0.5, w3].forEach((w, k) => expect(out[k]).toBeCloseTo(w, 13));
      const ends = [-60, 60].map((time) => {
        body.spinAt(time, out);
        expect(Math.abs(out[0])).toBeLessThan(1e-6);
        expect(Math.abs(out[2])).toBeLessThan(1e-6);
        return out[1];
      });
      // All the energy is about the middle axis then, with one sign before and the other after: I2 w2' = (I3 - I1) w3 w1.
      const most = Math.sqrt(body.twiceEnergy / 2);
      expect(ends[1]).toBeCloseTo(Math.sign(w1 * w3) * most, 9);
      expect(ends[0]).toBeCloseTo(-Math.sign(w1 * w3) * most, 9);
    }
  });
});

describe('the integrated tumbling', () => {
  test('agrees with the closed form to 1e-6 and far better over 20 periods, middle axis included', () => {
    const random = seeded(20);
    const out = new Float64Array(3);
    const starts: [Vec3, Vec3][] = [
      [
        [1, 2, 2.5],
        [0.01, 3, 0],
      ],
      [
        [1, 2, 2.5],
        [0, 3, 1e-3],
      ],
    ];
    for (let i = 0; i < 8; i++) {
      const spin: Vec3 = [random.between(-3, 3), random.between(-3, 3), random.between(-3, 3)];
      starts.push([randomInertia(random), spin]);
    }
    for (const [inertia, spin] of starts) {
      const body = bodyOf(inertia, spin);
      const tumbling = createTumbling(inertia, spin);
      const scale = Math.hypot(...spin);
      const near = Math.max(1e-9, 1e-11 / (1 - body.parameter));
      expect(near).toBeLessThan(1e-4);
      for (let k = 1; k <= 20; k++) {
        tumbling.advance(body.period ?? Number.NaN);
        body.spinAt(tumbling.time, out);
        for (let axis = 0; axis < 3; axis++) {
          expect(Math.abs(tumbling.spin[axis] - out[axis]) / scale).toBeLessThan(near);
        }
      }
    }
  }, 30_000);

  test('the angular momentum stands still in space', () => {
    const inertia: Vec3 = [1, 2, 2.5];
    const spin: Vec3 = [0.1, 3, -0.2];
    const tumbling = createTumbling(inertia, spin);
    for (let i = 0; i < 100; i++) {
      tumbling.advance(0.37);
      const R = quaternionMatrix(
        Array.from(tumbling.attitude) as unknown as readonly [number, number, number, number],
      );
      for (let k = 0; k < 3; k++) {
        const L = [0, 1, 2].reduce(
          (sum, j) => sum + R[3 * k + j] * inertia[j] * tumbling.spin[j],
          0,
        );
        expect(Math.abs(L - inertia[k] * spin[k])).toBeLessThan(1e-8);
      }
    }
  });

  test('after a period the body has turned about its momentum by 2 E T / L less the solid angle', () => {
    // R. Montgomery, "How much does the rigid body rotate?", Am. J. Phys. 59 (1991) 394. The solid angle is swept on the
    // body's momentum sphere by the exact solution; summed here as int (1 - cos) dphi by the trapezoid rule, which
    // converges faster than any power for a closed curve.
    const inertia: Vec3 = [1, 2, 2.5];
    const spin: Vec3 = [0.4, 0.6, 2];
    const body = bodyOf(inertia, spin);
    const period = body.period ?? Number.NaN;
    const tumbling = createTumbling(inertia, spin);
    tumbling.advance(period);
    const [w, x, y, z] = tumbling.attitude;
    const L = Math.sqrt(body.momentumSquared);
    // The attitude is a turn about L: its signed angle.
    const along = [x, y, z].reduce((sum, v, k) => sum + (v * inertia[k] * spin[k]) / L, 0);
    const turned = 2 * Math.atan2(along, w);
    expect(Math.hypot(w, along)).toBeCloseTo(1, 9);
    const count = 4000;
    const out = new Float64Array(3);
    let solid = 0;
    for (let i = 0; i < count; i++) {
      body.spinAt((period * i) / count, out);
      const m = inertia.map((I, k) => (I * out[k]) / L);
      // dphi/ds about body axis 3, from L' = L x w.
      const dx = m[1] * out[2] - m[2] * out[1];
      const dy = m[2] * out[0] - m[0] * out[2];
      const turn = (m[0] * dy - m[1] * dx) / (m[0] ** 2 + m[1] ** 2);
      solid += ((1 - m[2]) * turn * period) / count;
    }
    const expected = (body.twiceEnergy * period) / L - solid;
    const off = (turned - expected) / (2 * Math.PI);
    expect(Math.abs(off - Math.round(off))).toBeLessThan(1e-8);
  });

  test('a body at rest stays, and time runs on', () => {
    const tumbling = createTumbling([1, 2, 2.5], [0, 0, 0]);
    tumbling.advance(5);
    expect(tumbling.time).toBe(5);
    expect(Array.from(tumbling.attitude)).toEqual([1, 0, 0, 0]);
  });
});

describe('what is no body', () => {
  test('moments that no mass can have are refused by name', () => {
    const refuse = (inertia: Vec3, spin: Vec3 = [1, 1, 1]) => {
      const made = createFreeBody(inertia, spin);
      return made.ok ? null : made.error;
    };
    expect(refuse([1, 0, 1])).toMatchObject({ kind: 'outOfRange', field: 'inertia', axis: 1 });
    expect(refuse([1, 1, Number.NaN])).toMatchObject({ kind: 'outOfRange', axis: 2 });
    expect(refuse([1, 1, 1], [1, Infinity, 0])).toMatchObject({ field: 'spin', axis: 1 });
    const fault = refuse([1, 2.5, 1]);
    expect(fault).toMatchObject({ kind: 'noSuchBody', axis: 1 });
    expect(fault?.kind === 'noSuchBody' && fault.excess).toBeCloseTo(0.5, 14);
    // A plate is the limit and a body.
    expect(refuse([0.1, 0.2, 0.1 + 0.2])).toBeNull();
  });
});
