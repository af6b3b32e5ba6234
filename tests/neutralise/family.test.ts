import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import { createMoments, JYY, JZZ } from '../../src/engine/mass/moments';
import {
  cellMiddle,
  type Family,
  type FamilyRequest,
  FORBIDDEN,
  runFamily,
} from '../../src/neutralise/family';
import { lengthAt, nearestOnCurves } from '../../src/panels/family/familyScale';

function demo(): Design {
  const path = new URL('../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const read = parseDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

const REQUEST: FamilyRequest = {
  design: demo(),
  wanted: { goal: { kind: 'neutral' }, speedsRpm: [10_200] },
  length: { part: 'nut', field: 'heightMm' },
  diameter: { part: 'nut', field: 'acrossMm' },
  density: 'densityKgM3',
  materials: ['steel', 'tungsten-alloy-1'],
  lengthsMm: [0.5, 22],
  diametersMm: [4, 15],
  largestBarMm: 12,
};

function evenWith(values: Record<string, unknown>): number {
  const parts = demo().parts.map((part) => (part.id === 'nut' ? { ...part, ...values } : part));
  const model = new HeadModel();
  if (!model.load({ ...demo(), parts: parts as Part[] }).ok) return Number.NaN;
  const totals = model.totals(createMoments());
  return totals[JYY] - totals[JZZ];
}

describe('the family of nuts that make the demo head neutral', () => {
  let family: Family;
  beforeAll(() => {
    family = runFamily(REQUEST);
  });

  it('every point puts J_yy - J_zz to zero, in its material', () => {
    const start = Math.abs(evenWith({}));
    let seen = 0;
    for (const { material, points } of family.curves) {
      for (const point of points) {
        if (!point) continue;
        seen++;
        const { diameterMm: acrossMm, lengthMm: heightMm } = point;
        expect(Math.abs(evenWith({ acrossMm, heightMm, material }))).toBeLessThan(1e-9 * start);
      }
    }
    expect(seen).toBeGreaterThan(50);
  });

  it('a wider nut is a shorter one, and a denser one shorter still', () => {
    const [steel, tungsten] = family.curves.map(({ points }) => points);
    const lengths = steel.flatMap((point) => (point ? [point.lengthMm] : []));
    expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    steel.forEach((point, i) => {
      const denser = tungsten[i];
      if (point && denser) expect(denser.lengthMm).toBeLessThan(point.lengthMm);
    });
  });

  it('between two points the length is within 0.005 mm of a solution', () => {
    const [steel] = family.curves;
    for (const acrossMm of [5.53, 6.71, 8.04, 9.9, 13.3]) {
      const heightMm = lengthAt(steel, acrossMm) ?? Number.NaN;
      const at = (mm: number) => evenWith({ acrossMm, heightMm: mm, material: 'steel' });
      // The true length lies where the sign changes.
      expect(at(heightMm - 0.005) * at(heightMm + 0.005)).toBeLessThan(0);
    }
  });

  it('shades what is thicker than the bar, what cannot be made and what overloads', () => {
    const { map } = family;
    let [rule, bearing] = [0, 0];
    for (let row = 0; row < map.rows; row++) {
      for (let column = 0; column < map.columns; column++) {
        const cell = map.cells[row * map.columns + column];
        const [acrossMm, heightMm] = cellMiddle(REQUEST, map, column, row);
        expect((cell & FORBIDDEN.stock) !== 0).toBe(acrossMm > 12);
        const refused = Number.isNaN(evenWith({ acrossMm, heightMm, material: 'steel' }));
        expect((cell & FORBIDDEN.rule) !== 0).toBe(refused);
        if (cell & FORBIDDEN.rule) rule++;
        if (cell & FORBIDDEN.bearing) bearing++;
      }
    }
    expect(rule + bearing).toBeGreaterThan(0);
    // A longer nut of the same width never loads the bearings less.
    for (let column = 0; column < map.columns; column++) {
      const loads = Array.from(
        { length: map.rows },
        (_, row) => (map.cells[row * map.columns + column] & FORBIDDEN.bearing) !== 0,
      );
      const first = loads.indexOf(true);
      if (first >= 0) expect(loads.slice(first).every(Boolean)).toBe(true);
    }
  });

  it('shades where the bolt ends before what locks: 22 mm of it, the washer (ISO 7089: 0.5 mm) from 16.5 mm on, the collar 1.6 mm over the height', () => {
    const { map } = family;
    let short = 0;
    for (let row = 0; row < map.rows; row++) {
      for (let column = 0; column < map.columns; column++) {
        const cell = map.cells[row * map.columns + column];
        if (cell & FORBIDDEN.rule) continue;
        const [, heightMm] = cellMiddle(REQUEST, map, column, row);
        expect((cell & FORBIDDEN.short) !== 0).toBe(16.5 + 0.5 + heightMm + 1.6 > 22);
        if (cell & FORBIDDEN.short) short++;
      }
    }
    expect(short).toBeGreaterThan(0);
    expect(short).toBeLessThan(map.cells.length);
  });

  it('finds the nearest place on a curve in pixels', () => {
    const scale = {
      diametersMm: REQUEST.diametersMm,
      lengthsMm: REQUEST.lengthsMm,
      left: 0,
      right: 1100,
      top: 0,
      bottom: 430,
    };
    const point = family.curves[1].points.find((one) => one !== null);
    if (!point) throw new Error('no point');
    const x = ((point.diameterMm - 4) / 11) * 1100;
    const y = 430 - ((point.lengthMm - 0.5) / 21.5) * 430;
    const found = nearestOnCurves(family.curves, scale, x, y);
    expect(found?.curve).toBe(1);
    expect(found?.diameterMm).toBeCloseTo(point.diameterMm, 6);
    expect(found?.away).toBeLessThan(1e-6);
  });
});
