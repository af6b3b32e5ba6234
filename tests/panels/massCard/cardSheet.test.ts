import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { HeadModel } from '../../../src/design/headModel';
import { massCard } from '../../../src/design/massCard';
import { createMoments } from '../../../src/engine/mass/moments';
import { cardSheet, csvText, htmlText, tabText } from '../../../src/panels/massCard/cardSheet';
import { scaleText } from '../../../src/panels/massCard/ScaleEntry';
import { METRIC_UNITS } from '../../../src/state/settings';
import { designOf, fullHead, partOf } from '../../design/designs';

function lump(name: string, massGrams: number, positionMm: readonly number[], more = {}): Part {
  const pose = { positionMm, rotationDeg: [0, 0, 0] };
  return partOf('pointMass', name, { massGrams, pose, ...more });
}
function sheetOf(design: Design) {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) throw new Error(loaded.error.path);
  const card = massCard(model.parts, model.totals(createMoments()), design.weighedTotal);
  return cardSheet(card, design);
}

/**
 * RFC 4180, section 2, read letter by letter: CR LF between records, fields with quotes may hold commas, quotes
 * (doubled) and line ends. Written for this test; anything the grammar does not allow throws.
 */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let at = 0;
  const field = (): string => {
    let value = '';
    if (text[at] !== '"') {
      while (at < text.length && !',\r\n'.includes(text[at])) {
        if (text[at] === '"') throw new Error(`a bare quote at ${at}`);
        value += text[at++];
      }
      return value;
    }
    for (at++; ; at++) {
      if (at >= text.length) throw new Error('an open quote');
      if (text[at] !== '"') value += text[at];
      else if (text[at + 1] === '"') value += text[at++];
      else break;
    }
    at++;
    return value;
  };
  while (at < text.length) {
    const record = [field()];
    while (text[at] === ',') {
      at++;
      record.push(field());
    }
    if (text.slice(at, at + 2) !== '\r\n') throw new Error(`no line end at ${at}`);
    at += 2;
    records.push(record);
  }
  return records;
}

const nasty = [
  '=HYPERLINK("http://x","y")',
  '+1+2',
  '-3',
  '@SUM(A1)',
  ' =1',
  '\t=1',
  '\uff1d1',
  'Stift, "lang"\r\nzweite Zeile',
  'Öse \u00d8 3',
];

describe('the mass card as CSV', () => {
  const parts = [
    lump('front', 2, [30, 10, 0]),
    lump('stalk', 0.5, [40, 3, -16]),
    lump('spare', 9, [0, 1, 2], { hidden: true }),
  ];
  const weighedTotal = { massGrams: 2.6, massStepGrams: 0.05 };
  const design: Design = { ...designOf(parts), name: 'Test, "one"', weighedTotal };
  const text = csvText(sheetOf(design));
  const records = readCsv(text.slice(1));

  it('begins with a byte order mark and the header, and every line is as wide', () => {
    expect(text.charCodeAt(0)).toBe(0xfeff);
    expect(records[0].slice(0, 4)).toEqual(['Part', 'Kind', 'Mass (g)', 'Centre x (mm)']);
    expect(new Set(records.map((record) => record.length))).toEqual(new Set([12]));
  });

  it('has units in the header of every column of numbers', () => {
    for (const name of records[0].slice(2, 10)) expect(name).toMatch(/\((g|mm|g mm2|%)\)$/);
  });

  it('gives back the numbers of the hand formulas, in g, mm and g mm2', () => {
    // I = m (y^2 + z^2), J_yy - J_zz = m (y^2 - z^2), J_yz = m y z; shares of 200 + 123.5.
    const rows = records.slice(1, 5).map((record) => record.slice(2, 10).map(Number));
    const close = (values: number[]) => values.map((value) => expect.closeTo(value, 6));
    expect(rows[0]).toEqual(close([2, 30, 10, 0, 200, 200, 0, (100 * 200) / 323.5]));
    expect(rows[1]).toEqual(close([0.5, 40, 3, -16, 132.5, -123.5, -24, (-100 * 123.5) / 323.5]));
    expect(rows[3]).toEqual(close([2.5, 32, 8.6, -3.2, 332.5, 76.5, -24, (100 * 76.5) / 323.5]));
    expect(records[3][0]).toBe('spare');
    expect(records[3][9]).toBe('');
    expect(records.slice(1, 4).map((record) => record[11])).toEqual([
      'in the sum',
      'in the sum',
      'left out',
    ]);
  });

  it('tells the conditions below an empty line', () => {
    const empty = records.findIndex((record) => record.every((cell) => cell === ''));
    expect(empty).toBe(5);
    const told = new Map(records.slice(empty + 2).map(([name, value]) => [name, value]));
    expect(told.get('Design')).toBe('Test, "one"');
    expect(told.get('Speed (rpm)')).toBe('10200');
    expect(Number(told.get('Weighed less sum (g)'))).toBeCloseTo(0.1, 9);
    expect(Number(told.get('Weighed less sum (%)'))).toBeCloseTo(4, 7);
  });

  it('makes names harmless that a spreadsheet would run, and keeps all others letter for letter', () => {
    const named = nasty.map((name, i) => ({ ...lump(`p${i}`, 1, [0, 1, 0]), name }) as Part);
    const back = readCsv(csvText(sheetOf({ ...designOf(named), name: '=cmd' })).slice(1));
    expect(back.slice(1, 1 + nasty.length).map(([name]) => name)).toEqual(
      nasty.map((name, i) => (i < 7 ? `'${name}` : name)),
    );
    expect(back.some(([, value]) => value === "'=cmd")).toBe(true);
    // Every cell of text, whatever it is: none begins as a formula does (the list is the OWASP one, from memory).
    for (const cell of back.flat()) {
      if (!Number.isFinite(Number(cell))) expect(cell).not.toMatch(/^\s*[=+\-@]/);
    }
  });

  it('reads back from any head', () => {
    const back = readCsv(csvText(sheetOf(designOf(fullHead()))).slice(1));
    // The push rod stands after what is in the sum.
    const [rods, rest] = [true, false].map((rod) =>
      fullHead().filter((part) => (part.id === 'link') === rod),
    );
    expect(back.slice(1, 1 + fullHead().length).map(([name]) => name)).toEqual(
      [...rest, ...rods].map((part) => part.name),
    );
  });
});

describe('the mass card to paste', () => {
  const named = nasty.map((name, i) => ({ ...lump(`p${i}`, 1, [0, 1, 0]), name }) as Part);
  const sheet = sheetOf({ ...designOf(named), name: '<b>&' });

  it('is one line a part and one tab a column, whatever the names hold', () => {
    const lines = tabText(sheet).split('\n');
    expect(lines).toHaveLength(1 + nasty.length + 1 + 2 + sheet.conditions.length);
    for (const line of lines) expect(line.split('\t')).toHaveLength(12);
    expect(lines[1]).toMatch(/^'=HYPERLINK/);
  });

  it('is a table in which names are text and not markup', () => {
    const html = htmlText(sheet);
    expect(html).toContain('&lt;b&gt;&amp;');
    expect(html.match(/<tr>/g)).toHaveLength(tabText(sheet).split('\n').length);
    expect(html).not.toMatch(/<(?!\/?(table|thead|tbody|tr|th|td)>|meta charset="utf-8">)/);
  });
});

describe('the scale in words', () => {
  const base = { mass: 0.042, step: 0.0001, difference: 0.002, percent: 5, allowance: 0.001 };
  it('says how much, which way, and whether that is more than it may be out', () => {
    const beyond = scaleText({ ...base, within: false }, METRIC_UNITS);
    expect(beyond).toContain('2.00\u00a0g (5.0\u00a0%) more');
    expect(beyond).toContain('beyond the 1.00\u00a0g');
    const less = { ...base, difference: -0.0005, percent: -1.2, within: true };
    expect(scaleText(less, METRIC_UNITS)).toMatch(/0\.500.g \(1\.2.%\) less .*within the/);
    expect(scaleText(null, METRIC_UNITS)).toContain('type it here');
  });
});
