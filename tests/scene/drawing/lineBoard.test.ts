import { Group, type InterleavedBufferAttribute, type Mesh, Scene } from 'three';
import { describe, expect, it } from 'vitest';
import { LineBoard } from '../../../src/scene/drawing/lineBoard';
import { Segments } from '../../../src/scene/drawing/segments';

function setUp() {
  const scene = new Scene();
  const board = new LineBoard();
  const frame = new Group();
  scene.add(frame, board);
  return { scene, board, frame };
}

/** What is drawn of the solid lines, a row for each segment: start, end, colour with opacity, width. */
function drawn(board: LineBoard): number[][] {
  const { mesh, buffer } = solid(board);
  const stride = buffer.stride;
  return Array.from({ length: mesh.geometry.instanceCount }, (_, i) =>
    Array.from(buffer.array.slice(i * stride, (i + 1) * stride)),
  );
}

function solid(board: LineBoard) {
  const mesh = board.children[0] as Mesh & { geometry: { instanceCount: number } };
  const column = mesh.geometry.getAttribute('segmentStart') as InterleavedBufferAttribute;
  return { mesh, buffer: column.data };
}

describe('lines drawn together', () => {
  it('stand in the world where their frames are, in their colours and widths', () => {
    const { scene, board, frame } = setUp();
    const red = new Segments(board, 2);
    const blue = new Segments(board, 4);
    frame.add(red.object);
    scene.add(blue.object);
    red.paint('#ff0000');
    blue.paint('#0000ff');
    red.set([1, 0, 0, 2, 0, 0]);
    blue.set([0, 0, 0, 0, 0, 1, 5, 5, 5, 6, 6, 6]);
    frame.rotation.z = Math.PI / 2;
    frame.position.set(0, 0, 10);
    scene.updateMatrixWorld();
    const [first, ...others] = drawn(board);
    // A quarter turn about z takes x to y.
    [0, 1, 10, 0, 2, 10, 1, 0, 0, 1, 2].forEach((value, k) => {
      expect(first[k]).toBeCloseTo(value, 6);
    });
    expect(others).toEqual([
      [0, 0, 0, 0, 0, 1, 0, 0, 1, 1, 4],
      [5, 5, 5, 6, 6, 6, 0, 0, 1, 1, 4],
    ]);
  });

  it('are handed over as far as they changed, and not at all where nothing did', () => {
    const { scene, board, frame } = setUp();
    const all = [1, 2, 3].map((k) => {
      const lines = new Segments(board, 1);
      frame.add(lines.object);
      lines.set([k, 0, 0, k, 1, 0]);
      return lines;
    });
    scene.updateMatrixWorld();
    const { buffer } = solid(board);
    const { version } = buffer;
    scene.updateMatrixWorld();
    all[1].set([2, 0, 0, 2, 1, 0]);
    scene.updateMatrixWorld();
    expect(buffer.version).toBe(version);
    all[1].set([2, 0, 0, 2, 7, 0]);
    scene.updateMatrixWorld();
    expect(buffer.version).toBe(version + 1);
    expect(buffer.updateRanges).toEqual([{ start: 11, count: 11 }]);
    // What comes after longer lines moves with them.
    all[0].set([1, 0, 0, 1, 1, 0, 1, 1, 0, 1, 2, 0]);
    scene.updateMatrixWorld();
    expect(buffer.updateRanges).toEqual([{ start: 0, count: 44 }]);
    expect(drawn(board).map((row) => row[4])).toEqual([1, 2, 7, 1]);
    frame.position.x = 1;
    scene.updateMatrixWorld();
    expect(drawn(board).map((row) => row[0])).toEqual([2, 2, 3, 4]);
  });

  it('are left out while they, or what they hang in, are hidden, taken away or empty', () => {
    const { scene, board, frame } = setUp();
    const inside = new Segments(board, 1);
    const beside = new Segments(board, 1);
    frame.add(inside.object);
    scene.add(beside.object);
    inside.set([1, 1, 1, 2, 2, 2]);
    beside.set([3, 3, 3, 4, 4, 4]);
    const starts = () => {
      scene.updateMatrixWorld();
      return drawn(board).map((row) => row[0]);
    };
    expect(starts()).toEqual([1, 3]);
    frame.visible = false;
    expect(starts()).toEqual([3]);
    frame.visible = true;
    expect(starts()).toEqual([1, 3]);
    beside.set([]);
    expect(starts()).toEqual([1]);
    inside.dispose();
    expect(starts()).toEqual([]);
    expect(solid(board).mesh.visible).toBe(false);
  });

  it('find room for more than there was, and keep apart what is seen through or laid over', () => {
    const { scene, board, frame } = setUp();
    const many = new Segments(board, 1);
    const sheer = new Segments(board, 1, { opacity: 0.5 });
    const over = new Segments(board, 1, { overlay: true });
    for (const lines of [many, sheer, over]) frame.add(lines.object);
    const points = Array.from({ length: 6 * 500 }, (_, i) => i);
    many.set(points);
    sheer.set([0, 0, 0, 1, 1, 1]);
    over.set([0, 0, 0, 1, 1, 1, 1, 1, 1, 2, 2, 2]);
    scene.updateMatrixWorld();
    expect(drawn(board).flatMap((row) => row.slice(0, 6))).toEqual(points);
    const counts = board.children.map(
      (mesh) => (mesh as ReturnType<typeof solid>['mesh']).geometry.instanceCount,
    );
    expect(counts).toEqual([500, 1, 2]);
  });
});
