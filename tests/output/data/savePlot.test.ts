import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { GERMAN } from '../../../src/messages/de';
import { plotCsv, plotSvg } from '../../../src/output/data/savePlot';
import { createSession } from '../../../src/state/createSession';
import type { PlotToSave } from '../../../src/ui/plotFiles';
import { speakOther } from '../../support/pseudo';
import { DEMOS, demo } from '../solids/heads';
import { readCsv } from './readCsv';

const X = [0, 2500, 5000, 7500, 10_000];
const PLOT: PlotToSave = {
  design: demo(DEMOS[2]),
  data: {
    x: X,
    lines: [
      { name: 'all & more', look: 'total', values: [0, -0.25, -1, Number.NaN, -4] },
      { name: 'push rod', look: '3', values: [0, 0.125, 0.5, 1.125, 2] },
    ],
    band: [0.5, 0.5, 0.5, 0.5, 0.5],
    xTitle: 'Speed, rpm',
    yTitle: 'Force, N',
    marks: [{ x: 5000, text: 'speed' }],
  },
  lines: ['Against speed. At +5.0\u00b0 of pitch.'],
  summary: 'At 10000 rpm: -4 N.',
  name: 'speed',
};

interface Word {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: string;
}

/** Texts and stroked paths of an SVG, by an independent parser. */
function readSvg(svg: string) {
  const words: Word[] = [];
  const paths: { readonly stroke: string; readonly width: number; readonly d: string }[] = [];
  let open: Record<string, string> | null = null;
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    const own = attributes as Record<string, string>;
    open = name === 'text' ? own : null;
    if (name === 'path' && own.stroke) {
      paths.push({ stroke: own.stroke, width: Number(own['stroke-width']), d: own.d });
    }
  });
  parser.on('text', (text) => {
    if (open && text.trim() !== '') {
      words.push({
        text: text.trim(),
        x: Number(open.x),
        y: Number(open.y),
        anchor: open['text-anchor'],
      });
    }
  });
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(svg).close();
  return { words, paths };
}

/** What a place is worth by two numbers printed along an axis: a reader's ruler. */
function ruler(ticks: readonly { readonly at: number; readonly value: number }[]) {
  const [first, last] = [ticks[0], ticks[ticks.length - 1]];
  const per = (last.value - first.value) / (last.at - first.at);
  return (at: number) => first.value + (at - first.at) * per;
}

const valueOf = (text: string) => Number(text.replace('\u2212', '-').replace(',', '.'));
const isNumber = ({ text }: Word) => /^\u2212?\d+([.,]\d+)?$/.test(text);

describe('a small plot that leaves the page', () => {
  it('as SVG carries title, conditions, names and titles of axes', () => {
    const words = readSvg(plotSvg(PLOT)).words.map(({ text }) => text);
    for (const wanted of [
      PLOT.design.name,
      PLOT.lines[0],
      'all & more',
      'push rod',
      'Speed, rpm',
      'Force, N',
      'speed',
    ]) {
      expect(words).toContain(wanted);
    }
  });

  it('as SVG can be read off with a ruler: each line by the numbers of its axes, a gap where it has no value', () => {
    const { words, paths } = readSvg(plotSvg(PLOT));
    const numbers = words.filter(isNumber).map((word) => ({ ...word, value: valueOf(word.text) }));
    const along = numbers
      .filter(({ anchor }) => anchor === 'middle')
      .map(({ x, value }) => ({ at: x, value }));
    // Printed four units below the height that they name.
    const upright = numbers
      .filter(({ anchor }) => anchor === 'end')
      .map(({ y, value }) => ({ at: y - 4, value }));
    const [readX, readY] = [ruler(along), ruler(upright)];
    // The ticks between lie on the same rulers.
    for (const { at, value } of along) expect(readX(at)).toBeCloseTo(value, 0);
    for (const { at, value } of upright) expect(readY(at)).toBeCloseTo(value, 2);
    const drawn = (width: number) =>
      paths
        .filter((one) => one.width === width)
        .map(({ d }) =>
          d
            .split(/(?=[ML])/)
            .map(
              (piece) => [piece[0], ...piece.slice(1).trim().split(/[ ,]+/).map(Number)] as const,
            ),
        );
    const pieces = [...drawn(2), ...drawn(1.3)];
    expect(pieces).toHaveLength(2);
    pieces.forEach((points, k) => {
      const known = X.flatMap((x, i) => {
        const value = PLOT.data.lines[k].values[i];
        return Number.isNaN(value) ? [] : [[x, value] as const];
      });
      expect(points).toHaveLength(known.length);
      points.forEach(([, px, py], i) => {
        // A hundredth of a unit of drawing is the last digit written: 0.5 rpm and a thousandth of the height here.
        expect(Math.abs(readX(px as number) - known[i][0])).toBeLessThan(1);
        expect(Math.abs(readY(py as number) - known[i][1])).toBeLessThan(1e-3);
      });
    });
    expect(pieces[0].map(([op]) => op)).toEqual(['M', 'L', 'L', 'M']);
  });

  it('in German has a comma in the numbers of its axes', () => {
    const stop = speakOther(GERMAN.opening);
    try {
      const numbers = readSvg(
        plotSvg({ ...PLOT, data: { ...PLOT.data, lines: [PLOT.data.lines[1]] } }),
      )
        .words.filter(isNumber)
        .map(({ text }) => text);
      expect(numbers.some((text) => text.includes(','))).toBe(true);
      expect(numbers.filter((text) => text.includes('.'))).toEqual([]);
    } finally {
      stop();
    }
  });

  it('as CSV has every place of x, what holds for it above, and empty cells where there is no value', () => {
    const { above, header, rows } = readCsv(plotCsv(PLOT));
    expect(above.join('\n')).toContain(PLOT.design.name);
    expect(above.at(-1)).toBe(PLOT.lines[0]);
    expect(header).toEqual([
      'Speed, rpm',
      'all & more, Force, N',
      'push rod, Force, N',
      '\u00b1, Force, N',
    ]);
    expect(rows.map((row) => row.slice(0, 2))).toEqual([
      ['0', '0'],
      ['2500', '-0.25'],
      ['5000', '-1'],
      ['7500', ''],
      ['10000', '-4'],
    ]);
  });

  it('of a head with drag at rest says its rows in the language spoken', () => {
    const { design } = createSession(PLOT.design, () => {}).store.getState();
    const dragged = {
      ...PLOT,
      design: { ...design, friction: { ...design.friction, drag: [{ travelMm: 0, forceN: 0.5 }] } },
    };
    const stop = speakOther(GERMAN.opening);
    try {
      expect(readCsv(plotCsv(dragged)).above.join('\n')).toContain('0.5 N bei 0 mm');
    } finally {
      stop();
    }
  });

  it('as SVG has each point where a ruler on its axes finds it, its interval about it, and says what it is', () => {
    const x = [1000, 6000];
    const y = [1, -3];
    const { words, paths } = readSvg(
      plotSvg({
        ...PLOT,
        data: {
          ...PLOT.data,
          points: [{ name: 'pull', shape: 'up', state: 'full', x, y, half: [0.5, 0.25] }],
        },
      }),
    );
    expect(words.map(({ text }) => text)).toContain('pull');
    const numbers = words.filter(isNumber).map((word) => ({ ...word, value: valueOf(word.text) }));
    const along = numbers.filter(({ anchor }) => anchor === 'middle');
    const upright = numbers.filter(({ anchor }) => anchor === 'end');
    const readX = ruler(along.map(({ x: at, value }) => ({ at, value })));
    const readY = ruler(upright.map(({ y: at, value }) => ({ at: at - 4, value })));
    // "M x low L x high M ..." of width 1; a point's own outline is 1.1 wide.
    const whiskers = paths
      .filter(({ d, width }) => width === 1 && (d.match(/M/g) ?? []).length === 3)
      .map(({ d }) => (d.match(/-?[\d.]+/g) ?? []).map(Number));
    expect(whiskers).toHaveLength(2);
    whiskers.forEach(([atX, low, , high], i) => {
      expect(Math.abs(readX(atX) - x[i])).toBeLessThan(1);
      expect(Math.abs((readY(low) + readY(high)) / 2 - y[i])).toBeLessThan(2e-3);
    });
    expect(Math.abs(readY(whiskers[0][3]) - readY(whiskers[0][1]) - 1)).toBeLessThan(4e-3);
  });

  it('as SVG hatches the cells of a plane that are marked, and no other', () => {
    const plane: PlotToSave = {
      ...PLOT,
      data: {
        x: [0, 10],
        lines: [{ name: 'steel', look: '1', values: [Number.NaN, Number.NaN] }],
        yRange: [0, 2],
        // The lower right corner and the one above it.
        cells: {
          columns: 2,
          rows: 2,
          cells: Uint8Array.of(0, 2, 0, 2),
          kinds: [
            { name: 'loads', bit: 2 },
            { name: 'bar', bit: 16 },
          ],
        },
        xTitle: 'Diameter, mm',
        yTitle: 'Length, mm',
      },
    };
    const { words, paths } = readSvg(plotSvg(plane));
    const said = words.map(({ text }) => text);
    expect(said).toContain('loads');
    expect(said).not.toContain('bar');
    const ticks = words.filter((word) => isNumber(word) && word.anchor === 'middle');
    const readX = ruler(ticks.map(({ x, text }) => ({ at: x, value: valueOf(text) })));
    const [hatch] = paths.filter(({ stroke, width }) => stroke === '#59605c' && width === 0.6);
    const xs = [...hatch.d.matchAll(/[ML](-?[\d.]+)/g)].map(([, at]) => readX(Number(at)));
    expect(Math.min(...xs)).toBeCloseTo(5, 1);
    expect(Math.max(...xs)).toBeCloseTo(10, 1);
  });

  it('with a second quantity below has both axes named, the second under the first', () => {
    const { words } = readSvg(
      plotSvg({
        ...PLOT,
        data: {
          ...PLOT.data,
          below: { ...PLOT.data, yTitle: 'Centre, mm', lines: [PLOT.data.lines[1]] },
        },
      }),
    );
    const at = (text: string) => words.find((word) => word.text === text)?.y ?? Number.NaN;
    expect(at('Centre, mm') - at('Force, N')).toBeGreaterThan(150);
  });
});
