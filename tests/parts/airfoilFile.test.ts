import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AirfoilFile, readAirfoilFile } from '../../src/parts/airfoilFile';
import { blade } from '../../src/parts/blade';
import type { BladeValues } from '../../src/parts/blade/parameters';
import { defaults } from './sample';

/** An invented wedge: flat below, 12 % thick at 30 % of the chord. */
const TOP = [
  [0, 0],
  [0.1, 0.06],
  [0.3, 0.12],
  [0.7, 0.06],
  [1, 0.001],
] as const;
const BOTTOM = [
  [0, 0],
  [0.5, -0.001],
  [1, -0.001],
] as const;
const ROUND = [...TOP.toReversed(), ...BOTTOM.slice(1)];
const WANTED = ROUND.flat();

function lines(
  points: readonly (readonly [number, number])[],
  write = (v: number) => v.toFixed(6),
) {
  return points.map(([x, y]) => ` ${write(x)}  ${write(y)}`).join('\n');
}
function read(text: string): AirfoilFile {
  const result = readAirfoilFile(text);
  if (!result.ok) throw new Error(`${result.error.line}: ${result.error.reason}`);
  return result.value;
}
function faultOf(text: string) {
  const result = readAirfoilFile(text);
  return result.ok ? null : result.error;
}

describe('a file of section coordinates', () => {
  it.each([
    ['round from the trailing edge', `Wedge 12\n${lines(ROUND)}\n`],
    ['round, bottom first', `Wedge 12\n${lines(ROUND.toReversed())}`],
    [
      'each side from the leading edge, counted',
      `Wedge 12\n 5. 3.\n\n${lines(TOP)}\n\n${lines(BOTTOM)}\n`,
    ],
    ['each side from the leading edge, not counted', `Wedge 12\n${lines(TOP)}\n${lines(BOTTOM)}`],
    ['lower side first', `Wedge 12\n3 5\n${lines(BOTTOM)}\n${lines(TOP)}`],
    [
      'with comments, blank lines and Windows line ends',
      `# drawn by hand\r\nWedge 12\r\n\r\n! top\r\n${lines(ROUND).replaceAll('\n', '\r\n')}\r\n`,
    ],
    ['with decimal commas', `Wedge 12\n${lines(ROUND, (v) => v.toFixed(6).replace('.', ','))}`],
    [
      'with decimal commas and semicolons',
      `Wedge 12\n${ROUND.map(([x, y]) => `${x};${y}`.replaceAll('.', ',')).join('\n')}`,
    ],
    ['comma separated', `Wedge 12\n${ROUND.map(([x, y]) => `${x},${y}`).join('\n')}`],
    [
      'in per cent of the chord',
      `Wedge 12\n${lines(ROUND.map(([x, y]) => [100 * x, 100 * y] as const))}`,
    ],
    [
      'of a 28 mm chord that begins at 5 mm',
      `Wedge 12\n${lines(ROUND.map(([x, y]) => [5 + 28 * x, 28 * y] as const))}`,
    ],
    [
      'with exponents and a byte order mark',
      `\uFEFFWedge 12\n${lines(ROUND, (v) => v.toExponential(6))}`,
    ],
  ])('%s', (_, text) => {
    const { name, coordinates, thicknessPercent } = read(text);
    expect(name).toBe('Wedge 12');
    expect(coordinates.length).toBe(WANTED.length);
    // Six printed decimals of per cent, mm or chords.
    coordinates.forEach((value, i) => {
      expect(Math.abs(value - WANTED[i])).toBeLessThan(1e-6);
    });
    // At 30 %: 0.12 above, 0.0006 below.
    expect(thicknessPercent).toBeCloseTo(12.06, 4);
  });

  it('is a section that a blade takes', () => {
    const { coordinates, name, thicknessPercent } = read(lines(ROUND));
    expect(name).toBe('');
    const values = { ...(defaults('blade') as unknown as BladeValues) };
    const own = {
      sectionCoordinates: coordinates,
      sectionName: name,
      rootThicknessPercent: thicknessPercent,
    };
    expect(blade.problems({ ...values, ...own })).toEqual([]);
  });

  it.each<[string, string, number | undefined, RegExp]>([
    ['nothing', '', undefined, /no coordinates/],
    ['only a name', 'Wedge\n\n', undefined, /no coordinates/],
    ['binary noise', 'Wedge\n1 0\n\u0000\u0001\u0002', 3, /not plain text/],
    ['undecodable bytes', '\uFFFD\uFFFDPNG', 1, /not plain text/],
    ['NaN', `Wedge\n1 0\nNaN 0.1\n${lines(ROUND)}`, 3, /"NaN 0.1"/],
    ['NaN for a name', `NaN 0.1\n${lines(ROUND)}`, 1, /"NaN 0.1"/],
    ['infinity', `Wedge\n1 Infinity\n${lines(ROUND)}`, 2, /Infinity/],
    ['1e308', `Wedge\n1 0\n0.5 1e308\n${lines(ROUND)}`, 3, /beyond 1000000/],
    ['1e999', `Wedge\n1 0\n0.5 1e999\n${lines(ROUND)}`, 3, /beyond 1000000/],
    ['one point', 'Wedge\n1 0\n', undefined, /one place of the chord/],
    ['three numbers to a line', `Wedge\n1 0 0\n${lines(ROUND)}`, 2, /"1 0 0"/],
    ['words at the end', `Wedge\n${lines(ROUND)}\nthe end`, 9, /"the end"/],
    [
      'a wrong count',
      `Wedge\n5 4\n${lines(TOP)}\n${lines(BOTTOM)}`,
      2,
      /announces 5 and 4 points but has 8/,
    ],
    [
      'too many points',
      Array.from({ length: 402 }, (_, i) => `${i / 401} 0.1`).join('\n'),
      402,
      /more than 400 points/,
    ],
    ['points far off', `1 0\n0.5 3\n0 0\n0.5 -0.1\n0.7 -0.1`, 2, /two chords off/],
    ['a crossing', '1 0\n0.5 0.1\n0 0\n0.4 -0.1\n0.6 0.2\n1 -0.05', undefined, /crosses itself/],
    ['endless text', 'x'.repeat(1_000_001), undefined, /more than 1000000 characters/],
  ])('with %s is refused, with the line where there is one', (_, text, line, words) => {
    const found = faultOf(text);
    expect(found?.line).toBe(line);
    expect(found?.reason).toMatch(words);
  });

  it('is read whatever parts its numbers, also where it begins anywhere on the chord', () => {
    const far = (points: readonly (readonly [number, number])[]) =>
      points.map(([x, y]) => `${100 + 28 * x} ${28 * y}`).join('\n');
    const row = (write: (x: string, y: string) => string) =>
      ROUND.map(([x, y]) => write(String(x), String(y))).join('\n');
    const comma = (text: string) => text.replace('.', ',');
    const texts = [
      `${far(TOP)}\n${far(BOTTOM)}`,
      row((x, y) => `\t${x}\t${y}\t`),
      row((x, y) => `\f${x} , ${y}`),
      row((x, y) => `${x} ;; ${y} ;`),
      row((x, y) => `${comma(x)}, ${comma(y)}`),
      row((x, y) => `${comma(x)} , ${comma(y)}`),
      row((x, y) => `${comma(x)};${comma(y)};`),
    ];
    for (const text of texts) {
      const { coordinates, name } = read(text);
      expect(name).toBe('');
      expect(coordinates.length).toBe(WANTED.length);
      coordinates.forEach((value, i) => expect(value).toBeCloseTo(WANTED[i], 12));
    }
  });

  it('may be as coarse as a diamond, and have an upright step', () => {
    const diamond = '1 0\n0.4 0.1\n0 0\n0.3 -0.05\n0.6 -0.05';
    expect(read(diamond).coordinates).toEqual([1, 0, 0.4, 0.1, 0, 0, 0.3, -0.05, 0.6, -0.05]);
    const step = '1 0\n0.5 0.1\n0.5 0.05\n0 0\n0.5 -0.05';
    expect(read(step).coordinates.length).toBe(10);
    expect(read(`${step}\n0.5 -0.05`).coordinates.length).toBe(10);
  });

  it('announces as few as two points of a side', () => {
    const { coordinates } = read('4 2\n0 0\n.3 .1\n.6 .08\n1 0.01\n0 0\n1 -0.01');
    expect(coordinates).toEqual([1, 0.01, 0.6, 0.08, 0.3, 0.1, 0, 0, 1, -0.01]);
  });

  it('may have a name that begins with no number: words, figures among them, up to 120 letters', () => {
    const first = (line: string) => read(`${line}\n${lines(ROUND)}`).name;
    expect(first('Finland info 12')).toBe('Finland info 12');
    expect(first('\t  Wedge  ')).toBe('Wedge');
    expect(first('w'.repeat(130))).toBe('w'.repeat(120));
    expect(faultOf(`+NaN 0.1\n${lines(ROUND)}`)?.line).toBe(1);
    expect(faultOf(`A\uFEFF\n${lines(ROUND)}`)).toBeNull();
    expect(first('A\uFEFFB')).toBe('A\uFEFFB');
    expect(faultOf(`Wedge\n1 ${'x'.repeat(60)}\n${lines(ROUND)}`)?.reason).toBe(
      `has "1 ${'x'.repeat(38)}" where a pair of numbers should be`,
    );
  });

  it.each(['1 0.5x', '1 x0.5', '1 .', '1 1e', '1 --1', '1 1.2.3', '1', '1 2 3', '1 \u007f0'])(
    'does not take "%s" for a pair',
    (line) => {
      expect(faultOf(`Wedge\n${line}\n${lines(ROUND)}`)?.line).toBe(2);
    },
  );

  it('takes 400 points and a million letters, and no more', () => {
    const ellipse = (count: number) =>
      Array.from({ length: count }, (_, k) => {
        const turn = (2 * Math.PI * k) / count;
        return `${1e6 * (0.5 + 0.5 * Math.cos(turn))} ${1e5 * Math.sin(turn)}`;
      }).join('\n');
    expect(read(ellipse(400)).coordinates.length).toBe(800);
    expect(faultOf(ellipse(401))).toMatchObject({
      line: 401,
      reason: expect.stringMatching(/400 points/),
    });
    expect(faultOf(' '.repeat(1_000_000))?.reason).toMatch(/no coordinates/);
    expect(faultOf(`1e6 0\n0.5e6 1e5\n0 0\n1000001 -1`)?.line).toBe(4);
  });

  it('never throws, and what it takes is sound', () => {
    const token = fc.oneof(
      fc.double({ noDefaultInfinity: false }).map(String),
      fc.constantFrom(
        '0',
        '1',
        '0,5',
        '.',
        ',',
        ';',
        '#',
        'a',
        '1e400',
        '-',
        '17.',
        '\u0000',
        '\uFFFD',
        'NaN',
      ),
    );
    const text = fc.array(
      fc.array(token, { maxLength: 4 }).map((row) => row.join(' ')),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          text.map((rows) => rows.join('\n')),
        ),
        (hostile) => {
          const result = readAirfoilFile(hostile);
          if (result.ok) expect(result.value.coordinates.every(Number.isFinite)).toBe(true);
          else expect(result.error.reason).not.toBe('');
        },
      ),
      { seed: 4, numRuns: 2000 },
    );
  });
});

describe('words of such a file', () => {
  it('are a name before the first pair only, and none where none is written', () => {
    expect(faultOf(`${lines(ROUND)}\nwedge`)).toMatchObject({ line: ROUND.length + 1 });
    expect(read(lines(ROUND)).name).toBe('');
    expect(read(` 5. 3.\n${lines(TOP)}\n${lines(BOTTOM)}`).name).toBe('');
  });

  it('are no words with a sign that deletes', () => {
    expect(faultOf(`wedge\u007f\n${lines(ROUND)}`)).toEqual({
      line: 1,
      reason: 'is not plain text',
    });
  });
});
