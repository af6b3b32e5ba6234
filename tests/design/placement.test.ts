import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/design/design';
import { HeadModel } from '../../src/design/headModel';
import { freePose } from '../../src/design/placement';
import { NO_MATERIALS, valuesOf } from '../../src/design/resolve';
import { valueOf } from '../../src/design/values';
import { apply, type Vec3 } from '../../src/engine/math/vector';
import { partType } from '../../src/parts/registry';
import { defaultValues, designOf, fullHead, mounted, partOf } from './designs';

function headOf(parts: readonly Part[]): HeadModel {
  const model = new HeadModel();
  expect(model.load(designOf(parts))).toEqual({ ok: true, value: undefined });
  return model;
}

function originMm(model: HeadModel, id: string): number[] {
  return (model.placed(id)?.pose.translation ?? []).map((value) => value * 1000);
}

function axis(model: HeadModel, id: string, direction: Vec3): Vec3 {
  const pose = model.placed(id)?.pose;
  if (!pose) throw new Error(`no part ${id}`);
  return apply(pose.rotation, direction);
}

function expectClose(actual: readonly number[], expected: readonly number[]): void {
  expect(actual.length).toBe(expected.length);
  for (const [i, value] of actual.entries()) expect(value).toBeCloseTo(expected[i], 10);
}

/** Bolt station and upper face of the default fork, mm. */
const grip = defaultValues('grip') as Record<string, number>;
const STATION = grip.boltStationMm;
const FACE = grip.slotHeightMm / 2 + grip.cheekThicknessMm;

describe('free placement', () => {
  test('turns about the fixed x, then y, then z, then moves', () => {
    const pose = freePose({ positionMm: [10, -20, 30], rotationDeg: [90, 0, 90] });
    expect(pose.translation).toEqual([0.01, -0.02, 0.03]);
    // y goes to z by the turn about x, and stays there; x goes to y by the turn about z; z goes to -y, then to x.
    expectClose(apply(pose.rotation, [0, 1, 0]), [0, 0, 1]);
    expectClose(apply(pose.rotation, [1, 0, 0]), [0, 1, 0]);
    expectClose(apply(pose.rotation, [0, 0, 1]), [1, 0, 0]);
  });

  test('about y: a slab turned by +5 degrees dips its outer end', () => {
    const pose = freePose({ positionMm: [0, 0, 0], rotationDeg: [0, 5, 0] });
    const angle = (5 * Math.PI) / 180;
    expectClose(apply(pose.rotation, [1, 0, 0]), [Math.cos(angle), 0, -Math.sin(angle)]);
  });
});

describe('a mounted part', () => {
  test('sits at its socket: the bolt on the upper face, the nut down the thread', () => {
    const bolt = mounted('bolt', 'bolt', 'grip', 'boltTop', { lengthMm: 30, threadLengthMm: 20 });
    const nut = mounted('nut', 'nut', 'bolt', 'thread', {
      socket: { part: 'bolt', name: 'thread', offsetMm: 17.5, turnDeg: 90 },
    });
    const model = headOf([partOf('grip', 'grip'), bolt, nut]);
    expectClose(originMm(model, 'bolt'), [STATION, 0, FACE]);
    expectClose(originMm(model, 'nut'), [STATION, 0, FACE - 17.5]);
    expectClose(axis(model, 'nut', [0, 0, 1]), [0, 0, -1]);
    // Turned a quarter about its own z, which points down: its x is its former y.
    const straight = headOf([
      partOf('grip', 'grip'),
      bolt,
      { ...nut, socket: { part: 'bolt', name: 'thread', offsetMm: 17.5 } },
    ]);
    expectClose(axis(model, 'nut', [1, 0, 0]), axis(straight, 'nut', [0, 1, 0]));
  });

  test("without an offset takes the socket's own", () => {
    const model = headOf(fullHead().filter((part) => !part.id.startsWith('w')));
    const bolt = model.placed('bolt');
    const thread = bolt?.sockets.find((socket) => socket.name === 'thread');
    expect(thread?.defaultOffsetMm).toBeGreaterThan(0);
    expectClose(originMm(model, 'nut'), [STATION, 0, FACE - (thread?.defaultOffsetMm ?? 0)]);
  });

  test('turns about the socket: a blade lagging by 4 degrees', () => {
    const model = headOf(fullHead());
    const angle = (4 * Math.PI) / 180;
    expectClose(axis(model, 'blade', [1, 0, 0]), [Math.cos(angle), Math.sin(angle), 0]);
    expectClose(originMm(model, 'blade'), [STATION, 0, 0]);
  });

  test('follows its parent through two mounts, wherever that goes', () => {
    const parts = fullHead();
    const pose = { positionMm: [5, 6, 7], rotationDeg: [0, 0, 90] } as const;
    const model = headOf([{ ...parts[0], pose } as Part, ...parts.slice(1)]);
    const at = originMm(headOf(parts), 'w4');
    // The quarter turn takes (x, y) to (-y, x).
    expectClose(originMm(model, 'w4'), [5 - at[1], 6 + at[0], 7 + at[2]]);
  });
});

describe('stacked washers', () => {
  const sum = 0.5 + 0.8 + 1.1;

  test('lift the bolt by their heights, lie on one another, and reach the fork', () => {
    const model = headOf(fullHead());
    expectClose(originMm(model, 'bolt'), [STATION, 0, FACE + sum]);
    // Each hangs below the head by those before it; the face of the last one's far side is the fork's.
    expectClose(originMm(model, 'w1'), [STATION, 0, FACE + sum]);
    expectClose(originMm(model, 'w2'), [STATION, 0, FACE + sum - 0.5]);
    expectClose(originMm(model, 'w3'), [STATION, 0, FACE + sum - 1.3]);
    expectClose(axis(model, 'w3', [0, 0, 1]), [0, 0, -1]);
  });

  test('under a bolt from below lift it downward', () => {
    const parts = fullHead().map((part) =>
      part.id === 'bolt' ? { ...part, socket: { part: 'grip', name: 'boltBottom' } } : part,
    );
    const model = headOf(parts);
    expectClose(originMm(model, 'bolt'), [STATION, 0, -FACE - sum]);
    expectClose(originMm(model, 'w3'), [STATION, 0, -FACE - sum + 1.3]);
  });

  test('under a nut push it out along the thread, and lie between it and the blade', () => {
    const model = headOf(fullHead());
    const bare = headOf(fullHead().filter((part) => part.id !== 'w4'));
    const nut = originMm(bare, 'nut');
    expectClose(originMm(model, 'nut'), [nut[0], nut[1], nut[2] - 0.5]);
    // The washer's outer face is the nut's, its other face where the nut was.
    const washer = model.placed('w4');
    expectClose(originMm(model, 'w4'), [nut[0], nut[1], nut[2] - 0.5]);
    expectClose(apply(washer?.pose.rotation ?? [0, 0, 0, 0, 0, 0, 0, 0, 0], [0, 0, 1]), [0, 0, 1]);
  });

  test('lie in list order, and close up when one is taken out or reordered', () => {
    const parts = fullHead();
    const model = headOf(parts);
    const order = [...parts.slice(0, 4), parts[6], parts[4], ...parts.slice(7)];
    expect(model.sync(designOf(order)).ok).toBe(true);
    expectClose(originMm(model, 'bolt'), [STATION, 0, FACE + 1.6]);
    expectClose(originMm(model, 'w3'), [STATION, 0, FACE + 1.6]);
    expectClose(originMm(model, 'w1'), [STATION, 0, FACE + 0.5]);
  });

  test('under a freely placed bolt stack up and leave it where it is', () => {
    const bolt = partOf('bolt', 'bolt', {
      pose: { positionMm: [40, 0, 9], rotationDeg: [0, 0, 0] },
    });
    const washers = ['a', 'b'].map((id) => mounted('washer', id, 'bolt', 'underHead'));
    const model = headOf([bolt, ...washers]);
    expectClose(originMm(model, 'bolt'), [40, 0, 9]);
    expectClose(originMm(model, 'b'), [40, 0, 8.5]);
  });

  test('keep their place in the stack while hidden', () => {
    const parts = fullHead().map((part) => (part.id === 'w2' ? { ...part, hidden: true } : part));
    expectClose(originMm(headOf(parts), 'bolt'), [STATION, 0, FACE + sum]);
  });
});

test('a whole tilted head agrees with four-by-four matrices multiplied out', () => {
  const pose = { positionMm: [12, -3, 4], rotationDeg: [17, -28, 41] };
  const parts = fullHead().map((part) => (part.id === 'grip' ? { ...part, pose } : part)) as Part[];
  const model = headOf(parts);
  for (const { part, pose: found } of model.parts) {
    const matrix = naiveMatrix(part, parts);
    for (let i = 0; i < 3; i++) {
      expect(found.translation[i]).toBeCloseTo(matrix[i][3], 14);
      for (let j = 0; j < 3; j++) expect(found.rotation[3 * i + j]).toBeCloseTo(matrix[i][j], 14);
    }
  }
});

type Matrix = number[][];

/** The placement rules once more, written down independently: homogeneous matrices, recursion, no memory. */
function naiveMatrix(part: Part, parts: readonly Part[]): Matrix {
  if (part.pose) {
    const [x, y, z] = part.pose.positionMm;
    const [a, b, c] = part.pose.rotationDeg;
    return product(shift(x / 1000, y / 1000, z / 1000), turn(2, c), turn(1, b), turn(0, a));
  }
  const mount = part.socket;
  const parent = parts.find((one) => one.id === mount?.part);
  if (!parent || !mount) throw new Error('not placed');
  const socket = partType(parent.kind)
    .sockets(valuesOf(parent, NO_MATERIALS))
    .find((one) => one.name === mount.name);
  if (!socket) throw new Error('no socket');
  const R = socket.pose.rotation;
  const [px, py, pz] = socket.pose.translation;
  const seat = [
    [R[0], R[1], R[2], px],
    [R[3], R[4], R[5], py],
    [R[6], R[7], R[8], pz],
    [0, 0, 0, 1],
  ];
  const thickness = (one: Part) => (valueOf(one, 'thicknessMm') as number) / 1000;
  const washersOn = (id: string, name: string) =>
    parts.filter((one) => one.socket?.part === id && one.socket.name === name);
  let raise = 0;
  if (part.kind === 'washer') {
    const stack = washersOn(parent.id, mount.name);
    for (const below of stack.slice(0, stack.indexOf(part))) raise += thickness(below);
  }
  const own = part.kind === 'bolt' ? 'underHead' : part.kind === 'nut' ? 'nutFace' : '';
  for (const washer of washersOn(part.id, own)) raise += thickness(washer);
  const along = (mount.offsetMm ?? socket.defaultOffsetMm) / 1000 + raise;
  return product(naiveMatrix(parent, parts), seat, shift(0, 0, along), turn(2, mount.turnDeg ?? 0));
}

function shift(x: number, y: number, z: number): Matrix {
  return [
    [1, 0, 0, x],
    [0, 1, 0, y],
    [0, 0, 1, z],
    [0, 0, 0, 1],
  ];
}

/** Right-hand turn about axis 0, 1 or 2. */
function turn(about: 0 | 1 | 2, degrees: number): Matrix {
  const c = Math.cos((degrees * Math.PI) / 180);
  const s = Math.sin((degrees * Math.PI) / 180);
  const matrix = shift(0, 0, 0);
  const i = (about + 1) % 3;
  const j = (about + 2) % 3;
  matrix[i][i] = c;
  matrix[j][j] = c;
  matrix[i][j] = -s;
  matrix[j][i] = s;
  return matrix;
}

function product(...matrices: readonly Matrix[]): Matrix {
  return matrices.reduce((a, b) =>
    a.map((row) => b[0].map((_, j) => row.reduce((sum, value, k) => sum + value * b[k][j], 0))),
  );
}
