import { describe, expect, it } from 'vitest';
import { runFromTable, tableOfRun } from '../../../src/bench/readings/benchSection';
import type { Reading, RunMetadata, StoredReadings } from '../../../src/bench/readings/types';
import { writeReadings } from '../../../src/bench/readings/writeReadings';
import { radians } from '../../../src/engine/units';
import { derive, NO_READING } from './support';

const NOTHING: RunMetadata = {
  speed: null,
  fitted: '',
  arm: null,
  gauge: '',
  gaugeStep: null,
  date: '',
  note: '',
};

/** The lines written, without the mark in front. */
function written(
  readings: readonly Partial<Reading>[],
  metadata: Partial<RunMetadata> = {},
  scale?: 'divisions',
) {
  const all = readings.map((reading) => ({ ...NO_READING, ...reading }));
  const text = writeReadings(all, { ...NOTHING, ...metadata }, scale);
  expect(text.startsWith('\ufeff')).toBe(true);
  expect(text.endsWith('\r\n')).toBe(true);
  return text.slice(1, -2).split('\r\n');
}

describe('readings written as a table', () => {
  it('have a column for everything that some reading has, in the units that the headings name', () => {
    const all = {
      time: 0.25,
      pitch: radians(Math.PI / 6),
      scale: 0.0025,
      force: -1.5,
      moment: 0.0125,
      travel: 'push',
      // Ten turns a second, 600 a minute.
      speed: 20 * Math.PI,
      run: 'a',
      note: 'b',
    } as const;
    expect(written([all, {}])).toEqual([
      'time [s],pitch [deg],scale reading [mm],force [N] tension +,moment [N mm],direction of travel,' +
        'speed [rpm],run,note',
      '0.25,30,2.5,-1.5,12.5,push,600,a,b',
      ',,,,,,,,',
    ]);
  });

  it('have no column for what no reading has, and a zero is something', () => {
    expect(written([{ pitch: radians(0), force: -0, moment: 0, speed: 0, scale: 0 }])).toEqual([
      'pitch [deg],scale reading [mm],force [N] tension +,moment [N mm],speed [rpm]',
      '0,0,0,0,0',
    ]);
    expect(written([{ scale: 12 }], {}, 'divisions')).toEqual(['scale reading [div]', '12']);
  });

  it('have quotes round what needs them (RFC 4180, 2.6 and 2.7) and round nothing else', () => {
    const [, ...rows] = written([
      { note: 'a,b', run: 'x y' },
      { note: 'say "soft"' },
      { note: 'two\nlines' },
      { note: 'old\rlines' },
      { note: 'a;b' },
    ]);
    expect(rows).toEqual([
      'x y,"a,b"',
      ',"say ""soft"""',
      ',"two\nlines"',
      ',"old\rlines"',
      ',a;b',
    ]);
  });

  it('have an apostrophe before what a spreadsheet would take for a formula', () => {
    const notes = [
      '=1+1',
      '+1',
      '-1',
      '@x',
      ' =1',
      '\t=1',
      '\u0000@x',
      '\uff1d1',
      '\uff0b1',
      '\uff0d1',
      '\uff201',
      'a=1',
      '1-1',
      "'=1",
    ];
    const [, ...rows] = written(notes.map((note) => ({ note })));
    expect(rows).toEqual([...notes.slice(0, 11).map((note) => `'${note}`), ...notes.slice(11)]);
  });

  it('have what is known of the run above them, each on a line of its own', () => {
    const lines = written([{ force: 1 }], {
      speed: 20 * Math.PI,
      fitted: 'bolt; blade',
      arm: 0.0171,
      gauge: 'spring',
      gaugeStep: 0.1,
      date: '2026-03-01',
      note: 'one\r\ntwo\nthree',
    });
    expect(lines.slice(0, -2)).toEqual([
      '# speed: 600 rpm',
      '# fitted: bolt; blade',
      '# arm: 17.1 mm',
      '# gauge: spring',
      '# gauge step: 0.1 N',
      '# date: 2026-03-01',
      '# note: one two three',
    ]);
    expect(written([{ force: 1 }])).toEqual(['force [N] tension +', '1']);
  });

  it('are read back', () => {
    const made = {
      ...NO_READING,
      pitch: radians(-0.1),
      force: 2.5,
      travel: 'held',
      note: 'calm',
    } as const;
    const [again] = derive(writeReadings([made], NOTHING)).readings;
    expect(again).toMatchObject({
      force: 2.5,
      travel: 'held',
      note: 'calm',
      speed: null,
      moment: null,
    });
    expect(again.pitch).toBeCloseTo(-0.1, 14);
  });
});

describe('a table as a run of a design', () => {
  const stored: StoredReadings = {
    name: 'run 1',
    encoding: 'utf-8',
    text: 'Pitch,Force [N]\n1,2.5\n',
    options: {},
    mapping: [
      { role: 'pitch', unit: 'deg', flipped: false, travel: null },
      { role: 'force', unit: 'N', flipped: false, travel: null },
    ],
    metadata: NOTHING,
  };

  it('leaves out what is not known, and that comes back as unknown', () => {
    const run = runFromTable('r', stored);
    expect(Object.keys(run).toSorted()).toEqual(['id', 'name', 'table']);
    expect(Object.keys(run.table ?? {}).toSorted()).toEqual(['columns', 'encoding', 'text']);
    expect(tableOfRun(run)).toEqual({ ok: true, value: stored });
  });

  it('holds everything that is known, and gives it back', () => {
    const metadata = {
      speed: 20 * Math.PI,
      fitted: 'bolt',
      arm: 0.0171,
      gauge: 'spring',
      gaugeStep: 0.1,
      date: 'today',
      note: 'calm',
    };
    const full: StoredReadings = { ...stored, metadata, options: { delimiter: ';', decimal: ',' } };
    const run = runFromTable('r', full);
    expect(run).toMatchObject({
      speedRpm: 600,
      fitted: 'bolt',
      armMm: 17.1,
      gauge: 'spring',
      gaugeStepN: 0.1,
      date: 'today',
      note: 'calm',
      table: { delimiter: ';', decimal: ',' },
    });
    const again = tableOfRun(run);
    expect(again.ok && again.value.options).toEqual(full.options);
    expect(again.ok && again.value.metadata).toMatchObject({
      ...metadata,
      speed: expect.closeTo(metadata.speed, 9),
    });
  });
});
