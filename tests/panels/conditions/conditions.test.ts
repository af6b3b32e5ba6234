import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { SECTION_NAMES, SECTIONS } from '../../../src/design/sections';
import { dragText, parseDrag } from '../../../src/panels/conditions/dragText';
import {
  dropPolar,
  examplePolar,
  polarText,
  takePolar,
} from '../../../src/panels/conditions/polarDesk';
import { sectionGroups } from '../../../src/panels/conditions/sectionRows';
import { createSession } from '../../../src/state/createSession';
import { METRIC_UNITS } from '../../../src/state/settings';
import { notesFor } from '../../../src/state/words/conditionNotes';

function demo(name = '3-ordinary-bolt') {
  const file = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
  const design = parseDesign(readFileSync(file, 'utf8'));
  if (!design.ok) throw new Error(`demo(): not sound: ${design.error.path}`);
  return createSession(design.value, (update) => update());
}

describe('the fields of the conditions', () => {
  it('show every field of every section once', () => {
    const shown = sectionGroups(demo()).flatMap(({ runs }) =>
      runs.flatMap((run) =>
        run.kind === 'fields' ? run.fields.map(({ key }) => key) : [run.field.key],
      ),
    );
    const all = SECTION_NAMES.flatMap((name) => Object.keys(SECTIONS[name]));
    expect(shown.toSorted()).toEqual(all.toSorted());
  });

  it('write a value, let it go when emptied, and refuse with the reason', () => {
    const session = demo();
    const runs = sectionGroups(session).flatMap((group) => group.runs);
    const stop = runs.find((run) => run.kind === 'optional' && run.field.key === 'highestTravelMm');
    if (stop?.kind !== 'optional') throw new Error('no such field');
    expect(stop.field.commit(4)).toBeNull();
    expect(session.store.getState().design.control?.highestTravelMm).toBe(4);
    expect(session.live.reading.linkage?.ends?.high.why).toBe('stop');
    expect(stop.field.commit(-1)).toContain('0');
    expect(session.store.getState().design.control?.highestTravelMm).toBe(4);
    expect(stop.field.commit(undefined)).toBeNull();
    expect(session.live.reading.linkage?.ends?.high.why).toBe('unreachable');
  });
});

describe('a typed table of drag', () => {
  it.each([
    ['-5 0.4\n0 0.3\n5 0.4', 'blanks'],
    [
      'travel;force\n0;0,3\n-5;0,4\n5;0,4',
      'semicolons and decimal commas, out of order, with a heading',
    ],
    ['-5\t0.4\r\n0\t0.3\r\n5\t0.4\r\n', 'a spreadsheet'],
    ['-5,0.4\n0,0.3\n5,0.4', 'commas'],
    ['\u22125, 0.4\n0, 0.3\n5, 0.4', 'commas with blanks and a real minus sign'],
  ])('is read: %j (%s)', (text) => {
    const rows = [
      { travelMm: -5, forceN: 0.4 },
      { travelMm: 0, forceN: 0.3 },
      { travelMm: 5, forceN: 0.4 },
    ];
    expect(parseDrag(text)).toEqual({ ok: true, value: rows });
    expect(parseDrag(dragText(rows))).toEqual({ ok: true, value: rows });
  });

  it.each([
    ['0 0.3\n1', 'Line 2'],
    ['0 0.3\n1 x 2', 'Line 2'],
    ['0 -0.3', 'between 0'],
    ['9999 0.3', 'travel must lie'],
    ['1 0.3\n1 0.4', 'twice'],
    ['0 0.3\n1,5', 'Line 2: the comma'],
  ])('says what is wrong with %j', (text, reason) => {
    const read = parseDrag(text);
    expect(read.ok ? '' : read.error).toContain(reason);
  });
});

describe('a table of the section from a file', () => {
  it('is the built-in one when that is saved and opened again, to the digits written', () => {
    const session = demo();
    const before = session.live.reading.momentAt(25);
    expect(takePolar(session, 'own.csv', examplePolar())).toBeNull();
    const { air } = session.store.getState().design;
    expect(air?.section).toBe('table');
    expect(air?.polar && polarText(air.polar)).toContain('-180 to 180 degrees');
    // Straight and cubic pieces between rows a degree apart, against the smooth model: a few per cent of the air's share.
    const share = Math.abs(
      session.live.reading.terms.find(({ id }) => id === 'air')?.momentAt(25) ?? 0,
    );
    expect(Math.abs(session.live.reading.momentAt(25) - before)).toBeLessThan(0.1 * share);
    dropPolar(session);
    expect(session.live.reading.momentAt(25)).toBe(before);
  });

  it('is refused with its line, and nothing changes', () => {
    const session = demo();
    const { design } = session.store.getState();
    for (const text of [
      '',
      'nonsense',
      'alpha,cl,cd,cm\n0,0,x,0',
      'alpha,cl,cd,cm\n0,0,-1,0\n1,0,0,0',
    ]) {
      expect(takePolar(session, 'bad.csv', text)).toMatch(/^bad\.csv, line \d+: ./);
    }
    expect(session.store.getState().design).toBe(design);
  });
});

describe('what follows from the numbers', () => {
  it('is said for every group in whole sentences, of the demo and of an empty head', () => {
    for (const name of ['1-bare-grip', '3-ordinary-bolt']) {
      const { live } = demo(name);
      for (const topic of ['conditions', 'slider', 'servo', 'friction', 'air', 'bladeBolt']) {
        for (const line of notesFor(topic, live.reading, METRIC_UNITS)) {
          expect(line).toMatch(/[.:]$/);
          expect(line).not.toContain('NaN');
          expect(line).not.toContain('{');
        }
      }
    }
  });

  it('judges the servo against friction too where that is counted', () => {
    const needed = (counted: boolean) => {
      const session = demo('4-turned-nut');
      session.actions.setSection('counted', { friction: counted });
      const [line] = notesFor('servo', session.live.reading, METRIC_UNITS);
      expect(line).toContain(counted ? 'friction counted' : 'friction not counted');
      return Number(/up to ([\d.]+)/.exec(line)?.[1]);
    };
    expect(needed(true)).toBeGreaterThan(1.2 * needed(false));
  });

  it('does not call a servo enough whose arms cannot reach', () => {
    const session = demo('4-turned-nut');
    session.actions.setSection('control', { servoArmMm: 0.6 });
    const words = notesFor('servo', session.live.reading, METRIC_UNITS).join(' ');
    expect(words).toContain('do not swing');
    expect(words).not.toContain('Enough');
  });

  it('says of the demo servos whether they are enough', () => {
    const words = notesFor('servo', demo().live.reading, METRIC_UNITS).join(' ');
    expect(words).toContain('Too weak');
    expect(notesFor('servo', demo('4-turned-nut').live.reading, METRIC_UNITS).join()).toContain(
      'Enough',
    );
  });
});
