import { describe, expect, it } from 'vitest';
import {
  type BenchReading,
  dragShares,
  type RestDrag,
  restDragAt,
} from '../../../src/engine/identify/benchReading';
import {
  coarseness,
  repeatCounts,
  sharedRounding,
} from '../../../src/engine/identify/quantisation';
import { radians } from '../../../src/engine/units';

const rows: RestDrag[] = [
  { travel: -0.01, force: 0.5, sigma: 0.03 },
  { travel: 0, force: 0.1, sigma: 0.04 },
  { travel: 0.03, force: 0.4, sigma: 0.12 },
];

describe('drag at rest between the travels where it was measured', () => {
  it.each([
    [-1, [1, 0, 0]],
    [-0.01, [1, 0, 0]],
    [-0.0025, [0.25, 0.75, 0]],
    [0, [0, 1, 0]],
    [0.01, [0, 2 / 3, 1 / 3]],
    [0.03, [0, 0, 1]],
    [1, [0, 0, 1]],
  ])('at %d m is straight between rows, the end rows held beyond', (travel, wanted) => {
    dragShares(rows, travel).forEach((share, k) => expect(share).toBeCloseTo(wanted[k], 14));
  });

  it('has force and uncertainty of its rows, which are independent', () => {
    // 0.25 x 0.5 + 0.75 x 0.1, and 0.25 x 0.03 with 0.75 x 0.04: 7.5 and 30 thousandths.
    const { force, sigma } = restDragAt(rows, -0.0025);
    expect(force).toBeCloseTo(0.2, 14);
    expect(sigma).toBeCloseTo(Math.hypot(0.0075, 0.03), 14);
    expect(restDragAt([], 1)).toEqual({ force: 0, sigma: 0 });
    expect(restDragAt(rows.slice(0, 1), 0.5)).toEqual({ force: 0.5, sigma: 0.03 });
  });

  it('asks for travels that ascend', () => {
    expect(() => dragShares([rows[0], rows[0]], 0)).toThrow(RangeError);
    expect(() => dragShares([rows[0], rows[2], rows[1]], 0)).toThrow(RangeError);
  });
});

const reading = (change: Partial<BenchReading>): BenchReading => ({
  force: 1,
  sense: 1,
  pitch: radians(0.1),
  angularSpeed: 1000,
  forcePerMoment: 50,
  travel: 0,
  zero: 0,
  ...change,
});

describe('repeats', () => {
  it('are readings of one zero, sense, speed and pitch, whatever the force', () => {
    const readings = [
      reading({}),
      reading({ force: 2 }),
      reading({ force: 3, travel: 1 }),
      reading({ zero: 1 }),
      reading({ sense: -1 }),
      reading({ angularSpeed: 1001 }),
      reading({ pitch: radians(0.11) }),
      reading({ pitch: radians(0.11) }),
    ];
    expect([...repeatCounts(readings)]).toEqual([3, 3, 3, 1, 1, 1, 2, 2]);
  });
});

describe('a coarse gauge', () => {
  const forces = (...all: number[]) => all.map((force) => reading({ force }));

  it('is one within four of whose steps all forces lie, with noise below 0.3 of a step', () => {
    expect(coarseness(forces(-2, 5, 0), 2, 0.5)).toEqual({ spanSteps: 3.5, noiseSteps: 0.25 });
    expect(coarseness(forces(-3, 5, 0), 2, 0.5)).toBeNull();
    expect(coarseness(forces(-2, 5, 0), 2, 0.6)).toBeNull();
  });

  it('is none that has no step, nor one without readings', () => {
    expect(coarseness(forces(1, 1), 0, 0)).toBeNull();
    expect(coarseness([], 1, 0)).toBeNull();
  });
});

describe('what repeats share of their rounding', () => {
  // 6/pi^2 sum exp(-(2 pi k s)^2) / k^2 for noise of s steps: eight terms leave exp(-32) at a tenth of a step.
  it.each([0.3, 0.15, 0.1])('with noise of %d of a step is the sum of few terms', (noise) => {
    const terms = [1, 2, 3, 4, 5, 6, 7, 8].map(
      (k) => Math.exp(-((2 * Math.PI * k * noise) ** 2)) / k ** 2,
    );
    const sum = terms.reduce((all, one) => all + one, 0);
    expect(sharedRounding(2, 2 * noise)).toBeCloseTo((6 / Math.PI ** 2) * sum, 8);
  });

  it('with hardly any noise is nearly all', () => {
    // Sum of (1 - exp(-(a k)^2)) / k^2 is a sqrt pi for small a, less a^2 / 2 (Euler and Maclaurin), a = 2 pi s.
    const a = 2 * Math.PI * 1e-3;
    const wanted = 1 - (6 / Math.PI ** 2) * (a * Math.sqrt(Math.PI) - (a * a) / 2);
    expect(sharedRounding(1, 1e-3)).toBeCloseTo(wanted, 6);
    expect(sharedRounding(0, 0)).toBe(0);
  });
});
