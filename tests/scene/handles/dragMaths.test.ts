import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, length, scale, subtract, type Vec3 } from '../../../src/engine/math/vector';
import {
  alongLine,
  alongScreen,
  snapStep,
  snapTo,
  turnAbout,
  unwrapAngle,
} from '../../../src/scene/handles/dragMaths';
import { real } from '../../support/arbitrary';

const unit = (v: Vec3): Vec3 => scale(v, 1 / length(v));
const coordinate = real(-1, 1);
const direction = fc.tuple(coordinate, coordinate, coordinate).filter((v) => length(v) > 0.1);

describe('dragging along a line', () => {
  it('finds the point of the line that the ray passes through', () => {
    fc.assert(
      fc.property(direction, direction, real(-50, 50), (d, eye, travel) => {
        const line = { origin: [3, -2, 5] as const, direction: unit(d) };
        const point = add(line.origin, scale(line.direction, travel));
        const origin = add(point, scale(unit(eye), 300));
        const found = alongLine({ origin, direction: unit(subtract(point, origin)) }, line);
        if (found !== null) expect(found).toBeCloseTo(travel, 8);
      }),
      { seed: 3, numRuns: 300 },
    );
  });
  it('finds the nearest point where ray and line pass each other', () => {
    const line = { origin: [0, 0, 0] as const, direction: [1, 0, 0] as const };
    const found = alongLine({ origin: [7, 4, 100], direction: [0, 0, -1] }, line);
    expect(found).toBeCloseTo(7, 12);
  });
  it('gives up where the line is seen end-on, within 17 degrees', () => {
    const line = { origin: [0, 0, 0] as const, direction: [0, 0, 1] as const };
    expect(alongLine({ origin: [0, 0, 100], direction: [0, 0, -1] }, line)).toBeNull();
    expect(alongLine({ origin: [0, 0, 100], direction: unit([0.2, 0, -1]) }, line)).toBeNull();
    expect(alongLine({ origin: [0, 0, 100], direction: unit([0.5, 0, -1]) }, line)).not.toBeNull();
  });
  it('goes by the screen instead: along the picture of the line, or upward for a line toward the eye', () => {
    expect(alongScreen([30, 40], [3, 4], 5)).toBeCloseTo(10, 12);
    expect(alongScreen([-4, 3], [3, 4], 5)).toBeCloseTo(0, 12);
    expect(alongScreen([0, -20], [0.1, 0], 5)).toBeCloseTo(4, 12);
  });
});

describe('dragging round an axis', () => {
  const axis = { origin: [10, 0, 0] as const, direction: [1, 0, 0] as const };
  it('reads the angle where the ray meets the plane across the axis', () => {
    const ray = { origin: [110, 0, 5] as const, direction: [-1, 0, 0] as const };
    expect(turnAbout(ray, axis, [0, 2, 0])).toBeCloseTo(Math.PI / 2, 12);
    expect(turnAbout(ray, axis, [0, 0, 9])).toBeCloseTo(0, 12);
  });
  it('gives up on a plane seen edge-on, and on one behind the eye', () => {
    expect(turnAbout({ origin: [10, 0, 50], direction: [0, 0, -1] }, axis, [0, 1, 0])).toBeNull();
    expect(turnAbout({ origin: [50, 1, 0], direction: [1, 0, 0] }, axis, [0, 1, 0])).toBeNull();
  });
  it('goes on past half a turn', () => {
    expect(unwrapAngle(-3.1, 3.1)).toBeCloseTo(2 * Math.PI - 3.1, 12);
    expect(unwrapAngle(0.1, 12.5)).toBeCloseTo(0.1 + 4 * Math.PI, 12);
  });
});

describe('snap', () => {
  it('is a tenth; one with Shift, a hundredth with Alt', () => {
    expect(snapStep({ shiftKey: false, altKey: false })).toBe(0.1);
    expect(snapStep({ shiftKey: true, altKey: false })).toBe(1);
    expect(snapStep({ shiftKey: true, altKey: true })).toBe(0.01);
  });
  it('leaves no dust behind', () => {
    expect(snapTo(0.30000000000000004, 0.1)).toBe(0.3);
    expect(snapTo(7.349, 0.1)).toBe(7.3);
    expect(snapTo(-0.04, 0.1)).toBe(0);
  });
});
