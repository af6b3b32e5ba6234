import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { HeadModel } from '../../../src/design/headModel';
import { principalInertia } from '../../../src/engine/mass/inertia';
import { createMoments, JXX, JXY, JXZ, JYY, JYZ, JZZ } from '../../../src/engine/mass/moments';
import { sumSolids } from '../../../src/engine/mass/weigh';
import { eigenSymmetric } from '../../../src/engine/math/eigenSymmetric';
import type { Vec3 } from '../../../src/engine/math/vector';
import { radiansFromDegrees } from '../../../src/engine/units';
import { RACKET_AXES, racketBody } from '../../../src/scene/racket/racketBody';
import { createRacketRun } from '../../../src/scene/racket/racketRun';
import { DURATION, SPIN, throwRacket } from '../../../src/scene/racket/racketThrow';
import { createHappenings, type Happening } from '../../../src/state/happenings';

const { inertia, solids } = racketBody();

/** Euler's equations in steps of the classical fourth order (Runge and Kutta), written out here: times of changed sign. */
function steppedFlips([A, B, C]: Vec3, spin: Vec3, index: number, duration: number): number[] {
  const rate = ([p, q, r]: readonly number[]) => [
    ((B - C) / A) * q * r,
    ((C - A) / B) * r * p,
    ((A - B) / C) * p * q,
  ];
  const h = 1e-3;
  const found: number[] = [];
  let now: readonly number[] = spin;
  for (let k = 0; k * h < duration; k++) {
    const at = (slope: readonly number[], share: number) =>
      now.map((value, i) => value + share * h * slope[i]);
    const k1 = rate(now);
    const k2 = rate(at(k1, 0.5));
    const k3 = rate(at(k2, 0.5));
    const k4 = rate(at(k3, 1));
    const next = now.map((value, i) => value + (h / 6) * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]));
    if (now[index] > 0 !== next[index] > 0) {
      found.push(h * (k + now[index] / (now[index] - next[index])));
    }
    now = next;
  }
  return found;
}

describe('the racket', () => {
  test('has three different principal moments, least along the handle, greatest across the hoop', () => {
    const principal = principalInertia(sumSolids(solids, createMoments()));
    expect(principal?.repeated).toBe('none');
    inertia.forEach((I, k) => {
      expect(I).toBeCloseTo(principal?.values[k] ?? Number.NaN, 12);
    });
    expect(inertia[0]).toBeLessThan(0.7 * inertia[1]);
    expect(inertia[1]).toBeLessThan(0.99 * inertia[2]);
  });

  test('turns over about the middle axis when the stepped equations say so, and about no other', () => {
    for (const besideDeg of [0.01, 1, 5]) {
      for (const axis of RACKET_AXES) {
        const thrown = throwRacket(inertia, axis, radiansFromDegrees(besideDeg));
        const stepped = steppedFlips(inertia, thrown.spin, thrown.index, DURATION);
        expect(thrown.flips).toHaveLength(stepped.length);
        if (axis !== 'middle') expect(stepped).toHaveLength(0);
        // Straight between two steps of a thousandth the zero is off by its square times the curvature, below 1e-5.
        thrown.flips.forEach((time, i) => expect(Math.abs(time - stepped[i])).toBeLessThan(1e-4));
      }
    }
    const middle = throwRacket(inertia, 'middle', radiansFromDegrees(1));
    expect(middle.flips.length).toBeGreaterThan(2);
    const [first, second] = middle.flips;
    expect(second - first).toBeCloseTo(middle.free.flipTime ?? Number.NaN, 9);
  });

  test('a cleaner throw turns over later: by ln 10 over the rate of growth for a tenth of the error', () => {
    // Linear growth about the middle axis (any textbook): W sqrt((I2 - I1)(I3 - I2) / (I1 I3)); there and back is two of it.
    const [I1, I2, I3] = inertia;
    const rate = SPIN * Math.sqrt(((I2 - I1) * (I3 - I2)) / (I1 * I3));
    const time = (besideDeg: number) =>
      throwRacket(inertia, 'middle', radiansFromDegrees(besideDeg)).free.flipTime ?? Number.NaN;
    expect(time(0.001) - time(0.01)).toBeCloseTo((2 * Math.LN10) / rate, 5);
  });

  test('tells what was seen: each turning over, and none at the end of a throw about another axis', () => {
    const heard: Happening[] = [];
    const happenings = createHappenings();
    happenings.subscribe((happening) => heard.push(happening));
    const run = createRacketRun(inertia, happenings, radiansFromDegrees(1));
    run.setTime(0.01);
    expect(heard).toHaveLength(0);
    run.setTime(run.thrown.flips[1] + 1e-6);
    expect(heard).toEqual([{ kind: 'racket', axis: 'middle', flips: 2 }]);
    run.choose('least', radiansFromDegrees(1));
    run.setTime(4);
    expect(heard).toHaveLength(1);
    run.setTime(DURATION);
    expect(heard.at(-1)).toEqual({ kind: 'racket', axis: 'least', flips: 0 });
    expect(heard).toHaveLength(2);
  });

  test('its angular momentum points up and stays so while it tumbles', () => {
    const run = createRacketRun(inertia, createHappenings(), radiansFromDegrees(5));
    for (const time of [0, 1.7, 5.3, 2.2]) {
      run.setTime(time);
      const { spin, attitude } = run.motion;
      const [w, x, y, z] = attitude;
      const L = inertia.map((I, k) => I * spin[k]);
      // Third row of the rotation matrix of a unit quaternion, and the other two by their sum of squares.
      const up =
        2 * (x * z - w * y) * L[0] + 2 * (y * z + w * x) * L[1] + (1 - 2 * (x * x + y * y)) * L[2];
      // The tumbling keeps it to 1e-8 of its size.
      expect(up / Math.hypot(...L)).toBeCloseTo(1, 8);
    }
  });
});

describe('what the text says of the gripped blade', () => {
  /**
   * Bug: the text said that a grip flees where its moment about the shaft is the least of the three, "where a free racket spins
   * well". The least is the long axis, which a grip holds square to the shaft: it flees about the middle one. By hand: the
   * moment about the shaft is J_xx + J_yy cos^2 t + J_zz sin^2 t - J_yz sin 2t; the three moments of the whole about the hub are
   * eigenvalues of tr J - J.
   */
  test.each(['1-bare-grip', '2-long-bolt', '3-ordinary-bolt', '6-full-size'])(
    '%s rests about its greatest axis and flees about its middle one, whatever its least',
    (name) => {
      const file = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
      const read = parseDesign(readFileSync(file, 'utf8'));
      if (!read.ok) throw new Error(read.error.path);
      const model = new HeadModel();
      model.load(read.value);
      const J = model.totals(createMoments());
      const trace = J[JXX] + J[JYY] + J[JZZ];
      const { values } = eigenSymmetric({
        xx: trace - J[JXX],
        yy: trace - J[JYY],
        zz: trace - J[JZZ],
        xy: -J[JXY],
        xz: -J[JXZ],
        yz: -J[JYZ],
      });
      const [least, middle, greatest] = [...values].toSorted((a, b) => a - b);
      const aboutShaft = (t: number) =>
        J[JXX] + J[JYY] * Math.cos(t) ** 2 + J[JZZ] * Math.sin(t) ** 2 - J[JYZ] * Math.sin(2 * t);
      const turns = Array.from({ length: 1801 }, (_, i) => aboutShaft((i * Math.PI) / 1800));
      // Products with x turn the axes a little: second order in J_xy / J_xx, some thousandths here.
      const near = 5e-3 * (greatest - least);
      expect(Math.abs(Math.max(...turns) - greatest)).toBeLessThan(near);
      expect(Math.abs(Math.min(...turns) - middle)).toBeLessThan(near);
      expect(middle).toBeGreaterThan(2 * least);
    },
  );
});
