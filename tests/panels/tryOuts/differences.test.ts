import { describe, expect, it } from 'vitest';
import type { Design, Part, TryOut } from '../../../src/design/design';
import type { VariantFigures } from '../../../src/design/variantOutlook';
import { variantOutlook } from '../../../src/design/variantOutlook';
import { JYY, JYZ, JZZ, M } from '../../../src/engine/mass/moments';
import type { VariantColumn } from '../../../src/panels/tryOuts/columns';
import { tableText } from '../../../src/panels/tryOuts/tableText';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { partRows } from '../../../src/state/words/differences';
import { headRows } from '../../../src/state/words/headRows';
import { designOf, fullHead, partOf } from '../../design/designs';

const changed = (parts: readonly Part[], id: string, more: object) =>
  parts.map((part) => (part.id === id ? ({ ...part, ...more } as Part) : part));
/** Label and cells, a mark before what differs. */
const told = (lists: readonly (readonly Part[])[], units = METRIC_UNITS) =>
  partRows(lists, [], units).map(({ label, cells }) => [
    label,
    ...cells.map(({ text, differs }) => (differs ? `! ${text}` : text)),
  ]);

describe('the rows of parts that differ', () => {
  const head = fullHead();

  it('are none between a head and itself, and none for an equal copy', () => {
    expect(told([head, head, structuredClone(head)])).toEqual([]);
  });

  it('name the field, with from and to in the units on screen', () => {
    const longer = changed(head, 'bolt', { lengthMm: 34 });
    expect(told([head, longer])).toEqual([['bolt: Length', '30\u00a0mm', '! 34\u00a0mm']]);
    // 30 / 25.4 = 1.18110, 34 / 25.4 = 1.33858.
    expect(told([head, longer], INCH_UNITS)).toEqual([
      ['bolt: Length', '1.1811\u00a0in', '! 1.3386\u00a0in'],
    ]);
  });

  it('mark what is not as on the stage, and leave what is unmarked', () => {
    const heavy = changed(head, 'lump', { massGrams: 2 });
    const rows = told([heavy, head, heavy]);
    const usual = `${(head.at(-1) as { massGrams?: number }).massGrams}\u00a0g`;
    expect(rows).toEqual([['lump: Mass', '2\u00a0g', `! ${usual}`, '2\u00a0g']]);
  });

  it('say of a part that came or went that it is there or not, and no more', () => {
    const without = head.filter((part) => part.id !== 'lump');
    expect(told([head, without])).toEqual([['lump: in the head', 'there', '! not there']]);
    expect(told([without, head])).toEqual([['lump: in the head', 'not there', '! there']]);
  });

  it('hold against each other what is there where a third has no such part', () => {
    const without = head.filter((part) => part.id !== 'lump');
    const heavy = changed(head, 'lump', { massGrams: 2 });
    expect(told([without, head, heavy]).map(([label]) => label)).toEqual([
      'lump: in the head',
      'lump: Mass',
    ]);
  });

  it('stand in the order of the parts on the stage, parts that only others have last', () => {
    const extra = partOf('pointMass', 'extra');
    const other = changed(changed(head, 'lump', { massGrams: 2 }), 'bolt', { lengthMm: 34 });
    const labels = told([head, [extra, ...other]]).map(([label]) => label);
    expect(labels).toEqual(['bolt: Length', 'lump: Mass', 'extra: in the head']);
  });

  it('tell of a catalogue part which row it is, and of its dimensions only what is written beside it', () => {
    const screw = (size: string, lengthMm: number, more = {}) =>
      ({
        id: 'screw',
        kind: 'bolt',
        name: 'screw',
        catalogue: { standard: 'ISO 4762', size, lengthMm },
        ...more,
        pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] },
      }) as unknown as Part;
    expect(told([[screw('M3', 20)], [screw('M4', 25, { extensionLengthMm: 3 })]])).toEqual([
      ['screw: standard', 'ISO 4762 M3 \u00d7 20', '! ISO 4762 M4 \u00d7 25'],
      ['screw: Head extension', '0\u00a0mm', '! 3\u00a0mm'],
    ]);
  });

  it('tell of name, hiding, seat, turn and measurement', () => {
    const moved = changed(head, 'blade', {
      name: 'Blade B',
      hidden: true,
      socket: { part: 'grip', name: 'bladeRoot', turnDeg: 6 },
      measured: { massGrams: 9.5 },
    });
    expect(told([head, moved])).toEqual([
      ['blade: name', 'blade', '! Blade B'],
      ['blade: left out of the sum', 'no', '! yes'],
      ['blade: Turn', '4\u00b0', '! 6\u00b0'],
      ['blade: measured', 'no', '! yes, 9.5\u00a0g'],
    ]);
  });

  it('tell of another kind under the same id only that', () => {
    const other = [...head.slice(0, -1), partOf('block', 'lump')];
    expect(told([head, other])).toEqual([['lump: kind', 'Point mass', '! Block']]);
  });
});

describe('the rows of what the heads do', () => {
  const moments = (mass: number, jyy: number, jzz: number, jyz: number) => {
    const totals = new Float64Array(10);
    [totals[M], totals[JYY], totals[JZZ], totals[JYZ]] = [mass, jyy, jzz, jyz];
    return totals;
  };
  const figures = (more: Partial<VariantFigures>): VariantFigures => ({
    totals: moments(0.012, 3e-6, 1e-6, 0),
    pitchesDeg: [-20, -10, 0, 10, 20],
    moments: [-0.02, -0.01, 0, 0.01, 0.02],
    forces: [-5, -2.5, 0, 2.5, 5],
    verdict: { kind: 'noParts' },
    restsDeg: [],
    bandsDeg: [[-1.24, 1.26]],
    frictionCounted: true,
    limit: { what: 'shear', id: 'bolt', use: 0.25, limitRpm: 20_400, pitchDeg: 20 },
    ...more,
  });
  const column = (own: VariantFigures | null, fault: string | null = null) => ({
    figures: own,
    fault,
    nameOf: (id: string) => `the ${id}`,
  });
  const cellsOf = (columns: Parameters<typeof headRows>[0], key: string, units = METRIC_UNITS) =>
    headRows(columns, units)
      .find((row) => row.key === key)
      ?.cells.map(({ text, differs }) => (differs ? `! ${text}` : text));

  it('give each number with its difference from the one on the stage', () => {
    // 12 g and 12.5 g; J_yy - J_zz of 2000 and 1500 g mm^2; 5 N and 4.2 N.
    const lighter = figures({
      totals: moments(0.0125, 3e-6, 1.5e-6, 2e-8),
      forces: [-5, -2.5, 0, 2.5, 4.2],
    });
    const pair = [column(figures({})), column(lighter)];
    expect(cellsOf(pair, 'mass')).toEqual(['12.00\u00a0g', '! 12.50\u00a0g (+0.500\u00a0g)']);
    expect(cellsOf(pair, 'share')).toEqual([
      '2000\u00a0g\u00a0mm\u00b2',
      '! 1500\u00a0g\u00a0mm\u00b2 (\u2212500\u00a0g\u00a0mm\u00b2)',
    ]);
    expect(cellsOf(pair, 'product')).toEqual([
      '0\u00a0g\u00a0mm\u00b2',
      '! 20.0\u00a0g\u00a0mm\u00b2 (+20.0\u00a0g\u00a0mm\u00b2)',
    ]);
    expect(cellsOf(pair, 'load 4')).toEqual([
      '+5.00\u00a0N',
      '! +4.20\u00a0N (\u22120.800\u00a0N)',
    ]);
    expect(cellsOf(pair, 'load 3')).toEqual(['+2.50\u00a0N', '+2.50\u00a0N']);
    // 5 N / 0.2780139 N = 17.98 ozf (NIST SP 811: 1 ozf = 0.2780139 N); 0.8 N = 2.878 ozf.
    expect(cellsOf(pair, 'load 4', INCH_UNITS)).toEqual([
      '+18.0\u00a0ozf',
      '! +15.1\u00a0ozf (\u22122.88\u00a0ozf)',
    ]);
  });

  it('say over centre where there is no force, and speak of moments where one has no arm', () => {
    const over = figures({ forces: [-5, -2.5, 0, 2.5, null] });
    expect(cellsOf([column(figures({})), column(over)], 'load 4')).toEqual([
      '+5.00\u00a0N',
      '! over centre',
    ]);
    const bare = figures({ forces: null });
    expect(cellsOf([column(figures({})), column(bare)], 'load 4')).toEqual([
      '+20.0\u00a0N\u00a0mm',
      '+20.0\u00a0N\u00a0mm',
    ]);
  });

  it('say where friction holds, that it holds nowhere, is not known, or is not counted', () => {
    const columns = [
      column(figures({})),
      column(figures({ bandsDeg: [] })),
      column(figures({ bandsDeg: null })),
      column(figures({ bandsDeg: null, frictionCounted: false })),
    ];
    expect(cellsOf(columns, 'band')).toEqual([
      '\u22121.2\u00b0 to +1.3\u00b0',
      '! nowhere',
      '! friction is not known',
      '! friction is not counted',
    ]);
  });

  it('name the first limit by the part of that try-out and its speed', () => {
    const none = figures({ limit: null });
    expect(cellsOf([column(figures({})), column(none)], 'limit')).toEqual([
      'the bolt (Shear of the bolt, a plane) from 20\u202f400\u00a0rpm',
      '! none known',
    ]);
  });

  it('wait for figures that are on their way, and say why there are none', () => {
    const columns = [column(figures({})), column(null), column(null, 'rotor.speedRpm: is missing')];
    expect(cellsOf(columns, 'mass')).toEqual([
      '12.00\u00a0g',
      '\u2026',
      'Not worked out: rotor.speedRpm: is missing.',
    ]);
    for (const { cells } of headRows(columns, METRIC_UNITS)) {
      expect(cells.map(({ text }) => text).join(' ')).not.toMatch(/NaN|\{|undefined/);
    }
  });
});

describe('the table copied as text', () => {
  it('has a cell for every column in every line, whatever is in a name', () => {
    const design: Design = designOf(fullHead());
    const shown: TryOut = { id: 'a', name: 'As\tit\nwas' };
    const other = changed(design.parts, 'bolt', { lengthMm: 34 });
    const columns = [
      [shown, design.parts],
      [{ id: 'b', name: 'B', adopted: true, parts: other }, other],
    ].map(([entry, parts]): VariantColumn => {
      const found = variantOutlook(design, parts as Part[], new Float64Array([0]));
      if (!found.ok) throw new Error(found.error.path);
      const figures = found.value;
      return {
        entry: entry as TryOut,
        parts: parts as Part[],
        figures,
        fault: null,
        nameOf: String,
      };
    });
    const lists = columns.map(({ parts }) => parts);
    const text = tableText(
      design.name,
      columns,
      partRows(lists, [], METRIC_UNITS),
      headRows(columns, METRIC_UNITS),
    );
    const lines = text.split('\n');
    expect(lines[1]).toBe('What\tAs it was\tB (adopted)');
    expect(lines[2]).toBe('bolt: Length\t30\u00a0mm\t34\u00a0mm');
    for (const line of lines.slice(1, -1)) expect(line.split('\t').length, line).toBe(3);
    expect(lines.at(-1)).toContain('estimate');
    expect(text).not.toMatch(/NaN|\{|undefined/);
  });
});
