import { describe, expect, it } from 'vitest';
import { DEEP, RowJudge, WIDE } from '../../../src/engine/clearance/judge';
import type { ConvexShape } from '../../../src/engine/clearance/keepOut';
import { GripMotion } from '../../../src/engine/clearance/motion';
import {
  BOUND,
  BY_AZIMUTH,
  BY_PIECE,
  BY_PITCH,
  BY_TARGET,
  FROM,
  HIGH,
  KEY,
  LEVEL,
  LOW,
  NODE,
  Rows,
  SPLIT,
  TARGET,
  TO,
  takeTriangle,
} from '../../../src/engine/clearance/rows';
import { placeSurface } from '../../../src/engine/clearance/surface';
import { Target } from '../../../src/engine/clearance/target';
import { buildTree, type TriangleTree } from '../../../src/engine/clearance/triangleTree';
import { POSE_IDENTITY, type Pose } from '../../../src/engine/math/pose';
import { apply, dot, transpose, type Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { randomPose, randomVector, type Seeded, seeded } from '../../support/seeded';

// Against planes every bound has a closed form: a point's height over a plane is a cosine of pitch, and of azimuth, whose
// least value over an interval is known; a box's is its middle's less its support (elementary trigonometry).

const STILL = { angularSpeed: 0, torqueOffset: 0, precone: radians(0) };
const PLANE: ConvexShape = { shape: 'plane' };

/** Least of b cos t + c sin t over an interval shorter than a turn. */
function leastCosine(b: number, c: number, low: number, high: number): number {
  const at = (t: number) => b * Math.cos(t) + c * Math.sin(t);
  const turn = 2 * Math.PI;
  const lowest = Math.atan2(c, b) + Math.PI;
  const next = low + ((((lowest - low) % turn) + turn) % turn);
  return next <= high ? -Math.hypot(b, c) : Math.min(at(low), at(high));
}

interface Judged {
  readonly pose?: Pose;
  readonly corners?: readonly Vec3[];
  readonly target: Target;
  readonly motion?: GripMotion;
  readonly span?: readonly [low: number, high: number, from: number, to: number];
  /** A node of the tree rather than its only triangle. */
  readonly node?: boolean;
  readonly at?: number;
  readonly bound?: number;
  readonly level?: number;
  readonly tolerance?: number;
  readonly pitch?: number;
}

const UPRIGHT: readonly Vec3[] = [
  [10, 1, 4],
  [12, 2, 5],
  [11, -1, 6],
];

function judged(one: Judged) {
  const rows = new Rows();
  const judge = new RowJudge(rows);
  const { corners = UPRIGHT, pose = POSE_IDENTITY, span = [0, 0, 0, 0] } = one;
  const mesh = {
    positions: Float64Array.from(corners.flat()),
    triangles: Uint32Array.from(corners.map((_, i) => i)),
  };
  const surface = placeSurface(buildTree([mesh]), pose);
  const { motion = new GripMotion(STILL), target, tolerance = 1e-6 } = one;
  judge.begin(surface, motion, target, tolerance, one.pitch ?? 0);
  rows.room();
  const row = rows.room();
  const v = rows.values;
  takeTriangle(v, row, surface, 0);
  v[row + LOW] = span[0];
  v[row + HIGH] = span[1];
  v[row + FROM] = span[2];
  v[row + TO] = span[3];
  v[row + BOUND] = one.bound ?? -Infinity;
  v[row + LEVEL] = one.level ?? 0;
  v[row + TARGET] = one.at ?? -1;
  if (one.node) v[row + NODE] = 0;
  judge.judge(row);
  return { judge, surface, of: (place: number) => v[row + place] };
}

const triangle = (random: Seeded, reach: number) =>
  [0, 1, 2].map(() => randomVector(random, reach));

describe('the bound of a triangle over a plane', () => {
  it('without any motion is the height of its lowest corner', () => {
    const random = seeded(1);
    for (let i = 0; i < 20; i++) {
      const pose = randomPose(random, 3);
      const corners = triangle(random, 4);
      const heights = corners.map((p) => apply(transpose(pose.rotation), minus(p, pose))[2]);
      const { of, judge, surface } = judged({ target: new Target(PLANE, pose), corners });
      expect(of(BOUND)).toBeCloseTo(Math.min(...heights), 12);
      expect(judge.best).toBeCloseTo(Math.min(...heights), 12);
      const lowest = heights.indexOf(Math.min(...heights));
      expect([...judge.bestPoint]).toEqual([
        ...surface.corners.subarray(3 * lowest, 3 * lowest + 3),
      ]);
      expect([judge.bestPitch, judge.bestAzimuth, judge.evaluations]).toEqual([0, 0, 1]);
    }
  });

  it('over pitch is the least that the cosine of any corner comes to', () => {
    const random = seeded(2);
    for (let i = 0; i < 40; i++) {
      const low = random.between(-2, 1);
      const high = low + random.between(0, 2);
      const corners = triangle(random, 4);
      const target = new Target(PLANE, POSE_IDENTITY);
      const { of, judge } = judged({ target, corners, span: [low, high, 0, 0] });
      const least = corners.map(([, y, z]) => leastCosine(z, y, low, high));
      expect(of(BOUND)).toBeCloseTo(Math.min(...least), 12);
      const [, y, z] = judge.bestPoint;
      const height = y * Math.sin(judge.bestPitch) + z * Math.cos(judge.bestPitch);
      expect(judge.best).toBeCloseTo(height, 12);
      expect(judge.best).toBeGreaterThanOrEqual(Math.min(...least) - 1e-12);
    }
  });

  it('over azimuth is the least that any corner comes to as the shaft turns past a wall', () => {
    const random = seeded(3);
    for (let i = 0; i < 40; i++) {
      const from = random.between(0, 4);
      const to = from + random.between(0, 2);
      const pose = randomPose(random, 3);
      const n: Vec3 = [pose.rotation[2], pose.rotation[5], pose.rotation[8]];
      const corners = triangle(random, 4);
      const { of, judge } = judged({
        target: new Target(PLANE, pose),
        corners,
        span: [0, 0, from, to],
      });
      const least = Math.min(
        ...corners.map(
          ([x, y, z]) =>
            leastCosine(n[0] * x + n[1] * y, n[1] * x - n[0] * y, from, to) +
            n[2] * z -
            dot(n, pose.translation),
        ),
      );
      expect(of(BOUND)).toBeCloseTo(least, 11);
      expect(judge.best).toBeGreaterThanOrEqual(least - 1e-11);
      expect(judge.bestAzimuth).toBeGreaterThanOrEqual(from);
      expect(judge.bestAzimuth).toBeLessThanOrEqual(to);
      const [c, s] = [Math.cos(judge.bestAzimuth), Math.sin(judge.bestAzimuth)];
      const [x, y, z] = judge.bestPoint;
      expect(judge.best).toBeCloseTo(dot(n, minus([c * x - s * y, s * x + c * y, z], pose)), 12);
    }
  });

  it('over both adds what pitch does to the swing: chord times level reach', () => {
    const random = seeded(4);
    const motion = new GripMotion(STILL);
    for (let i = 0; i < 20; i++) {
      const [low, high, from, to] = [0.1, 0.5, 1, 1.6];
      const pose = randomPose(random, 3);
      const n: Vec3 = [pose.rotation[2], pose.rotation[5], pose.rotation[8]];
      const corners = triangle(random, 4);
      const { of } = judged({
        target: new Target(PLANE, pose),
        corners,
        span: [low, high, from, to],
      });
      const [c, s] = [Math.cos(1.3), Math.sin(1.3)];
      const across: readonly [number, number] = [c * n[0] + s * n[1], c * n[1] - s * n[0]];
      const [cp, sp] = [Math.cos(0.3), Math.sin(0.3)];
      motion.aim(low, high);
      const least = corners.map(([x, y, z]) => {
        const [h, k] = [y * cp - z * sp, y * sp + z * cp];
        const now = across[0] * x + across[1] * h;
        const swung = leastCosine(now, across[1] * x - across[0] * h, -0.3, 0.3);
        const pitched =
          leastCosine(across[1] * y + n[2] * z, n[2] * y - across[1] * z, low, high) -
          (across[1] * h + n[2] * k);
        const both = Math.hypot(...across) * 2 * Math.sin(0.15) * motion.levelReach(x, y, z);
        return now + n[2] * k - dot(n, pose.translation) + pitched + (swung - now) - both;
      });
      expect(of(BOUND)).toBeCloseTo(Math.min(...least), 11);
    }
  });
});

const minus = (p: Vec3, { translation: t }: Pose): Vec3 => [p[0] - t[0], p[1] - t[1], p[2] - t[2]];

describe('the bound of a box of triangles over a plane', () => {
  it('is its middle less its support, along its own sides', () => {
    const random = seeded(5);
    for (let i = 0; i < 20; i++) {
      const [part, plane] = [randomPose(random, 5), randomPose(random, 3)];
      const corners = triangle(random, 4);
      const { of, surface, judge } = judged({
        pose: part,
        target: new Target(PLANE, plane),
        corners,
        node: true,
      });
      const n: Vec3 = [plane.rotation[2], plane.rotation[5], plane.rotation[8]];
      const sides = apply(transpose(part.rotation), n);
      const halves = [...surface.tree.halves];
      const support = sides.reduce((sum, value, k) => sum + Math.abs(value) * halves[k], 0);
      const [x, y, z] = surface.centres;
      const height = dot(n, minus([x, y, z], plane));
      expect(of(BOUND)).toBeCloseTo(height - support, 12);
      // The middle of a box is no point of the surface.
      expect(judge.best).toBe(Infinity);
    }
  });

  it('loses what pitch and azimuth add: its lean, but never more than its ball; the chord', () => {
    const random = seeded(6);
    for (const [half, turn] of [
      [0.05, 0],
      [1.2, 0],
      [0.1, 0.2],
      [0, 0.4],
    ]) {
      for (let i = 0; i < 8; i++) {
        const plane = randomPose(random, 3);
        const n: Vec3 = [plane.rotation[2], plane.rotation[5], plane.rotation[8]];
        const { of, surface } = judged({
          target: new Target(PLANE, plane),
          corners: triangle(random, 4),
          span: [-half, half, 0, 2 * turn],
          node: true,
        });
        const halves = [...surface.tree.halves];
        const radius = Math.hypot(...halves);
        const [c, s] = [Math.cos(turn), Math.sin(turn)];
        const m: Vec3 = [c * n[0] + s * n[1], c * n[1] - s * n[0], n[2]];
        const support = m.reduce((sum, value, k) => sum + Math.abs(value) * halves[k], 0);
        const lean = Math.hypot(m[1], m[2]) * half;
        const [x, y, z] = surface.centres;
        const across = m[0] * x + m[1] * y;
        const pitched = leastCosine(m[1] * y + m[2] * z, m[2] * y - m[1] * z, -half, half);
        const swung =
          leastCosine(across, m[1] * x - m[0] * y, -turn, turn) -
          across -
          Math.hypot(m[0], m[1]) *
            2 *
            Math.sin(turn / 2) *
            (radius + Math.abs(z) * half + (Math.abs(y) * half * half) / 2);
        const wanted =
          m[0] * x +
          pitched -
          dot(n, plane.translation) +
          (turn > 0 ? swung : 0) -
          Math.min(radius, support + radius * lean);
        expect(of(BOUND)).toBeCloseTo(wanted, 11);
      }
    }
  });
});

describe('what a row is cut by', () => {
  const BOX: ConvexShape = { shape: 'box', half: [1, 1, 1] };
  const far = { rotation: POSE_IDENTITY.rotation, translation: [0, 0, -50] } as const;
  const box = () => new Target(BOX, far);
  const plane = () => new Target(PLANE, far);
  // Corners about (11, 2/3, 5): the farthest corner stands root(25/9 + 1) = 1.94 off the middle; 6.08 off the axis. The middle passes 11.02 off the shaft.
  it.each([
    ['nothing moves', box(), [0, 0, 0, 0], BY_PIECE],
    ['little pitch', box(), [0, 0.5, 0, 0], BY_PIECE],
    ['much pitch', box(), [-0.325, 0.325, 0, 0], BY_PITCH],
    ['a little less', box(), [-0.315, 0.315, 0, 0], BY_PIECE],
    ['little azimuth', box(), [0, 0, 0, 0.35], BY_PIECE],
    ['more azimuth', box(), [0, 0, 1, 1.36], BY_AZIMUTH],
    ['pitch before azimuth', box(), [-0.5, 0.5, 1, 1.44], BY_PITCH],
    ['azimuth before pitch', box(), [-0.4, 0.4, 1, 1.6], BY_AZIMUTH],
    ['a plane: never a piece', plane(), [0, 0.01, 0, 0], BY_PITCH],
    ['a level plane: nothing by azimuth', plane(), [0, 0.01, 0, 3], BY_PITCH],
    ['a plane and no motion', plane(), [0, 0, 0, 0], BY_PIECE],
  ] as const)('%s', (_, target, span, wanted) => {
    expect(judged({ target, span }).of(SPLIT)).toBe(wanted);
  });

  it('of a box of triangles its ball counts, against a plane too', () => {
    // Half sides 1, 1.5, 1: a ball of root(4.25) = 2.06; its middle (11, 0.5, 5) stands 5.02 off the axis.
    for (const target of [box(), plane()]) {
      const of = (span: NonNullable<Judged['span']>) =>
        judged({ target, span, node: true }).of(SPLIT);
      expect(of([-0.4, 0.4, 0, 0])).toBe(BY_PIECE);
      expect(of([-0.42, 0.42, 0, 0])).toBe(BY_PITCH);
    }
    const swung = (turn: number) =>
      judged({ target: box(), span: [0, 0, 0, turn], node: true }).of(SPLIT);
    // Half of it times 11.01.
    expect(swung(0.37)).toBe(BY_PIECE);
    expect(swung(0.38)).toBe(BY_AZIMUTH);
  });

  it('of a keep-out of triangles its box, while that is the largest', () => {
    const mesh = (size: number): TriangleTree =>
      buildTree([
        {
          positions: Float64Array.from([0, 0, 0, 2 * size, 0, 0, 0, 2 * size, 0]),
          triangles: Uint32Array.from([0, 1, 2]),
        },
      ]);
    const of = (size: number, at: number) =>
      judged({ target: new Target(mesh(size), far), at }).of(SPLIT);
    // Half the diagonal of its box is root 2 times the size.
    expect(of(2, 0)).toBe(BY_TARGET);
    expect(of(1, 0)).toBe(BY_PIECE);
    expect(of(2, -2)).toBe(BY_PIECE);
  });
});

describe('what a row is cut by, as the shaft turns', () => {
  it('of a triangle aside of the X axis is its middle way about the shaft', () => {
    // Middle (6, 8, 5), 10 off the shaft; the farthest corner 1 off the middle.
    const corners: readonly Vec3[] = [
      [7, 8, 5],
      [5.5, 8.5, 5],
      [5.5, 7.5, 5],
    ];
    const target = new Target({ shape: 'box', half: [1, 1, 1] }, POSE_IDENTITY);
    const of = (turn: number) => judged({ target, corners, span: [0, 0, 0, turn] }).of(SPLIT);
    expect(of(0.195)).toBe(BY_PIECE);
    expect(of(0.205)).toBe(BY_AZIMUTH);
  });

  it('of a triangle before a wall is what azimuth may take off its farthest corner', () => {
    // A wall square to X, azimuth within 0.3: corner (12, 2) loses 12 (1 - cos) + 2 sin = 1.13, and 0.299 times what pitch
    // moves it level; pitch takes corner (-1, 6) along by root 37 times half its interval.
    const wall = { rotation: [0, 0, 1, 0, 1, 0, -1, 0, 0], translation: [0, 0, 0] } as const;
    const of = (half: number) =>
      judged({ target: new Target(PLANE, wall), span: [-half, half, -0.3, 0.3] }).of(SPLIT);
    expect(of(0.2)).toBe(BY_AZIMUTH);
    expect(of(0.3)).toBe(BY_PITCH);
  });
});

describe('the corner that is looked at', () => {
  const tiny = ([x, y, z]: Vec3, size: number): readonly Vec3[] => [
    [x + size, y, z],
    [x, y + size, z],
    [x, y, z + size],
  ];

  it.each([0.2, 1.4, 2.9, -2.9, -0.1, -1.4])(
    'goes with azimuth as far as its slope says: wall at %d',
    (angle) => {
      // Corner (6, 8) stands 10 off the shaft at atan(8 / 6); against a wall whose normal stands at `angle` the slope of its
      // distance is 10 sin(angle - that); an arc as long as that sine, or to the end of the interval.
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const rotation = [0, -s, c, 0, c, s, -1, 0, 0] as const;
      const wall = { rotation, translation: [6, 8, 5] } as const;
      const { judge } = judged({
        target: new Target(PLANE, wall),
        corners: tiny([6, 8, 5], 1e-6),
        span: [0, 0, -0.4, 0.4],
        tolerance: 1e-9,
      });
      const sine = Math.sin(angle - Math.atan2(8, 6));
      const azimuth = -Math.sign(sine) * Math.min(0.4, Math.abs(sine));
      expect(judge.bestAzimuth).toBeCloseTo(azimuth, 5);
      expect(judge.best).toBeCloseTo(
        10 * Math.cos(Math.atan2(8, 6) + azimuth - angle) - (6 * c + 8 * s),
        5,
      );
    },
  );

  it('is seen at the end of pitch where it comes nearest, whichever way the plane looks', () => {
    const random = seeded(14);
    const seen = new Set<number>();
    for (let i = 0; i < 40; i++) {
      const { rotation } = randomPose(random, 1);
      const p = randomVector(random, 6);
      const n: Vec3 = [rotation[2], rotation[5], rotation[8]];
      const [low, high] = [random.between(-1, -0.1), random.between(0.1, 1)];
      const pitches = [low, (low + high) / 2, high];
      const along = pitches.map(
        (t) =>
          n[0] * p[0] +
          n[1] * (p[1] * Math.cos(t) - p[2] * Math.sin(t)) +
          n[2] * (p[1] * Math.sin(t) + p[2] * Math.cos(t)),
      );
      // The plane goes through the nearest of the three places.
      const least = Math.min(...along);
      const { judge } = judged({
        target: new Target(PLANE, {
          rotation,
          translation: [n[0] * least, n[1] * least, n[2] * least],
        }),
        corners: tiny(p, 1e-7),
        span: [low, high, 0, 0],
        tolerance: 1e-12,
      });
      const nearest = along.indexOf(least);
      seen.add(nearest);
      expect(judge.bestPitch).toBeCloseTo(pitches[nearest], 12);
      expect(judge.best).toBeCloseTo(0, 5);
    }
    expect(seen.size).toBe(3);
  });
});

describe('before any point was looked at', () => {
  it('the nearest is the first corner at the pitch given, how near is not known, whatever was searched before', () => {
    const { judge, surface } = judged({
      target: new Target(PLANE, POSE_IDENTITY),
      span: [0.1, 0.3, 0, 1],
    });
    expect(judge.best).toBeLessThan(Infinity);
    judge.begin(surface, new GripMotion(STILL), new Target(PLANE, POSE_IDENTITY), 1e-6, 0.7);
    expect([...judge.bestPoint]).toEqual([...surface.corners.subarray(0, 3)]);
    expect([judge.best, judge.bestPitch, judge.bestAzimuth]).toEqual([Infinity, 0.7, 0]);
    expect([judge.allowed, judge.evaluations]).toEqual([1e-6, 0]);
  });
});

describe('what a row is told', () => {
  const target = new Target(PLANE, POSE_IDENTITY);
  const box = new Target({ shape: 'box', half: [3, 2, 1] }, POSE_IDENTITY);

  it('is never less than what held for the whole, nor than the depth of the keep-out', () => {
    expect(judged({ target, bound: 4.5 }).of(BOUND)).toBe(4.5);
    expect(judged({ target, bound: 3.5 }).of(BOUND)).toBe(4);
    const through: readonly Vec3[] = [
      [-9, -9, -3],
      [9, -9, 3],
      [0, 18, 0],
    ];
    expect(judged({ target: box, corners: through }).of(BOUND)).toBe(-1);
  });

  it('is a level more, and a key a ten-thousandth of a micrometre a level below the bound', () => {
    const { of } = judged({ target, level: 6 });
    expect(of(LEVEL)).toBe(7);
    // The large ones come first.
    expect(of(KEY)).toBeCloseTo(4 - 1e-10 * 993, 14);
    const tree = buildTree([
      {
        positions: Float64Array.from([10, 1, 0, 12, 2, 0, 11, -1, 0]),
        triangles: Uint32Array.from([0, 1, 2]),
      },
    ]);
    const mesh = judged({ target: new Target(tree, POSE_IDENTITY), level: 6, at: -2 });
    expect(mesh.of(KEY)).toBeCloseTo(mesh.of(BOUND) - 1e-10 * 7, 14);
  });

  it('may be a share of the distance off: of a gap, of a depth, or the tolerance', () => {
    expect(judged({ target }).judge.allowed).toBeCloseTo(4 * WIDE, 15);
    expect(judged({ target, tolerance: 0.5 }).judge.allowed).toBe(0.5);
    const under = new Target(PLANE, { ...POSE_IDENTITY, translation: [0, 0, 10] });
    expect(judged({ target: under }).judge.allowed).toBeCloseTo(6 * DEEP, 15);
    expect(judged({ target: under }).judge.best).toBe(-6);
  });

  it('is looked at by points only for triangles and shapes, not for boxes of a mesh', () => {
    const tree = buildTree([
      {
        positions: Float64Array.from([0, 0, 0, 1, 0, 0, 0, 1, 0]),
        triangles: Uint32Array.from([0, 1, 2]),
      },
    ]);
    const mesh = new Target(tree, POSE_IDENTITY);
    expect(judged({ target: mesh, at: 0 }).judge.best).toBe(Infinity);
    // Corner (10, 1, 4) from (1, 0, 0).
    expect(judged({ target: mesh, at: -2 }).judge.best).toBeCloseTo(Math.hypot(9, 1, 4), 12);
  });

  it.each([
    [[0, 0.2, 0, 0], 0],
    [[-0.6, -0.4, 0, 0], -0.6],
    [[-0.4, 0.1, 0, 0], -0.4],
    [[-1.5, 1.5, 0, 0], -1.5],
  ] as const)('names the end of pitch at which it was nearest: %j', (span, pitch) => {
    // A corner far along y sinks with falling pitch.
    const corners: readonly Vec3[] = [
      [10, 9, 1],
      [12, 8.9, 1.1],
      [11, 8.9, 1.2],
    ];
    expect(judged({ target, corners, span }).judge.bestPitch).toBe(pitch);
  });
});
