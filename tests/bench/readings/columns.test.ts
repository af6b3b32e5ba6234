import { describe, expect, it } from 'vitest';
import { companion, guessMapping, mappingFaults } from '../../../src/bench/readings/mapping';
import { previewRows } from '../../../src/bench/readings/preview';
import {
  headerSignature,
  rememberedMapping,
  rememberMapping,
} from '../../../src/bench/readings/remembered';
import type { ColumnMapping, ColumnRole } from '../../../src/bench/readings/types';
import { place, preview, tableOf } from './support';

const COLUMN: Readonly<Record<string, ColumnMapping>> = {
  p: { role: 'pitch', unit: 'deg', flipped: false, travel: null },
  f: { role: 'force', unit: 'N', flipped: false, travel: null },
  c: { role: 'force', unit: 'N', flipped: true, travel: null },
  m: { role: 'moment', unit: 'N m', flipped: false, travel: null },
  w: { role: 'moment', unit: 'N m', flipped: true, travel: null },
  '>': { role: 'force', unit: 'N', flipped: false, travel: 'push' },
  '<': { role: 'force', unit: 'N', flipped: false, travel: 'pull' },
  s: { role: 'sense', unit: null, flipped: false, travel: null },
  d: { role: 'travel', unit: null, flipped: false, travel: null },
  u: { role: 'unit', unit: null, flipped: false, travel: null },
  t: { role: 'time', unit: 's', flipped: false, travel: null },
  l: { role: 'scale', unit: 'mm', flipped: false, travel: null },
  v: { role: 'speed', unit: 'rpm', flipped: false, travel: null },
  n: { role: 'note', unit: null, flipped: false, travel: null },
  '.': { role: 'ignore', unit: null, flipped: false, travel: null },
  F: { role: 'force', unit: null, flipped: false, travel: null },
  P: { role: 'pitch', unit: null, flipped: false, travel: null },
  '!': { role: 'force', unit: 'deg', flipped: false, travel: null },
};
const mappingOf = (letters: string) => [...letters].map((letter) => COLUMN[letter]);
const headed = (letters: string) => [...letters].map((_, k) => `H${k}`);

describe('the column that belongs to a force', () => {
  it.each([
    ['pf', 1, 'pitch', 0],
    ['fp', 0, 'pitch', 1],
    ['pfpf', 3, 'pitch', 2],
    ['pfpf', 1, 'pitch', 0],
    ['fpfp', 0, 'pitch', 1],
    ['fpfp', 2, 'pitch', 1],
    ['f.', 0, 'pitch', -1],
    // A letter, a unit, a way of travel stands behind, but not behind the next force.
    ['sfs', 1, 'sense', 2],
    ['sf>s', 1, 'sense', 0],
    ['f>s', 0, 'sense', 2],
    ['dfd', 1, 'travel', 2],
    ['ufu', 1, 'unit', 2],
    ['sfms', 1, 'sense', 0],
    ['f..s', 0, 'sense', 3],
    ['nfn', 1, 'note', 0],
    ['sf.s', 1, 'sense', 3],
  ] as const)('%j: of column %d the %s is %d', (letters, column, role, wanted) => {
    expect(companion(mappingOf(letters), column, role)).toBe(wanted);
  });
});

describe('a mapping', () => {
  it.each([
    ['pf', []],
    ['tm', []],
    ['lf', []],
    ['p.', ['-:- noReadingColumn']],
    ['f.', ['-:- noPlaceColumn']],
    ['..', ['-:- noReadingColumn', '-:- noPlaceColumn']],
    ['pF', ['-:2 unitMissing']],
    ['pFu', []],
    ['Pf', ['-:1 unitMissing']],
    ['Pfu', ['-:1 unitMissing']],
    ['p!', ['-:2 unitWrong']],
    // Twice the same: of loads, of what belongs to one load. Not: ways of travel, senses, pitches of their own, notes.
    ['pff', ['-:3 roleTwice']],
    ['pmm', ['-:3 roleTwice']],
    ['pmw', ['-:3 roleTwice']],
    ['pmf', []],
    ['p><', []],
    ['p>>', ['-:3 roleTwice']],
    ['pfc', []],
    ['pfcf', ['-:4 roleTwice']],
    ['pfpf', []],
    ['ppf', ['-:2 roleTwice']],
    ['pfp', ['-:3 roleTwice']],
    ['pfppf', ['-:3 roleTwice', '-:4 roleTwice']],
    ['pfnn..', []],
    ['ttpf', ['-:2 roleTwice']],
    ['pvvf', ['-:3 roleTwice']],
    ['pfss', ['-:4 roleTwice']],
    ['p>s<s', []],
  ])('%j has the faults %j', (letters, faults) => {
    expect(mappingFaults(mappingOf(letters), headed(letters)).map(place)).toEqual(faults);
  });

  it('names the heading, the first of two, the unit that is not known', () => {
    expect(mappingFaults(mappingOf('pff'), headed('pff'))).toEqual([
      {
        row: null,
        column: 3,
        heading: 'H2',
        reason: { code: 'roleTwice', role: 'force', first: 2 },
      },
    ]);
    expect(mappingFaults(mappingOf('pF'), headed('pF'), { 1: 'dyn' })[0].reason).toEqual({
      code: 'unitUnknown',
      found: 'dyn',
    });
    expect(mappingFaults(mappingOf('p!'), headed('p!'))[0].reason).toEqual({
      code: 'unitWrong',
      found: 'deg',
      role: 'force',
    });
  });
});

function guessed(text: string): ColumnRole[] {
  return guessMapping(tableOf(text)).mapping.map(({ role }) => role);
}

describe('what the columns hold is guessed', () => {
  it.each([
    // From what stands in them, whatever the heading says.
    ['Pitch,Force [N],X\n1,2,T\n2,3,C\n', ['pitch', 'force', 'sense']],
    ['Pitch,Force [N],X\n1,2,up\n2,3,down\n', ['pitch', 'force', 'travel']],
    ['Pitch,Force [N],Sense\n1,2,push\n2,3,pull\n', ['pitch', 'force', 'sense']],
    ['Pitch,Force [N],X\n1,2,push\n2,3,pull\n', ['pitch', 'force', 'travel']],
    ['Pitch,Force [N],X\n1,2,+\n2,3,-\n3,4,T\n', ['pitch', 'force', 'sense']],
    ['Pitch,Force [N],X\n1,2,a\n2,3,T\n3,4,C\n', ['pitch', 'force', 'ignore']],
    ['Pitch,Force [N],X\n1,2,a\n2,3,T\n3,4,C\n4,5,C\n5,6,T\n', ['pitch', 'force', 'sense']],
    ['Pitch,Force [N],X\n1,2,5\n2,3,T\n3,4,6\n', ['pitch', 'force', 'ignore']],
    ['Pitch,Force [N],X\n1,2,\n2,3,T\n3,4,\n', ['pitch', 'force', 'sense']],
    ['Pitch,Force [N],X\n1,2\n2,3,T\n3,4,C\n4,5\n', ['pitch', 'force', 'sense']],
    ['Pitch,Force [N],X\n1,2,5\n2,3,T\n', ['pitch', 'force', 'sense']],
    ['Pitch,Force [N],X\n1,2,\n2,3,\n', ['pitch', 'force', 'ignore']],
    ['Pitch,Force [N],X\n1,2,+\n2,3,a\n3,4,b\n', ['pitch', 'force', 'ignore']],
    ['Pitch,Force [N],Sense\n1,2,up\n2,3,down\n', ['pitch', 'force', 'travel']],
    // By its first two hundred rows.
    [
      `Pitch,Force [N],X\n${'1,2,T\n'.repeat(200)}${'1,2,a\n'.repeat(800)}`,
      ['pitch', 'force', 'sense'],
    ],
    // A column of notes, runs or units may hold such words.
    ['Pitch,Force [N],Note\n1,2,up\n2,3,down\n', ['pitch', 'force', 'note']],
    ['Pitch,Force [N],Run\n1,2,up\n2,3,down\n', ['pitch', 'force', 'run']],
    ['Pitch,Force,Unit\n1,2,t\n2,3,c\n', ['pitch', 'force', 'unit']],
    // By its unit only where no other column has the role by name.
    ['Pitch,[N]\n1,2\n2,3\n', ['pitch', 'force']],
    ['Pitch,Force [N],Peak [N]\n1,2,3\n2,3,4\n', ['pitch', 'force', 'ignore']],
    // Without headings the first column of numbers is a pitch, the second a force.
    ['1,2,T\n2,3,C\n', ['pitch', 'force', 'sense']],
    ['T,1,2,9\nC,2,3,9\n', ['sense', 'pitch', 'force', 'ignore']],
  ] as const)('%j', (text, roles) => {
    expect(guessed(text)).toEqual(roles);
  });

  it('with units that are assumed aloud', () => {
    const all = guessMapping(
      tableOf('Pitch,Speed,Time,Scale,Omega,Force [N],Moment\n1,2,3,4,5,6,7\n'),
    );
    expect(all.mapping.map(({ unit }) => unit)).toEqual([
      'deg',
      'rpm',
      's',
      'div',
      'rad/s',
      'N',
      null,
    ]);
    expect(all.assumedUnits).toEqual([0, 1, 2, 3, 4]);
    const known = guessMapping(tableOf('Pitch [deg],Force [dyn]\n1,2\n'));
    expect([known.assumedUnits, known.unknownUnits]).toEqual([[], { 1: 'dyn' }]);
    expect(known.mapping[1].unit).toBeNull();
    expect(guessMapping(tableOf('Pitch [deg],Force [N],Note [dyn]\n1,2,a\n')).unknownUnits).toEqual(
      {},
    );
    const unknown = guessMapping(tableOf('Pitch [xyz],Force [N]\n1,2\n'));
    expect([unknown.assumedUnits, unknown.unknownUnits]).toEqual([[], { 0: 'xyz' }]);
    expect(unknown.mapping[0].unit).toBeNull();
    const seen = guessMapping(tableOf('Pitch [deg],Force [N],X,Peak [N]\n1,2,T,3\n'));
    expect(seen.mapping.slice(2)).toEqual([mappingOf('s')[0], mappingOf('.')[0]]);
    expect(seen.confidence).toEqual([1, 1, 0.6, 0]);
    expect([seen.assumedUnits, seen.unknownUnits]).toEqual([[], {}]);
    const letters = guessMapping(tableOf('unit: ozf\nT,1,2,9\nC,2,3,9\n'));
    expect(letters.mapping.map(({ unit, flipped }) => [unit, flipped])).toEqual([
      [null, false],
      ['deg', false],
      ['ozf', false],
      [null, false],
    ]);
    expect([letters.confidence, letters.assumedUnits]).toEqual([
      [0.3, 0.3, 0.3, 0],
      [1, 2],
    ]);
    const bare = guessMapping(tableOf('unit: ozf\nsign: compression positive\n1,2\n2,3\n'));
    expect(bare.mapping.map(({ unit, flipped }) => [unit, flipped])).toEqual([
      ['deg', false],
      ['ozf', true],
    ]);
    expect([bare.assumedUnits, bare.confidence]).toEqual([
      [0, 1],
      [0.3, 0.3],
    ]);
  });

  it('with the sign and the unit of forces that a line above says, and of forces only', () => {
    const { mapping } = guessMapping(
      tableOf('unit: ozf\nsign: compression positive\nPitch,Force,Moment [N m]\n1,2,3\n'),
    );
    expect(mapping.map(({ unit, flipped }) => [unit, flipped])).toEqual([
      ['deg', false],
      ['ozf', true],
      ['N m', false],
    ]);
  });
});

describe('a mapping that was made once', () => {
  const mapping = mappingOf('pf');
  it('is known again by its headings', () => {
    expect(headerSignature(['Pitch  [ deg ]', 'Kraft (N)'])).toBe('2: pitch [deg] | kraft [N]');
    expect(headerSignature(['Élan', ' 1A '])).toBe('2: elan | a');
    expect(headerSignature([' 12 '])).toBe('1: 12');
    expect(headerSignature(['[N]'])).toBe('1: [n] [N]');
  });

  it('is made anew for the same headings, the others kept', () => {
    const first = rememberMapping({}, ['a', 'b'], mapping);
    const second = rememberMapping(
      rememberMapping(first, ['c', 'd'], mapping),
      ['a', 'b'],
      mappingOf('fp'),
    );
    expect(Object.keys(second)).toHaveLength(2);
    expect(rememberedMapping(second, ['a', 'b'])).toEqual(mappingOf('fp'));
    expect(rememberedMapping(second, ['c', 'd'])).toEqual(mapping);
    expect(rememberedMapping({ [headerSignature(['a'])]: mapping }, ['a'])).toBeNull();
  });

  it('anew is the latest, and not forgotten for those that came between', () => {
    let memory = rememberMapping(rememberMapping({}, ['a', 'b'], mapping), ['c', 'd'], mapping);
    memory = rememberMapping(memory, ['a', 'b'], mapping);
    for (let k = 1; k < 100; k++) memory = rememberMapping(memory, ['x'.repeat(k), 'y'], mapping);
    expect(rememberedMapping(memory, ['a', 'b'])).toEqual(mapping);
    expect(rememberedMapping(memory, ['c', 'd'])).toBeNull();
  });

  it('goes before the guess, and a person\u2019s before both', () => {
    const text = 'a,b,c\n1,2,3\n';
    const remembered = rememberMapping({}, ['a', 'b', 'c'], mappingOf('pf.'));
    expect(preview(text).mappingFrom).toBe('guessed');
    expect(preview(text, { remembered }).mappingFrom).toBe('remembered');
    const own = preview(text, { remembered, mapping: mappingOf('fp.') });
    expect([own.mappingFrom, own.mapping]).toEqual(['person', mappingOf('fp.')]);
  });
});

describe('rows of a preview', () => {
  it('are shown from any row to any other, with nothing found under a mapping that is wrong', () => {
    const read = preview('Pitch,Push [N],Pull [N]\n1,2,3\n2,x,4\n3,5,\n4,6,7\n');
    const shown = (from: number, to: number) =>
      previewRows(read, from, to).map(({ row, readings, faults }) => [
        row,
        readings.length,
        faults.length,
      ]);
    expect(shown(0, 9)).toEqual([
      [2, 2, 0],
      [3, 0, 1],
      [4, 1, 0],
      [5, 2, 0],
    ]);
    expect(shown(1, 3)).toEqual([
      [3, 0, 1],
      [4, 1, 0],
    ]);
    expect(shown(3, 4)).toEqual([[5, 2, 0]]);
    expect(shown(7, 9)).toEqual([]);
    const wrong = preview('Pitch,Force\n1,2\n2,3\n');
    expect(previewRows(wrong, 1, 2)).toEqual([
      { row: 3, cells: ['2', '3'], readings: [], faults: [] },
    ]);
  });
});
