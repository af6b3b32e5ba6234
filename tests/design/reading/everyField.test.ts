import { describe, expect, it } from 'vitest';
import { checkDesign } from '../../../src/design/checkDesign';
import type { Design } from '../../../src/design/design';
import { designFrom, parseDesign, serializeDesign } from '../../../src/design/file';
import { LISTS, listOf, NUMBERS, TEXTS } from './fields';
import { changed, pathOf, type Steps, short, WHOLE } from './whole';

/** What a file with that is refused for, and what a design in memory with it is: one cannot be kept and then not open. */
function doors(document: unknown): readonly [file: string, memory: string] {
  const read = designFrom(document);
  return [short(read.ok ? null : read.error), short(checkDesign(document as Design))];
}

describe('a design with everything in it', () => {
  it('is sound, and is written and read back equal', () => {
    expect(doors(WHOLE)).toEqual(['sound', 'sound']);
    const again = parseDesign(serializeDesign(WHOLE));
    expect(again.ok && again.value).toEqual(WHOLE);
    expect(again.ok && again.value.parts[3]).toMatchObject({
      catalogue: { standard: 'ISO 7089', size: 'M3' },
      material: 'bar',
    });
    expect(serializeDesign(again.ok ? again.value : WHOLE)).toBe(serializeDesign(WHOLE));
  });
});

describe('every number of a design', () => {
  it.each(NUMBERS.map(([steps, limits]) => [pathOf(steps), steps, limits] as const))(
    '%s is refused below and above its limits, with the limit and its unit',
    (path, steps, { min, max, unit, whole }) => {
      const step = whole ? 1 : Math.max(1e-9, Math.abs(min) * 1e-9);
      for (const [value, code, limit] of [
        [min - step, 'tooSmall', min],
        [max + Math.ceil(Math.max(1, max * 1e-9)), 'tooLarge', max],
      ] as const) {
        const document = changed(steps, value);
        const read = designFrom(document);
        expect(read.ok ? null : read.error).toEqual({ path, reason: { code, value, limit, unit } });
        expect(checkDesign(document as Design)).toEqual({
          path,
          reason: { code, value, limit, unit },
        });
      }
      // The limits themselves are allowed; other rules may be broken by them.
      for (const value of [min, max]) {
        const document = changed(steps, value);
        const read = designFrom(document);
        for (const found of [read.ok ? null : read.error, checkDesign(document as Design)]) {
          expect(found).not.toMatchObject({ path, reason: { value, limit: value } });
        }
      }
      const word = { path, reason: { code: 'wrongType', expected: 'number', found: 'text' } };
      const text = changed(steps, 'x');
      const read = designFrom(text);
      expect([read.ok ? null : read.error, checkDesign(text as Design)]).toEqual([word, word]);
      if (whole)
        expect(doors(changed(steps, min + 0.5))).toEqual([`${path} notWhole`, `${path} notWhole`]);
    },
  );
});

/** A change and where it is told: in a file, and in memory where the types let it come about. */
const REFUSED: readonly (readonly [Steps, unknown, string, string?])[] = [
  // Texts: at most so many letters, ids one at least.
  ...TEXTS.map(
    ([steps, limit, where]) =>
      [steps, 'x'.repeat(limit + 1), 'textTooLong', where ?? 'textTooLong'] as const,
  ),
  ...(
    [
      ['parts', 0, 'id'],
      ['tryOuts', 0, 'id'],
      ['tolerance', 'own', 0, 'part'],
      ['tolerance', 'own', 0, 'field'],
      ['bench', 'runs', 0, 'id'],
    ] as const
  ).map((steps) => [steps, '', 'emptyText', 'emptyText'] as const),
  [['materials', 0, 'id'], '', 'emptyText', 'file'],
  // Lists: at most so many.
  ...LISTS.map(
    ([steps, limit, entry, code, where]) =>
      [steps, listOf(limit + 1, entry), code, where ?? code] as const,
  ),
  // What has to be there, and what has to be something else.
  [['rotor'], undefined, 'missing', 'none'],
  [['materials', 0, 'densityKgM3'], undefined, 'missing', 'file'],
  [['weighedTotal', 'massGrams'], undefined, 'missing', 'file'],
  [['friction', 'drag', 0, 'forceN'], undefined, 'missing', 'wrongType'],
  [['friction', 'drag'], {}, 'wrongType', 'wrongType'],
  [['tolerance', 'own'], {}, 'wrongType', 'wrongType'],
  [['tolerance', 'own', 0, 'part'], 3, 'wrongType', 'wrongType'],
  [['air', 'polar', 'name'], 3, 'wrongType', 'wrongType'],
  [['air', 'polar', 'text'], 3, 'wrongType', 'wrongType'],
  [['air', 'tipLoss'], 3, 'wrongType', 'wrongType'],
  [['air', 'section'], 'no', 'notAChoice', 'notAChoice'],
  [['air', 'section'], 3, 'wrongType', 'notAChoice'],
  [['otherGrips', 0, 'name'], 3, 'wrongType', 'wrongType'],
  [['parts', 1, 'measured', 'swings'], {}, 'wrongType', 'wrongType'],
  [['parts', 1, 'measured', 'swings', 0, 'about'], 'no', 'notAChoice', 'notAChoice'],
  [['parts', 1, 'measured', 'swings', 0, 'seconds'], undefined, 'missing', 'missing'],
  [['parts', 0, 'pose', 'positionMm'], {}, 'wrongType', 'wrongType'],
  [['parts', 0, 'pose', 'positionMm'], [1, 2], 'wrongCount', 'wrongCount'],
  [['parts', 0, 'pose', 'rotationDeg'], [1, 2, 3, 4], 'wrongCount', 'wrongCount'],
  [['tryOuts', 1, 'parts', 0, 'pose', 'positionMm'], [1, 2], 'wrongCount', 'wrongCount'],
  [['otherGrips', 0, 'parts', 0, 'sizeMm'], [1, 2], 'wrongCount', 'wrongCount'],
  [['parts', 0, 'id'], 3, 'wrongType', 'wrongType'],
  [['parts', 0, 'name'], 3, 'wrongType', 'wrongType'],
  [['parts', 1, 'hidden'], 3, 'wrongType', 'file'],
  [['tryOuts', 0, 'adopted'], false, 'wrongType', 'file'],
  [['bench', 'place'], 'no', 'notAChoice', 'file'],
  [['bench', 'calibration', 'kind'], 'no', 'notAChoice', 'file'],
  [['bench', 'calibration', 'scaleUnit'], 'no', 'notAChoice', 'file'],
  [['bench', 'fit', 'friction'], 'no', 'notAChoice', 'file'],
  [['bench', 'fit', 'zeros'], 'no', 'notAChoice', 'file'],
  [['bench', 'fit', 'air'], 'no', 'notAChoice', 'file'],
  [['bench', 'plan', 'senses', 0], 'no', 'notAChoice', 'file'],
  [['bench', 'plan', 'leftOut', 0], 'no', 'notAChoice', 'file'],
  [['bench', 'plan', 'pitchesDeg'], [], 'missing', 'missing'],
  [['bench', 'plan', 'speedsRpm'], [], 'missing', 'missing'],
  [['bench', 'runs', 0, 'rows', 0, 'travel'], 'no', 'notAChoice', 'file'],
  [['bench', 'runs', 0, 'steps', 0, 'travel'], 'no', 'notAChoice', 'file'],
  [['bench', 'runs', 0, 'uncounted'], 3, 'wrongType', 'file'],
  [['bench', 'runs', 0, 'setAside', 0], 0.5, 'notWhole', 'file'],
  [['bench', 'runs', 0, 'rows', 0, 'forceN'], undefined, 'missing', 'file'],
  [['bench', 'runs', 0, 'steps', 0, 'from'], undefined, 'missing', 'file'],
  [['bench', 'runs', 1, 'table', 'delimiter'], 'no', 'notAChoice', 'file'],
  [['bench', 'runs', 1, 'table', 'decimal'], 'no', 'notAChoice', 'file'],
  [['bench', 'runs', 1, 'table', 'columns', 0, 'role'], 'no', 'notAChoice', 'file'],
  [['bench', 'runs', 1, 'table', 'columns', 0, 'flipped'], 3, 'wrongType', 'file'],
];

describe('every other field of a design', () => {
  it.each(
    REFUSED.map(
      ([steps, value, ...codes]) => [pathOf(steps), codes[0], steps, value, codes] as const,
    ),
  )('%s may not be so: %s', (path, _, steps, value, [inFile, inMemory]) => {
    const document = changed(steps, value);
    const read = designFrom(document);
    expect(short(read.ok ? null : read.error)).toBe(`${path} ${inFile}`);
    // Where the types alone keep it from coming about in memory, only the file is asked.
    if (inMemory === 'file' || inMemory === 'none') return;
    const kept = checkDesign(document as Design);
    expect(short(kept)).toBe(`${path} ${inMemory}`);
    // In the same words, where it is the same.
    if (inMemory === inFile) expect(kept).toEqual(read.ok ? null : read.error);
  });

  it.each([
    ...TEXTS.map(([steps, limit]) => [pathOf(steps), steps, 'x'.repeat(limit)] as const),
    ...LISTS.map(([steps, limit, entry]) => [pathOf(steps), steps, listOf(limit, entry)] as const),
  ])('%s may be as long as its limit', (path, steps, value) => {
    // What others name by the text, or what the list is beside, may be broken by it.
    for (const told of doors(changed(steps, value))) {
      expect(told).not.toMatch(/tooMany|textTooLong/);
      if (told.startsWith(`${path} `)) expect(told).toMatch(/unknown|missing|misfit|unsound/);
    }
  });

  it('the second of a list is looked at as well as the first', () => {
    for (const [steps, value, path] of [
      [['otherGrips'], [{ name: '' }, { name: '', massGrams: -1 }], 'otherGrips[1].massGrams'],
      [
        ['bench', 'calibration', 'pairs'],
        [
          { scale: 1, pitchDeg: 2 },
          { scale: 1, pitchDeg: 1e9 },
        ],
        'bench.calibration.pairs[1].pitchDeg',
      ],
    ] as const) {
      const document = changed(steps, value);
      expect(doors(document).map((told) => told.split(' ')[0])).toEqual([path, path]);
    }
  });

  it('what a rotor cannot be without is missed in memory as well', () => {
    const document = changed(['rotor', 'speedRpm'], undefined);
    expect(checkDesign(document as Design)).toEqual({
      path: 'rotor.speedRpm',
      reason: { code: 'wrongType', expected: 'number', found: 'undefined' },
    });
  });

  const OBJECTS: readonly Steps[] = [
    [],
    ['rotor'],
    ['friction', 'drag', 0],
    ['air', 'polar'],
    ['tolerance', 'own', 0],
    ['materials', 0],
    ['weighedTotal'],
    ['otherGrips', 0],
    ['tryOuts', 0],
    ['bench'],
    ['bench', 'calibration'],
    ['bench', 'calibration', 'pairs', 0],
    ['bench', 'fit'],
    ['bench', 'plan'],
    ['bench', 'runs', 0],
    ['bench', 'runs', 0, 'rows', 0],
    ['bench', 'runs', 0, 'steps', 0],
    ['bench', 'runs', 1, 'table'],
    ['bench', 'runs', 1, 'table', 'columns', 0],
    ['parts', 0],
    ['parts', 0, 'pose'],
    ['parts', 2, 'socket'],
    ['parts', 1, 'measured'],
    ['parts', 1, 'measured', 'swings', 0],
  ];
  it.each(OBJECTS.map((steps) => [pathOf(steps), steps] as const))(
    '%s takes no key that it does not know',
    (path, steps) => {
      const read = designFrom(changed([...steps, 'extra'], 1));
      expect(read.ok ? null : read.error).toEqual({
        path,
        reason: { code: 'unknownKey', key: 'extra' },
      });
    },
  );
});
