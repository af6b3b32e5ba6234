import { describe, expect, it } from 'vitest';
import { createMoments, JXX, JZZ, M, SZ } from '../../../src/engine/mass/moments';
import { sumSolids } from '../../../src/engine/mass/weigh';
import type { Sheet } from '../../../src/output/drawing/sheetTypes';
import { partType } from '../../../src/parts/registry';
import type { Values } from '../../parts/sample';
import { quadrature, stepsRoom } from './quadrature';
import { rebuilt, wordsOf } from './rebuild';
import { edgesOf, type Measured, measuredFigures, printedMm } from './ruler';
import { type Drawn, seededDrawings } from './seeded';

const DRAWINGS = [...seededDrawings(1089, 120, 'auto'), ...seededDrawings(9801, 80, 'each')];
const SHEETS = DRAWINGS.flatMap((one) => (one.sheet ? [{ ...one, sheet: one.sheet }] : []));

function faultsOf(find: (sheet: Sheet, one: Drawn) => readonly string[]): string[] {
  return SHEETS.flatMap((one) => find(one.sheet, one).map((fault) => `${fault} -- ${one.label}`));
}

/** Major diameters of ASME B1.1 in inches, and coarse pitches of ISO 261 in mm; both from memory. */
const UNIFIED: Readonly<Record<string, readonly [inches: number, perInch: number]>> = {
  '#2-56 UNC': [0.086, 56],
  '#4-40 UNC': [0.112, 40],
  '#6-32 UNC': [0.138, 32],
  '#8-32 UNC': [0.164, 32],
  '#10-32 UNF': [0.19, 32],
  '1/4-28 UNF': [0.25, 28],
};
const COARSE: Readonly<Record<string, number>> = {
  'M1.6': 0.35,
  M2: 0.4,
  'M2.5': 0.45,
  M3: 0.5,
  M4: 0.7,
  M5: 0.8,
  M6: 1,
  M8: 1.25,
};

/** Diameter and pitch that a designation means, mm; null where it is none. */
function threadMeant(text: string): { diameterMm: number; pitchMm: number } | null {
  const name = text.replace(/, (to the head|full length|through)$/, '');
  const unified = UNIFIED[name];
  if (unified) return { diameterMm: unified[0] * 25.4, pitchMm: 25.4 / unified[1] };
  const metric = /^(M([\d.]+))(?: \u00d7 ([\d.]+))?$/.exec(name);
  if (!metric) return null;
  const pitchMm = metric[3] === undefined ? COARSE[metric[1]] : Number(metric[3]);
  return { diameterMm: Number(metric[2]), pitchMm: pitchMm ?? Number.NaN };
}

/** What the ruler should find for a figure, by its words; null for a chamfer, which has a test of its own. */
function sizeSaid({ text, tips }: Measured, sheet: Sheet) {
  const thread = threadMeant(text);
  const spread = Math.max(...tips.map(({ u }) => u)) - Math.min(...tips.map(({ u }) => u));
  // A thread's own name is rounded to a tenth of a micrometre; the program takes names within 1 micrometre.
  if (thread) return { mm: thread.diameterMm, half: 1e-3, found: 2 * tips[0].r };
  if (/45\u00b0|30\u00b0|^Run-out/.test(text)) return null;
  const number = /(?:\u00d8|AF )?([\d.]+)/.exec(text)?.[1] ?? '';
  const wide = /\u00d8|^Hex socket/.test(text);
  return { ...printedMm(number, sheet), found: wide ? 2 * tips[0].r : spread };
}

function said(one: Measured): string {
  return `"${one.text}" ${one.kind} ${JSON.stringify(one.tips)}`;
}

describe('200 seeded parts read off their drawings', () => {
  it('measure by a ruler and the printed scale what their figures say', () => {
    const faults = faultsOf((sheet) =>
      measuredFigures(sheet).flatMap((figure) => {
        const size = sizeSaid(figure, sheet);
        if (!size) return [];
        const off = Math.abs(size.found - size.mm);
        return off <= size.half + 1e-9 ? [] : [`${said(figure)} is off by ${off}`];
      }),
    );
    expect(faults).toEqual([]);
  });

  it('have chamfers and run-outs as large and as steep as their notes say, where the leader points', () => {
    const faults = faultsOf((sheet) =>
      measuredFigures(sheet).flatMap((figure) => {
        if (!/^(?!Hex).*(45\u00b0|30\u00b0)|^Run-out/.test(figure.text)) return [];
        const [{ u, r }] = figure.tips;
        const runOut = figure.text.startsWith('Run-out');
        const edges = edgesOf(sheet, runOut ? 'thread' : 'visible').filter(
          ({ from, to, passes }) =>
            Math.abs(from[0] - to[0]) > 1e-6 &&
            Math.abs(from[1] - to[1]) > 1e-6 &&
            (runOut ? within(u, from[0], to[0]) : passes(u, r) || passes(u, -r)),
        );
        const { mm, half } = printedMm(/([\d.]+)/.exec(figure.text)?.[1] ?? '', sheet);
        const found = edges.map(({ from, to }) => ({
          size: figure.text.startsWith('Point')
            ? 2 * Math.min(Math.abs(from[1]), Math.abs(to[1]))
            : Math.abs(from[0] - to[0]),
          slope: Math.abs(to[1] - from[1]) / Math.abs(to[0] - from[0]),
        }));
        // 30 degrees on a hexagon: to its face, so 60 to the axis (ISO 4032, ISO 4014).
        const slope = figure.text.includes('30\u00b0') ? Math.sqrt(3) : 1;
        const right = found.some(
          (one) =>
            Math.abs(one.size - mm) <= half + 1e-9 &&
            (runOut || Math.abs(one.slope - slope) < 1e-6),
        );
        return right ? [] : [`${said(figure)} found ${JSON.stringify(found)}`];
      }),
    );
    expect(faults).toEqual([]);
  });

  it('give each place along the axis once: no length follows from others, no edge is left without', () => {
    const faults = faultsOf((sheet) => {
      const places = new Places();
      const figures = measuredFigures(sheet);
      const isRing = (one: Measured) => one.feature === 'insertHeightMm';
      const twice = figures
        .filter((one) => one.kind === 'length' && !isRing(one))
        .flatMap((one) => {
          const [a, b] = one.tips.map(({ u }) => u);
          return places.join(a, b) ? [] : [`${said(one)} follows from other figures`];
        });
      // The shoulder that a ring sits on is another than the collar's, also where the two happen to be level.
      for (const { tips } of figures.filter(isRing)) places.join(tips[0].u, tips[1].u);
      joinNoted(sheet, figures, places);
      const open = edgesOf(sheet, 'visible')
        .flatMap(({ from, to }) => [from[0], to[0]])
        .filter((u) => !places.known(u, 0));
      const left = [...new Set(open.map((u) => u.toFixed(4)))];
      return [...twice, ...left.map((u) => `nothing says where the edge at ${u} lies`)];
    });
    expect(faults).toEqual([]);
  });

  it('name every thread by diameter and pitch of ISO 261 or ASME B1.1', () => {
    const faults = faultsOf((sheet, { values, kind }) => {
      if (kind !== 'bolt' && kind !== 'nut') return [];
      const threads = measuredFigures(sheet).flatMap(({ text }) => threadMeant(text) ?? []);
      if (threads.length !== 1) return [`${threads.length} threads are called out`];
      const [{ diameterMm, pitchMm }] = threads;
      const diameter = kind === 'bolt' ? values.shankDiameterMm : values.threadDiameterMm;
      const off = [diameterMm - (diameter as number), pitchMm - (values.threadPitchMm as number)];
      return off.every((mm) => Math.abs(mm) <= 1e-3) ? [] : [`thread is off by ${off.join(', ')}`];
    });
    expect(faults).toEqual([]);
  });

  /**
   * The part is built from what is printed and weighed by slices across its axis (quadrature.ts), which share no code with the
   * program's solids. Room: each number moved by its rounding (a total minus a length: twice that), the changes added up,
   * twice for the second order; the steps that a hexagon's chamfer is weighed in (`stepsRoom`); 1e-9 for the quadrature.
   */
  it('weigh, and spread about their axis and along it, as the design says', () => {
    const faults = faultsOf((sheet, { kind, values }) => {
      const read: Values = { ...values, ...rebuilt(kind, sheet) };
      const want = sumSolids(partType(kind).solids(values as never), createMoments());
      const have = quadrature(kind, read);
      const { half } = printedMm('0', sheet);
      const room = stepsRoom(kind, values).map((own, i) => own + 1e-9 * Math.abs(have[i]));
      for (const [key, value] of Object.entries(read)) {
        if (typeof value !== 'number' || !key.endsWith('Mm') || value === 0) continue;
        const moved = quadrature(kind, { ...read, [key]: value + 2 * half });
        for (const i of room.keys()) room[i] += 2 * Math.abs(moved[i] - have[i]);
      }
      return [M, SZ, JZZ, JXX].flatMap((place, i) => {
        const off = Math.abs(want[place] - have[i]);
        return off <= room[i] ? [] : [`${['m', 'Sz', 'Jzz', 'Jxx'][i]} off by ${off} > ${room[i]}`];
      });
    });
    expect(faults).toEqual([]);
  });

  it('print the density of their material', () => {
    for (const { sheet, values, label } of SHEETS) {
      expect(wordsOf(sheet), label).toContain(`${values.densityKgM3} kg/m\u00b3`);
    }
  });
});

function within(u: number, a: number, b: number): boolean {
  return u > Math.min(a, b) && u < Math.max(a, b);
}

/** Places along the axis that figures tie to one another (union-find); two within a hundredth of a micrometre are one. */
class Places {
  private readonly at: number[] = [];
  private readonly roots: number[] = [];

  private rootOf(u: number): number {
    let index = this.at.findIndex((other) => Math.abs(other - u) < 1e-5);
    if (index < 0) {
      index = this.at.push(u) - 1;
      this.roots.push(index);
    }
    while (this.roots[index] !== index) index = this.roots[index];
    return index;
  }

  /** False where the two were tied already. */
  join(a: number, b: number): boolean {
    const [from, to] = [this.rootOf(a), this.rootOf(b)];
    this.roots[from] = to;
    return from !== to;
  }

  known(a: number, b: number): boolean {
    return this.rootOf(a) === this.rootOf(b);
  }
}

/** Places that a note gives: the ends of slanted edges, a socket's floor, and the curves that end a hexagon's faces. */
function joinNoted(sheet: Sheet, figures: readonly Measured[], places: Places): void {
  const edges = edgesOf(sheet, 'visible');
  const noted = figures.some(({ text }) => /\u00b0/.test(text));
  for (const { from, to } of edges) {
    const slanted = Math.abs(from[0] - to[0]) > 1e-5 && Math.abs(from[1] - to[1]) > 1e-5;
    if (slanted && noted) places.join(from[0], to[0]);
  }
  for (const { text } of figures) {
    const deep = /, ([\d.]+)[^,]* deep$/.exec(text);
    if (!deep) continue;
    const { mm, half } = printedMm(deep[1], sheet);
    const floor = edges.find(({ to }) => Math.abs(to[0] - mm) <= half + 1e-9);
    if (floor) places.join(0, floor.to[0]);
  }
}
