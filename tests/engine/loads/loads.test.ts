import { beforeAll, describe, expect, test } from 'vitest';
import { gripPose } from '../../../src/engine/feathering/gripPose';
import {
  addForce,
  bendUpAt,
  createAxisLoad,
  spinAxisLoad,
} from '../../../src/engine/loads/axisLoad';
import { bearingReactions, staticEquivalentLoad } from '../../../src/engine/loads/bearings';
import {
  cheekPressure,
  overhangStress,
  pinMoment,
  pinResistance,
  rootPressure,
  shearResistance,
} from '../../../src/engine/loads/bolt';
import { boltClass } from '../../../src/engine/loads/boltClasses';
import { pullOn } from '../../../src/engine/loads/pull';
import { threadStressArea } from '../../../src/engine/mass/thread';
import { transformPoint } from '../../../src/engine/math/pose';
import { cross, dot, subtract, type Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { type Piece, pieceSolid, randomAssembly } from '../../support/assembly';
import { randomRotor } from '../../support/linkages';
import { type MultibodyEngine, startMultibodyEngine } from '../../support/multibody';
import { seeded } from '../../support/seeded';
import { weighed } from '../../support/shapes';

let oracle: MultibodyEngine;
beforeAll(async () => {
  oracle = await startMultibodyEngine();
});

const quat = (piece: Piece) => piece.turn.join(' ');
function geomOf(piece: Piece): string {
  const { shape } = piece;
  const size =
    shape.kind === 'box'
      ? shape.size.map((one) => one / 2).join(' ')
      : shape.kind === 'sphere'
        ? String(shape.radius)
        : `${shape.radius} ${shape.height / 2}`;
  const place = `pos="${piece.centre.join(' ')}" quat="${quat(piece)}"`;
  return `<body><geom type="${shape.kind}" size="${size}" ${place} density="${piece.density}"/></body>`;
}

describe("the spin's load on the grip's bearings", () => {
  // The grip hangs in the hub on three slides and two hinges beside the feathering hinge, all at their middle: the
  // forces that the spin puts on them are what the bearings carry.
  test('is what an independent multibody engine finds in the joints that hold the grip', () => {
    const random = seeded(41);
    let worst = 0;
    for (let i = 0; i < 60; i++) {
      const rotor = randomRotor(random);
      const pieces = randomAssembly(random);
      const pitch = random.between(-1, 1);
      const half = -rotor.precone / 2;
      const content = `<body pos="0 ${rotor.torqueOffset} 0" quat="${Math.cos(half)} 0 ${Math.sin(half)} 0">
        <joint type="slide" axis="1 0 0"/><joint type="slide" axis="0 1 0"/><joint type="slide" axis="0 0 1"/>
        <joint type="hinge" axis="0 1 0"/><joint type="hinge" axis="0 0 1"/><joint type="hinge" axis="1 0 0"/>
        ${pieces.map(geomOf).join('')}</body>`;
      const [along, forward, up, aboutY, aboutW] = oracle.spinForces(content, rotor.angularSpeed, [
        0,
        0,
        0,
        0,
        0,
        pitch,
      ]);
      const moments = weighed(...pieces.map(pieceSolid));
      const load = spinAxisLoad(moments, rotor, radians(pitch), createAxisLoad());
      const scale = rotor.angularSpeed ** 2 * moments[0] * 0.1;
      const errors = [
        load.along - along,
        load.forward - forward,
        load.up - up,
        (load.bendUp + aboutY) / 0.1,
        (load.swingForward - aboutW) / 0.1,
      ];
      worst = Math.max(worst, ...errors.map((error) => Math.abs(error) / scale));
    }
    expect(worst).toBeLessThan(1e-12);
  });

  test('by hand: 1 g at (60, 3, 5) mm, 10,000 rpm', () => {
    const rotor = { angularSpeed: 1047.197551196598, torqueOffset: 0, precone: radians(0) };
    const moments = Float64Array.of(
      1,
      0.06,
      0.003,
      0.005,
      36e-4,
      9e-6,
      25e-6,
      18e-5,
      3e-4,
      15e-6,
    ).map((v) => v / 1000);
    const load = spinAxisLoad(moments, rotor, radians(0), createAxisLoad());
    expect(load.along).toBeCloseTo(65.7974, 3);
    expect(load.forward).toBeCloseTo(3.28987, 4);
    expect(load.bendUp).toBeCloseTo(-0.328987, 5);
    expect(pullOn(moments, rotor, radians(0))).toBeCloseTo(Math.hypot(65.7974, 3.28987), 3);
    // Above the plane it bends the tip down at every station: against thrust.
    for (const station of [0, 0.02, 0.05]) expect(bendUpAt(load, station)).toBe(load.bendUp);
    const double = spinAxisLoad(
      moments,
      { ...rotor, angularSpeed: 2 * rotor.angularSpeed },
      radians(0.3),
      createAxisLoad(),
    );
    const single = spinAxisLoad(moments, rotor, radians(0.3), createAxisLoad());
    for (const key of Object.keys(single) as (keyof typeof single)[])
      expect(double[key]).toBe(4 * single[key]);
  });

  test('a force adds what its lever says, by the cross product', () => {
    const random = seeded(42);
    for (let i = 0; i < 50; i++) {
      const rotor = randomRotor(random);
      const force: Vec3 = [random.between(-9, 9), random.between(-9, 9), random.between(-9, 9)];
      const place: Vec3 = [
        random.between(0, 0.1),
        random.between(-0.02, 0.02),
        random.between(-0.02, 0.02),
      ];
      const load = createAxisLoad();
      addForce(load, force, place, rotor);
      const flat = gripPose(rotor, radians(0));
      const arm = subtract(transformPoint(flat, place), flat.translation);
      const moment = cross(arm, force);
      const w: Vec3 = [-Math.sin(rotor.precone), 0, Math.cos(rotor.precone)];
      const u: Vec3 = [Math.cos(rotor.precone), 0, Math.sin(rotor.precone)];
      expect(load.along).toBeCloseTo(dot(force, u), 12);
      expect(load.forward).toBeCloseTo(force[1], 12);
      expect(load.up).toBeCloseTo(dot(force, [-u[2], 0, u[0]]), 12);
      expect(load.bendUp).toBeCloseTo(-moment[1], 12);
      expect(load.swingForward).toBeCloseTo(dot(moment, w), 12);
    }
  });
});

test('3 N upward at 50 mm bend up by 0.15 N m at the shaft and by 0.09 at 20 mm (hand)', () => {
  const load = createAxisLoad();
  addForce(load, [0, 0, 3], [0.05, 0, 0], {
    angularSpeed: 0,
    torqueOffset: 0,
    precone: radians(0),
  });
  expect(bendUpAt(load, 0)).toBeCloseTo(0.15, 14);
  expect(bendUpAt(load, 0.02)).toBeCloseTo(0.09, 14);
});

describe('bearings', () => {
  test('two balance force and moment; one takes the force; three share as equal springs', () => {
    expect(bearingReactions([0.01, 0.03], { force: 10, moment: 0.5 })).toEqual([
      expect.closeTo(-10, 12),
      expect.closeTo(20, 12),
    ]);
    expect(bearingReactions([0.02], { force: 7, moment: 9 })).toEqual([7]);
    const three = bearingReactions([0.01, 0.02, 0.03], { force: 3, moment: 0.1 });
    expect(three.reduce((a, b) => a + b)).toBeCloseTo(3, 12);
    expect(three.reduce((sum, r, i) => sum + r * [0.01, 0.02, 0.03][i], 0)).toBeCloseTo(0.1, 12);
    expect(three[1] - three[0]).toBeCloseTo(three[2] - three[1], 12);
    expect(bearingReactions([], { force: 1, moment: 1 })).toEqual([]);
  });
  // ISO 76 (factors from memory): deep groove 0.6 F_r + 0.5 F_a, not below F_r; thrust ball F_a.
  test('static equivalent load', () => {
    expect(staticEquivalentLoad('radial', 100, 20)).toBe(100);
    expect(staticEquivalentLoad('radial', 100, 200)).toBe(160);
    expect(staticEquivalentLoad('thrust', 30, -900)).toBe(900);
  });
});

describe('the blade bolt', () => {
  const strength = (name: string) => {
    const found = boltClass(name);
    if (!found) throw new Error(name);
    return found;
  };

  // Published: ISO 898-1, minimum ultimate tensile loads of M3: F = R_m,min A_s, printed to three digits.
  test.each([
    ['8.8', 4020],
    ['10.9', 5230],
    ['12.9', 6140],
  ])('class %s: an M3 thread breaks at %i N', (name, printed) => {
    const load = strength(name).tensile * threadStressArea(0.003, 0.0005);
    expect(Math.abs(load - printed)).toBeLessThan(0.0016 * printed);
  });

  // Published worked values, EN 1993-1-8 Table 3.4: M16, thread in the plane, A_s 157 mm^2.
  test.each([
    ['8.8', 60_300],
    ['10.9', 62_800],
  ])('class %s: one plane of an M16 thread carries %i N', (name, printed) => {
    const sections = { shankDiameter: 0.016, stressArea: 157e-6, rootDiameter: 0.0135 };
    const { force, outside } = shearResistance(sections, 'thread', strength(name));
    expect(Math.abs(force - printed)).toBeLessThan(50);
    expect(outside).toBe(false);
  });

  test('classes that the table does not name take the cautious half, and say so', () => {
    const sections = { shankDiameter: 0.003, stressArea: 5.03e-6, rootDiameter: 0.0024 };
    for (const name of ['12.9', 'A2-70', 'A4-80']) {
      const { force, outside } = shearResistance(sections, 'thread', strength(name));
      expect(outside).toBe(true);
      expect(force).toBeCloseTo((0.5 * strength(name).nominalTensile * 5.03e-6) / 1.25, 6);
    }
    expect(boltClass('unknown')).toBeNull();
    expect(boltClass(null)).toBeNull();
  });

  // EN 1993-1-8 Table 3.4: 0.6 in the plain shank for every class that it names; design tables print 77.2 and 96.5 kN for
  // M16 (from memory). A shank of 3 mm has 7.069 mm^2.
  test.each([
    ['8.8', 77_200],
    ['10.9', 96_500],
  ])('class %s: one plane of an M16 shank carries %i N', (name, printed) => {
    const sections = { shankDiameter: 0.016, stressArea: 157e-6, rootDiameter: 0.0135 };
    const { force } = shearResistance(sections, 'shank', strength(name));
    expect(Math.abs(force - printed)).toBeLessThan(60);
  });

  test('a class outside the table has the cautious half in its shank too', () => {
    const sections = { shankDiameter: 0.003, stressArea: 5.03e-6, rootDiameter: 0.0024 };
    const { force } = shearResistance(sections, 'shank', strength('12.9'));
    expect(force).toBeCloseTo((0.5 * 1200e6 * 7.0686e-6) / 1.25, 0);
  });

  // ISO 898-1, tables 3 and 5: proof loads of M3; ISO 3506-1, table 2 (from memory). Stainless classes have no proof load.
  test.each([
    ['8.8', 'ISO 898-1', 640, 2920],
    ['10.9', 'ISO 898-1', 940, 4180],
    ['12.9', 'ISO 898-1', 1100, 4880],
    ['A2-50', 'ISO 3506-1', 210, null],
    ['A2-70', 'ISO 3506-1', 450, null],
    ['A4-80', 'ISO 3506-1', 600, null],
  ])('class %s of %s yields at %d MPa', (name, standard, yields, proof) => {
    const found = strength(name);
    expect(found.standard).toBe(standard);
    expect(found.yield).toBe(yields * 1e6);
    if (proof === null) expect(found.proof).toBeNull();
    else expect(Math.abs((found.proof ?? 0) * 5.03e-6 - proof)).toBeLessThan(0.003 * proof);
  });

  test('stainless classes are named by their tensile strength: 500, 700 and 800 MPa', () => {
    for (const [name, tensile] of [
      ['A2-50', 500],
      ['A2-70', 700],
      ['A4-80', 800],
    ] as const) {
      const { tensile: least, nominalTensile, inShearTable } = strength(name);
      expect([least, nominalTensile, inShearTable]).toEqual([tensile * 1e6, tensile * 1e6, false]);
    }
  });

  test('bending as a pin, pressure and overhang by hand', () => {
    // 600 N (4.8 + 4 x 0.1 + 2 x 5.5) / 8 mm = 1.215 N m; 1.5 pi 3^3 / 32 x 640 MPa = 2.5447 N m.
    expect(pinMoment(600, { cheek: 0.0055, root: 0.0048, gap: 0.0001 })).toBeCloseTo(1.215, 12);
    expect(pinResistance(0.003, strength('8.8'))).toBeCloseTo(2.5447, 4);
    expect(cheekPressure(600, 0.003, 0.0055)).toBeCloseTo(18.1818e6, 0 - 2);
    // 600 N over 3 x 4.8 mm = 41.67 MPa: what is thinner than both cheeks together presses harder.
    expect(rootPressure(600, 0.003, 0.0048) / 1e6).toBeCloseTo(41.6667, 4);
    expect(overhangStress(0.5, 0.003) / 1e6).toBeCloseTo(188.63, 2);
  });
});
