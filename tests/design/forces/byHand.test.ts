import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { HeadForces } from '../../../src/design/forces/headForces';
import { headLoads } from '../../../src/design/forces/headLoads';
import { HeadModel } from '../../../src/design/headModel';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import { M } from '../../../src/engine/mass/moments';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { defaultValues, designOf, mounted, partOf, ROTOR } from '../designs';

function forcesOf(parts: readonly Part[], more: Partial<Design> = {}): HeadForces {
  const model = new HeadModel();
  const outcome = model.load({ ...designOf(parts), ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.error));
  return new HeadForces(model);
}

const COUNTED = { rodMass: false, air: false, friction: true };
const AIR = { counted: { rodMass: false, air: true, friction: false } };
const FLAT = radians(0);

describe('drag of the linkage at rest', () => {
  const head = [
    partOf('grip', 'grip'),
    mounted('pitchArm', 'arm', 'grip', 'armSeat'),
    mounted('pitchLink', 'link', 'arm', 'ball'),
  ];

  // Virtual work: the force F moves the one slider by dZ while each of n grips turns by dt: n M dt = F dZ.
  it.each([1, 2, 4])('is shared by the %d grips that it moves', (bladeCount) => {
    const forces = forcesOf(head, {
      rotor: { ...ROTOR, bladeCount },
      counted: COUNTED,
      friction: { drag: [{ travelMm: 0, forceN: 0.5 }] },
    });
    const h = 1e-5;
    for (const deg of [-18, 4, 25]) {
      const t = radiansFromDegrees(deg);
      const rise = forces.travelAt(radians(t + h)) - forces.travelAt(radians(t - h));
      const wanted = (0.5 * Math.abs(rise / (2 * h))) / bladeCount;
      // A central difference of h = 1e-5 leaves h^2 / 6 of the third derivative, and 1e-16 / h of rounding.
      expect(forces.frictionAt(t)).toBeCloseTo(wanted, 9);
    }
  });
});

describe('a blade bolt', () => {
  const head = [
    partOf('grip', 'grip'),
    mounted('bolt', 'bolt', 'grip', 'boltTop', { propertyClass: '8.8' }),
    mounted('blade', 'blade', 'grip', 'bladeRoot'),
  ];

  function shearOf(rpm: number) {
    const forces = forcesOf(head, { rotor: { ...ROTOR, speedRpm: rpm } });
    const blade = forces.model.placed('blade');
    const [bolt] = headLoads(forces, FLAT).bolts;
    const shear = bolt.checks.find(({ name }) => name === 'shear')?.margin;
    if (!blade || shear?.kind !== 'known') throw new Error('no shear');
    return { shear, pull: bolt.pull, moments: blade.moments_G, forces };
  }

  // Statics of a pin through two cheeks: each of its two sections carries half of W^2 m r.
  it('carries half of the pull of its blade in each of two sections', () => {
    const { shear, pull, moments } = shearOf(10_200);
    const spin = (10_200 * 2 * Math.PI) / 60;
    const centre = Math.hypot(moments[1], moments[2]) / moments[M];
    expect(pull).toBeCloseTo(spin ** 2 * moments[M] * centre, 9);
    expect(shear.value).toBeCloseTo(pull / 2, 9);
  });

  it('uses four times its strength at twice the speed, and all of it at the speed that is named', () => {
    const [slow, fast] = [shearOf(5000), shearOf(10_000)];
    expect(fast.shear.use / slow.shear.use).toBeCloseTo(4, 9);
    expect(slow.shear.use).toBeCloseTo(slow.shear.value / slow.shear.limit, 12);
    const first = headLoads(slow.forces, FLAT).first;
    if (!first) throw new Error('no limit');
    const again = headLoads(slow.forces, FLAT, first.limitRpm).first;
    expect(again?.use).toBeCloseTo(1, 9);
    expect(first.limitRpm).toBeGreaterThan(5000);
  });
});

describe('the air on a blade', () => {
  const values = defaultValues('blade') as { rootChordMm: number };
  const straight = { tipChordMm: values.rootChordMm, axisPercent: 30, camberPercent: 0 };

  function geometryOf(rotationDeg: readonly number[]) {
    const pose = { positionMm: [38, 0, 0], rotationDeg };
    const forces = forcesOf([partOf('blade', 'blade', { ...straight, pose })], AIR);
    if (forces.air.kind !== 'estimated') throw new Error(forces.air.kind);
    return { air: forces.air, forces };
  }

  // Turned by ten degrees about the span, nose up: every chord stands so, and the quarter point rides on it.
  it('acts at the quarter of the chord behind the nose, which a turn of the blade carries along', () => {
    const flat = geometryOf([0, 0, 0]).air.blade;
    const turned = geometryOf([10, 0, 0]).air.blade;
    const chord = values.rootChordMm / 1000;
    const [cos, sin] = [Math.cos(Math.PI / 18), Math.sin(Math.PI / 18)];
    for (let i = 0; i < flat.stations.length; i++) {
      expect(flat.chords[i]).toBeCloseTo(chord, 12);
      expect(flat.twist[i]).toBeCloseTo(0, 12);
      expect(flat.quarterChordZ[i]).toBeCloseTo(0, 12);
      // The axis lies 30 % of the chord behind the nose, so the quarter point 5 % ahead of it.
      expect(flat.quarterChordY[i]).toBeCloseTo(0.05 * chord, 12);
      expect(turned.twist[i]).toBeCloseTo(Math.PI / 18, 12);
      expect(turned.quarterChordY[i]).toBeCloseTo(cos * flat.quarterChordY[i], 12);
      expect(turned.quarterChordZ[i]).toBeCloseTo(sin * flat.quarterChordY[i], 12);
      expect(turned.chords[i]).toBeCloseTo(chord, 12);
    }
  });

  it('puts the thrust of one blade on one grip: the rotor is as many times that', () => {
    const { air, forces } = geometryOf([0, 0, 0]);
    const pitch = radiansFromDegrees(9);
    const solution = createHoverSolution(air.blade.stations.length);
    const whole = solveHover(air.blade, air.section, air.conditions, pitch, solution).thrust;
    const { thrust } = headLoads(forces, pitch);
    // The table is a cubic through whole degrees: exact at one of them.
    expect((thrust?.force ?? 0) / (whole / ROTOR.bladeCount)).toBeCloseTo(1, 9);
  });
});
