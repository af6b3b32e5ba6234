import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bifilarMoment } from '../../../src/engine/mass/bifilar';
import { centralSecondMoment } from '../../../src/engine/mass/inertia';
import {
  applyMeasured,
  type BodyAxis,
  type MeasuredBody,
  type TimedInertia,
} from '../../../src/engine/mass/measured';
import {
  createMoments,
  JXX,
  JYY,
  JZZ,
  M,
  type Moments,
  transformMoments,
} from '../../../src/engine/mass/moments';
import { findValidity } from '../../../src/engine/mass/validity';
import { IDENTITY, type Vec3 } from '../../../src/engine/math/vector';
import { cloud, LAW, position, real } from '../../support/arbitrary';
import { boxShape, cloudMoments, pointAt, solid, weighed } from '../../support/shapes';
import { exactPeriod } from './swing';

function applied(model: Moments, measured: MeasuredBody): Moments {
  const out = createMoments();
  const result = applyMeasured(model, measured, out);
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.error)}`);
  return out;
}

/** The fault of measurements that must be refused; `out` must be left alone. */
function refused(model: Moments, measured: MeasuredBody) {
  const out = createMoments().fill(7);
  const result = applyMeasured(model, measured, out);
  if (result.ok) throw new Error('taken on');
  expect(Array.from(out)).toEqual(new Array(10).fill(7));
  return result.error;
}

function central(moments: Moments) {
  const J = centralSecondMoment(moments);
  if (J === null) throw new Error('no mass');
  return J;
}

/** Moments of inertia about x, y, z through the centre of mass. */
function inertias(moments: Moments): Vec3 {
  const J = central(moments);
  return [J.yy + J.zz, J.xx + J.zz, J.xx + J.yy];
}

function timed(moments: Moments, ...axes: BodyAxis[]): TimedInertia[] {
  const values = inertias(moments);
  return axes.map((axis) => ({ axis, moment: values[axis] }));
}

function movedBy(moments: Moments, by: Vec3): Moments {
  return transformMoments(moments, { rotation: IDENTITY, translation: by }, createMoments());
}

/** Mass, J about the centre as xx, yy, zz, xy, xz, yz and the centre. */
function body(mass: number, J: readonly number[], centre: Vec3 = [0, 0, 0]): Moments {
  return movedBy(Float64Array.of(mass, 0, 0, 0, ...J), centre);
}

/** Every one of the ten numbers of `found` is that of `expected` within `relative` of its own kind's size. */
function expectSame(found: Moments, expected: Moments, relative = 1e-12): void {
  const mass = Math.abs(expected[M]);
  const trace = expected[4] + expected[5] + expected[6];
  found.forEach((value, k) => {
    const size = k === 0 ? mass : k < 4 ? Math.sqrt(mass * trace) : trace;
    expect(Math.abs(value - expected[k])).toBeLessThanOrEqual(relative * size);
  });
}

const AXES: readonly (readonly BodyAxis[])[] = [
  [],
  [0],
  [1],
  [2],
  [0, 1],
  [0, 2],
  [1, 2],
  [0, 1, 2],
];

describe('a measured mass', () => {
  test('turns a bar drawn in steel into the same bar of brass', () => {
    const pose = { rotation: IDENTITY, translation: [0.02, 0.003, -0.001] } as const;
    const steel = weighed(solid(boxShape(0.09, 0.025, 0.004), 7850, pose));
    const brass = weighed(solid(boxShape(0.09, 0.025, 0.004), 8470, pose));
    expectSame(applied(steel, { mass: brass[M] }), brass, 1e-15);
  });

  test('scales products with the rest: a bar drawn askew', () => {
    const J = [4e-6, 3e-7, 5e-8, 2e-7, -1e-8, 3e-9];
    const twice = body(
      0.02,
      J.map((one) => 2 * one),
      [0.04, 0.002, 0.001],
    );
    expectSame(applied(body(0.01, J, [0.04, 0.002, 0.001]), { mass: 0.02 }), twice, 1e-14);
  });

  test('and nothing else measured leaves an impossible model its shape: that is for the validity check to say', () => {
    const odd = body(0.01, [1e-6, -2e-7, 3e-7, 0, 0, 0]);
    expectSame(applied(odd, { mass: 0.02 }), body(0.02, [2e-6, -4e-7, 6e-7, 0, 0, 0]), 1e-15);
  });
});

describe('a measured centre of mass', () => {
  test('moves the body in the measured directions only and keeps J about its centre', () => {
    const J = [4e-6, 3e-7, 5e-8, 2e-7, -1e-8, 3e-9];
    const found = applied(body(0.01, J, [0.04, 0.002, 0.001]), { centre: [0.045, null, -0.0005] });
    expectSame(found, body(0.01, J, [0.045, 0.002, -0.0005]), 1e-14);
  });
});

describe('timed moments of inertia', () => {
  // Correlations 0.5, -0.3, 0.2 of the modelled spreads 9, 4, 1 (1e-8 kg m^2).
  const model = body(0.01, [9e-8, 4e-8, 1e-8, 3e-8, -0.9e-8, 0.4e-8]);
  const spreads = (inertia: readonly TimedInertia[]) => {
    const J = central(applied(model, { inertia }));
    return [J.xx, J.yy, J.zz].map((value) => Number((value / 1e-8).toPrecision(12)));
  };

  // Hand: I_x = J_yy + J_zz, I_y = J_xx + J_zz, I_z = J_xx + J_yy; modelled 5, 10, 13.
  test('about one axis set the greater contributor: span the chord, chord and thickness the span', () => {
    expect(spreads([{ axis: 0, moment: 6e-8 }])).toEqual([9, 5, 1]);
    expect(spreads([{ axis: 1, moment: 8e-8 }])).toEqual([7, 4, 1]);
    expect(spreads([{ axis: 2, moment: 14e-8 }])).toEqual([10, 4, 1]);
  });

  test('about two axes keep the thickness as drawn', () => {
    const [span, chord, thickness] = [6e-8, 8e-8, 14e-8];
    const about = (...two: [BodyAxis, number][]) =>
      spreads(two.map(([axis, moment]) => ({ axis, moment })));
    expect(about([0, span], [1, chord])).toEqual([7, 5, 1]);
    expect(about([2, thickness], [0, span])).toEqual([9, 5, 1]);
    expect(about([1, chord], [2, thickness])).toEqual([7, 7, 1]);
  });

  test('about all three keep the good span timing of a thin blade beside two that nearly cancel', () => {
    // Box blade 92 x 28 x 2 mm of 7 g (hand formula m (a^2 + b^2) / 12): I_x 459.7, I_y 4939.7, I_z 5394.7 g mm^2.
    const m = 7e-3;
    const J = [0.092, 0.028, 0.002].map((side) => (m * side * side) / 12);
    const blade = createMoments();
    blade[M] = m;
    blade.set(J, JXX);
    const [xx, yy, zz] = J;
    // I_z comes out 1 % too great, as a stopwatch reads it: alone it would add 54 g mm^2 to J_yy - J_zz.
    const inertia = [
      { axis: 0, moment: yy + zz, uncertainty: 5e-9 },
      { axis: 1, moment: xx + zz, uncertainty: 51e-9 },
      { axis: 2, moment: 1.01 * (xx + yy), uncertainty: 52e-9 },
    ] as const;
    const out = createMoments();
    expect(applyMeasured(blade, { inertia }, out).ok).toBe(true);
    const off = out[JYY] - out[JZZ] - (yy - zz);
    expect(Math.abs(off)).toBeLessThan(2e-9);
    // And what the three say of the length is split between the two that see it.
    expect(out[JXX]).toBeGreaterThan(xx);
    expect(out[JXX]).toBeLessThan(xx + 0.01 * (xx + yy));
  });

  test('about all three leave nothing of the drawing but the correlations', () => {
    const inertia: TimedInertia[] = [
      { axis: 0, moment: 6e-8 },
      { axis: 1, moment: 12e-8 },
      { axis: 2, moment: 14e-8 },
    ];
    expect(spreads(inertia)).toEqual([10, 4, 2]);
    const J = central(applied(model, { inertia }));
    expect(J.xy / Math.sqrt(J.xx * J.yy)).toBeCloseTo(0.5, 12);
    expect(J.xz / Math.sqrt(J.xx * J.zz)).toBeCloseTo(-0.3, 12);
    expect(J.yz / Math.sqrt(J.yy * J.zz)).toBeCloseTo(0.2, 12);
  });

  test('about the axis of a round body leave it round', () => {
    const round = body(0.01, [4e-8, 4e-8 * (1 + 1e-15), 1e-8, 0, 0, 0]);
    const J = central(applied(round, { inertia: [{ axis: 2, moment: 10e-8 }] }));
    expect(J.xx / 5e-8).toBeCloseTo(1, 12);
    expect(J.yy / 5e-8).toBeCloseTo(1, 12);
  });

  test('of a rod drawn without thickness give it thickness, and no product out of rounding', () => {
    const rod = weighed(pointAt(0.005, 0.081, 0.011, 0.013), pointAt(0.005, 0.117, 0.011, 0.013));
    const inertia: TimedInertia[] = [
      { axis: 0, moment: 5e-8 },
      { axis: 1, moment: 3.26e-6 },
      { axis: 2, moment: 3.27e-6 },
    ];
    const J = central(applied(rod, { inertia }));
    expect(J.zz / 2e-8).toBeCloseTo(1, 8);
    expect(Math.abs(J.xy)).toBeLessThan(1e-12 * J.xx);
    expect(Math.abs(J.xz)).toBeLessThan(1e-12 * J.xx);
    expect(Math.abs(J.yz)).toBeLessThan(1e-12 * J.xx);
  });

  // 0.1 + 0.7 falls one rounding short of 0.8: the spread through the plate comes out below nothing.
  test('of a plate without thickness are taken on though rounding leaves it less than none', () => {
    const unit = 2 ** -20;
    const inertia = [0.1, 0.7, 0.8].map((value, k) => ({
      axis: k as BodyAxis,
      moment: value * unit,
    }));
    expect((0.1 + 0.7 - 0.8) / 2).toBeLessThan(0);
    for (const drawn of [weighed(pointAt(0.01, 0, 0, 0)), model]) {
      const J = central(applied(drawn, { inertia }));
      expect(J.xx / (0.7 * unit)).toBeCloseTo(1, 12);
      expect(J.yy / (0.1 * unit)).toBeCloseTo(1, 12);
      expect(Math.abs(J.zz)).toBeLessThan(1e-15 * unit);
      expect([J.xz, J.yz]).toEqual([-0, 0].map((zero) => expect.closeTo(zero, 30)));
    }
  });

  // Derived: the bar's own m (b^2 + c^2) / 12. The amplitude of 1e-5 rad adds 2 e = 1.3e-11 x (1 + ...), below 1e-9.
  test('of a steel bar on two strings make a bar drawn in brass, too long and off its place, the steel one', () => {
    const [a, b, c] = [0.09, 0.025, 0.004];
    const at: Vec3 = [0.06, 0.002, -0.001];
    const pose = { rotation: IDENTITY, translation: at };
    const steel = weighed(solid(boxShape(a, b, c), 7850, pose));
    const drawn = weighed(solid(boxShape(0.1, 0.024, 0.0045), 8470));
    const mass = 7850 * a * b * c;
    const own = [b * b + c * c, a * a + c * c, a * a + b * b].map((s) => (mass * s) / 12);
    const inertia = ([0, 1, 2] as const).map((axis) => {
      const half = 0.03;
      const pendulum = { mass, moment: own[axis], half, length: 1, gravity: 9.80665 };
      const { moment } = bifilarMoment({
        mass,
        spacing: 2 * half,
        stringLength: 1,
        seconds: 20 * exactPeriod(pendulum, 1e-5),
        swings: 20,
        massUncertainty: 0,
        spacingUncertainty: 0,
        stringLengthUncertainty: 0,
        secondsUncertainty: 0,
      });
      return { axis, moment };
    });
    expectSame(applied(drawn, { mass, centre: at, inertia }), steel, 1e-9);
  });
});

describe('measurements that cannot be', () => {
  const model = body(0.01, [9e-8, 4e-8, 1e-8, 0, 0, 0]);

  test('of a model without mass, or with more hole than body, have nothing to correct', () => {
    expect(refused(createMoments(), { mass: 1 })).toEqual({ kind: 'modelWithoutMass', mass: 0 });
    const hole = weighed(solid(boxShape(0.1, 0.1, 0.1), -1));
    expect(refused(hole, {})).toEqual({ kind: 'modelWithoutMass', mass: hole[M] });
  });

  test('as numbers are named with their value', () => {
    for (const value of [0, -0.01, Number.NaN, Number.POSITIVE_INFINITY]) {
      const kind = 'impossibleValue';
      expect(refused(model, { mass: value })).toEqual({ kind, what: 'mass', value });
      expect(refused(model, { inertia: [{ axis: 1, moment: value }] })).toEqual({
        kind,
        what: 'inertiaY',
        value,
      });
    }
    expect(refused(model, { centre: [null, null, Number.NaN] })).toEqual({
      kind: 'impossibleValue',
      what: 'centreZ',
      value: Number.NaN,
    });
  });

  test('about one axis twice are refused where they differ', () => {
    const inertia: TimedInertia[] = [
      { axis: 0, moment: 5e-8 },
      { axis: 1, moment: 1e-7 },
      { axis: 0, moment: 6e-8 },
    ];
    expect(refused(model, { inertia })).toEqual({
      kind: 'timedTwice',
      axis: 0,
      moments: [5e-8, 6e-8],
    });
  });

  test('about span less than the drawn thickness alone gives contradict it, with the spread that would be left', () => {
    const fault = refused(model, { inertia: [{ axis: 0, moment: 0.75e-8 }] });
    if (fault.kind !== 'contradiction') throw new Error(fault.kind);
    expect(fault.axis).toBe(1);
    expect(fault.spread).toBeCloseTo(-0.25e-8, 20);
    expect(fault.inertias.map((one) => Number(one.toPrecision(9)))).toEqual([
      0.75e-8, 10e-8, 8.75e-8,
    ]);
    // The mass comes first: at a quarter of it the same timing leaves room.
    expect(
      central(applied(model, { mass: 0.0025, inertia: [{ axis: 0, moment: 0.75e-8 }] })).yy,
    ).toBeCloseTo(0.5e-8, 20);
  });

  test('break the triangle inequality of three moments of inertia, and only then', () => {
    const positive = real(1e-9, 1e-6).filter((value) => value > 0);
    fc.assert(
      fc.property(fc.tuple(positive, positive, positive), (I) => {
        const inertia = I.map((moment, k) => ({ axis: k as BodyAxis, moment }));
        const margin = Math.min(I[0] + I[1] - I[2], I[1] + I[2] - I[0], I[0] + I[2] - I[1]);
        fc.pre(Math.abs(margin) > 1e-15);
        const result = applyMeasured(model, { inertia }, createMoments());
        expect(result.ok).toBe(margin > 0);
        if (result.ok) return;
        const { error } = result;
        if (error.kind !== 'contradiction') throw new Error(error.kind);
        expect(error.spread / (margin / 2)).toBeCloseTo(1, 6);
        expect(I[error.axis]).toBe(Math.max(...I));
      }),
      LAW,
    );
  });

  test('are timings of a model whose hole is wider than it: no part of them is right', () => {
    const odd = body(0.01, [1e-6, -2e-7, 3e-7, 0, 0, 0]);
    const fault = refused(odd, { inertia: [{ axis: 0, moment: 1e-6 }] });
    if (fault.kind !== 'impossibleModel') throw new Error(fault.kind);
    expect(fault.smallestEigenvalue).toBeCloseTo(-2e-7, 18);
  });
});

describe('the correction by measurements', () => {
  const factors = fc.tuple(real(0.3, 3), real(0.3, 3), real(0.3, 3));
  const axes = fc.constantFrom(...AXES);

  test('that equal the model changes nothing, whichever of them were made', () => {
    fc.assert(
      fc.property(cloud, axes, fc.tuple(fc.boolean(), fc.boolean()), (points, about, [m, c]) => {
        const model = cloudMoments(points);
        const inertia = timed(model, ...about).filter((one) => one.moment > 0);
        const measured: MeasuredBody = {
          inertia,
          ...(m ? { mass: model[M] } : {}),
          ...(c ? { centre: [model[1] / model[M], model[2] / model[M], model[3] / model[M]] } : {}),
        };
        // Steiner's subtraction rounds J about the centre, and where a spread is 1e-12 of J its products with it: 1e-10.
        expectSame(applied(model, measured), model, 1e-10);
      }),
      LAW,
    );
  });

  test('does the same twice as once, and in place', () => {
    fc.assert(
      fc.property(cloud, axes, factors, position, (points, about, by, centre) => {
        const model = cloudMoments(points);
        const inertia = about.map((axis) => ({ axis, moment: inertias(model)[axis] * by[axis] }));
        const measured: MeasuredBody = { mass: model[M] * by[0], centre, inertia };
        const once = createMoments();
        const result = applyMeasured(model, measured, once);
        fc.pre(
          result.ok && inertia.every((one) => one.moment > 1e-9 * (model[4] + model[5] + model[6])),
        );
        const place = Float64Array.from(model);
        applyMeasured(place, measured, place);
        expect(Array.from(place)).toEqual(Array.from(once));
        expect(once[M]).toBe(measured.mass);
        const again = createMoments();
        // A spread that was corrected to nothing, or a change of which contributor is greater, is where it may differ.
        fc.pre(about.length !== 1 && applyMeasured(once, measured, again).ok);
        expectSame(again, once, 1e-9);
      }),
      LAW,
    );
  });

  test('gives the timed values back, and a body that can be, or is refused', () => {
    let taken = 0;
    fc.assert(
      fc.property(cloud, axes, factors, (points, about, by) => {
        const model = cloudMoments(points);
        const inertia = about
          .map((axis) => ({ axis, moment: inertias(model)[axis] * by[axis] }))
          .filter((one) => one.moment > 0);
        const out = createMoments();
        const result = applyMeasured(model, { inertia }, out);
        if (!result.ok) {
          expect(result.error.kind).toBe('contradiction');
          return;
        }
        taken++;
        const kinds = findValidity(out).map((one) => one.kind);
        expect(kinds).not.toContain('impossibleSpread');
        const found = inertias(out);
        const trace = out[4] + out[5] + out[6];
        for (const { axis, moment } of inertia) {
          expect(Math.abs(found[axis] - moment)).toBeLessThanOrEqual(1e-12 * trace);
        }
      }),
      LAW,
    );
    expect(taken).toBeGreaterThan(100);
  });

  // Spreads that stand clear of one another, within 0.17 m of the origin: Steiner's subtraction rounds J about the centre
  // by 2e-16 m (0.35 m)^2 / (3e-9 of the least) x 0.01 = 1e-10 of it.
  test('does not depend on where the frame has its origin', () => {
    let taken = 0;
    const bladeLike = fc.record({
      spread: fc.tuple(real(4e-8, 9e-8), real(1.5e-8, 3e-8), real(3e-9, 1e-8)),
      tilt: fc.tuple(real(-0.4, 0.4), real(-0.4, 0.4), real(-0.4, 0.4)),
      centre: position,
    });
    const slight = fc.tuple(real(0.8, 1.25), real(0.8, 1.25), real(0.8, 1.25));
    fc.assert(
      fc.property(
        bladeLike,
        axes,
        slight,
        position,
        ({ spread, tilt, centre }, about, by, shift) => {
          const [x, y, z] = spread.map(Math.sqrt);
          const products = [x * y * tilt[0], x * z * tilt[1], y * z * tilt[2]];
          const model = body(0.01, [...spread, ...products], centre);
          const inertia = about.map((axis) => ({ axis, moment: inertias(model)[axis] * by[axis] }));
          const here = createMoments();
          const there = createMoments();
          const mass = model[M] * by[2];
          const first = applyMeasured(model, { mass, centre: [0.01, null, 0.02], inertia }, here);
          const moved = [0.01 + shift[0], null, 0.02 + shift[2]] as const;
          const second = applyMeasured(
            movedBy(model, shift),
            { mass, centre: moved, inertia },
            there,
          );
          expect(second.ok).toBe(first.ok);
          if (!first.ok) return;
          taken++;
          expectSame(there, movedBy(here, shift), 1e-10);
        },
      ),
      LAW,
    );
    expect(taken).toBeGreaterThan(250);
  });

  test('goes with the mass and with the square of the length', () => {
    const k = 3;
    const s = 0.25;
    const J = [9e-8, 4e-8, 1e-8, 3e-8, -0.9e-8, 0.4e-8];
    const measured: MeasuredBody = {
      mass: 0.012,
      centre: [0.05, 0.004, null],
      inertia: [{ axis: 1, moment: 11e-8 }],
    };
    const found = applied(body(0.01, J, [0.04, 0.003, 0.002]), measured);
    const other = applied(
      body(
        0.01 * k,
        J.map((one) => one * k * s * s),
        [0.04 * s, 0.003 * s, 0.002 * s],
      ),
      {
        mass: 0.012 * k,
        centre: [0.05 * s, 0.004 * s, null],
        inertia: [{ axis: 1, moment: 11e-8 * k * s * s }],
      },
    );
    const expected = found.map((value, i) => value * k * (i === 0 ? 1 : i < 4 ? s : s * s));
    expectSame(other, expected, 1e-13);
  });
});
