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
import { type Steps, WHOLE } from './whole';

/** Every number that a file may hold, with its limits. */
function numbersOf(at: Steps, limits: Readonly<Record<string, NumberLimits>>) {
  return Object.entries(limits).map(([name, own]) => [[...at, name], own] as const);
}
const sectionNumbers = SECTION_NAMES.flatMap((name) =>
  Object.entries<SectionField>(SECTIONS[name]).flatMap(([key, field]) =>
    field.type === 'number' ? [[[name, key], field] as const] : [],
  ),
);
export const NUMBERS: readonly (readonly [Steps, NumberLimits])[] = [
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

/** Every text with the most letters that it may have; 'file' where the types alone keep longer ones out of memory. */
export const TEXTS: readonly (readonly [Steps, number, 'file'?])[] = [
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
];

type Entry = (k: number) => unknown;

/** Every list with the most entries that it may have, one of them, and what one more is called. */
export const LISTS: readonly (readonly [Steps, number, Entry, string, 'file'?])[] = [
  [['materials'], 200, (k) => ({ id: `m${k}`, name: '', densityKgM3: 1000 }), 'tooMany'],
  [['friction', 'drag'], 200, (k) => ({ travelMm: k, forceN: 1 }), 'tooMany'],
  [['otherGrips'], 15, () => ({ name: '' }), 'tooMany'],
  [['tryOuts'], 50, (k) => ({ id: `t${k}`, name: '', ...(k > 0 && { parts: [] }) }), 'tooMany'],
  [['tolerance', 'own'], 500, (k) => ({ part: `p${k}`, field: 'f', plusMinus: 1 }), 'tooMany'],
  [
    ['parts', 1, 'measured', 'swings'],
    3,
    (k) => ({
      about: ['span', 'chord', 'thickness'][k % 3],
      spacingMm: 40,
      stringLengthMm: 500,
      swings: 10,
      seconds: 9,
    }),
    'tooMany',
  ],
  [['bench', 'plan', 'pitchesDeg'], 200, () => 1, 'tooMany'],
  [['bench', 'plan', 'speedsRpm'], 20, () => 1, 'tooMany'],
  [['bench', 'calibration', 'pairs'], 200, () => ({ scale: 1, pitchDeg: 1 }), 'tooMany'],
  [['bench', 'runs', 0, 'rows'], 10_000, () => ({ pitchDeg: 1, forceN: 1 }), 'tooMany'],
  [['bench', 'runs', 0, 'steps'], 1000, () => ({ from: 0, to: 1, pitchDeg: 1 }), 'tooMany'],
  [['bench', 'runs'], 200, (k) => ({ id: `r${k}`, name: '' }), 'tooMany'],
  [['bench', 'runs', 0, 'parts'], 10_000, () => 'bolt', 'tooManyParts', 'file'],
  [
    ['bench', 'runs', 1, 'table', 'columns'],
    200,
    () => WHOLE.bench?.runs?.[1].table?.columns[0],
    'tooMany',
    'file',
  ],
  [['bench', 'plan', 'ticked'], 50, () => 'a', 'tooMany', 'file'],
];

export function listOf(length: number, entry: Entry): unknown[] {
  return Array.from({ length }, (_, k) => entry(k));
}
