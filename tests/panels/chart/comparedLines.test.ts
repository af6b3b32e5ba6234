import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { COMPARED_DASHES, SHARE_DASHES } from '../../../src/panels/chart/chartTheme';
import { ComparedLines } from '../../../src/panels/chart/comparedLines';
import { plottedQuantity } from '../../../src/panels/chart/quantity';
import { createSession } from '../../../src/state/createSession';
import { CHART_QUANTITIES } from '../../../src/state/settings';
import { MAX_COMPARED } from '../../../src/state/tryOutActions';

function demo(name: string) {
  const url = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
  const design = parseDesign(readFileSync(url, 'utf8'));
  if (!design.ok) throw new Error(design.error.path);
  return design.value;
}
function setUp() {
  const session = createSession(demo('4-turned-nut'), (call) => call());
  const parts = demo('3-ordinary-bolt').parts;
  const added = session.actions.tryOuts.add(parts, 'Ordinary bolt');
  if (!added.ok) throw new Error(added.error.path);
  const lines = new ComparedLines(session.live.reading.curve.pitchDeg.length);
  const quantity = () => plottedQuantity(session.live.reading, session.store.getState().settings);
  return { session, parts, id: added.value, lines, quantity };
}

describe('the curve of a try-out laid over the chart', () => {
  it('is, in every quantity, the curve that the chart draws of the design with its parts', () => {
    const { session, parts, lines, quantity } = setUp();
    const opened = createSession({ ...demo('4-turned-nut'), parts }, (call) => call()).live.reading;
    for (const chartQuantity of CHART_QUANTITIES) {
      session.actions.setSettings({ chartQuantity });
      const { kind, factor } = quantity();
      lines.update(session, quantity());
      const { curve } = opened;
      const per = {
        force: curve.forcePerMoment,
        slider: curve.sliderPerMoment,
        servo: curve.servoPerMoment,
        moment: null,
        energy: null,
      }[kind];
      const source = kind === 'energy' ? curve.energy : curve.moment;
      for (let i = 0; i < source.length; i += 7) {
        expect(lines.values[0][i]).toEqual(source[i] * (per ? per[i] : 1) * factor);
      }
    }
  });

  it('is filled once, and not while the parts on the stage are dragged', () => {
    const { session, lines, quantity } = setUp();
    lines.update(session, quantity());
    lines.values[0].fill(12345);
    const hold = session.actions.gesture.begin();
    for (let mm = 1; mm < 6; mm += 0.5) {
      session.actions.setParameter('bolt', 'extensionLengthMm', mm);
      lines.update(session, quantity());
    }
    hold.end();
    expect(lines.values[0].every((value) => value === 12345)).toBe(true);
    session.actions.setSettings({ chartQuantity: 'moment' });
    lines.update(session, quantity());
    expect(lines.values[0].includes(12345)).toBe(false);
  });

  it('keeps its slot, and so its dash, while others come and go', () => {
    const { session, id, lines, quantity } = setUp();
    const { tryOuts } = session.actions;
    const second = tryOuts.duplicate(id);
    const third = tryOuts.duplicate(id);
    if (!second.ok || !third.ok) throw new Error('refused');
    lines.update(session, quantity());
    const slotOf = (wanted: string) => lines.lines.findIndex((line) => line?.id === wanted);
    const before = slotOf(second.value);
    tryOuts.compare(id, false);
    lines.update(session, quantity());
    expect(slotOf(second.value)).toBe(before);
    expect(slotOf(id)).toBe(-1);
    tryOuts.compare(id, true);
    lines.update(session, quantity());
    expect(new Set([id, second.value, third.value].map(slotOf)).size).toBe(3);
    expect(slotOf(second.value)).toBe(before);
  });

  it('is not laid over where it is on the stage, and the one that was there takes its place', () => {
    const { session, id, lines, quantity } = setUp();
    session.actions.tryOuts.show(id);
    lines.update(session, quantity());
    expect(lines.lines.map((line) => line?.name ?? null).filter(Boolean)).toEqual([
      'Head as it was',
    ]);
  });

  it('has a dash for each, none of them that of a share', () => {
    expect(COMPARED_DASHES.length).toBe(MAX_COMPARED);
    const all = [...COMPARED_DASHES, ...SHARE_DASHES].map((dash) => dash.join(' '));
    expect(new Set(all).size).toBe(all.length);
  });
});
