import { describe, expect, it } from 'vitest';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { translation } from '../../../src/engine/math/pose';
import { boxOf } from '../../../src/meshes/checks/clean';
import { estimateWinding } from '../../../src/meshes/checks/winding';
import { ballMesh, boxMesh, joinedMesh, movedMesh } from '../../support/meshes';

function winding(grids: readonly number[], ...meshes: readonly TriangleMesh[]) {
  const mesh = joinedMesh(...meshes);
  return estimateWinding(mesh, boxOf(mesh.positions), { rest: async () => {}, grids });
}
function over(mesh: TriangleMesh): TriangleMesh {
  return { ...mesh, triangles: mesh.triangles.toReversed() };
}
const block = movedMesh(boxMesh(4, 6, 10), translation(100, 20, -30));
const along = (x: number) => movedMesh(block, translation(x, 0, 0));
/** Each place moved along x by its y and z: faces are no longer upright, and lengths along x stay what they were. */
function sheared({ positions, triangles }: TriangleMesh): TriangleMesh {
  const moved = positions.map((value, i) =>
    i % 3 === 0 ? value + 0.5 * positions[i + 1] - 0.25 * positions[i + 2] : value,
  );
  return { positions: moved, triangles };
}

/** Boxes that fill the grid's rays from end to end: along x the estimate is exact, by length times breadth times height. */
describe('the volume that is counted too often', () => {
  it.each([
    ['nothing of one body', [block], 0, 0],
    ['nothing of two side by side', [block, along(4)], 0, 0],
    ['all of two in one place', [block, block], 240, 0],
    ['what two share', [block, along(3)], 60, 0],
    ['what each two of three share', [block, along(3), along(6)], 120, 0],
    ['negatively, one inside out', [over(block)], 0, 240],
    ['negatively, twice over', [over(block), over(block)], 0, 480],
    ['nothing of a cavity as large as its body', [block, over(block)], 0, 0],
    ['negatively, what a cavity is beyond its body', [block, over(along(3))], 0, 180],
    ['twice here and negatively there', [block, block, over(along(20))], 240, 240],
  ] as const)('%s', async (_, meshes, twice, negative) => {
    const found = await winding([16], ...meshes);
    expect(found?.countedTwice).toBeCloseTo(twice, 9);
    expect(found?.countedNegative).toBeCloseTo(negative, 9);
    const slanted = await winding([16], ...meshes.map(sheared));
    expect(slanted?.countedTwice).toBeCloseTo(twice, 9);
    expect(slanted?.countedNegative).toBeCloseTo(negative, 9);
  });

  it.each([1, 2] as const)('is the same along axis %d of what is turned round', async (axis) => {
    const turned = ({ positions, triangles }: TriangleMesh): TriangleMesh => ({
      positions: positions.map((_, i, all) => all[i - (i % 3) + (((i % 3) + 3 - axis) % 3)]),
      triangles,
    });
    const uneven = [block, movedMesh(boxMesh(3, 4, 5), translation(101, 21, -29)), over(along(9))];
    const mesh = joinedMesh(...uneven.map(sheared));
    const rest = async () => {};
    const wanted = await estimateWinding(mesh, boxOf(mesh.positions), { rest, grids: [16] });
    const other = turned(mesh);
    const found = await estimateWinding(other, boxOf(other.positions), { rest, grids: [16], axis });
    expect(found).toEqual(wanted);
    expect(wanted?.countedTwice).toBeGreaterThan(30);
    expect(wanted?.countedNegative).toBeGreaterThan(200);
  });

  it('is counted where it lies, at one end of a long grid or the other, along y and along z', async () => {
    // Four times as long as a block, so that a quarter of the rays meets each, and wide enough for rays 2.5 apart.
    for (const ends of [translation(0, 18, 0), translation(0, 0, 30), translation(0, 18, 30)]) {
      const other = movedMesh(block, ends);
      const base = movedMesh(block, translation(0, 0, 80));
      const high = movedMesh(other, translation(0, 0, 80));
      expect((await winding([16], block, other, other))?.countedTwice).toBeCloseTo(240, 9);
      expect((await winding([16], block, block, other))?.countedTwice).toBeCloseTo(240, 9);
      expect((await winding([16], base, high, high))?.countedTwice).toBeCloseTo(240, 9);
    }
  });

  it('of two balls is that of the lens between them, to the rays’ spacing', async () => {
    const ball = ballMesh(1, 40);
    const found = await winding([64], ball, movedMesh(ball, translation(0.3, 0.5, -0.7)));
    // Lens of two equal spheres at distance d: pi (4 r + d) (2 r - d)^2 / 12 (handbook formula, from memory).
    const d = Math.hypot(0.3, 0.5, 0.7);
    const lens = (Math.PI * (4 + d) * (2 - d) ** 2) / 12;
    // The balls have flats: 2.6 degrees across, 0.1 % of a radius low at most, less of the volume at the lens's rim.
    expect((found?.countedTwice ?? 0) / lens).toBeCloseTo(1, 2);
    expect(found?.countedNegative).toBe(0);
  });

  describe('is looked for within bounds', () => {
    const none = async () => {};
    const bounded = (mesh: TriangleMesh, visits: number, hits: number, grids = [16]) =>
      estimateWinding(mesh, boxOf(mesh.positions), {
        rest: none,
        grids,
        most: { visits, hits },
      });

    it('each of the rays within the box about a triangle is asked for once, and no others are', async () => {
      // Four triangles of a block face along x, each with 16 x 16 rays in its box; the others are seen from their edges.
      expect(await bounded(block, 4 * 256, 1e6)).toEqual({ countedTwice: 0, countedNegative: 0 });
      expect(await bounded(block, 4 * 256 - 1, 1e6)).toBeNull();
    });

    it('a slanted side that is seen from its edge is not asked for', async () => {
      // Turned by an eighth about x and scaled by root 2: y + z and z - y, in exact numbers.
      const rod = boxMesh(4, 16, 16);
      const positions = rod.positions.map((value, i, all) =>
        i % 3 === 1 ? value + all[i + 1] : i % 3 === 2 ? value - all[i - 1] : value,
      );
      // The four triangles at its ends again, each in the box about a half of the square on its corner.
      const found = await bounded({ ...rod, positions }, 4 * 128, 1e6);
      expect(found).toEqual({ countedTwice: 0, countedNegative: 0 });
      expect(await bounded({ ...rod, positions }, 4 * 128 - 1, 1e6)).toBeNull();
    });

    it('a body beside another is asked for where it is alone', async () => {
      // Two of a quarter of the height each at both ends of the box: 16 x 4 rays a triangle.
      for (const gap of [translation(0, 0, 30), translation(0, 18, 0)]) {
        const pair = joinedMesh(block, movedMesh(block, gap));
        expect(await bounded(pair, 8 * 64, 1e6)).toEqual({ countedTwice: 0, countedNegative: 0 });
        expect(await bounded(pair, 8 * 64 - 1, 1e6)).toBeNull();
      }
    });

    it('and so many meetings are kept as are allowed before the next triangle', async () => {
      // The rays meet either end of a block once: 512 times, the last triangle of them 128 or so.
      expect(await bounded(block, 1e6, 512)).not.toBeNull();
      expect(await bounded(joinedMesh(block, along(9)), 1e6, 511)).toBeNull();
      expect(await bounded(joinedMesh(block, along(9)), 1e6, 1024)).not.toBeNull();
    });

    it('with the first grid that is within them, or with none', async () => {
      const three = joinedMesh(block, along(3));
      const fine = await bounded(three, 8 * 256, 1e6, [64, 16]);
      expect(fine?.countedTwice).toBeCloseTo(60, 9);
      expect(await bounded(three, 8 * 256 - 1, 1e6, [64, 16])).toBeNull();
      expect(await bounded(three, 1e6, 1e6, [])).toBeNull();
    });
  });

  it('is looked for with rests in between, in which the work can be ended', async () => {
    const mesh = joinedMesh(...Array.from({ length: 40 }, () => block));
    let rests = 0;
    const rest = async () => {
      rests++;
      if (rests === 2) throw new Error('ended');
    };
    await expect(estimateWinding(mesh, boxOf(mesh.positions), { rest })).rejects.toThrow('ended');
    expect(rests).toBe(2);
    // After every half a million points of the grid: 1024 a block.
    const after = async (blocks: number) => {
      let count = 0;
      const many = joinedMesh(...Array.from({ length: blocks }, () => block));
      const counting = async () => {
        count++;
      };
      await estimateWinding(many, boxOf(many.positions), { rest: counting, grids: [16] });
      return count;
    };
    expect(await Promise.all([1, 480, 600, 1100].map(after))).toEqual([0, 0, 1, 2]);
  });
});
