import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyseDesign } from '../../../src/design/analysis';
import { parseDesign } from '../../../src/design/file';
import { createSession } from '../../../src/state/createSession';
import { firstLimitText, verdictOnLimits } from '../../../src/state/words/firstLimit';

function turnedNut(speedRpm = 10200) {
  const url = new URL('../../../assets/designs/4-turned-nut.json', import.meta.url);
  const read = parseDesign(readFileSync(url, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return { ...read.value, rotor: { ...read.value.rotor, speedRpm } };
}

/**
 * The demo head's closed nut hangs on one side. Its radial bearings are rated 180 N at rest (ISO 76: a bearing that carries
 * no axial load is at its rating where P0 = Fr = C0); 5 % over 10,200 rpm are 10,710.
 */
describe('a head with a bearing beyond its rating', () => {
  const RATING = 180;
  const OVERSPEED = 1.05 * 10200;

  it('is told in the verdict, with the speed that goes with the root of the load', () => {
    const design = turnedNut();
    const { reading } = createSession(design, (call) => call()).live;
    const { bearings } = reading.loadsAt(20, OVERSPEED);
    const outer = bearings.find(({ id }) => id === 'bearing-out');
    if (!outer) throw new Error('no outer bearing');
    expect(outer.radial).toBeGreaterThan(RATING);
    const rpm = (OVERSPEED * Math.sqrt(RATING / outer.radial)).toFixed(0);
    expect(Number(rpm)).toBeLessThan(10200);
    expect(verdictOnLimits(reading, design.rotor)).toBe(
      `Beyond a limit: Outer bearing carries more than it may from ${rpm} rpm, at +20\u00b0; judged at 10710 rpm (see Loads).`,
    );
    const headline = firstLimitText(
      reading.limitInUse(OVERSPEED),
      reading.loadsAt(0, OVERSPEED),
      (id) => id,
    );
    const percent = ((100 * outer.radial) / RATING).toFixed(0);
    expect(headline).toContain(`That is passed: ${percent} % of it is used at 10710 rpm.`);
  });

  it('is told at the terminal too', () => {
    const found = analyseDesign(turnedNut(), { fromDeg: -90, toDeg: 90, stepDeg: 90 });
    if (!found.ok) throw new Error(found.error.path);
    expect(found.value.warnings.join('\n')).toMatch(
      /"Outer bearing" carries more than it may \(static rating\) from 97\d\d rpm, at 20 deg: 121 % /,
    );
  });

  it('is not at two thirds of the speed, and none is where the rotor stands', () => {
    for (const speed of [6800, 0]) {
      const design = turnedNut(speed);
      const { reading } = createSession(design, (call) => call()).live;
      expect(verdictOnLimits(reading, design.rotor)).toBeNull();
      const rpm = 1.05 * speed;
      const text = firstLimitText(reading.limitInUse(rpm), reading.loadsAt(0, rpm), (id) => id);
      expect(text).not.toContain('passed');
    }
  });
});
