import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import type { Vec3 } from '../../../src/engine/math/vector';
import { findCrossings } from '../../../src/meshes/checks/crossings';
import { meshOf } from '../../support/meshes';

const TOLERANCE = 1e-3;

/** A triangle in the plane z = 0 with its right angle in the origin; the others come by their corners, O and X its own. */
const O: Vec3 = [0, 0, 0];
const X: Vec3 = [4, 0, 0];
const BASE: readonly Vec3[] = [O, X, [0, 4, 0]];

const PAIRS: readonly (readonly [name: string, other: readonly Vec3[], crosses: number])[] = [
  [
    'an edge goes through the middle',
    [
      [1, 1, -1],
      [1, 1, 1],
      [1, 9, 3],
    ],
    1,
  ],
  [
    'two edges go through',
    [
      [1, 1, -1],
      [1.5, 1, 1],
      [1, 1.5, 1],
    ],
    1,
  ],
  [
    'an edge goes past the first side',
    [
      [1, -1, -1],
      [1, -1, 1],
      [1, -5, 0],
    ],
    0,
  ],
  [
    'an edge goes past the second side',
    [
      [3, 3, -1],
      [3, 3, 1],
      [9, 9, 0],
    ],
    0,
  ],
  [
    'an edge goes past the third side',
    [
      [-1, 1, -1],
      [-1, 1, 1],
      [-5, 1, 0],
    ],
    0,
  ],
  [
    'a side goes through the other',
    [
      [1, -3, -3],
      [1, -3, 9],
      [1, 9, -3],
    ],
    1,
  ],
  [
    'all of it lies above',
    [
      [1, 1, 1],
      [2, 1, 2],
      [1, 2, 3],
    ],
    0,
  ],
  [
    'all of it lies below',
    [
      [1, 1, -1],
      [2, 1, -2],
      [1, 2, -3],
    ],
    0,
  ],
  [
    'a corner touches from above',
    [
      [1, 1, 0],
      [2, 1, 2],
      [1, 2, 2],
    ],
    0,
  ],
  [
    'a corner touches from below',
    [
      [1, 1, 0],
      [2, 1, -2],
      [1, 2, -2],
    ],
    0,
  ],
  [
    'a corner dips in by less than the tolerance',
    [
      [1, 1, -0.9e-3],
      [2, 1, 2],
      [1, 2, 2],
    ],
    0,
  ],
  [
    'a corner rises by less than the tolerance',
    [
      [1, 1, 0.9e-3],
      [2, 1, -2],
      [1, 2, -2],
    ],
    0,
  ],
  [
    'a corner dips in by more',
    [
      [1, 1, -1.1e-3],
      [2, 1, 2],
      [1, 2, 2],
    ],
    1,
  ],
  [
    'a corner rises by more',
    [
      [1, 1, 1.1e-3],
      [2, 1, -2],
      [1, 2, -2],
    ],
    1,
  ],
  [
    'they overlap in one plane',
    [
      [1, 1, 0],
      [5, 1, 0],
      [1, 5, 0],
    ],
    0,
  ],
  [
    'a side lies in the other',
    [
      [0.5, 1, 0],
      [2, 1, 0],
      [1, 1, 3],
    ],
    0,
  ],
  ['they share a side', [O, X, [1, 1, 2]], 0],
  ['they share a side and lie folded on each other', [O, X, [1, 1, 1e-4]], 0],
  ['they share a corner and an edge goes through', [O, [1, 1, -1], [1, 1, 1]], 1],
  ['they share a corner and lie above', [O, [1, 1, 1], [1, 2, 1]], 0],
  ['they share a corner and lie below', [O, [1, 1, -1], [1, 2, -1]], 0],
  ['they share a corner and go apart', [O, [-1, -1, 1], [-1, -1, -1]], 0],
  [
    'the other has no area',
    [
      [1, 1, -1],
      [1, 1, 1],
      [1, 1, 3],
    ],
    0,
  ],
];

/** Corners from each on, both ways round. */
function written(corners: readonly Vec3[]): (readonly Vec3[])[] {
  const [a, b, c] = corners;
  return [
    [a, b, c],
    [b, c, a],
    [c, a, b],
    [c, b, a],
    [b, a, c],
    [a, c, b],
  ];
}
/** Axes changed round and everything moved, so that no coordinate is nothing. */
function placed([x, y, z]: Vec3, turns: number): Vec3 {
  const rolled = [
    [x, y, z],
    [z, x, y],
    [y, z, x],
  ][turns];
  return [rolled[0] + 7, rolled[1] - 3, rolled[2] + 5];
}
function pairOf(one: readonly Vec3[], other: readonly Vec3[], turns: number): TriangleMesh {
  // What they share is one point, known by being the same object.
  const points = [...new Set([...one, ...other])];
  const faces = [one, other].map((corners) => corners.map((corner) => points.indexOf(corner)));
  return meshOf(
    points.map((point) => placed(point, turns)),
    faces,
  );
}
const UNHURRIED = { outOfTime: () => false, rest: async () => {} };
async function count({ positions, triangles }: TriangleMesh): Promise<number> {
  const found = await findCrossings(positions, triangles, TOLERANCE, UNHURRIED);
  expect(found.finished).toBe(true);
  return found.through + found.onBorder;
}

describe('two triangles', () => {
  it.each(PAIRS)('%s', async (_, corners, crosses) => {
    const ways = [
      ...written(BASE).map((one) => [one, corners] as const),
      ...written(corners).map((other) => [BASE, other] as const),
    ];
    for (const [one, other] of ways) {
      for (const turns of [0, 1, 2]) {
        expect(await count(pairOf(one, other, turns))).toBe(crosses);
        expect(await count(pairOf(other, one, turns))).toBe(crosses);
      }
    }
  });
});

describe('two triangles of which an edge meets the border of the other', () => {
  // An edge along z through a point of the plane of BASE, whose sides are x = 0, y = 0 and x + y = 4; its third corner outside.
  const OUT: Readonly<Record<string, readonly [number, number]>> = {
    first: [0, -9],
    second: [9, 9],
    third: [-9, 0],
  };
  const through = ([x, y]: readonly number[], [dx, dy]: readonly number[]): readonly Vec3[] => [
    [x, y, -1],
    [x, y, 1],
    [x + dx, y + dy, 0],
  ];
  const within = 0.9 * TOLERANCE;
  const beyond = 1.1 * TOLERANCE;
  const slant = Math.SQRT1_2;
  it.each([
    ['the middle', [1, 1], 'second', 'through'],
    ['the first side', [1, 0], 'first', 'onBorder'],
    ['the third side', [0, 1], 'third', 'onBorder'],
    ['near the first side', [1, within], 'first', 'onBorder'],
    ['farther from the first side', [1, beyond], 'first', 'through'],
    ['near the second side', [2 - slant * within, 2 - slant * within], 'second', 'onBorder'],
    ['farther from the second side', [2 - slant * beyond, 2 - slant * beyond], 'second', 'through'],
    ['near the third side', [within, 1], 'third', 'onBorder'],
    ['farther from the third side', [beyond, 1], 'third', 'through'],
    ['outside the first side', [1, -1e-9], 'first', 'apart'],
    ['outside the third side', [-1e-9, 1], 'third', 'apart'],
  ] as const)('%s', async (_, at, side, wanted) => {
    for (const other of written(through(at, OUT[side]))) {
      for (const turns of [0, 1, 2]) {
        for (const { positions, triangles } of [
          pairOf(BASE, other, turns),
          pairOf(other, BASE, turns),
        ]) {
          expect(await findCrossings(positions, triangles, TOLERANCE, UNHURRIED)).toEqual({
            through: wanted === 'through' ? 1 : 0,
            onBorder: wanted === 'onBorder' ? 1 : 0,
            finished: true,
          });
        }
      }
    }
  });

  it('goes through where another of its edges does', async () => {
    // One edge through the side x = 0, one through the middle, whichever comes first.
    const other: readonly Vec3[] = [
      [0, 1, -1],
      [0, 1, 1],
      [3, 1.5, 1],
    ];
    for (const corners of written(other)) {
      const { positions, triangles } = pairOf(BASE, corners, 0);
      expect(await findCrossings(positions, triangles, TOLERANCE, UNHURRIED)).toEqual({
        through: 1,
        onBorder: 0,
        finished: true,
      });
    }
  });

  it('is counted with the others up to ten thousand', async () => {
    const { positions, triangles } = grid(101, 100, true);
    expect(await findCrossings(positions, triangles, TOLERANCE, UNHURRIED)).toEqual({
      through: 0,
      onBorder: 10_000,
      finished: false,
    });
  });
});

/**
 * So many strips along x and so many upright ones along y that each crosses all of those, with its side below them or
 * level with theirs.
 */
function grid(flat: number, upright: number, level = false): TriangleMesh {
  const points: Vec3[] = [];
  const faces: number[][] = [];
  const add = (...corners: readonly Vec3[]) => {
    faces.push([points.length, points.length + 1, points.length + 2]);
    points.push(...corners);
  };
  const low = level ? 0 : -9;
  for (let k = 0; k < flat; k++) add([-9, k, 0], [999, k, level ? 0 : 0.2], [-9, k + 0.2, 0]);
  for (let k = 0; k < upright; k++) add([k, -9, low], [k + 0.1, 999, low], [k, -9, 99]);
  return meshOf(points, faces);
}

describe('the search for crossings', () => {
  it('counts every pair once', async () => {
    expect(await count(grid(3, 4))).toBe(12);
    expect(await count(grid(30, 40))).toBe(1200);
  });

  it('stops at ten thousand and says so', async () => {
    const { positions, triangles } = grid(101, 100);
    expect(await findCrossings(positions, triangles, TOLERANCE, UNHURRIED)).toEqual({
      through: 10_000,
      onBorder: 0,
      finished: false,
    });
  });

  it('leaves the order of the triangles as it was', async () => {
    const { positions, triangles } = grid(30, 40);
    const before = triangles.slice();
    await findCrossings(positions, triangles, TOLERANCE, UNHURRIED);
    expect(triangles).toEqual(before);
  });
});
