import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { createMoments } from '../../../src/engine/mass/moments';
import { sumSolids } from '../../../src/engine/mass/weigh';
import { INCH_MM } from '../../../src/engine/units';
import { boxOf } from '../../../src/output/drawing/block';
import { drawSheet } from '../../../src/output/drawing/drawSheet';
import { lineMeets } from '../../../src/output/drawing/leaders';
import type { LengthUnit, Sheet, TextEntity } from '../../../src/output/drawing/sheetTypes';
import { boxesMeet, textBox } from '../../../src/output/drawing/textSize';
import type { PartKind } from '../../../src/parts/registry';
import { partType } from '../../../src/parts/registry';
import { EMPTY_DESIGN } from '../../../src/state/store';
import { problemsOf, type Values, validValues } from '../../parts/sample';
import { rebuilt } from './rebuild';

/** 200 parts: kinds in turn, numbers within limits and rules, the same on every machine. */
const KINDS = ['bolt', 'nut', 'weight', 'washer'] as const;
const EACH = { bolt: 80, nut: 80, weight: 25, washer: 15 } as const;
const CASES = KINDS.flatMap((kind) =>
  fc
    .sample(validValues(kind), { seed: 260, numRuns: EACH[kind] })
    .map((values, i) => ({ kind, values, unit: (i % 2 === 0 ? 'mm' : 'in') as LengthUnit })),
);

function partOf(kind: PartKind, values: Values): Part {
  const pose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
  return { id: 'x', kind, name: `${kind} of the test`, pose, ...values } as unknown as Part;
}

function designWith(part: Part): Design {
  return { ...EMPTY_DESIGN, name: 'Seeded parts', parts: [part] };
}

function sheetOf(kind: PartKind, values: Values, unit: LengthUnit): Sheet | null {
  const part = partOf(kind, values);
  const choice = { format: 'auto', projection: 'first', unit, date: '2026-01-01' } as const;
  const drawn = drawSheet(designWith(part), part, choice);
  return drawn.ok ? drawn.value : null;
}

const SHEETS = CASES.map((one) => ({ ...one, sheet: sheetOf(one.kind, one.values, one.unit) }));

/** Every text but those that stand in one cell under its label. */
function texts(sheet: Sheet): TextEntity[] {
  return sheet.entities.filter((one) => one.shape === 'text');
}

function label({ kind, values }: { kind: string; values: Values }): string {
  return `${kind} ${JSON.stringify(values)}`;
}

function momentsOf(kind: PartKind, values: Values): readonly number[] {
  const solids = partType(kind).solids(values as never);
  return Array.from(sumSolids(solids, createMoments()));
}

describe('the drawings of 200 seeded parts', () => {
  it('exist for nearly all of them, and a part too large or too small is said', () => {
    expect(SHEETS).toHaveLength(200);
    expect(SHEETS.filter(({ sheet }) => sheet !== null).length).toBeGreaterThanOrEqual(190);
  });

  it('have no two texts that overlap', () => {
    const faults = SHEETS.flatMap((one) => {
      if (!one.sheet) return [];
      const boxes = texts(one.sheet).map((text) => ({ text: text.text, box: textBox(text) }));
      return boxes.flatMap((a, i) =>
        boxes
          .slice(i + 1)
          .filter((b) => boxesMeet(a.box, b.box))
          .map((b) => `"${a.text}" on "${b.text}": ${label(one)}`),
      );
    });
    expect(faults).toEqual([]);
  });

  it('have no dimension text that a line strikes through', () => {
    const faults = SHEETS.flatMap((one) => {
      const { sheet } = one;
      if (!sheet) return [];
      const lines = sheet.entities.filter((entity) => entity.shape === 'line');
      return texts(sheet)
        .filter((text) => text.dimension !== undefined)
        .flatMap((text) => {
          const box = textBox(text);
          return lines
            .filter((line) => lineMeets(line.x1, line.y1, line.x2, line.y2, box))
            .map(
              (line) =>
                `"${text.text}" ${JSON.stringify(box)} struck by ${JSON.stringify(line)}: ${label(one)}`,
            );
        });
    });
    expect(faults).toEqual([]);
  });

  it('lie within the frame', () => {
    const faults = SHEETS.flatMap((one) => {
      const { sheet } = one;
      if (!sheet) return [];
      const { x0, y0, x1, y1 } = sheet.frame;
      return sheet.entities
        .map(boxOf)
        .filter(
          (box) =>
            box.x0 < x0 - 1e-9 || box.y0 < y0 - 1e-9 || box.x1 > x1 + 1e-9 || box.y1 > y1 + 1e-9,
        )
        .map((box) => `${JSON.stringify(box)}: ${label(one)}`);
    });
    expect(faults).toEqual([]);
  });

  it('say each dimension once', () => {
    for (const one of SHEETS) {
      const named = one.sheet?.entities.flatMap((entity) =>
        entity.shape === 'text' && entity.dimension !== undefined ? [entity.dimension] : [],
      );
      expect(new Set(named).size, label(one)).toBe(named?.length ?? 0);
    }
  });

  /**
   * Rounding: each printed length is within half of its last place, a total minus a length within twice that. Each number
   * of the part is moved by as much, and the changes of every moment are added up; twice of that leaves room for the second
   * order. Material and threads of the tables are printed exactly.
   */
  it('are enough to rebuild the part: mass, centre and J within the rounding of what is printed', () => {
    for (const one of SHEETS) {
      if (!one.sheet) continue;
      const read = rebuilt(one.kind, one.sheet);
      const known = { ...one.values };
      const want = momentsOf(one.kind, known);
      const have = momentsOf(one.kind, { ...known, ...read });
      const half = 0.5e-4 * (one.unit === 'in' ? INCH_MM : 1);
      const room = want.map(() => 0);
      for (const [key, value] of Object.entries(known)) {
        if (typeof value !== 'number' || !key.endsWith('Mm') || value === 0) continue;
        const moved = momentsOf(one.kind, { ...known, [key]: value + 2 * half });
        for (const [i, moment] of moved.entries()) room[i] += Math.abs(moment - want[i]);
      }
      have.forEach((moment, i) => {
        const off = Math.abs(moment - want[i]);
        expect(off, `moment ${i} of ${label(one)}`).toBeLessThanOrEqual(
          2 * room[i] + 1e-15 * Math.abs(want[0]),
        );
      });
      expect(problemsOf(one.kind, one.values)).toEqual([]);
    }
  });
});
