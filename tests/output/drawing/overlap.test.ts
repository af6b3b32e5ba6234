import { describe, expect, it } from 'vitest';
import { drawSheet } from '../../../src/output/drawing/drawSheet';
import type { LineEntity, Sheet, TextEntity } from '../../../src/output/drawing/sheetTypes';
import { boxesShare, cross, inkOf, inks, type Stroke, strokeBox } from './ink';
import { inkBox } from './inkBox';
import { type Drawn, seededDrawings } from './seeded';

/** Half of them on the sheet that the program picks, half on every sheet in turn. */
const DRAWINGS = [...seededDrawings(1729, 100, 'auto'), ...seededDrawings(4104, 100, 'each')];

function textsOf(sheet: Sheet): TextEntity[] {
  return sheet.entities.filter((one) => one.shape === 'text');
}

function faultsOf(find: (sheet: Sheet) => readonly string[]): string[] {
  return DRAWINGS.flatMap(({ sheet, label }) =>
    sheet ? find(sheet).map((fault) => `${fault} -- ${label}`) : [],
  );
}

function said(stroke: Stroke): string {
  const { x0, y0, x1, y1 } = strokeBox(stroke);
  const place = [x0, y0, x1, y1].map((mm) => mm.toFixed(1)).join(' ');
  return `${stroke.layer} ${stroke.shape} (${place})`;
}

/** Lines that carry an arrow's tip, and are no extension line: these run past the tip at a right angle to it. */
function measuringLines(sheet: Sheet): LineEntity[] {
  const arrows = sheet.entities.filter((one) => one.shape === 'arrow');
  return sheet.entities.filter((one): one is LineEntity => {
    if (one.shape !== 'line' || one.layer !== 'dimension') return false;
    const [dx, dy] = [one.x2 - one.x1, one.y2 - one.y1];
    const length = Math.hypot(dx, dy);
    return arrows.some(({ x, y, angle }) => {
      const [c, s] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      const along = ((x - one.x1) * dx + (y - one.y1) * dy) / length;
      const off = Math.abs((x - one.x1) * dy - (y - one.y1) * dx) / length;
      const parallel = Math.abs(c * dy - s * dx) / length < 1e-6;
      return parallel && off < 1e-6 && along > -1e-6 && along < length + 1e-6;
    });
  });
}

describe('the drawings of 200 seeded parts on paper', () => {
  it('are drawn for nearly all, and where a part does not fit the sheet that was asked for, that is said', () => {
    expect(DRAWINGS).toHaveLength(200);
    const unfit = DRAWINGS.filter(({ sheet }) => sheet === null);
    // Of the sheets in turn the small ones may be too small; the program's own pick should hold what a person types.
    expect(unfit.filter(({ choice }) => choice.format === 'auto').map((one) => one.label)).toEqual(
      [],
    );
    for (const { design, part, choice } of unfit) {
      const drawn = drawSheet(design, part, choice);
      expect(drawn).toEqual({ ok: false, error: 'tooBig' });
    }
  });

  it('hold no two texts whose ink overlaps, by the widths of the font file', () => {
    const faults = faultsOf((sheet) => {
      const placed = textsOf(sheet).map((one) => ({ text: one.text, box: inkBox(one) }));
      return placed.flatMap((a, i) =>
        placed
          .slice(i + 1)
          .filter((b) => boxesShare(a.box, b.box))
          .map((b) => `"${a.text}" on "${b.text}"`),
      );
    });
    expect(faults).toEqual([]);
  });

  it('hold no text that a line, circle, arc or arrowhead runs through', () => {
    const faults = faultsOf((sheet) => {
      const strokes = inkOf(sheet.entities);
      return textsOf(sheet).flatMap((one) => {
        const box = inkBox(one);
        return strokes
          .filter((stroke) => inks(stroke, box))
          .map((stroke) => `"${one.text}" struck by ${said(stroke)}`);
      });
    });
    expect(faults).toEqual([]);
  });

  it('lie within the frame, and the views clear of notes and title block', () => {
    const faults = faultsOf((sheet) => {
      const { x0, y0, x1, y1 } = sheet.frame;
      const outside = [
        ...inkOf(sheet.entities).map((one) => ({ what: said(one), box: strokeBox(one) })),
        ...textsOf(sheet).map((one) => ({ what: `"${one.text}"`, box: inkBox(one) })),
      ].filter(
        ({ box }) =>
          box.x0 < x0 - 1e-9 || box.y0 < y0 - 1e-9 || box.x1 > x1 + 1e-9 || box.y1 > y1 + 1e-9,
      );
      const frame = sheet.entities.filter(
        (one): one is LineEntity => one.shape === 'line' && one.layer === 'frame',
      );
      const crossed = sheet.entities.filter(
        (one): one is LineEntity =>
          one.shape === 'line' &&
          one.layer !== 'frame' &&
          frame.some((border) => cross(one, border)),
      );
      return [
        ...outside.map(({ what }) => `${what} outside the frame`),
        ...crossed.map((one) => `${said(one)} crosses the frame or a cell of the title block`),
      ];
    });
    expect(faults).toEqual([]);
  });

  /** Common practice: crossed dimension lines are avoided; a leader may cross one where there is no other way to its text. */
  it('have no two dimension lines that cross, no two leaders, and hardly a leader that crosses a dimension line', () => {
    const slanted = ({ x1, y1, x2, y2 }: LineEntity) => x1 !== x2 && y1 !== y2;
    const crossings = DRAWINGS.flatMap(({ sheet, label }) => {
      const lines = sheet ? measuringLines(sheet) : [];
      return lines.flatMap((a, i) =>
        lines
          .slice(i + 1)
          .filter((b) => cross(a, b))
          .map((b) => ({
            label,
            fault: `${said(a)} crosses ${said(b)} -- ${label}`,
            mixed: slanted(a) !== slanted(b),
          })),
      );
    });
    expect(crossings.filter(({ mixed }) => !mixed).map(({ fault }) => fault)).toEqual([]);
    const drawings = new Set(crossings.map(({ label }) => label));
    expect(drawings.size, [...drawings].join('\n')).toBeLessThanOrEqual(DRAWINGS.length / 100);
  });

  it('show the part at least 10 mm large where the program picks the sheet', () => {
    const faults = DRAWINGS.filter(({ choice }) => choice.format === 'auto').flatMap(
      ({ sheet, label }: Drawn) => {
        if (!sheet) return [];
        const outline = inkOf(sheet.entities).filter((one) => one.layer === 'visible');
        const boxes = outline.map(strokeBox);
        const high = Math.max(...boxes.map((box) => box.y1)) - Math.min(...boxes.map((b) => b.y0));
        const size = Math.max(high, ...boxes.map((box) => box.x1 - box.x0));
        return size < 10 ? [`${size.toFixed(2)} mm at ${sheet.scale.name} -- ${label}`] : [];
      },
    );
    expect(faults).toEqual([]);
  });
});
