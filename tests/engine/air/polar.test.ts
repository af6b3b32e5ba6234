import { describe, expect, test } from 'vitest';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import { type PolarTable, type TableOptions, tableSection } from '../../../src/engine/air/polar';
import type { PolarRow } from '../../../src/engine/air/polarTable';
import {
  ABOVE_REYNOLDS,
  BELOW_REYNOLDS,
  createCoefficients,
  OUTSIDE_ANGLE,
  symmetricSection,
} from '../../../src/engine/air/section';
import { radians } from '../../../src/engine/units';
import { conditionsAt, DEGREE, plainBlade } from './rotors';

function row(angleDeg: number, lift: number, drag: number, moment = 0): PolarRow {
  return { angleDeg, lift, drag, moment };
}

/** Published lift of SAND80-2114 (NACA 0015), with an invented drag and moment. */
const naca0015: PolarTable = {
  name: 'NACA 0015',
  blocks: [
    {
      reynolds: 360_000,
      rows: [
        row(0, 0, 0.01),
        row(8, 0.824, 0.02, 0.01),
        row(10, 0.944, 0.03),
        row(12, 0.9285, 0.05, -0.03),
      ],
    },
    {
      reynolds: 160_000,
      rows: [
        row(0, 0, 0.012),
        row(5, 0.55, 0.016),
        row(8, 0.7851, 0.022),
        row(10, 0.8322, 0.035),
        row(12, 0.5936, 0.09, -0.02),
        row(15, 0.2376, 0.2, -0.05),
      ],
    },
  ],
};

function made(table: PolarTable, options?: TableOptions) {
  const section = tableSection(table, options);
  if (!section.ok) throw new Error(JSON.stringify(section.error));
  const out = createCoefficients();
  return {
    ...section.value,
    at: (angleDeg: number, reynolds: number) => ({
      ...section.value.coefficients(angleDeg * DEGREE, reynolds, out),
    }),
  };
}

describe('a section from a table', () => {
  test('goes through its rows, at either interpolation and either sign when mirrored', () => {
    for (const interpolation of ['linear', 'monotone'] as const) {
      const section = made(naca0015, { interpolation, mirror: true });
      for (const { reynolds, rows } of naca0015.blocks) {
        for (const one of rows) {
          for (const sign of [1, -1]) {
            const seen = section.at(sign * one.angleDeg, reynolds ?? 0);
            expect(seen.lift).toBeCloseTo(sign * one.lift, 12);
            expect(seen.drag).toBeCloseTo(one.drag, 12);
            expect(seen.moment).toBeCloseTo(sign * one.moment, 12);
            expect(seen.outside).toBe(0);
          }
        }
      }
    }
  });

  // Hand: halfway between rows; halfway in log Re is the geometric mean, 240,000.
  test('is halfway between two rows, and between two Reynolds numbers in their logarithm', () => {
    const section = made(naca0015, { interpolation: 'linear' });
    expect(section.at(9, 160_000).lift).toBeCloseTo((0.7851 + 0.8322) / 2, 12);
    expect(section.at(8, 240_000).lift).toBeCloseTo((0.7851 + 0.824) / 2, 12);
  });

  test('overshoots no row with cubics', () => {
    const section = made(naca0015);
    for (let angle = 0; angle <= 15; angle += 0.05) {
      const { lift, drag } = section.at(angle, 160_000);
      expect(lift).toBeLessThanOrEqual(0.8322 + 1e-12);
      expect(drag).toBeGreaterThanOrEqual(0.012 - 1e-12);
      if (angle > 10 && angle < 14.9)
        expect(section.at(angle + 0.05, 160_000).lift).toBeLessThan(lift);
    }
  });

  // A cubic through the rows of sin has an error of the order of h^2 at the least: 0.01 for h = 0.1 rad.
  test('follows a smooth curve with cubics better than with straight lines', () => {
    const rows = Array.from({ length: 13 }, (_, k) => row(k * 5, Math.sin(k * 5 * DEGREE), 0.01));
    const table = { name: 'sine', blocks: [{ reynolds: null, rows }] };
    const error = (interpolation: 'linear' | 'monotone') =>
      Math.abs(made(table, { interpolation }).at(42.5, 1).lift - Math.sin(42.5 * DEGREE));
    expect(error('monotone')).toBeLessThan(error('linear') / 10);
  });

  test('beyond its angles fades into the flat plate and says so', () => {
    const section = made(naca0015, { mirror: true });
    const plate = symmetricSection();
    for (const angle of [27.1, 60, 90, 150, -40, -120]) {
      const seen = section.at(angle, 360_000);
      expect(seen).toEqual({
        ...plate.coefficients(angle * DEGREE, 0, createCoefficients()),
        outside: OUTSIDE_ANGLE,
      });
    }
    expect(section.at(12.0001, 360_000).outside).toBe(OUTSIDE_ANGLE);
    expect(section.at(12.0001, 360_000).lift).toBeCloseTo(0.9285, 6);
  });

  test('is continuous all round: with rows on one side, on both sides, and far past 90 degrees', () => {
    const far = {
      name: 'far',
      blocks: [
        { reynolds: null, rows: [row(-178, 0.3, 0.05), row(0, 0, 0.01), row(178, -0.2, 0.04)] },
      ],
    };
    for (const section of [made(naca0015), made(naca0015, { mirror: true }), made(far)]) {
      for (let angle = -181; angle < 181; angle += 0.01) {
        const a = section.at(angle, 200_000);
        const b = section.at(angle + 0.01, 200_000);
        // Steepest: the fade over one degree (half a gap of two), 1.5 x 1 degree x 0.5 per degree; 0.02 per 0.01 degree.
        if (!(Math.abs(a.lift - b.lift) < 0.02 && Math.abs(a.drag - b.drag) < 0.02))
          expect.fail(`jump at ${angle}`);
        if (!(a.drag > 0)) expect.fail(`drag at ${angle}`);
      }
    }
  });

  test('beyond its Reynolds numbers answers with the nearest and says so', () => {
    const section = made(naca0015);
    expect(section.at(8, 20_000)).toMatchObject({ lift: 0.7851, outside: BELOW_REYNOLDS });
    expect(section.at(8, 2e6)).toMatchObject({ lift: 0.824, outside: ABOVE_REYNOLDS });
    expect(section.at(14, 2e6).outside).toBe(OUTSIDE_ANGLE | ABOVE_REYNOLDS);
    expect(section.coverage).toEqual({
      lowestDeg: 0,
      highestDeg: 12,
      lowestReynolds: 160_000,
      highestReynolds: 360_000,
      rows: 10,
    });
  });

  test('carries its flags to the stations of the rotor', () => {
    const section = tableSection(naca0015, { mirror: true });
    if (!section.ok) throw new Error('table');
    const solution = createHoverSolution(8);
    // Re = 1.225 x 104.7 r x 0.06 / 1.79e-5 = 430,000 r (m): 34,000 at the innermost station, 203,000 at the outermost.
    const blade = plainBlade(0.05, 0.5, 0.06, 8);
    solveHover(blade, section.value, conditionsAt(1000, 2), radians(0.1), solution);
    expect(solution.unsolved).toBe(0);
    expect(solution.outside[0]).toBe(BELOW_REYNOLDS);
    expect(solution.outside[7]).toBe(0);
    expect(solution.outsideStations).toBe(solution.outside.filter((flag) => flag !== 0).length);
  });

  test('is refused where a mirrored table is not symmetric, and where rows are unusable', () => {
    const lifted = {
      name: '',
      blocks: [{ reynolds: null, rows: [row(0, 0.1, 0.01), row(5, 0.6, 0.01)] }],
    };
    expect(tableSection(lifted, { mirror: true })).toMatchObject({
      ok: false,
      error: { kind: 'notSymmetric', value: 0.1 },
    });
    expect(tableSection(lifted).ok).toBe(true);
    expect(tableSection({ name: '', blocks: [] })).toMatchObject({ error: { kind: 'tooFewRows' } });
    const pulling = {
      name: '',
      blocks: [{ reynolds: 1, rows: [row(0, 0, 0.01), row(5, 0.6, -0.01)] }],
    };
    expect(tableSection(pulling)).toMatchObject({ error: { kind: 'dragNegative', line: 2 } });
  });
});
