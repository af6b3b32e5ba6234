import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePolarText, writePolarText } from '../../../src/engine/air/polar';
import type { PolarTable } from '../../../src/engine/air/polarTable';
import { seeded } from '../../support/seeded';

function read(text: string): PolarTable {
  const table = parsePolarText(text);
  if (!table.ok) throw new Error(JSON.stringify(table.error));
  return table.value;
}

function faultOf(text: string) {
  const table = parsePolarText(text);
  return table.ok ? null : table.error;
}

const plain = {
  name: '',
  blocks: [
    {
      reynolds: null,
      rows: [
        { angleDeg: -5, lift: -0.5, drag: 0.02, moment: 0.01 },
        { angleDeg: 5, lift: 0.5, drag: 0.02, moment: -0.01 },
      ],
    },
  ],
};

describe('a section table read from text', () => {
  test('is the same from commas, semicolons with decimal commas, tabs and blanks, in any order of columns', () => {
    const texts = [
      'alpha,cl,cd,cm\n-5,-0.5,0.02,0.01\n5,0.5,0.02,-0.01\n',
      'Cd;Cm;Alpha_deg;Cl\r\n0,02;0,01;-5;-0,5\r\n0,02;-0,01;5,0;0,5\r\n',
      '\uFEFF# a comment\nangle\tlift\tdrag\tmoment\n-5\t-5e-1\t.02\t1E-2\n\n5\t+0,5\t0.02\t-0.01',
      '  alpha (deg)   CL   CD   CM\n ------ ---- ---- ----\n  -5  -0.5  0.02 0.01\n   5   0.5  0.02 -0.01 ',
      '"AoA [deg]","Lift","x/c","Drag","Moment"\n-5,-0.5,n/a,0.02,0.01\n5,0.5,,0.02,-0.01',
    ];
    for (const text of texts) expect(read(text)).toEqual(plain);
  });

  test('has a block for each Reynolds number, by line or by column, in ascending order', () => {
    const byLine = read(
      'name = fin 12\nRe = 160000\nalpha cl cd cm\n0 0 .01 0\n5 .5 .02 0\nRe: 0.040 e 6\n0 0 .03 0\n5 .4 .04 0',
    );
    const byColumn = read(
      'name: fin 12\nre,alpha,cl,cd,cm\n160000,0,0,.01,0\n160000,5,.5,.02,0\n40000,0,0,.03,0\n4e4,5,.4,.04,0',
    );
    expect(byLine.blocks.map(({ reynolds }) => reynolds)).toEqual([40_000, 160_000]);
    expect(byLine.blocks[0].rows[1]).toEqual({ angleDeg: 5, lift: 0.4, drag: 0.04, moment: 0 });
    expect(byColumn).toEqual(byLine);
    expect(byLine.name).toBe('fin 12');
  });

  test('comes back the same when it is written and read', () => {
    const random = seeded(3);
    for (let k = 0; k < 50; k++) {
      const blocks = Array.from({ length: random.whole(1, 4) }, (_row, b) => ({
        reynolds: 10_000 * (b + 1) + random.unit(),
        rows: Array.from({ length: random.whole(2, 40) }, (_cell, i) => ({
          angleDeg: i * 4 + random.unit() - 90,
          lift: random.between(-2, 2),
          drag: random.unit() * 10 ** -random.whole(0, 9),
          moment: random.between(-1, 1),
        })),
      }));
      const table = { name: `table ${k}`, blocks };
      expect(read(writePolarText(table))).toEqual(table);
    }
    expect(read(writePolarText(plain))).toEqual(plain);
  });

  test('names the line and the limit of what is wrong', () => {
    const head = 'alpha,cl,cd,cm\n0,0,0.01,0\n';
    const cases: readonly [string, object][] = [
      ['', { kind: 'noHeader' }],
      ['0 0 0 0\n', { kind: 'noHeader', line: 1 }],
      ['alpha,cl,cd\n0,0,0', { kind: 'columnMissing', line: 1, text: 'moment' }],
      ['alpha_rad,cl,cd,cm\n0,0,0,0', { kind: 'columnMissing', text: 'angleDeg' }],
      ['alpha,cl,cl,cd,cm\n', { kind: 'columnRepeated', line: 1, value: 3 }],
      ['alpha,cl,cd,cm\n', { kind: 'tooFewRows', line: 2, value: 0, limit: 2 }],
      [head, { kind: 'tooFewRows', line: 2, value: 1, limit: 2 }],
      [`${head}0,1,1,1`, { kind: 'notAscending', line: 3, value: 0, limit: 0 }],
      [`${head}# note\n-1,1,1,1`, { kind: 'notAscending', line: 4, value: -1, limit: 0 }],
      [`${head}5,1,1`, { kind: 'wrongColumns', line: 3, value: 3, limit: 4 }],
      [`${head}5,x,1,1`, { kind: 'notANumber', line: 3, text: 'x' }],
      [`${head}5,NaN,1,1`, { kind: 'notANumber', line: 3 }],
      [`${head}5,0x10,1,1`, { kind: 'notANumber', line: 3 }],
      [`${head}5,1e999,1,1`, { kind: 'notFinite', line: 3, text: 'lift' }],
      [`${head}181,1,1,1`, { kind: 'angleOutOfRange', line: 3, value: 181, limit: 180 }],
      [`${head}5,21,1,1`, { kind: 'coefficientOutOfRange', line: 3, value: 21, limit: 20 }],
      [`${head}5,1,-1,1`, { kind: 'dragNegative', line: 3, value: -1, limit: 0 }],
      [`${head}5,1,1,1\nRe = -3`, { kind: 'reynoldsNotPositive', line: 4, value: -3 }],
      [`${head}5,1,1,1\nRe = 1,5`, { kind: 'notANumber', line: 4, text: '1,5' }],
      [`${head}5,1,1,1\nRe = much`, { kind: 'notANumber', line: 4, text: 'much' }],
      [`${head}5,1,1,1\nRe = 1e5\n0,0,0,0\n5,1,1,1`, { kind: 'reynoldsMissing', line: 2 }],
      [
        `Re=1e5\n${head}5,1,1,1\nRe = 1e5\n0,0,0,0\n5,1,1,1`,
        { kind: 'reynoldsRepeated', line: 6, value: 1e5 },
      ],
      ['a'.repeat(2001), { kind: 'lineTooLong', value: 2001, limit: 2000 }],
      ['a'.repeat(4_000_001), { kind: 'tooLong', value: 4_000_001, limit: 4_000_000 }],
    ];
    for (const [text, fault] of cases)
      expect(faultOf(text), text.slice(0, 40)).toMatchObject(fault);
    const many = Array.from({ length: 20_001 }, (_, k) => `${k / 1000},0,0.01,0`).join('\n');
    expect(faultOf(`alpha,cl,cd,cm\n${many}`)).toMatchObject({
      kind: 'tooManyRows',
      line: 20_002,
      value: 20_001,
      limit: 20_000,
    });
    expect(faultOf(`alpha,cl,cd,cm\n${many.slice(0, many.lastIndexOf('\n'))}`)).toBe(null);
  });

  test('never throws, whatever the text', () => {
    const pieces = [
      'alpha',
      'cl',
      'cd',
      'cm',
      're',
      'Re =',
      'name =',
      ',',
      ';',
      '\t',
      ' ',
      '\n',
      '\r',
      '#',
    ];
    const word = fc.oneof(
      fc.constantFrom(...pieces, '1', '-2.5', '3,5', '1e400', '-', '__proto__', '\0', '"'),
      fc.string({ maxLength: 5 }),
    );
    const text = fc.array(word, { maxLength: 80 }).map((words) => words.join(''));
    fc.assert(
      fc.property(fc.oneof(text, fc.string()), (one) => {
        const table = parsePolarText(`alpha cl cd cm\n${one}`);
        return table.ok || (table.error.line >= 1 && parsePolarText(one) !== null);
      }),
      { seed: 5, numRuns: 3000 },
    );
  });
});
