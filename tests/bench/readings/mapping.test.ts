import { describe, expect, it } from 'vitest';
import { runFromTable, tableOfRun } from '../../../src/bench/readings/benchSection';
import { mappingFaults } from '../../../src/bench/readings/mapping';
import { previewRows, readingsOf, storedFrom } from '../../../src/bench/readings/preview';
import {
  headerSignature,
  rememberedMapping,
  rememberMapping,
} from '../../../src/bench/readings/remembered';
import type { ReadingsMapping } from '../../../src/bench/readings/types';
import { derive, expectNear, NIST, place, preview } from './support';

const SHEET = 'A,B,C\n5,2.5,x\n10,3.5,y\n';
const BY_HAND: ReadingsMapping = [
  { role: 'pitch', unit: 'deg', flipped: true, travel: null },
  { role: 'force', unit: 'ozf', flipped: true, travel: 'pull' },
  { role: 'note', unit: null, flipped: false, travel: null },
];

describe('the columns are mapped', () => {
  it('with how sure the guess is: a word with its unit, a word, a unit, nothing', () => {
    const { guess } = preview('Pitch [deg],Pitch arm load,[ozf],Humidity\n5,1,2.5,40\n');
    const [both, word, unit, nothing] = guess.confidence;
    expect(both).toBeGreaterThan(word);
    expect(word).toBeGreaterThan(unit);
    expect(unit).toBeGreaterThan(nothing);
    expect(nothing).toBe(0);
    expect(guess.mapping[3].role).toBe('ignore');
  });

  it('a unit that no heading gives is assumed aloud for a pitch and never for a force', () => {
    const { guess } = preview('Pitch,Force\n5,2.5\n');
    expect(guess.mapping.map(({ unit }) => unit)).toEqual(['deg', null]);
    expect(guess.assumedUnits).toEqual([0]);
  });

  it('a table without headings is guessed with little confidence and waits for a unit', () => {
    const read = preview('-10,3.5\n0,1.5\n10,-2\n');
    expect(read.guess.mapping.map(({ role }) => role)).toEqual(['pitch', 'force']);
    expect(Math.max(...read.guess.confidence)).toBeLessThan(0.5);
    expect(read.derived.ok ? [] : read.derived.error.map(place)).toEqual(['-:2 unitMissing']);
  });

  it('by the person, signs turned round and a way of travel given to a column', () => {
    const { readings } = derive(SHEET, { mapping: BY_HAND });
    expectNear(
      readings.map(({ pitch }) => pitch),
      [-5 * NIST.deg, -10 * NIST.deg],
    );
    expectNear(
      readings.map(({ force }) => force),
      [-2.5 * NIST.ozf, -3.5 * NIST.ozf],
    );
    expect(readings.map(({ travel }) => travel)).toEqual(['pull', 'pull']);
    expect(readings.map(({ note }) => note)).toEqual(['x', 'y']);
  });

  it('once: the same headings are remembered, whatever their case, accents and delimiter', () => {
    const memory = rememberMapping({}, ['Pitch [deg]', 'Kraft', 'C'], BY_HAND);
    expect(rememberedMapping(memory, ['pitch  [deg]', 'KRAFT', 'c'])).toEqual(BY_HAND);
    expect(rememberedMapping(memory, ['pitch [rad]', 'Kraft', 'C'])).toBeNull();
    expect(rememberedMapping(memory, ['Kraft', 'Pitch [deg]', 'C'])).toBeNull();
    expect(rememberedMapping(memory, ['Pitch [deg]', 'Kraft'])).toBeNull();
    expect(rememberedMapping(memory, ['constructor'])).toBeNull();
    const read = preview(SHEET, { remembered: rememberMapping({}, ['a', 'b', 'c'], BY_HAND) });
    expect(read.mappingFrom).toBe('remembered');
    expect(read.mapping).toEqual(BY_HAND);
  });

  it('and the hundred latest mappings are kept', () => {
    let memory = {};
    for (let k = 0; k < 120; k++)
      memory = rememberMapping(memory, [`H${'x'.repeat(k)}`, 'b', 'c'], BY_HAND);
    expect(Object.keys(memory)).toHaveLength(100);
    expect(rememberedMapping(memory, ['H', 'b', 'c'])).toBeNull();
    expect(rememberedMapping(memory, [`H${'x'.repeat(119)}`, 'b', 'c'])).toEqual(BY_HAND);
  });

  it('a signature tells headings apart that have no letters', () => {
    expect(headerSignature(['1', '2'])).not.toBe(headerSignature(['1', '3']));
  });

  it('and a mapping of another count of columns is refused', () => {
    expect(mappingFaults(BY_HAND, ['a', 'b']).map(place)).toEqual(['-:- columnGone']);
  });
});

describe('a table before it is taken', () => {
  const text = 'Pitch;Push [N];Pull [N]\n1;2,5;1,5\n2;x;1\n\n3;3,5;\n';

  it('is shown row by row: cells, what they gave, what is wrong', () => {
    const rows = previewRows(preview(text), 0, 10);
    expect(
      rows.map(({ row, readings, faults }) => [row, readings.length, faults.map(place)]),
    ).toEqual([
      [2, 2, []],
      [3, 0, ['3:2 notANumber']],
      [5, 1, []],
    ]);
    expect(rows[1].cells).toEqual(['2', 'x', '1']);
  });

  it('is shown from any row on', () => {
    const [row] = previewRows(preview(text), 2, 3);
    expect(row.readings.map(({ force }) => force)).toEqual([3.5]);
  });

  it('is kept as it came, and gives the same readings from what is kept', () => {
    const before = preview(text);
    const stored = storedFrom('run 1', before);
    const kept = JSON.parse(JSON.stringify(stored));
    expect(kept.text).toBe(text);
    expect(kept.options).toEqual({ delimiter: ';' });
    const told = storedFrom('run 2', preview(text, { options: { decimal: ',' } }));
    expect(told.options).toEqual({ delimiter: ';', decimal: ',' });
    const again = readingsOf(kept);
    expect(again.ok && again.value).toEqual(before.derived.ok && before.derived.value);
    const lost = readingsOf({ ...kept, text: '' });
    expect(lost.ok ? [] : lost.error.map(place)).toEqual(['-:- empty']);
  });

  it('is a run of the design file with units in its keys, and comes back the same', () => {
    const above = 'speed: 10200 rpm\narm: 17.1 mm\nfitted: bolt\n';
    const stored = storedFrom('run 1', preview(`${above}Pitch,Force [N]\n1,2.5\n`));
    const run = JSON.parse(JSON.stringify(runFromTable('r1', stored)));
    expect(run).toMatchObject({ id: 'r1', speedRpm: 10200, armMm: 17.1, fitted: 'bolt' });
    expect(Object.keys(run)).not.toContain('gaugeStepN');
    expect(tableOfRun(run)).toEqual({ ok: true, value: stored });
    expect(tableOfRun({ id: 'r2', name: 'by hand', rows: [] })).toEqual({
      ok: false,
      error: 'typedByHand',
    });
  });

  it('is told from a log, in which every row has a time that does not step back', () => {
    const rows = Array.from({ length: 20 }, (_, k) => `${k},${k / 10}`);
    expect(preview(`time [s],Force [N]\n${rows.join('\n')}\n`).isSeries).toBe(true);
    expect(preview(`Pitch,Force [N]\n${rows.join('\n')}\n`).isSeries).toBe(false);
    const back = derive('time [s],Force [N]\n0,1\n1,2\n0.5,3\n');
    expect(back.backwards).toEqual([4]);
  });
});
