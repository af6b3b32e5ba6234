import { describe, expect, it } from 'vitest';
import type { KeepOutShape } from '../../../src/engine/clearance/keepOut';
import { GripMotion } from '../../../src/engine/clearance/motion';
import { nearestGap, placeKeepOut } from '../../../src/engine/clearance/nearestGap';
import { ClearanceSearch } from '../../../src/engine/clearance/search';
import { placeSurface } from '../../../src/engine/clearance/surface';
import { Target } from '../../../src/engine/clearance/target';
import { buildTree } from '../../../src/engine/clearance/triangleTree';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { POSE_IDENTITY, rotationAboutY, rotationAboutZ } from '../../../src/engine/math/pose';
import type { Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { randomPose, randomVector, seeded } from '../../support/seeded';

// Boxes before boxes: every distance here is read off their faces (worked out by hand). Lengths m, as large as a rotor.

const FACES = [
  0, 2, 1, 0, 3, 2, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4,
  3, 4, 7,
];
function boxMesh([x, y, z]: Vec3, [px, py, pz]: Vec3 = [0, 0, 0]): TriangleMesh {
  const corners = [-z, z].flatMap((k) => [
    [px - x, py - y, pz + k],
    [px + x, py - y, pz + k],
    [px + x, py + y, pz + k],
    [px - x, py + y, pz + k],
  ]);
  return { positions: Float64Array.from(corners.flat()), triangles: Uint32Array.from(FACES) };
}
const box = (half: Vec3): KeepOutShape => ({ shape: 'box', half });
const mesh = (half: Vec3, at?: Vec3): KeepOutShape => ({ shape: 'mesh', mesh: boxMesh(half, at) });
const at = (x: number, y: number, z: number) =>
  ({ ...POSE_IDENTITY, translation: [x, y, z] }) as const;

const ROTOR = { angularSpeed: 0, torqueOffset: 0, precone: radians(0) };
const surfaceOf = (half: Vec3, place: Vec3) =>
  placeSurface(buildTree([boxMesh(half, place)]), POSE_IDENTITY);

function gap(
  part: readonly [half: Vec3, place: Vec3],
  shape: KeepOutShape,
  pose: Parameters<typeof placeKeepOut>[1],
  {
    rotor = ROTOR,
    low = 0,
    high = 0,
    fixedTo = 'hub' as 'hub' | 'case',
    tolerance = 0.05,
    budget = 600,
  } = {},
) {
  return nearestGap(
    surfaceOf(...part),
    new GripMotion(rotor),
    placeKeepOut(shape, pose, fixedTo),
    { low, high },
    tolerance,
    budget,
  );
}
const close = (found: readonly number[], wanted: readonly number[], digits = 9) =>
  wanted.forEach((value, k) => expect(found[k]).toBeCloseTo(value, digits));

describe('a block before a block', () => {
  const part = [
    [1, 1, 1],
    [5, 0, 0],
  ] as const;
  it.each<[string, KeepOutShape]>([
    ['box', box([1, 0.5, 0.25])],
    ['mesh', mesh([1, 0.5, 0.25])],
  ])('%s: the points face to face, and the gap between them', (_, shape) => {
    const places: readonly (readonly [Vec3, number])[] = [
      [[8, 0.2, 0.3], 0],
      [[5.3, 3, 0.2], 1],
      [[5.2, 0.3, -4], 2],
    ];
    for (const [place, axis] of places) {
      const found = gap(part, shape, at(...place));
      const wanted = [1, 1.5, 2.75][axis];
      expect(found.meeting).toBe('clear');
      expect(found.gap).toBeGreaterThanOrEqual(wanted - 1e-12);
      expect(found.gap - found.error).toBeLessThanOrEqual(wanted + 1e-12);
      expect(found.error).toBeLessThanOrEqual(0.0501);
      const apart = found.onKeepOut.map((value, k) => value - found.onPart[k]);
      expect(Math.hypot(...apart)).toBeCloseTo(found.gap, 12);
      expect(Math.abs(apart[axis])).toBeCloseTo(wanted, 12);
      expect(apart[axis] > 0).toBe(axis !== 2);
    }
  });

  it.each<[string, KeepOutShape]>([
    ['box', box([1, 0.5, 0.25])],
    ['mesh', mesh([1, 0.5, 0.25])],
  ])('%s of the case, passed at an azimuth of a quarter and its own height', (_, shape) => {
    // The corners of the outer face pass at root 37; the near face of the block stands at y = 8.
    const found = gap(part, shape, at(0, 8.5, 0.1), { fixedTo: 'case' });
    expect(found.gap).toBeGreaterThanOrEqual(8 - Math.sqrt(37) - 1e-12);
    expect(found.gap - found.error).toBeLessThanOrEqual(8 - Math.sqrt(37));
    expect(found.error).toBeLessThan(0.2);
    const [c, s] = [Math.cos(found.azimuth), Math.sin(found.azimuth)];
    const [x, y] = found.onPart;
    const there: Vec3 = [c * x - s * y, s * x + c * y, found.onPart[2]];
    expect(Math.hypot(...there.map((value, k) => value - found.onKeepOut[k]))).toBeCloseTo(
      found.gap,
      12,
    );
    expect(found.onKeepOut[1]).toBeCloseTo(8, 9);
  });
});

describe('a keep-out within a part', () => {
  const part = [
    [2, 1.5, 1],
    [8, 0, 0],
  ] as const;
  // Precone lifts station 8 to (8 cos, 8 sin), torque offset moves it ahead: by hand.
  const rotor = { angularSpeed: 0, torqueOffset: 3, precone: radians(0.5) };
  const [x, z] = [8 * Math.cos(0.5), 8 * Math.sin(0.5)];
  const small: Vec3 = [0.1, 0.2, 0.3];

  it.each([
    ['box', box(small)],
    ['mesh', mesh(small)],
  ])('%s is one at its place on the head as it stands, and none elsewhere', (_, shape) => {
    const inside = gap(part, shape, at(x, 3, z), { rotor });
    expect(inside.meeting).toBe('keepOutInside');
    expect(inside.gap).toBeCloseTo(-0.1, 12);
    expect(inside.error).toBe(0);
    for (const [dx, dy, dz] of [
      [0, 3, 0],
      [0, -3, 0],
      [0, 0, 3],
      [0, 0, -3],
      [4, 0, 0],
      [-4, 0, 0],
    ]) {
      const outside = gap(part, shape, at(x + dx, 3 + dy, z + dz), { rotor });
      expect(outside.meeting).toBe('clear');
      expect(outside.gap).toBeGreaterThan(0.3);
    }
  });

  it('is looked for at the middle pitch, where the part stands turned', () => {
    const flat = [
      [2, 3, 1],
      [8, 0, 0],
    ] as const;
    const quarter = { low: Math.PI / 2 - 0.01, high: Math.PI / 2 + 0.01 };
    // Turned by a quarter the long side stands upright.
    expect(gap(flat, box(small), at(8, 0, 2.2), quarter).meeting).toBe('keepOutInside');
    expect(gap(flat, box(small), at(8, 2.2, 0), quarter).meeting).toBe('clear');
    expect(gap(flat, box(small), at(8, 2.2, 0)).meeting).toBe('keepOutInside');
  });

  it('of a mesh is as deep as the middle of its box, or nothing where that is a hole', () => {
    const off: Vec3 = [0.3, -0.2, 0.1];
    expect(gap(part, mesh(small, off), at(8, 0, 0)).gap).toBeCloseTo(-0.1, 12);
    const apart: KeepOutShape = {
      shape: 'mesh',
      mesh: {
        positions: Float64Array.from([
          ...boxMesh(small, [-1, 0, 0]).positions,
          ...boxMesh(small, [1, 0, 0]).positions,
        ]),
        triangles: Uint32Array.from([...FACES, ...FACES.map((i) => i + 8)]),
      },
    };
    const found = gap(part, apart, at(8, 0, 0));
    expect(found.meeting).toBe('keepOutInside');
    expect(Math.abs(found.gap)).toBe(0);
  });
});

describe('a part within a mesh', () => {
  const part = [
    [0.1, 0.1, 0.1],
    [5, 0, 0],
  ] as const;
  it('is as deep as its deepest corner, at the place of the mesh and the middle pitch', () => {
    // Faces of the mesh at y = 1 and 3, turned by a quarter: its x runs along Y.
    const pose = {
      rotation: rotationAboutZ(radians(Math.PI / 2)),
      translation: [5, 0, 0],
    } as const;
    const found = gap(part, mesh([4, 3, 2]), pose);
    expect(found.meeting).toBe('cut');
    // The nearest faces are those at height 2 and -2; the middle height of the part is 2 off both, its corners less.
    expect(found.gap).toBeGreaterThanOrEqual(-2 - 1e-9);
    expect(found.gap).toBeLessThan(-1.9);
    expect(found.gap - found.error).toBeLessThanOrEqual(-2 + 1e-9);
    close(found.onKeepOut, found.onPart);
    expect(gap(part, mesh([4, 3, 2]), { ...pose, translation: [5, 4.5, 0] }).meeting).toBe('clear');
    expect(gap(part, mesh([4, 3, 2]), { ...pose, translation: [9, 0, 0] }).meeting).toBe('clear');
  });

  it('is one also where it stands there by pitch alone', () => {
    const off = [
      [0.1, 0.1, 0.1],
      [5, 3, 0],
    ] as const;
    const up = { low: Math.PI / 2 - 0.05, high: Math.PI / 2 + 0.05 };
    expect(gap(off, mesh([1, 1, 1]), at(5, 0, 3), up).meeting).toBe('cut');
    expect(gap(off, mesh([1, 1, 1]), at(5, 3, 0), up).meeting).toBe('clear');
  });
});

describe('the same all round the shaft', () => {
  const tilted = (angle: number) =>
    ({ rotation: rotationAboutY(radians(angle)), translation: [0, 0, 1] }) as const;
  it.each([
    [{ shape: 'plane' } as const, tilted(0), false],
    [{ shape: 'plane' } as const, tilted(0.01), true],
    [{ shape: 'plane' } as const, tilted(Math.PI), false],
    [{ shape: 'cylinder', radius: 1, half: 1 } as const, tilted(0), false],
    [{ shape: 'cylinder', radius: 1, half: 1 } as const, tilted(0.01), true],
    [{ shape: 'cylinder', radius: 1, half: 1 } as const, at(0, 0.01, 0), true],
    [mesh([1, 1, 1]), POSE_IDENTITY, true],
  ])('%j', (shape, pose, passed) => {
    expect(placeKeepOut(shape as KeepOutShape, pose, 'case').passed).toBe(passed);
    expect(placeKeepOut(shape as KeepOutShape, pose, 'hub').passed).toBe(false);
  });
});

describe('a search', () => {
  const search = new ClearanceSearch();
  const surface = surfaceOf([1, 2, 3], [20, 1, 2]);
  const run = (target: Target, tolerance: number, budget: number, turn = 0) =>
    search.run(
      surface,
      new GripMotion(ROTOR),
      target,
      { low: -0.4, high: 0.5, turn },
      tolerance,
      budget,
    );
  const targets = {
    plane: new Target({ shape: 'plane' }, at(0, 0, -20)),
    box: new Target({ shape: 'box', half: [50, 50, 10] }, at(0, 0, -30)),
    mesh: new Target(buildTree([boxMesh([50, 50, 10])]), at(0, 0, -30)),
  };

  // The lowest corner (-1, -1) stands at root 2 and 225 degrees; turned by -0.4 .. 0.5 corner (3, -1) falls to z of
  // 3 sin(-0.4) - cos(0.4).
  const lowest = Math.min(3 * Math.sin(-0.4) - Math.cos(0.4), -Math.SQRT2);
  it.each(Object.keys(targets) as (keyof typeof targets)[])(
    '%s: ends at its tolerance, and not before',
    (kind) => {
      for (const tolerance of [1e-5, 1e-3, 0.1, 1]) {
        const found = run(targets[kind], tolerance, 100_000);
        expect(found.distance).toBeGreaterThanOrEqual(lowest + 20 - 1e-9);
        expect(found.bound).toBeLessThanOrEqual(lowest + 20 + 1e-9);
        expect(found.distance - found.bound).toBeLessThanOrEqual(
          Math.max(tolerance, 0.004 * found.distance) + 1e-7,
        );
        expect(found.evaluations).toBeLessThan(2000);
      }
    },
  );

  it('coarse or fine: no gap is proven that a finer search finds a way below', () => {
    const random = seeded(21);
    const coarse = new ClearanceSearch();
    let open = 0;
    for (let i = 0; i < 60; i++) {
      const corners = [0, 1, 2].flatMap(() => randomVector(random, 3));
      const one = placeSurface(
        buildTree([{ positions: Float64Array.from(corners), triangles: Uint32Array.of(0, 1, 2) }]),
        POSE_IDENTITY,
      );
      const target = new Target({ shape: 'cylinder', radius: 1, half: 2 }, randomPose(random, 6));
      const motion = new GripMotion(ROTOR);
      const span = { low: -1.2, high: 1.2, turn: i % 2 };
      const rough = coarse.run(one, motion, target, span, 0.5, 2000);
      const fine = search.run(one, motion, target, span, 1e-4, 20_000);
      expect(rough.bound).toBeLessThanOrEqual(fine.distance + 1e-9);
      expect(rough.distance - rough.bound).toBeLessThanOrEqual(
        Math.max(0.5, 0.004 * rough.distance, -0.02 * rough.distance) + 1e-6,
      );
      if (rough.distance > fine.distance + 1e-3) open++;
    }
    // What is left open is left open in many of them, or nothing would be held here.
    expect(open).toBeGreaterThan(10);
  });

  it('finds the same after another one, over a turn or not', () => {
    const fresh = new ClearanceSearch().run(
      surface,
      new GripMotion(ROTOR),
      targets.box,
      { low: -0.4, high: 0.5, turn: 1 },
      1e-3,
      300,
    );
    const post = new Target({ shape: 'cylinder', radius: 2, half: 30 }, at(3, 30, 0));
    for (const budget of [20, 60, 200, 500]) {
      for (const before of [targets.box, post]) {
        run(before, 1e-3, budget, 2 * Math.PI);
        expect(run(targets.box, 1e-3, 300, 1)).toEqual(fresh);
      }
    }
  });

  it('that ends before a point was looked at tells one of its own part, not of the last search', () => {
    run(targets.box, 1e-3, 500, 2 * Math.PI);
    const other = surfaceOf([1, 2, 3], [5, -3, 40]);
    const found = search.run(
      other,
      new GripMotion(ROTOR),
      targets.box,
      { low: -0.4, high: 0.6, turn: 1 },
      1e-3,
      1,
    );
    expect(found.distance).toBe(Infinity);
    expect(found.point).toEqual([...other.corners.subarray(0, 3)]);
    expect(found.pitch).toBeCloseTo(0.1, 15);
    expect(found.azimuth).toBe(0);
  });

  it('and the gap told is that of the point told, and no less than the true one', () => {
    const part = [
      [1, 1, 1],
      [5, 0, 0],
    ] as const;
    gap(part, box([1, 1, 1]), at(0, 30, 0), { fixedTo: 'case' });
    for (const shape of [box([1, 1, 1]), mesh([1, 1, 1])]) {
      const found = gap(part, shape, at(9, 0, 0), { budget: 1 });
      expect(found.meeting).toBe('clear');
      expect(found.onPart.map((value, k) => Math.abs(value - [5, 0, 0][k]))).toEqual([1, 1, 1]);
      expect(found.gap).toBeGreaterThanOrEqual(2);
      expect(found.gap - found.error).toBeLessThanOrEqual(2);
      const apart = found.onKeepOut.map((value, k) => value - found.onPart[k]);
      expect(Math.hypot(...apart)).toBeCloseTo(found.gap, 12);
    }
  });

  it('stops at its budget, with what is proven by then', () => {
    let last = -Infinity;
    for (const budget of [1, 2, 3, 7, 15, 30]) {
      const found = run(targets.box, 1e-9, budget, 2 * Math.PI);
      expect(found.evaluations).toBeLessThanOrEqual(budget + 1);
      expect(found.bound).toBeLessThanOrEqual(lowest + 20 + 1e-9);
      expect(found.bound).toBeGreaterThanOrEqual(last);
      last = found.bound;
    }
  });
});

describe('a mesh that is touched, or may be', () => {
  // Its tip stands at x = 6, its base before that.
  const tip = (x: number): TriangleMesh => ({
    positions: Float64Array.from([x, 0, 0, x - 2, -1, -1, x - 2, 1, -1, x - 2, 0, 1.5]),
    triangles: Uint32Array.from([0, 2, 3, 0, 3, 1, 0, 1, 2, 1, 3, 2]),
  });
  const touching = (x: number, budget?: number, place: Vec3 = [7, 0.3, 0.2]) =>
    nearestGap(
      placeSurface(buildTree([tip(x)]), POSE_IDENTITY),
      new GripMotion(ROTOR),
      placeKeepOut(mesh([1, 1, 1]), at(...place), 'hub'),
      { low: 0, high: 0 },
      1e-3,
      budget,
    );

  it('is cut where a tip touches it, with no depth', () => {
    const found = touching(6);
    expect([found.meeting, found.gap]).toEqual(['cut', 0]);
    expect(found.error).toBeGreaterThanOrEqual(0);
    expect(found.error).toBeLessThan(0.01);
  });

  it('and where it comes nearer than can be told, but not where it stays off', () => {
    expect([touching(5.9995).meeting, touching(5.9995).gap]).toEqual(['cut', 0]);
    const off = touching(5.9);
    expect(off.meeting).toBe('clear');
    expect(off.gap).toBeCloseTo(0.1, 9);
  });

  it('is not called cut for want of a proof', () => {
    const early = touching(5, 12);
    expect(early.meeting).toBe('clear');
    expect(early.gap).toBeGreaterThanOrEqual(1 - 1e-12);
    expect(early.gap - early.error).toBeLessThanOrEqual(1);
    // Aside of the tip, where the boxes about both meet and they do not: nothing is proven by the first bound.
    for (const budget of [1, 2]) {
      const aside = touching(5.9, budget, [6.3, 2, 2]);
      expect(aside.error).toBeGreaterThanOrEqual(aside.gap);
      expect(aside.meeting).toBe('clear');
      expect(aside.gap).toBeGreaterThan(0.5);
    }
  });

  it('counts what both searches looked at', () => {
    const surface = placeSurface(buildTree([tip(6.5)]), POSE_IDENTITY);
    const { tree } = placeKeepOut(mesh([1, 1, 1]), at(7, 0.3, 0.2), 'hub');
    if (!tree) throw new Error('no tree');
    const alone = new ClearanceSearch().run(
      surface,
      new GripMotion(ROTOR),
      new Target(tree, at(7, 0.3, 0.2)),
      { low: 0, high: 0, turn: 0 },
      1e-3,
      3000,
    );
    const found = touching(6.5, 3000);
    expect(found.meeting).toBe('cut');
    expect(found.gap).toBeGreaterThanOrEqual(-0.5);
    expect(found.gap).toBeLessThan(-0.45);
    expect(found.evaluations).toBeGreaterThan(alone.evaluations);
  });
});

describe('a plane', () => {
  it('has no inside that a part could hold: a part over it is clear of it', () => {
    // Its origin stands within the part's reach from above, its normal down.
    const found = gap(
      [
        [2, 2, 2],
        [5, 0, 0],
      ],
      { shape: 'plane' },
      at(5, 0, -3),
    );
    expect(found.meeting).toBe('clear');
    expect(found.gap).toBeCloseTo(1, 9);
  });
});
