import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import {
  changeGrip,
  resetGrip,
  takeParts,
  weighPartOf,
} from '../../../src/panels/balance/gripEdits';
import { createSession } from '../../../src/state/createSession';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { balanceLines, gripName } from '../../../src/state/words/balanceText';
import { loadRows, loadState, loadText } from '../../../src/state/words/loadRows';

const textOf = (name: string) =>
  readFileSync(new URL(`../../../assets/designs/${name}.json`, import.meta.url), 'utf8');

function demo(name = '5-both-sides') {
  const design = parseDesign(textOf(name));
  if (!design.ok) throw new Error(design.error.path);
  return createSession(design.value, (update) => update());
}

describe('the table of loads', () => {
  it('says of each load how near it is to its limit, and names what is not known', () => {
    const session = demo();
    const rows = loadRows(session.live.reading.loadsAt(10), (id) => id, METRIC_UNITS);
    for (const { what, words, value } of rows) {
      expect(`${what} ${words} ${value}`).not.toMatch(/NaN|\{|undefined/);
    }
    expect(rows.find(({ key }) => key === 'bolt shear')).toMatchObject({ state: 'within' });
    const bolt = session.store.getState().design.parts.find(({ id }) => id === 'bolt') as Part;
    expect(session.actions.setParameter(bolt.id, 'propertyClass', 'unknown').ok).toBe(true);
    const unknown = loadRows(session.live.reading.loadsAt(10), (id) => id, METRIC_UNITS);
    const both = unknown.find(({ key }) => key === 'bolt shearAndBending');
    expect(both).toMatchObject({ state: 'unknown', value: '\u2013' });
    expect(both?.words).toContain('property class');
  });

  it('has the pressure in the blade\u2019s root, which is thinner than both cheeks, round the bolt or its bushing', () => {
    const session = demo('3-ordinary-bolt');
    const pressure = () => {
      const [bolt] = session.live.reading.loadsAt(0).bolts;
      const found = bolt.checks.find(({ name }) => name === 'rootPressure');
      return [(found?.margin.value ?? Number.NaN) / 1e6, bolt.pull] as const;
    };
    // Root 4.8 mm thick, bolt 3 mm: pull over 14.4 mm^2; with a bushing of 5 mm over 24 mm^2.
    const [bare, pull] = pressure();
    expect(bare).toBeCloseTo(pull / 14.4, 9);
    expect(session.actions.setParameter('blade', 'bushDiameterMm', 5).ok).toBe(true);
    const [lined, more] = pressure();
    expect(lined).toBeCloseTo(more / 24, 9);
  });

  it('gives load and limit of a row in one unit, and stresses in psi beside inches', () => {
    const { reading } = demo('3-ordinary-bolt').live;
    const loads = reading.loadsAt(0);
    const rows = loadRows(loads, (id) => id, INCH_UNITS);
    const unitOf = (text: string) => text.replace(/ \(.*/, '').replace(/^[^\u00a0]*\u00a0?/, '');
    for (const { value, limit, state } of rows) {
      if (state === 'plain' || state === 'unknown' || limit === '') continue;
      expect(unitOf(value)).toBe(unitOf(limit));
      expect(value).not.toContain('MPa');
    }
    // 1 lbf = 4.4482216152605 N (exact by definition), so 1 psi = 6894.757 Pa; 12.9 yields at 1100 MPa = 159.54 ksi.
    expect(rows.find(({ key }) => key === 'bolt headPull')?.limit).toContain('160\u00a0ksi');
    const [bolt] = loads.bolts;
    const pounds = bolt.pull / 2 / 4.4482216152605;
    expect(rows.find(({ key }) => key === 'bolt shear')?.value).toBe(
      `${pounds.toFixed(1)}\u00a0lbf`,
    );
  });

  it('calls a share of 0.67 close and of 1 beyond', () => {
    const known = (use: number) =>
      loadState({ kind: 'known', value: use, limit: 1, use, source: '', outside: false });
    expect([0.66, 0.67, 0.999, 1].map(known)).toEqual(['within', 'close', 'close', 'beyond']);
  });

  it('is copied with its conditions and its caution, five cells a line', () => {
    const { live } = demo();
    const lines = loadText(
      '10,200 rpm',
      loadRows(live.reading.loadsAt(0), (id) => id, METRIC_UNITS),
    ).split('\n');
    expect(lines[0]).toBe('10,200 rpm');
    for (const line of lines.slice(1, -1)) expect(line.split('\t').length).toBe(5);
    expect(lines.at(-1)).toContain('licensed engineer');
  });

  it('has its first limit over the pitch in use, not at the pointer alone', () => {
    const { reading } = demo('4-turned-nut').live;
    const limit = reading.limitInUse();
    expect(limit).not.toBeNull();
    for (const deg of [-20, -10, 0, 10, 20]) {
      expect(reading.loadsAt(deg).first?.use ?? 0).toBeLessThanOrEqual((limit?.use ?? 0) + 1e-12);
    }
    expect(reading.loadsAt(limit?.pitchDeg ?? 0).first?.limitRpm).toBeCloseTo(
      limit?.limitRpm ?? 0,
      9,
    );
  });
});

describe('the other grips', () => {
  it('are weighed in parts, whole, taken from a file and put back, each one step', () => {
    const session = demo();
    const grips = () => session.store.getState().design.otherGrips;
    expect(weighPartOf(session, 1, 'blade', 7.5)).toBeNull();
    expect(grips()).toEqual([{ name: '', partMassesGrams: { blade: 7.5 } }]);
    expect(changeGrip(session, 1, { name: 'B', massGrams: 20 })).toBeNull();
    expect(session.live.reading.balance().grips[1].from).toBe('weighed');
    // What was weighed was another grip's.
    expect(takeParts(session, 1, textOf('3-ordinary-bolt'))).toBeNull();
    expect(Object.keys(grips()?.[0] ?? {})).toEqual(['name', 'parts']);
    expect(takeParts(session, 1, '{')).toContain('could not be read');
    expect(resetGrip(session, 1)).toBeNull();
    expect(grips()).toEqual([{ name: 'B' }]);
    expect(changeGrip(session, 1, { name: '' })).toBeNull();
    expect(grips()).toBeUndefined();
    expect(changeGrip(session, 1, { massGrams: -1 })).toContain('massGrams');
    session.actions.undo();
    expect(grips()).toEqual([{ name: 'B' }]);
  });

  it('are told in sentences, and a grade is never rounded onto one that it does not keep', () => {
    const session = demo();
    expect(balanceLines(session.live.reading.balance(), METRIC_UNITS)).toEqual([
      'In balance: all grips are alike.',
    ]);
    for (let extra = 0; extra < 0.4; extra += 0.0137) {
      const mass = 1000 * session.live.reading.balance().grips[0].mass;
      changeGrip(session, 1, { massGrams: mass + extra });
      const balance = session.live.reading.balance();
      const line = balanceLines(balance, METRIC_UNITS).find((one) => one.startsWith('Grade')) ?? '';
      const [, value, standard] = /G ([\d.]+) mm\/s: keeps G ([\d.]+)/.exec(line) ?? [];
      if (value) expect(Number(value)).toBeLessThanOrEqual(Number(standard) + 0.0005);
    }
    expect(gripName({ name: '', index: 2 })).toBe('Grip 3');
  });
});
