import { describe, expect, test } from 'vitest';
import { parsePolarText, writePolarText } from '../../../src/engine/air/polar';

const ROWS = '0,0,0.01,0\n5,0.5,0.02,0';
function read(text: string) {
  const table = parsePolarText(text);
  if (!table.ok) throw new Error(JSON.stringify(table.error));
  return table.value;
}
function faultOf(text: string) {
  const table = parsePolarText(text);
  return table.ok ? null : table.error;
}

describe('words of a table', () => {
  test.each([
    'alpha',
    'Angle',
    'angle of attack',
    'AOA_deg',
    'alpha [degrees]',
    '"alpha"',
    'Angle-of-Attack (deg)',
  ])('the angle may be called %s', (word) => {
    expect(read(`${word},cl,cd,cm\n${ROWS}`).blocks[0].rows[1].angleDeg).toBe(5);
  });

  test.each(['re', 'Reynolds', 'Reynolds number'])('a column %s parts the rows', (word) => {
    const rows = '1e5,0,0,0.01,0\n1e5,5,0.5,0.02,0\n2e5,0,0,0.01,0\n2e5,5,0.6,0.02,0';
    const { blocks } = read(`${word},alpha,cl,cd,cm\n${rows}`);
    expect(blocks.map(({ reynolds }) => reynolds)).toEqual([1e5, 2e5]);
    for (const bad of ['0', '-5', '1e999']) {
      const fault = faultOf(`${word},alpha,cl,cd,cm\n${rows}\n${bad},0,0,0.01,0`);
      expect(fault).toMatchObject({ kind: 'reynoldsNotPositive', line: 6, value: Number(bad) });
    }
  });

  test.each(['Re = 1.5e5', 're:150000', 'Reynolds=1.5 e 5', 'Reynolds number = 1  5 0 000'])(
    'a line "%s" opens a block',
    (line) => {
      expect(read(`${line}\nalpha,cl,cd,cm\n${ROWS}`).blocks[0].reynolds).toBe(150_000);
    },
  );

  test('a line of Re may have a decimal comma unless commas part the columns, and is positive', () => {
    expect(read('alpha;cl;cd;cm\nRe = 1,5e5\n0;0;0,01;0\n5;0,5;0,02;0').blocks[0].reynolds).toBe(
      150_000,
    );
    expect(read('Re = 1,5e5\nalpha cl cd cm\n0 0 0.01 0\n5 0.5 0.02 0').blocks[0].reynolds).toBe(
      150_000,
    );
    expect(faultOf('alpha,cl,cd,cm\nRe = 1,5e5')).toMatchObject({
      kind: 'notANumber',
      text: '1,5e5',
    });
    expect(faultOf('Re = 0\n')).toMatchObject({ kind: 'reynoldsNotPositive', value: 0, limit: 0 });
    expect(faultOf('Re = 1e999\n')).toMatchObject({ kind: 'reynoldsNotPositive' });
  });

  test('a name is what stands behind it, cut at eighty letters; a heading is no name', () => {
    expect(read(`Name: my fin = 12\nalpha,cl,cd,cm\n${ROWS}`).name).toBe('my fin = 12');
    expect(read(`name=${'x'.repeat(100)}\nalpha,cl,cd,cm\n${ROWS}`).name).toBe('x'.repeat(80));
    // In the middle of a line neither a name nor a Reynolds number is meant.
    expect(faultOf(`a name = b\n`)).toMatchObject({ kind: 'noHeader', text: 'a name = b' });
    expect(faultOf(`where = 5\n`)).toMatchObject({ kind: 'noHeader', text: 'where = 5' });
  });

  test('a name is written on one line, without blanks around it', () => {
    const { blocks } = read(`alpha,cl,cd,cm\n${ROWS}`);
    const first = (name: string) => writePolarText({ name, blocks }).split('\n')[0];
    expect(first('  a\n\n b\t\tc  ')).toBe('name = a b c');
    expect(first('y'.repeat(90))).toBe(`name = ${'y'.repeat(80)}`);
  });

  test('comments and rules are passed over, but only whole lines of them', () => {
    const text = `# one\n! two\n% three\n// four\n---- ----\n====\nalpha,cl,cd,cm\n__\n${ROWS}\n   # last`;
    expect(read(text).blocks[0].rows).toHaveLength(2);
    expect(faultOf(`alpha,cl,cd,cm\n0,0,0.01,0 # no`)).toMatchObject({
      kind: 'notANumber',
      text: '0 # no',
    });
    expect(faultOf(`alpha,cl,cd,cm\n0,0,0.01,-`)).toMatchObject({ kind: 'notANumber', text: '-' });
  });

  test('a mark of the byte order is passed over at the beginning only', () => {
    expect(read(`\uFEFFalpha,cl,cd,cm\n${ROWS}`).blocks[0].rows).toHaveLength(2);
    expect(faultOf(`alpha,cl,cd,cm\n0,0,0.0\uFEFF1,0`)).toMatchObject({ kind: 'notANumber' });
  });

  test('a row may end in empty cells, and cells may be quoted and have blanks about them', () => {
    expect(read('alpha,cl,cd,cm\n0,0,0.01,0,,\n5,0.5,0.02,0,').blocks[0].rows).toHaveLength(2);
    expect(read('alpha;cl;cd;cm\n "0" ; 0 ; "0.01";0\n5;0.5;0.02;0').blocks[0].rows[0].drag).toBe(
      0.01,
    );
    expect(faultOf('alpha,cl,cd,cm\n0,0,0.01,0,x')).toMatchObject({
      kind: 'wrongColumns',
      value: 5,
      limit: 4,
    });
    expect(faultOf('alpha,cl,cd,cm\n0,0,0.01,')).toMatchObject({ kind: 'notANumber', text: '' });
    expect(faultOf('alpha,cl,cd,cm\n0,0,0.01,"0')).toMatchObject({
      kind: 'notANumber',
      text: '"0',
    });
    expect(faultOf('alpha,cl,cd,cm\n0,0,0.01,x"0"')).toMatchObject({ text: 'x"0"' });
    expect(faultOf('alpha,cl,cd,cm\n0,0,0.01,"0"x')).toMatchObject({ text: '"0"x' });
    expect(read('alpha,cl,cd,cm\n0,0,0.01,"0.25"\n5,0.5,0.02,0').blocks[0].rows[0].moment).toBe(
      0.25,
    );
  });

  test('a decimal comma is none where commas part the columns', () => {
    expect(faultOf('alpha,cl,cd,cm\n"0,5",0,0.01,0\n')).toMatchObject({ kind: 'wrongColumns' });
    expect(
      read('alpha\tcl\tcd\tcm\n0,5\t0\t0,01\t0\n5\t0,5\t0,02\t0').blocks[0].rows[0].angleDeg,
    ).toBe(0.5);
    // The tab comes before the semicolon, the semicolon before the comma.
    expect(
      read('alpha\tcl\tcd\tcm\ta;b,c\n0\t0\t0.01\t0\tx\n5\t0.5\t0.02\t0\ty').blocks[0].rows,
    ).toHaveLength(2);
  });

  test('a unit in brackets after a blank is no column, a word with a bracket is one', () => {
    expect(read('alpha (deg) cl cd [1] cm\n0 0 0.01 0\n5 0.5 0.02 0').blocks[0].rows).toHaveLength(
      2,
    );
    expect(read('alpha cl x(y) cd cm\n0 0 9 0.01 0\n5 0.5 9 0.02 0').blocks[0].rows[0].drag).toBe(
      0.01,
    );
    expect(read('alpha cl (y)x cd cm\n0 0 9 0.01 0\n5 0.5 9 0.02 0').blocks[0].rows[0].drag).toBe(
      0.01,
    );
    // Between commas a bracket stands for a column all the same.
    expect(read('alpha,cl,(x),cd,cm\n0,0,9,0.01,0\n5,0.5,9,0.02,0').blocks[0].rows[0].drag).toBe(
      0.01,
    );
    // Degrees in the middle of a word are no unit.
    expect(faultOf('aldegpha,cl,cd,cm\n')).toMatchObject({
      kind: 'columnMissing',
      text: 'angleDeg',
    });
  });

  test('columns that are not known may be there more than once', () => {
    expect(
      read('x,alpha,x,cl,cd,cm\n1,0,2,0,0.01,0\n1,5,2,0.5,0.02,0').blocks[0].rows,
    ).toHaveLength(2);
  });

  test('a table may be as long as its limits, lines too, and has no more blocks than its limit', () => {
    const padded = (length: number) => `#${'x'.repeat(length - 1)}\nalpha,cl,cd,cm\n${ROWS}`;
    expect(faultOf(padded(2000))).toBeNull();
    const blocks = (count: number) =>
      `alpha,cl,cd,cm\n${Array.from({ length: count }, (_, k) => `Re=${k + 1}\n${ROWS}`).join('\n')}`;
    expect(faultOf(blocks(200))).toBeNull();
    expect(faultOf(blocks(201))).toMatchObject({
      kind: 'tooManyBlocks',
      line: 603,
      value: 201,
      limit: 200,
    });
    expect(faultOf('')).toMatchObject({ kind: 'noHeader', line: 1 });
  });

  test('numbers are those of the language, without a word around them', () => {
    for (const [word, value] of [
      ['+.5', 0.5],
      ['5.', 5],
      ['-1E-2', -0.01],
    ] as const) {
      expect(read(`alpha,cl,cd,cm\n0,${word},0.01,0\n5,0.5,0.02,0`).blocks[0].rows[0].lift).toBe(
        value,
      );
    }
    for (const word of ['.', '1e', '1.2.3', '--1', '1 2', 'Infinity']) {
      expect(faultOf(`alpha,cl,cd,cm\n0,${word},0.01,0`)).toMatchObject({
        kind: 'notANumber',
        text: word,
      });
    }
  });
});
