import { describe, expect, it } from 'vitest';
import { checkDesign } from '../../../src/design/checkDesign';
import type { Design } from '../../../src/design/design';
import { designFrom, parseDesign, serializeDesign } from '../../../src/design/file';
import {
  MATERIAL_LIMITS,
  type NumberLimits,
  POSITION_LIMITS,
  TURN_LIMITS,
} from '../../../src/design/limits';
import { MEASURED_LIMITS, SWING_LIMITS } from '../../../src/design/measured';
import { SECTION_NAMES, SECTIONS } from '../../../src/design/sections';
import {
  BENCH_FIT_LIMITS,
  BENCH_NUMBER_LIMITS,
  BENCH_PAIR_LIMITS,
  BENCH_PLAN_LIMITS,
  BENCH_ROW_LIMITS,
  BENCH_RUN_LIMITS,
  BENCH_STEP_LIMITS,
} from '../../../src/design/sections/bench';
import { DRAG_ROW_LIMITS } from '../../../src/design/sections/friction';
import { OTHER_GRIP_LIMITS, PART_MASS_LIMITS } from '../../../src/design/sections/grips';
import type { SectionField } from '../../../src/design/sections/section';
import { PLUS_MINUS_LIMITS } from '../../../src/design/sections/tolerance';
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
    expect(serializeDesign(again.ok ? again.value : WHOLE)).toBe(serializeDesign(WHOLE));
  });
});

/** Every number that a file may hold, with its limits. */
function numbersOf(at: Steps, limits: Readonly<Record<string, NumberLimits>>) {
  return Object.entries(limits).map(([name, own]) => [[...at, name], own] as const);
}
const sectionNumbers = SECTION_NAMES.flatMap((name) =>
  Object.entries<SectionField>(SECTIONS[name]).flatMap(([key, field]) =>
    field.type === 'number' ? [[[name, key], field] as const] : [],
  ),
);
const NUMBERS: readonly (readonly [Steps, NumberLimits])[] = [
  ...sectionNumbers,
  ...numbersOf(['friction', 'drag', 0], DRAG_ROW_LIMITS),
  [['tolerance', 'own', 0, 'plusMinus'], PLUS_MINUS_LIMITS],
  [['tolerance', 'own', 0, 'component'], { min: 0, max: 2, unit: '1', whole: true }],
  ...numbersOf(['materials', 0], MATERIAL_LIMITS),
  ...numbersOf(['weighedTotal'], {
    massGrams: MEASURED_LIMITS.massGrams,
    massStepGrams: MEASURED_LIMITS.massStepGrams,
  }),
  ...numbersOf(['otherGrips', 0], OTHER_GRIP_LIMITS),
  [['otherGrips', 0, 'partMassesGrams', 'bolt'], PART_MASS_LIMITS],
  ...numbersOf(['bench'], BENCH_NUMBER_LIMITS),
  ...numbersOf(['bench', 'calibration', 'pairs', 0], BENCH_PAIR_LIMITS),
  ...numbersOf(['bench', 'fit'], BENCH_FIT_LIMITS),
  [['bench', 'plan', 'settleSeconds'], BENCH_PLAN_LIMITS.settleSeconds],
  [['bench', 'plan', 'pitchesDeg', 1], BENCH_PLAN_LIMITS.pitchDeg],
  [['bench', 'plan', 'speedsRpm', 0], BENCH_PLAN_LIMITS.speedRpm],
  ...numbersOf(['bench', 'runs', 0], BENCH_RUN_LIMITS),
  ...numbersOf(['bench', 'runs', 0, 'rows', 0], BENCH_ROW_LIMITS),
  ...numbersOf(['bench', 'runs', 0, 'steps', 0], BENCH_STEP_LIMITS),
  ...numbersOf(['parts', 1, 'measured'], MEASURED_LIMITS),
  ...numbersOf(['parts', 1, 'measured', 'swings', 0], SWING_LIMITS),
  [['parts', 0, 'pose', 'positionMm', 2], POSITION_LIMITS],
  [['parts', 0, 'pose', 'rotationDeg', 0], TURN_LIMITS],
  [['parts', 2, 'socket', 'offsetMm'], POSITION_LIMITS],
  [['parts', 2, 'socket', 'turnDeg'], TURN_LIMITS],
];

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
      expect(doors(changed(steps, 'x'))).toEqual([`${path} wrongType`, `${path} wrongType`]);
      if (whole)
        expect(doors(changed(steps, min + 0.5))).toEqual([`${path} notWhole`, `${path} notWhole`]);
    },
  );
});

/** A change and where it is told: in a file, and in memory where the types let it come about. */
const REFUSED: readonly (readonly [Steps, unknown, string, string?])[] = [
  // Texts: at most so many letters, ids one at least.
  ...(
    [
      [['name'], 200],
      [['note'], 4000],
      [['materials', 0, 'name'], 200, 'file'],
      [['materials', 0, 'source'], 4000, 'file'],
      [['materials', 0, 'note'], 4000, 'file'],
      [['otherGrips', 0, 'name'], 200],
      [['tryOuts', 0, 'id'], 64],
      [['tryOuts', 0, 'name'], 200],
      [['tryOuts', 0, 'note'], 4000],
      [['air', 'polar', 'name'], 200],
      [['air', 'polar', 'text'], 500_000],
      [['tolerance', 'own', 0, 'part'], 64],
      [['tolerance', 'own', 0, 'field'], 64],
      [['parts', 0, 'id'], 64],
      [['parts', 0, 'name'], 200],
      [['bench', 'runs', 0, 'id'], 64],
      [['bench', 'runs', 0, 'tryOut'], 64],
      [['bench', 'runs', 0, 'name'], 200],
      [['bench', 'runs', 0, 'fitted'], 200],
      [['bench', 'runs', 0, 'gauge'], 200],
      [['bench', 'runs', 0, 'date'], 200],
      [['bench', 'runs', 0, 'note'], 4000],
      [['bench', 'runs', 0, 'rows', 0, 'note'], 4000],
      [['bench', 'runs', 0, 'parts', 0], 64, 'file'],
      [['bench', 'runs', 1, 'table', 'encoding'], 200, 'file'],
      [['bench', 'runs', 1, 'table', 'columns', 0, 'unit'], 16, 'file'],
      [['bench', 'plan', 'ticked', 0], 200, 'file'],
      [['bench', 'plan', 'tickedOn'], 200, 'file'],
      [['parts', 2, 'socket', 'part'], 64, 'file'],
      [['parts', 2, 'socket', 'name'], 64, 'file'],
      [['materials', 0, 'id'], 64, 'file'],
    ] as const
  ).map(
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
  ...(
    [
      [['materials'], 200, (k: number) => ({ id: `m${k}`, name: '', densityKgM3: 1000 })],
      [['friction', 'drag'], 200, (k: number) => ({ travelMm: k, forceN: 1 })],
      [['otherGrips'], 15, () => ({ name: '' })],
      [['tryOuts'], 50, (k: number) => ({ id: `t${k}`, name: '', ...(k > 0 && { parts: [] }) })],
      [['tolerance', 'own'], 500, (k: number) => ({ part: `p${k}`, field: 'f', plusMinus: 1 })],
      [
        ['parts', 1, 'measured', 'swings'],
        3,
        () => ({ about: 'span', spacingMm: 40, stringLengthMm: 500, swings: 10, seconds: 9 }),
      ],
    ] as const
  ).map(
    ([steps, limit, entry]) =>
      [steps, Array.from({ length: limit + 1 }, (_, k) => entry(k)), 'tooMany', 'tooMany'] as const,
  ),
  [['bench', 'plan', 'pitchesDeg'], Array(201).fill(1), 'tooMany', 'tooMany'],
  [['bench', 'plan', 'speedsRpm'], Array(21).fill(1), 'tooMany', 'tooMany'],
  [
    ['bench', 'calibration', 'pairs'],
    Array.from({ length: 201 }, () => ({ scale: 1, pitchDeg: 1 })),
    'tooMany',
    'tooMany',
  ],
  [
    ['bench', 'runs', 0, 'rows'],
    Array.from({ length: 10_001 }, () => ({ pitchDeg: 1, forceN: 1 })),
    'tooMany',
    'tooMany',
  ],
  [
    ['bench', 'runs', 0, 'steps'],
    Array.from({ length: 1001 }, () => ({ from: 0, to: 1, pitchDeg: 1 })),
    'tooMany',
    'tooMany',
  ],
  [
    ['bench', 'runs'],
    Array.from({ length: 201 }, (_, k) => ({ id: `r${k}`, name: '' })),
    'tooMany',
    'tooMany',
  ],
  [['bench', 'runs', 0, 'parts'], Array(10_001).fill('bolt'), 'tooManyParts', 'file'],
  [
    ['bench', 'runs', 1, 'table', 'columns'],
    Array(201).fill(WHOLE.bench?.runs?.[1].table?.columns[0]),
    'tooMany',
    'file',
  ],
  [['bench', 'plan', 'ticked'], Array(51).fill('a'), 'tooMany', 'file'],
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
    expect(short(checkDesign(document as Design))).toBe(`${path} ${inMemory}`);
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
