import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { translation } from '../../../src/engine/math/pose';
import { ballMesh, boxMesh, joinedMesh, movedMesh } from '../../support/meshes';
import { along, checked, over } from './checked';

/** Far off in y and z, so that few of the rays meet anything: they stand 0.4 apart. */
const far = movedMesh(boxMesh(1, 1, 1), translation(0, 100, 100));
const cube = boxMesh(10, 10, 10);

async function reportOf(...meshes: readonly TriangleMesh[]) {
  return (await checked(joinedMesh(...meshes, far))).report;
}

describe('the report of bodies that overlap or not', () => {
  it.each([
    ['one beside another', [cube, along(cube, 20)], { verdict: 'sound', shells: 3 }],
    ['two that touch', [cube, along(cube, 10)], { verdict: 'sound', shells: 2 }],
    [
      'two that lie on one another shifted',
      [cube, movedMesh(cube, translation(10, 3, 4))],
      { verdict: 'sound', shells: 3 },
    ],
    [
      'two of which one stands on the middle of the other',
      [cube, movedMesh(boxMesh(2, 3, 4), translation(1, 6.5, -1))],
      { verdict: 'sound', shells: 3 },
    ],
    ['one hollow', [cube, over(boxMesh(4, 4, 4))], { verdict: 'sound', shells: 3, cavities: 1 }],
  ] as const)('%s: sound, and nothing counted twice or negatively', async (_, meshes, wanted) => {
    expect(await reportOf(...meshes)).toMatchObject({
      ...wanted,
      crossing: { pairs: 0, finished: true, countedTwice: 0, countedNegative: 0 },
    });
  });

  it.each([
    ['one through another', [cube, along(cube, 5)], 500, 0],
    ['one within another', [cube, boxMesh(6, 6, 6)], 216, 0],
    ['a cavity in a cavity', [boxMesh(20, 20, 20), over(cube), over(boxMesh(6, 6, 6))], 0, 216],
  ] as const)('%s: crossing, and how much is told', async (_, meshes, twice, negative) => {
    const report = await reportOf(...meshes);
    expect(report).toMatchObject({ verdict: 'crossing', weighable: true });
    expect(report.crossing.pairs > 0).toBe(meshes.length === 2 && twice === 500);
    // Half a spacing round the outline of six at least, in y and in z.
    const share = 2 * (0.4 / 6);
    expect(Math.abs((report.crossing.countedTwice ?? 0) - twice)).toBeLessThanOrEqual(
      share * twice,
    );
    expect(Math.abs((report.crossing.countedNegative ?? 0) - negative)).toBeLessThanOrEqual(
      share * negative,
    );
  });

  it('are looked for along all axes only where they meet on borders', async () => {
    // Three rests before, and one before the rays of each axis.
    expect((await checked(joinedMesh(cube, along(cube, 20)))).rests).toBe(4);
    // Faces on one another with equal corners make one shell of both, for which none are cast.
    expect((await checked(joinedMesh(cube, along(cube, 10)))).rests).toBe(3);
    const shifted = movedMesh(cube, translation(10, 3, 4));
    expect((await checked(joinedMesh(cube, shifted))).rests).toBe(6);
  });

  it.each([
    ['x', translation(9.97, 0, 0), 3],
    ['y', translation(0, 9.97, 0), 3],
    ['z', translation(0, 0, 9.97), 3],
  ] as const)(
    'two with their sides in line overlap however thin along %s',
    async (_, pose, twice) => {
      // A slab of 0.03 between rays 0.08 apart, unless they run along it. Every triangle meets the others on borders alone.
      const { report } = await checked(joinedMesh(cube, movedMesh(cube, pose)));
      expect(report.verdict).toBe('crossing');
      expect(report.crossing.pairs).toBeGreaterThan(0);
      expect(report.crossing.countedTwice).toBeCloseTo(twice, 6);
    },
  );

  it('a touch of bodies is no crossing, and a dip of more than that is one however small', async () => {
    // Corner in corner: by less than 2e-6 of the diagonal of 34.6, and by more. Too little for any ray.
    const dipped = (by: number) =>
      checked(joinedMesh(cube, movedMesh(cube, translation(10 - by, 10 - 2 * by, 10 - 3 * by))));
    expect((await dipped(1e-5)).report).toMatchObject({ verdict: 'sound', crossing: { pairs: 0 } });
    const { report } = await dipped(1e-3);
    expect(report.verdict).toBe('crossing');
    expect(report.crossing).toMatchObject({ countedTwice: 0, countedNegative: 0 });
    expect(report.crossing.pairs).toBeGreaterThan(0);
  });

  it('a millionth of the volume counted twice is rounding, and more is not', async () => {
    const held = async (side: number) =>
      (await checked(joinedMesh(cube, boxMesh(side, side, side)))).report;
    // Of 1000: 1.25e-4, and 8e-3; rays stand 0.04 apart.
    const grain = await held(0.05);
    expect(grain.crossing.countedTwice).toBeGreaterThan(0);
    expect(grain.verdict).toBe('sound');
    expect((await held(0.2)).verdict).toBe('crossing');
  });

  it('of one shell that crosses itself it is told what it counts inside out', async () => {
    // A point of a ball drawn out through its other side.
    const ball = ballMesh(1, 10);
    const right = ball.positions.indexOf(Math.max(...ball.positions.filter((_, i) => i % 3 === 0)));
    const through = { ...ball, positions: ball.positions.with(right, -3) };
    const { report } = await checked(through);
    expect(report).toMatchObject({ shells: 1, verdict: 'crossing' });
    expect(report.crossing.pairs).toBeGreaterThan(0);
    // The cone beyond x = -1: half as wide there as the ring of radius 0.31 round the point, and 2 long.
    expect(report.crossing.countedNegative).toBeCloseTo((Math.PI / 3) * 0.155 ** 2 * 2, 2);
  });

  it('crossings are looked for as long as twenty seconds, and it is said where they ended first', async () => {
    const ball = ballMesh(1, 20);
    const own = performance.now;
    const after = async (ms: number) => {
      let asked = 0;
      performance.now = () => (asked++ === 0 ? 1000 : 1000 + ms);
      try {
        return (await checked(ball)).report.crossing.finished;
      } finally {
        performance.now = own;
      }
    };
    expect(await after(19_999)).toBe(true);
    expect(await after(20_001)).toBe(false);
    expect((await checked(ball)).report.crossing.finished).toBe(true);
  });

  it('what does not close is looked at for crossings, and its volume for nothing', async () => {
    const open = { ...cube, triangles: cube.triangles.slice(3) };
    const { report } = await checked(joinedMesh(open, along(cube, 5)));
    expect(report).toMatchObject({
      verdict: 'cracked',
      crossing: { countedTwice: 0, countedNegative: 0, finished: true },
    });
    expect(report.crossing.pairs).toBeGreaterThan(0);
  });
});
