import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import {
  judgedStation,
  sectionCurves,
  sectionPlot,
  sectionSummary,
} from '../../../src/panels/air/sectionPlot';
import { createSession } from '../../../src/state/createSession';

const text = readFileSync(
  new URL('../../../assets/designs/5-both-sides.json', import.meta.url),
  'utf8',
);

/** The demo's air, with a table from a file where one is given. */
function airOf(polarText?: string) {
  const design = parseDesign(text);
  if (!design.ok) throw new Error(design.error.path);
  const session = createSession(design.value, (update) => update());
  if (polarText !== undefined) {
    const polar = { name: 'mine.csv', text: polarText };
    expect(session.actions.setSection('air', { polar, section: 'table' }).ok).toBe(true);
  }
  const { air } = session.live.reading;
  if (air.kind !== 'estimated') throw new Error(air.kind);
  return air;
}

describe("the section's own coefficients", () => {
  it('give back the rows of a table from a file, and nothing beyond them', () => {
    const curves = sectionCurves(
      airOf(
        'angle,lift,drag,moment\n-20,-0.8,0.3,0.1\n0,0,0.01,0\n10,1.05,0.02,-0.01\n20,0.8,0.3,-0.1\n',
      ),
    );
    const at = (deg: number) => curves.anglesDeg.indexOf(deg);
    expect(curves.lift[at(10)]).toBeCloseTo(1.05, 12);
    expect(curves.drag[at(-20)]).toBeCloseTo(0.3, 12);
    expect(curves.moment[at(20)]).toBeCloseTo(-0.1, 12);
    for (const deg of [-90, -20.5, 20.5, 90]) expect(curves.lift[at(deg)]).toBeNaN();
  });

  it('are those of the built-in section, odd in lift and moment and even in drag', () => {
    const { anglesDeg, lift, drag, moment } = sectionCurves(airOf());
    const last = anglesDeg.length - 1;
    expect([anglesDeg[0], anglesDeg[last]]).toEqual([-90, 90]);
    for (let i = 0; i <= last; i++) {
      expect(lift[i] + lift[last - i]).toBeCloseTo(0, 12);
      expect(moment[i] + moment[last - i]).toBeCloseTo(0, 12);
      expect(drag[i] - drag[last - i]).toBeCloseTo(0, 12);
    }
    // SAND80-2114, NACA 0015: 1.8 to 2.1 across the wind.
    expect(drag[last]).toBeGreaterThan(1.8);
    expect(drag[last]).toBeLessThan(2.1);
  });

  it('are judged at three quarters of the radius, at the Reynolds number there', () => {
    const air = airOf();
    const { index, reynolds } = judgedStation(air);
    const { blade, conditions } = air;
    expect(blade.stations[index] / blade.tipRadius).toBeCloseTo(0.75, 1);
    const speed = conditions.angularSpeed * blade.stations[index];
    const kinematic = conditions.viscosity / conditions.density;
    expect(reynolds).toBeCloseTo((speed * blade.chords[index]) / kinematic, 6);
  });

  it('are told in words, with the angle of the moment marked where there is one', () => {
    const air = airOf();
    expect(sectionPlot(air, 0.1).marks).toEqual([
      { x: expect.closeTo(5.73, 2), text: 'now +5.7\u00b0' },
    ]);
    expect(sectionPlot(air, Number.NaN).marks).toEqual([]);
    expect(sectionSummary(air)).toMatch(/At \+10°: lift 0\.98, drag 0\.039, moment/);
    expect(sectionSummary(air)).not.toMatch(/NaN|\{|undefined/);
  });
});
