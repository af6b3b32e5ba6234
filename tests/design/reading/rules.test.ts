import { describe, expect, it } from 'vitest';
import { checkDesign } from '../../../src/design/checkDesign';
import type { Design } from '../../../src/design/design';
import { designFrom } from '../../../src/design/file';
import { changed, pathOf, RUN, type Steps, short, TABLE_RUN, WHOLE } from './whole';

const BAR = { id: 'bar', name: 'Bar', densityKgM3: 1000 };
const DRAG = (...travels: number[]) => travels.map((travelMm) => ({ travelMm, forceN: 1 }));
const ROTOR = { ...WHOLE.rotor, speedRpm: 1000 };
const OWN = { part: 'nut', field: 'heightMm', plusMinus: 0.1 };
const ONE = { id: 'one', name: '' };
const TWO = { id: 'two', name: '', parts: [] };

/** Rules between the fields: what must hold, at its limit and just beyond it, and what a fault says of it. */
const RULES: readonly (readonly [Steps, unknown, object | null])[] = [
  [['rotor'], { ...ROTOR, lowestSpeedRpm: 999 }, null],
  [
    ['rotor'],
    { ...ROTOR, lowestSpeedRpm: 1000 },
    {
      path: 'rotor.lowestSpeedRpm',
      reason: {
        code: 'rule',
        kind: 'rotor',
        field: 'lowestSpeedRpm',
        rule: 'below',
        value: 1000,
        limit: 1000,
        against: 'speedRpm',
        unit: 'rpm',
      },
    },
  ],
  [['rotor'], { ...ROTOR, lowestSpeedRpm: 1000, highestSpeedRpm: 1001 }, null],
  [
    ['rotor'],
    { ...ROTOR, lowestSpeedRpm: 1000, highestSpeedRpm: 1000 },
    { path: 'rotor.lowestSpeedRpm', reason: { against: 'highestSpeedRpm', limit: 1000 } },
  ],
  [['rotor'], { ...ROTOR, speedRpm: 0, lowestSpeedRpm: 0 }, null],
  [['friction', 'drag'], DRAG(-1, 0, 1), null],
  [
    ['friction', 'drag'],
    DRAG(0, 1, 1),
    { path: 'friction.drag[2].travelMm', reason: { code: 'unsound' } },
  ],
  [
    ['friction', 'drag'],
    DRAG(0, -1),
    { path: 'friction.drag[1].travelMm', reason: { code: 'unsound' } },
  ],
  // A range holds its density and is no wider than five times either way.
  [['materials'], [{ ...BAR, densityLowKgM3: 200, densityHighKgM3: 5000 }], null],
  [['materials'], [{ ...BAR, densityLowKgM3: 1000, densityHighKgM3: 1000 }], null],
  [
    ['materials'],
    [{ ...BAR, densityLowKgM3: 199 }],
    {
      path: 'materials[0].densityLowKgM3',
      reason: { code: 'tooSmall', value: 199, limit: 200, unit: 'kg/m3' },
    },
  ],
  [
    ['materials'],
    [{ ...BAR, densityHighKgM3: 5001 }],
    {
      path: 'materials[0].densityHighKgM3',
      reason: { code: 'tooLarge', value: 5001, limit: 5000, unit: 'kg/m3' },
    },
  ],
  [
    ['materials'],
    [{ ...BAR, densityLowKgM3: 1001 }],
    {
      path: 'materials[0].densityLowKgM3',
      reason: { code: 'tooLarge', value: 1001, limit: 1000, unit: 'kg/m3' },
    },
  ],
  [
    ['materials'],
    [{ ...BAR, densityHighKgM3: 999 }],
    {
      path: 'materials[0].densityHighKgM3',
      reason: { code: 'tooSmall', value: 999, limit: 1000, unit: 'kg/m3' },
    },
  ],
  [
    ['materials'],
    [{ ...BAR, id: 'a' }, BAR, BAR],
    { path: 'materials[2].id', reason: { code: 'repeatedMaterial', id: 'bar', first: 1 } },
  ],
  [
    ['tolerance', 'own'],
    [OWN, { ...OWN, component: 0 }, { ...OWN, field: 'x' }, { ...OWN, part: 'x' }],
    null,
  ],
  [
    ['tolerance', 'own'],
    [{ ...OWN, field: 'x' }, OWN, OWN],
    { path: 'tolerance.own[2]', reason: { code: 'unsound' } },
  ],
  [['tryOuts'], [], null],
  [['tryOuts'], [TWO, { ...ONE, adopted: true }], null],
  [
    ['tryOuts'],
    [TWO, ONE, { ...ONE, parts: [] }],
    { path: 'tryOuts[2].id', reason: { code: 'repeatedTryOut', id: 'one', first: 1 } },
  ],
  [
    ['tryOuts'],
    [ONE, { ...ONE, id: 'x' }],
    { path: 'tryOuts', reason: { code: 'shownTryOuts', count: 2 } },
  ],
  [['tryOuts'], [TWO], { path: 'tryOuts', reason: { code: 'shownTryOuts', count: 0 } }],
  [
    ['tryOuts'],
    [TWO, { ...ONE, adopted: true }, { ...TWO, id: 'x', adopted: true }],
    { path: 'tryOuts[2].adopted', reason: { code: 'adoptedTwice', first: 1 } },
  ],
  [
    ['tryOuts', 1, 'parts', 0, 'sizeMm', 1],
    -1,
    { path: 'tryOuts[1].parts[0].sizeMm[1]', reason: { code: 'tooSmall', unit: 'mm' } },
  ],
  [
    ['otherGrips', 0, 'parts', 0, 'sizeMm', 1],
    -1,
    { path: 'otherGrips[0].parts[0].sizeMm[1]', reason: { code: 'tooSmall', unit: 'mm' } },
  ],
  [
    ['otherGrips', 0, 'parts', 0, 'pose', 'rotationDeg', 1],
    400,
    {
      path: 'otherGrips[0].parts[0].pose.rotationDeg[1]',
      reason: { code: 'tooLarge', unit: 'deg' },
    },
  ],
  [
    ['bench', 'runs'],
    [RUN, TABLE_RUN, { ...RUN, id: 't' }],
    { path: 'bench.runs[2].id', reason: { code: 'repeatedId', id: 't', first: 1 } },
  ],
  [
    ['bench', 'runs'],
    [{ ...RUN, table: TABLE_RUN.table }],
    { path: 'bench.runs[0].rows', reason: { code: 'unsound' } },
  ],
  [['bench', 'runs', 0, 'rows', 0], { scaleMm: 1, forceN: 1 }, null],
  [
    ['bench', 'runs', 0, 'rows', 0],
    { forceN: 1 },
    { path: 'bench.runs[0].rows[0].pitchDeg', reason: { code: 'missing' } },
  ],
  [['bench', 'runs', 0, 'steps', 0], { from: 4, to: 5, pitchDeg: 1 }, null],
  [
    ['bench', 'runs', 0, 'steps'],
    [
      { from: 4, to: 5, pitchDeg: 1 },
      { from: 5, to: 5, pitchDeg: 1 },
    ],
    { path: 'bench.runs[0].steps[1].to', reason: { code: 'unsound' } },
  ],
  [
    ['parts', 2, 'id'],
    'bolt',
    { path: 'parts[2].id', reason: { code: 'repeatedId', id: 'bolt', first: 1 } },
  ],
  [
    ['parts', 2, 'socket', 'part'],
    'blot',
    { path: 'parts[2].socket.part', reason: { code: 'missingParent', parent: 'blot' } },
  ],
  [
    ['parts', 0, 'socket'],
    { part: 'nut', name: 'x' },
    { path: 'parts[0]', reason: { code: 'poseOrSocket', found: 'both' } },
  ],
  [
    ['parts', 0, 'pose'],
    undefined,
    { path: 'parts[0]', reason: { code: 'poseOrSocket', found: 'neither' } },
  ],
];

describe('the rules between the fields of a design', () => {
  it.each(RULES.map(([steps, value, wanted]) => [pathOf(steps), value, steps, wanted] as const))(
    '%s as %j',
    (_, value, steps, wanted) => {
      const document = changed(steps, value);
      const read = designFrom(document);
      const inFile = read.ok ? null : read.error;
      if (wanted === null) expect([inFile, checkDesign(document as Design)]).toEqual([null, null]);
      else {
        expect(inFile).toMatchObject(wanted);
        expect(checkDesign(document as Design)).toMatchObject(wanted);
      }
    },
  );

  it('a value is looked at again where it is another, and not where it was found sound', () => {
    const kept = changed(['name'], 'again') as Design;
    expect([checkDesign(kept), checkDesign(kept)]).toEqual([null, null]);
    const parts = kept.tryOuts?.[1].parts ?? [];
    const other = {
      ...kept,
      tryOuts: [kept.tryOuts?.[0], { id: 'two', name: '', parts: [...parts, ...parts] }],
    };
    expect(short(checkDesign(other as Design))).toBe('tryOuts[1].parts[1].id repeatedId');
  });
});
