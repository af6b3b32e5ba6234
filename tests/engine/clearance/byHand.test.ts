import { describe, expect, it } from 'vitest';
import { WIDE } from '../../../src/engine/clearance/judge';
import type { KeepOutShape } from '../../../src/engine/clearance/keepOut';
import { GripMotion } from '../../../src/engine/clearance/motion';
import { nearestGap, placeKeepOut, TOLERANCE } from '../../../src/engine/clearance/nearestGap';
import { RodMotion } from '../../../src/engine/clearance/rodMotion';
import { ClearanceSearch } from '../../../src/engine/clearance/search';
import { placeSurface } from '../../../src/engine/clearance/surface';
import { Target } from '../../../src/engine/clearance/target';
import { buildTree } from '../../../src/engine/clearance/triangleTree';
import type { RotorConditions } from '../../../src/engine/feathering/rotor';
import { createLinkState, type Linkage, linkState } from '../../../src/engine/linkage/linkage';
import { rodRotation } from '../../../src/engine/linkage/rodPose';
import {
  POSE_IDENTITY,
  type Pose,
  rotationAboutY,
  rotationFixedXyz,
  translation,
} from '../../../src/engine/math/pose';
import { IDENTITY, type Vec3 } from '../../../src/engine/math/vector';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { prism, rectangle, revolution, tubeProfile } from '../../../src/parts/shapes';
import { weldedMeshes } from '../../../src/parts/tessellate';
import { seeded } from '../../support/seeded';
import { meshOf } from './randomHeads';

/** Every value in this file is derived by hand from the geometry in the test. Lengths mm where said, else m. */
const MM = 1e-3;
const STILL: RotorConditions = { angularSpeed: 0, torqueOffset: 0, precone: radians(0) };
const EIGHTH = radiansFromDegrees(45);

/** A block of full sides x, y, z (mm) about a place in the grip frame (mm). */
function block([x, y, z]: Vec3, [px, py, pz]: Vec3) {
  const outer = rectangle((-x / 2) * MM, (x / 2) * MM, (-y / 2) * MM, (y / 2) * MM);
  const meshes = weldedMeshes([prism('b', 1, { outer, from: (-z / 2) * MM, to: (z / 2) * MM })]);
  return placeSurface(buildTree(meshes), translation(px * MM, py * MM, pz * MM));
}

function gapMm(
  surface: ReturnType<typeof block>,
  shape: KeepOutShape,
  pose: Pose,
  options: { rotor?: RotorConditions; low?: number; high?: number; fixedTo?: 'hub' | 'case' } = {},
) {
  const { rotor = STILL, low = -EIGHTH, high = EIGHTH, fixedTo = 'hub' } = options;
  const kept = placeKeepOut(shape, pose, fixedTo);
  const found = nearestGap(surface, new GripMotion(rotor), kept, { low, high });
  return { ...found, gap: found.gap / MM, error: found.error / MM };
}

const PLANE: KeepOutShape = { shape: 'plane' };
const under = (mm: number) => translation(0, 0, mm * MM);

describe('gaps that can be worked out by hand', () => {
  it('a corner 3 across and 4 down comes 5 under the axis, where its radius points down', () => {
    // Block 6 x 8 in y and z: corner radius 5 mm, lowest at the pitch that turns (-3, -4) to (0, -5): atan(3 / 4).
    const found = gapMm(block([10, 6, 8], [20, 0, 0]), PLANE, under(-12));
    // Proven to a small share of a gap as wide as this.
    expect(found.error).toBeLessThan(1.01 * WIDE * 7);
    expect(found.gap - found.error).toBeLessThanOrEqual(7);
    expect(found.gap).toBeGreaterThanOrEqual(7 - 1e-12);
    // R (1 - cos) of what the pitch is off is within that share.
    const off = Math.abs(found.pitch) - Math.atan2(3, 4);
    expect(5 * (1 - Math.cos(off))).toBeLessThanOrEqual(found.error + 1e-9);
  });

  it('a range that stops short of that pitch ends at its end', () => {
    const end = radiansFromDegrees(10);
    const found = gapMm(block([10, 6, 8], [20, 0, 0]), PLANE, under(-12), { low: 0, high: end });
    // Corner (3, -4) or (-3, -4) turned by 10 degrees: z = y sin t + z cos t.
    const lowest = -3 * Math.sin(end) - 4 * Math.cos(end);
    expect(found.gap).toBeCloseTo(lowest + 12, 9);
    expect(found.pitch).toBeCloseTo(end, 9);
  });

  it('precone lifts a part by its station times the sine, and torque offset moves it sideways', () => {
    const rotor = { angularSpeed: 0, torqueOffset: 2 * MM, precone: radiansFromDegrees(30) };
    const dot = block([0.02, 0.02, 0.02], [100, 0, 0]);
    const up = gapMm(dot, PLANE, under(0), { rotor, low: 0, high: 0 });
    expect(up.gap).toBeCloseTo(50, 1);
    // A box ahead of the axis, its near face 12 mm along Y.
    const box: KeepOutShape = { shape: 'box', half: [1, 10 * MM, 1] };
    const ahead = gapMm(dot, box, translation(0, 22 * MM, 0), { rotor, low: 0, high: 0 });
    expect(ahead.gap).toBeCloseTo(10, 1);
  });

  it('a wall of the case is met by the farthest corner when the shaft has turned it there', () => {
    // Block from x = 10 to 30, y from -4 to 4: farthest corner at the radius of (30, 4) at flat pitch.
    const wall: Pose = {
      rotation: rotationAboutY(radiansFromDegrees(-90)),
      translation: [40 * MM, 0, 0],
    };
    const part = block([20, 8, 8], [20, 0, 0]);
    const turning = gapMm(part, PLANE, wall, { low: 0, high: 0, fixedTo: 'case' });
    expect(turning.gap).toBeCloseTo(40 - Math.hypot(30, 4), 2);
    const turned = turning.azimuth > Math.PI ? turning.azimuth - 2 * Math.PI : turning.azimuth;
    expect(Math.abs(turned)).toBeCloseTo(Math.atan2(4, 30), 1);
    // The same wall on the hub is met by the end face.
    expect(gapMm(part, PLANE, wall, { low: 0, high: 0 }).gap).toBeCloseTo(10, 9);
  });

  it('a post of the case beside the shaft is passed at its own radius', () => {
    // A post of radius 2 standing 45 mm from the shaft; the part reaches out to x = 30 with a flat end 0.02 wide.
    const post: KeepOutShape = { shape: 'cylinder', radius: 2 * MM, half: 20 * MM };
    const part = block([20, 0.02, 0.02], [20, 0, 0]);
    const pose = translation(0, -45 * MM, 0);
    const found = gapMm(part, post, pose, { low: 0, high: 0, fixedTo: 'case' });
    expect(found.gap).toBeCloseTo(45 - 2 - 30, 2);
    expect(found.azimuth).toBeCloseTo(1.5 * Math.PI, 2);
  });

  it('nothing is passed by what is the same all round the shaft', () => {
    const post: KeepOutShape = { shape: 'cylinder', radius: 2 * MM, half: 20 * MM };
    expect(placeKeepOut(post, POSE_IDENTITY, 'case').passed).toBe(false);
    expect(placeKeepOut(PLANE, under(-10), 'case').passed).toBe(false);
    expect(placeKeepOut(post, translation(1 * MM, 0, 0), 'case').passed).toBe(true);
    expect(placeKeepOut({ shape: 'box', half: [1, 1, 1] }, POSE_IDENTITY, 'case').passed).toBe(
      true,
    );
    expect(placeKeepOut(post, translation(1 * MM, 0, 0), 'hub').passed).toBe(false);
  });
});

describe('a small triangle past a slanted wall of the case', () => {
  it('is bounded by what every pitch and azimuth together do, however early the search ends', () => {
    const search = new ClearanceSearch();
    const random = seeded(5).unit;
    for (let i = 0; i < 120; i++) {
      const place = [(random() - 0.3) * 60, (random() - 0.5) * 80, (random() - 0.5) * 80] as const;
      const surface = block([1e-3, 1e-3, 1e-3], place);
      const slant = {
        rotation: rotationFixedXyz(...angles(random)),
        translation: [0, 0, 0],
      } as const;
      const target = new Target({ shape: 'plane' }, slant);
      const [low, high] = [-0.9 * random(), 0.9 * random()];
      const n = [slant.rotation[2], slant.rotation[5], slant.rotation[8]];
      let least = Infinity;
      for (let k = 0; k <= 60; k++) {
        const pitch = low + ((high - low) * k) / 60;
        const [x, y, z] = place.map((value) => value * MM);
        const across = y * Math.cos(pitch) - z * Math.sin(pitch);
        const up = y * Math.sin(pitch) + z * Math.cos(pitch);
        // Over a whole turn the wall's normal meets the whole radius.
        least = Math.min(least, n[2] * up - Math.hypot(n[0], n[1]) * Math.hypot(x, across));
      }
      for (const budget of [2, 8, 16, 24, 32, 48, 64, 96]) {
        const found = search.run(
          surface,
          new GripMotion(STILL),
          target,
          { low, high, turn: 2 * Math.PI },
          0,
          budget,
        );
        expect(found.bound).toBeLessThanOrEqual(least + 2e-6);
      }
    }
  });
});

function angles(random: () => number) {
  const angle = () => radians((random() - 0.5) * 2 * Math.PI);
  return [angle(), angle(), angle()] as const;
}

describe('touching and overlapping', () => {
  const part = () => block([10, 10, 10], [20, 0, 0]);
  const still = { low: 0, high: 0 };
  const box: KeepOutShape = { shape: 'box', half: [5 * MM, 5 * MM, 5 * MM] };
  const boxMesh: KeepOutShape = { shape: 'mesh', mesh: meshOf(box) };

  it.each([
    ['a plane', PLANE, under(-5)],
    ['a box', box, translation(30 * MM, 0, 0)],
    ['a cylinder', { shape: 'cylinder', radius: 3 * MM, half: 5 * MM }, translation(28 * MM, 0, 0)],
    ['a mesh', boxMesh, translation(30 * MM, 0, 0)],
  ] as const)('a part that touches %s has no gap and no depth', (_, shape, pose) => {
    const { gap, error } = gapMm(part(), shape as KeepOutShape, pose, still);
    expect(Math.abs(gap)).toBeLessThan(1e-9 + TOLERANCE / MM);
    // That nothing lies deeper in a mesh is proven by its own, weaker bound: coarser over faces that lie on one another.
    const proven = shape.shape === 'mesh' ? 0.5 : TOLERANCE / MM + 1e-3;
    expect(error).toBeLessThanOrEqual(proven);
  });

  it('a hair of gap is a gap, a hair of overlap is an overlap', () => {
    const hair = 0.02;
    const near = gapMm(part(), box, translation((30 + hair) * MM, 0, 0), still);
    expect([near.meeting, near.gap]).toEqual(['clear', expect.closeTo(hair, 9)]);
    const into = gapMm(part(), box, translation((30 - hair) * MM, 0, 0), still);
    expect([into.meeting, into.gap]).toEqual(['cut', expect.closeTo(-hair, 9)]);
    const nearMesh = gapMm(part(), boxMesh, translation((30 + hair) * MM, 0, 0), still);
    expect([nearMesh.meeting, nearMesh.gap]).toEqual(['clear', expect.closeTo(hair, 9)]);
    const intoMesh = gapMm(part(), boxMesh, translation((30 - hair) * MM, 0, 0), still);
    expect(intoMesh.meeting).toBe('cut');
    expect(intoMesh.gap).toBeLessThan(0);
    expect(intoMesh.gap - intoMesh.error).toBeLessThanOrEqual(-hair + 1e-9);
  });

  it('a part 2 deep in a box is 2 deep', () => {
    const { gap, meeting } = gapMm(part(), box, translation(28 * MM, 0, 0), still);
    expect(meeting).toBe('cut');
    expect(gap).toBeCloseTo(-2, 1);
  });

  it('a part that lies wholly in a keep-out is an overlap, as deep as its deepest point', () => {
    const large: KeepOutShape = { shape: 'box', half: [50 * MM, 50 * MM, 50 * MM] };
    const { gap, meeting } = gapMm(part(), large, POSE_IDENTITY, still);
    expect(meeting).toBe('cut');
    // The part's near face is at x = 15: 35 from the box's face, its other faces 45.
    expect(gap).toBeCloseTo(-35, 0);
    const asMesh: KeepOutShape = { shape: 'mesh', mesh: meshOf(large) };
    const mesh = gapMm(part(), asMesh, POSE_IDENTITY, still);
    expect(mesh.meeting).toBe('cut');
    expect(mesh.gap - mesh.error).toBeLessThanOrEqual(-35 + 1e-9);
    expect(mesh.gap).toBeLessThan(-33);
  });

  it('a keep-out that lies wholly in a part is an overlap, as deep as its middle', () => {
    const small: KeepOutShape = { shape: 'box', half: [1 * MM, 2 * MM, 3 * MM] };
    const place = translation(20 * MM, 0, 0);
    for (const shape of [small, { shape: 'mesh', mesh: meshOf(small) } as const]) {
      const { gap, meeting } = gapMm(part(), shape, place, still);
      expect(meeting).toBe('keepOutInside');
      expect(gap).toBeCloseTo(-1, 9);
    }
    const pin: KeepOutShape = { shape: 'cylinder', radius: 0.5 * MM, half: 2 * MM };
    expect(gapMm(part(), pin, place, still).gap).toBeCloseTo(-0.5, 9);
  });

  it('a keep-out in the bore of a ring is no overlap', () => {
    const ring = weldedMeshes([revolution('r', 1, tubeProfile(4 * MM, 6 * MM, -5 * MM, 5 * MM))], {
      segmentsPerTurn: 96,
    });
    const surface = placeSurface(buildTree(ring), translation(20 * MM, 0, 0));
    const pin: KeepOutShape = { shape: 'cylinder', radius: 1 * MM, half: 20 * MM };
    const { gap, meeting } = gapMm(surface, pin, translation(20 * MM, 0, 0), still);
    expect(meeting).toBe('clear');
    // Chords of the bore: 96 flats lie 4 (1 - cos(pi / 96)) = 0.002 mm nearer to the middle.
    expect(gap).toBeGreaterThan(3 - 0.0022);
    expect(gap).toBeLessThanOrEqual(3 + 1e-9);
  });
});

describe('the push rod along its travel', () => {
  const linkage: Linkage = {
    ball_G: [20 * MM, 14 * MM, -2 * MM],
    side: -1,
    length: 24 * MM,
    sliderX: 19 * MM,
    sliderY: 12 * MM,
    rod: null,
  };
  const rotor: RotorConditions = {
    angularSpeed: 0,
    torqueOffset: 1 * MM,
    precone: radiansFromDegrees(2),
  };
  const range = { low: radiansFromDegrees(-40), high: radiansFromDegrees(50) };
  const thin = weldedMeshes([
    prism('rod', 1, {
      outer: rectangle(-1 * MM, 1 * MM, -1 * MM, 1 * MM),
      from: -28 * MM,
      to: 3 * MM,
    }),
  ]);
  const rod = () => placeSurface(buildTree(thin), POSE_IDENTITY);

  /** Brute force: every corner at many pitches, posed by the linkage and the drawn turn. */
  function leastHeight(): number {
    const state = createLinkState();
    let least = Infinity;
    for (let i = 0; i <= 4000; i++) {
      const pitch = radians(range.low + ((range.high - range.low) * i) / 4000);
      linkState(linkage, rotor, pitch, state);
      const r = rodRotation(IDENTITY, [state.axis[0], state.axis[1], state.axis[2]]);
      const { positions } = thin[0];
      for (let k = 0; k < positions.length; k += 3) {
        const z = r[6] * positions[k] + r[7] * positions[k + 1] + r[8] * positions[k + 2];
        least = Math.min(least, state.ball[2] + z);
      }
    }
    return least;
  }

  it('comes as near to a plane under it as four thousand pitches of its corners say', () => {
    const kept = placeKeepOut(PLANE, under(-60), 'case');
    const found = nearestGap(rod(), new RodMotion(linkage, rotor, IDENTITY), kept, range);
    const least = leastHeight() + 60 * MM;
    expect(found.gap - found.error).toBeLessThanOrEqual(least + 1e-12);
    expect(found.gap).toBeLessThanOrEqual(least + found.error + 1e-12);
    expect(found.gap).toBeGreaterThan(least - 1e-7);
  });

  it.each([
    ['the rod', () => new RodMotion(linkage, rotor, IDENTITY)],
    ['the grip', () => new GripMotion(rotor)],
  ] as const)('%s: what any point does along any direction is bounded from below', (_, made) => {
    const motion = made();
    const probe = made();
    const out = new Float64Array(3);
    const facing = new Float64Array(3);
    const next = seeded(1).unit;
    for (let i = 0; i < 400; i++) {
      const a = range.low + (range.high - range.low) * next();
      const b = Math.min(range.high, a + 0.6 * next() * next());
      const n = [next() - 0.5, next() - 0.5, next() - 0.5];
      const p: Vec3 = [(next() - 0.5) * 8 * MM, (next() - 0.5) * 8 * MM, (next() * 34 - 30) * MM];
      motion.aim(a, b);
      motion.place(1, ...p, out);
      const [mx, my, mz] = out;
      motion.face(n[0], n[1], n[2], facing);
      const least = motion.leastGain(...p);
      const reach = motion.reach(...p);
      const levelReach = motion.levelReach(...p);
      for (let k = 0; k <= 10; k++) {
        const pitch = a + ((b - a) * k) / 10;
        probe.aim(pitch, pitch);
        probe.place(1, ...p, out);
        const gain = n[0] * (out[0] - mx) + n[1] * (out[1] - my) + n[2] * (out[2] - mz);
        expect(gain).toBeGreaterThanOrEqual(least - 1e-12);
        expect(Math.hypot(out[0] - mx, out[1] - my)).toBeLessThanOrEqual(levelReach + 1e-12);
        expect(Math.hypot(out[0] - mx, out[1] - my, out[2] - mz)).toBeLessThanOrEqual(
          reach + 1e-12,
        );
      }
    }
  });
});
