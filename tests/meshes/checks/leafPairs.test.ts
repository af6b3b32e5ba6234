import { BufferAttribute, BufferGeometry } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { describe, expect, it } from 'vitest';
import { boxesApart, leafPairWalk, triangleBoxes } from '../../../src/meshes/checks/leafPairs';
import { ballMesh, boxMesh } from '../../support/meshes';

type Range = readonly [from: number, to: number];

function treeOf({ positions, triangles }: ReturnType<typeof boxMesh>): MeshBVH {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(triangles.slice(), 1));
  return new MeshBVH(geometry, { setBoundingBox: false });
}

/** Every two leaves whose boxes meet, found by looking at all of them; and each with itself. */
function pairsByHand(tree: MeshBVH): string[] {
  const leaves: { range: Range; box: number[] }[] = [];
  tree.traverse((_, isLeaf, box, offset, count) => {
    if (isLeaf) leaves.push({ range: [offset, offset + count], box: [...box] });
  });
  const meet = (a: number[], b: number[]) =>
    [0, 1, 2].every((axis) => a[axis] <= b[axis + 3] && b[axis] <= a[axis + 3]);
  return leaves.flatMap((one, i) =>
    leaves
      .slice(i)
      .flatMap((other) => (meet(one.box, other.box) ? [keyOf(one.range, other.range)] : [])),
  );
}
function keyOf(a: Range, b: Range): string {
  return [a, b].toSorted((x, y) => x[0] - y[0]).join(' ');
}

describe('the leaves of a tree', () => {
  it.each([
    ['one leaf', boxMesh(1, 2, 3)],
    ['a ball', ballMesh(1, 6)],
    ['a finer ball', ballMesh(3, 12)],
  ])('meet once where their boxes meet: %s', (_, mesh) => {
    const tree = treeOf(mesh);
    const seen: string[] = [];
    const walk = leafPairWalk(tree, (from, to, otherFrom, otherTo) => {
      seen.push(keyOf([from, to], [otherFrom, otherTo]));
      return false;
    });
    while (!walk(3)) expect(seen.length).toBeLessThan(1e6);
    expect(walk(3)).toBe(true);
    expect(seen.toSorted()).toEqual(pairsByHand(tree).toSorted());
  });

  it('are visited until it is said to be over', () => {
    for (const most of [1, 2, 7, 40]) {
      let calls = 0;
      const walk = leafPairWalk(treeOf(ballMesh(3, 12)), () => ++calls >= most);
      expect(walk(1e6)).toBe(true);
      expect(calls).toBe(most);
    }
  });

  it('are visited a few steps at a time', () => {
    let calls = 0;
    const walk = leafPairWalk(treeOf(ballMesh(3, 17)), () => ++calls < 0);
    for (let k = 0; k < 100; k++) expect(walk(0)).toBe(false);
    expect(calls).toBe(0);
    let before = 0;
    while (!walk(5)) {
      expect(calls - before).toBeLessThanOrEqual(5);
      before = calls;
    }
    expect(calls).toBeGreaterThan(100);
  });
});

describe('two boxes', () => {
  const unit = [0, 0, 0, 1, 1, 1];
  it.each([0, 1, 2])('are apart where they do not even touch along axis %d', (axis) => {
    const shifted = (by: number) => unit.map((value, k) => (k % 3 === axis ? value + by : value));
    for (const by of [1.01, 2, -1.01, -2]) {
      expect(boxesApart(Float64Array.of(...unit, ...shifted(by)), 0, 6), String(by)).toBe(true);
      expect(boxesApart(Float64Array.of(9, ...unit, ...shifted(by)), 7, 1), String(by)).toBe(true);
    }
    for (const by of [-1, -0.5, 0, 0.5, 1])
      expect(boxesApart(Float64Array.of(...unit, ...shifted(by)), 0, 6), String(by)).toBe(false);
  });
});

describe('the boxes of triangles', () => {
  it('go from the least to the greatest of their corners, in the order of the triangles', () => {
    const positions = Float64Array.of(1, 2, 3, -4, 5, 9, 7, -8, 6, 10, 11, -12);
    expect([...triangleBoxes(positions, Uint32Array.of(0, 2, 3, 2, 3, 0))]).toEqual([
      1, -8, -12, 10, 11, 6, 1, -8, -12, 10, 11, 6,
    ]);
    expect([...triangleBoxes(positions, Uint32Array.of(2, 0, 0))]).toEqual([1, -8, 3, 7, 2, 6]);
  });
});
