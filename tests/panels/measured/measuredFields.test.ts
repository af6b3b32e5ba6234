import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { measuredReport } from '../../../src/design/measuredReport';
import { NO_MATERIALS } from '../../../src/design/resolve';
import { measuredField } from '../../../src/panels/measured/measuredFields';
import {
  densityText,
  inUseText,
  reportLines,
  uncertainText,
} from '../../../src/panels/measured/reportText';
import { swingResult } from '../../../src/panels/measured/swingText';
import { createSession } from '../../../src/state/createSession';
import { measuredRefusal } from '../../../src/state/measuredRefusal';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { shownUnit } from '../../../src/state/shownUnits';
import { outOfLimits } from '../../../src/state/typed/readTyped';

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
const demo = (parseDesign(readFileSync(file, 'utf8')) as { value: Design }).value;
const open = () => createSession(demo, (callback) => callback());
const plain = (text: string | null | undefined) => (text ?? '').replace(/[\u00a0\u202f]/g, ' ');

function blade(session: ReturnType<typeof open>) {
  const placed = session.live.model.placed('blade');
  if (!placed) throw new Error('blade(): it is gone');
  return placed;
}

describe('fields of what was measured', () => {
  it('write one number and leave the others; an emptied one leaves no trace', () => {
    const session = open();
    const { part } = blade(session);
    expect(measuredField(session, part, 'massGrams').commit(8)).toBeNull();
    expect(measuredField(session, part, 'centreXMm').commit(45)).toBeNull();
    expect(blade(session).part.measured).toEqual({ massGrams: 8, centreXMm: 45 });
    expect(measuredField(session, part, 'massGrams').commit(undefined)).toBeNull();
    expect(measuredField(session, part, 'centreXMm').commit(undefined)).toBeNull();
    expect('measured' in blade(session).part).toBe(false);
    session.actions.undo();
    expect(blade(session).part.measured).toEqual({ centreXMm: 45 });
  });

  it('name their limit in the units on screen', () => {
    const session = open();
    const field = measuredField(session, blade(session).part, 'massGrams');
    const metric = outOfLimits(field, -1, shownUnit('g', METRIC_UNITS));
    expect(plain(metric)).toBe('Weighed mass must be at least 0.001 g.');
    expect(plain(outOfLimits(field, 1e6, shownUnit('g', INCH_UNITS)))).toMatch(/at most .* oz\./);
    expect(outOfLimits(field, 8, shownUnit('g', METRIC_UNITS))).toBeNull();
    expect(outOfLimits(field, undefined, shownUnit('g', METRIC_UNITS))).toBeNull();
  });

  it('say what impossible timings come to', () => {
    const session = open();
    const swing = { spacingMm: 40, stringLengthMm: 400, swings: 20 } as const;
    const outcome = session.actions.setMeasured('blade', {
      swings: [
        { ...swing, about: 'span', seconds: 60 },
        { ...swing, about: 'chord', seconds: 3 },
        { ...swing, about: 'thickness', seconds: 3 },
      ],
    });
    const text = measuredRefusal(session, 'blade', outcome);
    expect(text).toMatch(/cannot be true together: the timings leave a spread of -.* g mm2/);
    expect(blade(session).part.measured).toBeUndefined();
  });
});

describe('the report in words', () => {
  function reported(measured: object, units = METRIC_UNITS) {
    const session = open();
    expect(session.actions.setMeasured('blade', measured).ok).toBe(true);
    const { part, values } = blade(session);
    const report = measuredReport(part, values, NO_MATERIALS);
    if (!report) throw new Error('reported(): there is no report');
    return { report, lines: reportLines(report, units) };
  }

  it('calls out a blade a third too heavy, and says what its density comes to', () => {
    const { report } = reported({ massGrams: 1 });
    const drawn = report.quantities[0].modelled * 1000;
    const heavy = reported({ massGrams: Number(((4 / 3) * drawn).toFixed(6)) });
    expect(heavy.lines).toHaveLength(1);
    expect(heavy.lines[0].disagrees).toBe(true);
    expect(plain(heavy.lines[0].verdict)).toContain('33.3 % more, beyond the 4.0 % expected');
    expect(plain(densityText(heavy.report, METRIC_UNITS))).toMatch(/scaled by 1\.333, to \d{4} kg/);
    expect(densityText(reported({ centreXMm: 45 }).report, METRIC_UNITS)).toBeNull();
  });

  it('a centre differs by a length, with its sign', () => {
    const { report } = reported({ centreXMm: 60 });
    const [line] = reportLines(report, METRIC_UNITS);
    const drawn = report.quantities[1].modelled * 1000;
    expect(plain(line.verdict)).toContain(`+${(60 - drawn).toFixed(2)} mm, beyond the`);
    expect(plain(inUseText(report, METRIC_UNITS))).toContain('centre 60.00,');
  });

  it('shows as many decimals as the uncertainty is worth', () => {
    expect(plain(uncertainText('mass', 0.0089, 2.9e-6, METRIC_UNITS))).toBe('8.900 ± 0.003 g');
    expect(plain(uncertainText('centreX', 0.0482, 1.44e-4, METRIC_UNITS))).toBe('48.20 ± 0.14 mm');
    expect(plain(uncertainText('inertiaX', 6.52e-7, 1.3e-8, METRIC_UNITS))).toBe('652 ± 13 g mm²');
  });

  it('a timing says its moment by the pendulum formula, and which reading to better', () => {
    const session = open();
    session.actions.setMeasured('blade', { massGrams: 7.2 });
    const { part, values } = blade(session);
    const swing = {
      about: 'span',
      spacingMm: 60,
      stringLengthMm: 500,
      swings: 20,
      seconds: 9,
    } as const;
    const result = swingResult(part, values, NO_MATERIALS, swing, METRIC_UNITS);
    // Derived: I = m g s^2 P^2 / (16 pi^2 L) = 7.2e-3 x 9.80665 x 0.06^2 x 0.45^2 / (16 pi^2 x 0.5) = 651.9 g mm^2.
    expect(plain(result?.moment)).toBe('652 ± 13 g mm²');
    expect(result?.sentences.map(plain).join(' ')).toContain('is the time: count more swings');
    expect(result?.sentences.map(plain)).toContain('Computed with the weighed mass, 7.20 g.');
  });
});
