import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { HeadForces } from '../../../src/design/forces/headForces';
import { headLoads } from '../../../src/design/forces/headLoads';
import { HeadModel } from '../../../src/design/headModel';
import { headVerdict } from '../../../src/design/headVerdict';
import { radiansFromDegrees } from '../../../src/engine/units';

function demo(name: string): Design {
  const file = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
  const read = parseDesign(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(`demo(): ${name} is not sound: ${read.error.path}`);
  return read.value;
}

function forcesOf(design: Design): HeadForces {
  const model = new HeadModel();
  const outcome = model.load(design);
  if (!outcome.ok) throw new Error(outcome.error.path);
  return new HeadForces(model);
}

const QUARTER = radiansFromDegrees(90);
const LOW = radiansFromDegrees(-90);

function verdictOf(forces: HeadForces) {
  const equilibria = forces.equilibria(LOW, QUARTER);
  return headVerdict(forces, { equilibria, from: LOW, to: QUARTER });
}
const forceAt = (forces: HeadForces, deg: number) => {
  const pitch = radiansFromDegrees(deg);
  return forces.forceOf(forces.moment(pitch), pitch) ?? Number.NaN;
};
const OUNCE_FORCE = 0.278;

// Common practice (facts of the trade, no source), with air, friction, the rod and its linkage counted.
describe('the demo head with everything counted behaves as the trade says', () => {
  test('a bare grip centres itself', () => {
    expect(verdictOf(forcesOf(demo('1-bare-grip')))).toMatchObject({ kind: 'centres' });
  });

  test('a long bolt without a blade flees flat pitch and jams past over-centre', () => {
    const verdict = verdictOf(forcesOf(demo('2-long-bolt')));
    expect(verdict.kind).toBe('flees');
    if (verdict.kind !== 'flees') return;
    // No rest angle before the arm is over centre.
    expect(verdict.ends?.low.why).toBe('overCentre');
    expect(verdict.ends?.low.deg ?? 0).toBeGreaterThan(verdict.below ?? -91);
  });

  test('blade and ordinary bolt centre hard: tens of ounces-force', () => {
    const forces = forcesOf(demo('3-ordinary-bolt'));
    expect(verdictOf(forces)).toMatchObject({ kind: 'centres', hard: true });
    expect(Math.abs(forceAt(forces, 20)) / OUNCE_FORCE).toBeGreaterThan(20);
    expect(Math.abs(forceAt(forces, -20)) / OUNCE_FORCE).toBeGreaterThan(20);
  });

  test.each(['4-turned-nut', '5-both-sides'])(
    '%s: nearly nothing at 10 and 20 degrees both ways, it stays where it is put, and force returns beyond from the air',
    (name) => {
      const forces = forcesOf(demo(name));
      expect(verdictOf(forces)).toMatchObject({ kind: 'stays', by: 'friction' });
      for (const deg of [-20, -10, 10, 20])
        expect(Math.abs(forceAt(forces, deg))).toBeLessThan(0.5);
      const bands = forces.bands(LOW, QUARTER, forces.equilibria(LOW, QUARTER));
      const about = bands.find(([low, high]) => low < 0 && high > 0) ?? [0, 0];
      expect(about[0]).toBeLessThan(radiansFromDegrees(-20));
      expect(about[1]).toBeGreaterThan(radiansFromDegrees(20));
      for (const deg of [-35, 35]) {
        const pitch = radiansFromDegrees(deg);
        expect(Math.abs(forceAt(forces, deg))).toBeGreaterThan(1.5);
        const air = forces.terms.find(({ id }) => id === 'air')?.moment(pitch) ?? 0;
        // What returns is the air: more than the rest of the moment together.
        expect(Math.abs(air)).toBeGreaterThan(Math.abs(forces.moment(pitch) - air));
      }
    },
  );

  test('weight on one side alone loads the bearings more than the same on both', () => {
    const radial = (name: string) =>
      headLoads(forcesOf(demo(name)), radiansFromDegrees(10)).bearings.reduce(
        (sum, one) => sum + one.radial,
        0,
      );
    expect(radial('4-turned-nut')).toBeGreaterThan(1.5 * radial('5-both-sides'));
  });

  test('a full-size head is weighed, driven and loaded in the same way', () => {
    const forces = forcesOf(demo('6-full-size'));
    expect(verdictOf(forces)).toMatchObject({ kind: 'stays', by: 'friction' });
    const { axialPull, bearings, bolts } = headLoads(forces, radiansFromDegrees(10));
    // Three to four kilograms at 0.9 m and 1,200 rpm: W^2 m r is some tens of kilonewtons.
    expect(axialPull).toBeGreaterThan(20_000);
    expect(axialPull).toBeLessThan(200_000);
    for (const { rating } of bearings) expect(rating.kind).toBe('known');
    expect(bolts[0]?.checks.find(({ name }) => name === 'shear')?.margin).toMatchObject({
      kind: 'known',
    });
  });
});
