import { describe, expect, it } from 'vitest';
import {
  readHead,
  type SetHead,
  sceneOf,
  setFor,
  withChanges,
} from '../../../src/lessons/course/head';
import type { Change, Lesson } from '../../../src/lessons/course/lesson';
import { type QuantityRef, quantityValue } from '../../../src/lessons/course/quantity';
import { lessonOf } from './files';

/**
 * What the lessons say, against formulas worked out by hand (derived; J of cylinder and block as in any handbook). Units as
 * in the lesson files: mm, g, g mm^2, N mm, degrees. Rounding only: 1e-9 of the value unless said.
 */
const DEG = Math.PI / 180;
/** W^2 in N mm for each g mm^2: 1 g mm^2/s^2 is 1e-6 N mm. */
const spin = (rpm: number) => ((rpm * Math.PI) / 30) ** 2 * 1e-6;
const cylinderMass = (d: number, l: number, rho: number) => (rho * 1e-6 * Math.PI * d * d * l) / 4;

function at(lesson: Lesson, step: number): SetHead {
  const set = setFor(lesson, step);
  if (!set.ok) throw new Error(set.error.path);
  return set.value;
}

function read(set: SetHead, ref: QuantityRef): number {
  const value = quantityValue(readHead(set), ref);
  if (value === null) throw new Error(`no ${ref.quantity}`);
  return value;
}

function changed(set: SetHead, ...changes: readonly Change[]): SetHead {
  const next = withChanges(set, changes);
  if (!next.ok) throw new Error(next.error.path);
  return next.value;
}

function near(found: number, hand: number, relative = 1e-9): void {
  expect(Math.abs(found - hand)).toBeLessThanOrEqual(relative * Math.abs(hand));
}

describe('two lumps on a stick', () => {
  const lesson = lessonOf('1-two-lumps.json');
  const stick = cylinderMass(2, 24, 160) * (24 ** 2 / 12 - 2 ** 2 / 16);

  it('M = -W^2 (A/2) sin 2t with A = 2 m r^2 and the stick', () => {
    const spread = 2 * 5 * 10 ** 2 + stick;
    near(read(at(lesson, 0), { quantity: 'spread' }), spread);
    for (const t of [20, 45]) {
      const hand = (-spin(10_000) * spread * Math.sin(2 * t * DEG)) / 2;
      near(read(at(lesson, 0), { quantity: 'moment', atDeg: t }), hand);
    }
  });

  it('half the distance leaves a quarter of the lumps\u2019 share, and four times the mass brings it back', () => {
    near(read(at(lesson, 3), { quantity: 'spread' }), 2 * 5 * 5 ** 2 + stick);
    const heavy = changed(
      at(lesson, 3),
      { part: 'ahead', field: 'massGrams', value: 20 },
      { part: 'behind', field: 'massGrams', value: 20 },
    );
    near(read(heavy, { quantity: 'spread' }), read(sceneOf(lesson), { quantity: 'spread' }));
  });
});

describe('blade and bolt', () => {
  it('a strip swings sqrt((c^2 - t^2)/(c^2 + t^2)) times a turn: 0.992 thin, 0.9 at 9.07 mm', () => {
    const lesson = lessonOf('2-blade-lies-flat.json');
    const rate = (t: number) => Math.sqrt((28 ** 2 - t ** 2) / (28 ** 2 + t ** 2));
    near(read(at(lesson, 2), { quantity: 'swings' }), rate(2.5));
    // (1 - 0.81)/(1 + 0.81) of the width squared.
    const thickMm = 28 * Math.sqrt(0.19 / 1.81);
    expect(thickMm).toBeCloseTo(9.07, 2);
    const thick = changed(at(lesson, 2), {
      part: 'blade',
      field: 'sizeMm',
      component: 2,
      value: thickMm,
    });
    near(read(thick, { quantity: 'swings' }), 0.9);
  });

  it('twice the speed is four times the moment', () => {
    const lesson = lessonOf('2-blade-lies-flat.json');
    const moment = { quantity: 'moment', atDeg: 20 } as const;
    near(read(at(lesson, 0), moment), 4 * read(sceneOf(lesson), moment));
  });

  it('a cylinder is round at a length of sqrt(3)/2 of its diameter', () => {
    const lesson = lessonOf('3-bolt-stands-up.json');
    const lengthMm = (5.5 * Math.sqrt(3)) / 2;
    const round = changed(at(lesson, 1), { part: 'bolt', field: 'lengthMm', value: lengthMm });
    const size = cylinderMass(5.5, lengthMm, 7850) * lengthMm ** 2;
    expect(Math.abs(read(round, { quantity: 'spread' }))).toBeLessThan(1e-12 * size);
    near(lengthMm / 5.5, 0.866, 1e-4);
  });

  it('the bolt that cancels the blade is 34.6 mm long', () => {
    const lesson = lessonOf('4-round-ellipse.json');
    const blade = (90 * 28 * 2.5 * 1.55e-3 * (28 ** 2 - 2.5 ** 2)) / 12;
    const bolt = (l: number) => cylinderMass(5.5, l, 7850) * (l ** 2 / 12 - 5.5 ** 2 / 16);
    let [low, high] = [20, 40];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (bolt(middle) < blade) low = middle;
      else high = middle;
    }
    expect(low).toBeCloseTo(34.6, 1);
    const round = changed(sceneOf(lesson), { part: 'bolt', field: 'lengthMm', value: low });
    expect(Math.abs(read(round, { quantity: 'spread' }))).toBeLessThan(1e-9 * blade);
  });
});

describe('the ball off the plane', () => {
  it('M at flat is -W^2 m y z, and tan 2t = -2 J_yz/(J_yy - J_zz)', () => {
    const lesson = lessonOf('5-off-the-plane.json');
    near(read(at(lesson, 1), { quantity: 'moment', atDeg: 0 }), -spin(10_200) * 0.7 * 17 * 8);
    const blade = (90 * 28 * 2.5 * 1.55e-3 * (28 ** 2 - 2.5 ** 2)) / 12;
    const spread = blade + 2 * 0.7 * 17 ** 2 - 0.7 * 4 ** 2;
    const rest = -Math.atan((2 * 0.7 * 17 * 4) / spread) / 2 / DEG;
    near(read(at(lesson, 0), { quantity: 'rest' }), rest, 1e-7);
    expect(rest).toBeCloseTo(-2.6, 1);
  });

  it('ahead and up is cancelled by behind and up', () => {
    const lesson = lessonOf('5-off-the-plane.json');
    const set = changed(at(lesson, 1), {
      part: 'twin',
      field: 'positionMm',
      component: 2,
      value: 8,
    });
    expect(Math.abs(read(set, { quantity: 'product' }))).toBeLessThan(1e-9);
  });
});

describe('friction, linkage, bearings', () => {
  it('at half the speed the moment of the masses is a quarter, the friction more than that', () => {
    const lesson = lessonOf('6-holding-bands.json');
    const [fast, slow] = [readHead(at(lesson, 0)), readHead(at(lesson, 2))];
    const value = (head: typeof fast, ref: QuantityRef) => quantityValue(head, ref) ?? Number.NaN;
    const moment = { quantity: 'moment', atDeg: 15 } as const;
    near(value(slow, moment), value(fast, moment) / 4);
    const friction = { quantity: 'friction', atDeg: 0 } as const;
    expect(value(slow, friction)).toBeGreaterThan(value(fast, friction) / 4);
    expect(value(slow, friction)).toBeLessThan(value(fast, friction));
  });

  it('the arm goes over centre where ball, axis and slider ball lie in one line', () => {
    const lesson = lessonOf('7-over-centre.json');
    const head = readHead(sceneOf(lesson));
    const [, y, z] = head.reading.linkage?.ball_G ?? [0, 0, 0];
    const reach = Math.hypot(y, z) * 1000;
    const [sliderMm, rodMm] = [19, 16];
    const hand = -Math.acos(sliderMm / (reach + rodMm)) / DEG - Math.atan2(z, y) / DEG;
    near(quantityValue(head, { quantity: 'overCentre' }) ?? 0, hand, 1e-9);
  });

  it('the numbers written in the texts are those of the head', () => {
    // As printed in the lessons, to their last digit.
    const over = readHead(sceneOf(lessonOf('7-over-centre.json')));
    const force = (atDeg: number) => quantityValue(over, { quantity: 'force', atDeg }) ?? 0;
    expect(force(-40)).toBeCloseTo(10.5, 1);
    expect(force(-50)).toBeCloseTo(36.6, 1);
    expect(quantityValue(over, { quantity: 'overCentre' })).toBeCloseTo(-53.7, 1);
    const lesson = lessonOf('10-how-close.json');
    const nut = (value: number, atDeg: number) =>
      Math.abs(
        read(changed(sceneOf(lesson), { part: 'nut', field: 'heightMm', value }), {
          quantity: 'force',
          atDeg,
        }),
      );
    expect(nut(6.3, 20)).toBeCloseTo(0.28, 2);
    expect([nut(6.42, -20), nut(6.43, -20)].map((size) => size <= 0.6)).toEqual([true, false]);
    expect([nut(6.15, 20), nut(6.14, 20)].map((size) => size <= 0.6)).toEqual([true, false]);
  });

  it('a weight moved up by z changes the flapwise moment by W^2 m x z cos t', () => {
    const lesson = lessonOf('9-one-side-or-two.json');
    const flap = { quantity: 'flap', atDeg: 10 } as const;
    // The air is the same in both, and left out: it takes its time.
    const still = { section: 'counted', field: 'air', value: false } as const;
    const [up, down] = [at(lesson, 0), sceneOf(lesson)].map((set) => changed(set, still));
    const found = read(up, flap) - read(down, flap);
    const mass = cylinderMass(7, 2.5, 7850);
    const hand = -spin(10_200) * mass * 38 * (2 * 13.75) * Math.cos(10 * DEG);
    near(found, hand, 1e-9);
  });
});

describe('sentences that were once wrong', () => {
  it('a flat head at the end of a bolt flees; only a disc on the axis centres', () => {
    const lesson = lessonOf('3-bolt-stands-up.json');
    const disc = at(lesson, 1);
    expect(read(disc, { quantity: 'spread' })).toBeGreaterThan(0);
    const out = changed(disc, { part: 'bolt', field: 'positionMm', component: 2, value: 12 });
    // By the parallel axis: m z^2 against m (d^2/16 - L^2/12).
    const mass = cylinderMass(5.5, 3, 7850);
    near(read(out, { quantity: 'spread' }), mass * (5.5 ** 2 / 16 - 3 ** 2 / 12 - 12 ** 2));
  });

  it('a ball ahead and above is cured from behind and above or straight below, and made worse from behind and below', () => {
    const lesson = lessonOf('5-off-the-plane.json');
    const twinAt = (yMm: number, zMm: number) => {
      const place = { part: 'twin', field: 'positionMm' };
      const set = changed(
        at(lesson, 1),
        { ...place, component: 1, value: yMm },
        { ...place, component: 2, value: zMm },
      );
      return read(set, { quantity: 'product' });
    };
    expect(Math.abs(twinAt(-17, 8))).toBeLessThan(1e-9);
    expect(Math.abs(twinAt(17, -8))).toBeLessThan(1e-9);
    near(twinAt(-17, -8), 2 * 0.7 * 17 * 8);
  });

  it('before over-centre the rod pulls, beyond it pushes', () => {
    const head = at(lessonOf('7-over-centre.json'), 0);
    expect(read(head, { quantity: 'force', atDeg: -50 })).toBeGreaterThan(30);
    expect(read(head, { quantity: 'force', atDeg: -57 })).toBeLessThan(-30);
  });

  it('friction at the push rod is the 0.6 N that the last lesson goes by, not the drag at the slider', () => {
    const { reading } = readHead(sceneOf(lessonOf('10-how-close.json')));
    const rod = (deg: number) => Math.abs(reading.forceOf(reading.friction.at(deg), deg) ?? 0);
    for (const deg of [-20, 0, 20]) {
      expect(rod(deg)).toBeGreaterThan(0.58);
      expect(rod(deg)).toBeLessThan(0.69);
    }
  });

  it('friction holds 20 degrees both ways at 1,550 rpm and no longer at 1,620', () => {
    const lesson = lessonOf('6-holding-bands.json');
    const held = (rpm: number) => {
      const set = changed(at(lesson, 2), { section: 'rotor', field: 'speedRpm', value: rpm });
      return [20, -20].map((atDeg) => read(set, { quantity: 'bandWidth', atDeg }) > 1);
    };
    expect(held(1550)).toEqual([true, true]);
    expect(held(1620)).toEqual([true, false]);
  });
});
