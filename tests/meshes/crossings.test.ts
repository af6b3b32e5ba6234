import { Vector3 } from 'three';
import { ExtendedTriangle } from 'three-mesh-bvh';
import { describe, expect, test } from 'vitest';
import type { TriangleMesh } from '../../src/engine/mass/solid';
import { translation } from '../../src/engine/math/pose';
import { findCrossings } from '../../src/meshes/checks/crossings';
import { ballMesh, joinedMesh, movedMesh } from '../support/meshes';

function extended({ positions, triangles }: TriangleMesh): ExtendedTriangle[] {
  const corner = (i: number) => new Vector3().fromArray(positions, 3 * triangles[i]);
  return Array.from(
    { length: triangles.length / 3 },
    (_, t) => new ExtendedTriangle(corner(3 * t), corner(3 * t + 1), corner(3 * t + 2)),
  );
}

const TOLERANCE = 1e-6;
const UNHURRIED = { outOfTime: () => false, rest: async () => {} };

describe('triangles that go through each other', () => {
  const ball = ballMesh(1, 10);

  test('of two balls of 360 triangles are the pairs that a library finds among all of them', async () => {
    for (const [x, y, z] of [
      [0.71, 0.33, 0.19],
      [1.3, -0.9, 0.41],
      [0.013, 0.021, 0.037],
    ] as const) {
      const other = movedMesh(ball, translation(x, y, z));
      const mine = extended(ball);
      let expected = 0;
      for (const b of extended(other)) {
        for (const a of mine) if (a.intersectsTriangle(b)) expected++;
      }
      const { positions, triangles } = joinedMesh(ball, other);
      expect(expected).toBeGreaterThan(20);
      expect(await findCrossings(positions, triangles, TOLERANCE, UNHURRIED)).toEqual({
        through: expected,
        onBorder: 0,
        finished: true,
      });
    }
  });

  test('are none in one ball, and none where balls lie apart', async () => {
    const { positions, triangles } = joinedMesh(ball, movedMesh(ball, translation(2.1, 0, 0)));
    expect(await findCrossings(positions, triangles, TOLERANCE, UNHURRIED)).toEqual({
      through: 0,
      onBorder: 0,
      finished: true,
    });
  });

  test('are not all looked for when time is up', async () => {
    const fine = ballMesh(1, 70);
    const hurried = { ...UNHURRIED, outOfTime: () => true };
    const found = await findCrossings(fine.positions, fine.triangles, TOLERANCE, hurried);
    expect(found.finished).toBe(false);
  });

  test('are looked for with rests in between, in which the work can be ended', async () => {
    const fine = ballMesh(1, 70);
    let rests = 0;
    const rest = async () => {
      rests++;
      if (rests === 20) throw new Error('ended');
    };
    const looking = findCrossings(fine.positions, fine.triangles, TOLERANCE, {
      ...UNHURRIED,
      rest,
    });
    await expect(looking).rejects.toThrow('ended');
    expect(rests).toBe(20);
  });
});
