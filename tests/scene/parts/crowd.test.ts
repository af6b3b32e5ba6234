import { type BufferAttribute, Group, type LineSegments, type Mesh, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import type { Part } from '../../../src/design/design';
import { valuesOf } from '../../../src/design/resolve';
import type { Pose } from '../../../src/engine/math/pose';
import { rotationAboutY } from '../../../src/engine/math/pose';
import { IDENTITY } from '../../../src/engine/math/vector';
import { radiansFromDegrees } from '../../../src/engine/units';
import { LineBoard } from '../../../src/scene/drawing/lineBoard';
import { Crowds } from '../../../src/scene/parts/crowd';
import { Finishes } from '../../../src/scene/parts/finishes';
import { PartBody } from '../../../src/scene/parts/partBody';

function lump(id: string, diameterMm: number, lengthMm: number): Part {
  return { id, kind: 'cylinder', name: id, diameterMm, lengthMm, boreMm: 0, densityKgM3: 7850 };
}

function setUp() {
  const finishes = new Finishes();
  const crowds = new Crowds(finishes);
  const frame = new Group();
  frame.add(crowds.object);
  const bodies = ['a', 'b', 'c'].map((id, i) => {
    const body = new PartBody(id, 'cylinder', finishes, new LineBoard());
    shape(body, lump(id, 3 + i, 5));
    body.put(frame, standing(0.01 * i, 30 * i), true);
    return body;
  });
  crowds.take(bodies);
  return { crowds, bodies, frame };
}

function shape(body: PartBody, part: Part): void {
  body.shape(part, valuesOf(part, []));
}

function standing(x: number, turnDeg: number): Pose {
  return {
    rotation: turnDeg === 0 ? IDENTITY : rotationAboutY(radiansFromDegrees(turnDeg)),
    translation: [x, 0.002, 0],
  };
}

function drawn(crowds: Crowds) {
  const [surface, edges] = crowds.object.children as [Mesh, LineSegments];
  const of = (object: Mesh | LineSegments, name: string) =>
    object.geometry.getAttribute(name) as BufferAttribute;
  return {
    surface,
    position: of(surface, 'position'),
    normal: of(surface, 'normal'),
    edges: of(edges, 'position'),
  };
}

/** Points of a body where the body itself would be drawn. */
function placed({ mesh }: PartBody): number[] {
  const { array } = mesh.geometry.getAttribute('position');
  const point = new Vector3();
  return Array.from({ length: array.length / 3 }, (_, i) =>
    point
      .fromArray(array, 3 * i)
      .applyMatrix4(mesh.matrix)
      .toArray(),
  ).flat();
}

function expectSame(bodies: readonly PartBody[], crowds: Crowds): void {
  const { position, surface } = drawn(crowds);
  const wanted = bodies.flatMap(placed);
  expect(position.array.length).toBe(wanted.length);
  // Single precision at a few centimetres.
  wanted.forEach((value, i) => expect(Math.abs(position.array[i] - value)).toBeLessThan(1e-8));
  const triangles = bodies.flatMap((body, i) => {
    const before = bodies.slice(0, i).reduce((sum, one) => sum + placed(one).length / 3, 0);
    return Array.from(body.mesh.geometry.index?.array ?? [], (k) => before + k);
  });
  expect(Array.from(surface.geometry.index?.array ?? [])).toEqual(triangles);
}

describe('bodies drawn together', () => {
  it('stand where each would be drawn by itself, all in two drawings', () => {
    const { crowds, bodies } = setUp();
    expectSame(bodies, crowds);
    expect(crowds.object.children.length).toBe(2);
    expect(bodies.every(({ mesh }) => !mesh.visible)).toBe(true);
    const { normal } = drawn(crowds);
    const first = new Vector3().fromArray(normal.array, normal.array.length - 3);
    expect(first.length()).toBeCloseTo(1, 6);
  });

  it('cost what changes: a body that is moved or reshaped is handed over alone', () => {
    const { crowds, bodies } = setUp();
    const { position, edges } = drawn(crowds);
    const versions = () => [position.version, edges.version];
    const before = versions();
    crowds.take(bodies);
    expect(versions()).toEqual(before);
    shape(bodies[1], lump('b', 4.5, 6));
    crowds.take(bodies);
    const size = bodies[0].mesh.geometry.getAttribute('position').array.length;
    expect(position.updateRanges).toEqual([{ start: size, count: size }]);
    expect(edges.updateRanges.length).toBe(1);
    bodies[2].put(bodies[2].mesh.parent as Group, standing(0.05, 10), true);
    crowds.take(bodies);
    expect(position.updateRanges.length).toBe(2);
    expectSame(bodies, crowds);
  });

  it('come and go: one that is picked out draws itself', () => {
    const { crowds, bodies } = setUp();
    bodies[0].wear('selected');
    crowds.take(bodies);
    expect(bodies.map(({ mesh }) => mesh.visible)).toEqual([true, false, false]);
    expectSame(bodies.slice(1), crowds);
    bodies[0].wear('plain');
    bodies[1].warn(true);
    crowds.take(bodies);
    expectSame([bodies[0], bodies[2]], crowds);
    crowds.scatter(bodies);
    expect(bodies.every(({ mesh }) => mesh.visible)).toBe(true);
    expect(drawn(crowds).surface.visible).toBe(false);
  });

  it('have the box of what is drawn', () => {
    const { crowds, bodies, frame } = setUp();
    frame.updateMatrixWorld();
    const box = crowds.boxOf(bodies[0]);
    expect(box?.min.x).toBeCloseTo(-0.0015, 6);
    expect(box?.max.x).toBeCloseTo(0.0015, 6);
    bodies[0].wear('selected');
    crowds.take(bodies);
    expect(crowds.boxOf(bodies[0])).toBeNull();
  });
});
