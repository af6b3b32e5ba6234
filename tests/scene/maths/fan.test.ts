import { describe, expect, it } from 'vitest';
import type { Equilibria, EquilibriumKind } from '../../../src/engine/feathering/equilibria';
import { radiansFromDegrees } from '../../../src/engine/units';
import {
  FAN_RIM,
  fanExcursion,
  fanSize,
  fillFanEdge,
  fillFanStrip,
  fillHeld,
  heldRoom,
  homePitch,
  stripTriangles,
} from '../../../src/scene/maths/fan';

function found(...roots: readonly (readonly [number, EquilibriumKind])[]): Equilibria {
  return {
    kind: 'found',
    roots: roots.map(([pitch, kind]) => ({ pitch: radiansFromDegrees(pitch), kind, stiffness: 1 })),
  };
}

/** A blade-like moment: drives back to zero pitch. */
const centring = (pitchDeg: number) => -Math.sin((2 * pitchDeg * Math.PI) / 180);

describe('the angle that the fan takes as home', () => {
  it('is the equilibrium nearest flat, of either kind', () => {
    expect(homePitch(found([-1.5, 'stable'], [88.5, 'unstable']))).toBeCloseTo(-1.5, 12);
    expect(homePitch(found([-89, 'stable'], [1, 'unstable'], [90, 'stable']))).toBeCloseTo(1, 12);
  });
  it('is the rest angle where a rest and a flee angle are equally near', () => {
    expect(homePitch(found([-45, 'unstable'], [45, 'stable']))).toBeCloseTo(45, 12);
    expect(homePitch(found([-45, 'stable'], [45, 'unstable']))).toBeCloseTo(-45, 12);
  });
  it('is flat pitch where the head is neutral, or has no equilibrium in range', () => {
    expect(homePitch({ kind: 'neutral' })).toBe(0);
    expect(homePitch(found())).toBe(0);
  });
});

describe('excursion of the fan', () => {
  it('lies outward at every pitch for a grip that centres, inward for one that flees flat', () => {
    for (const pitch of [-80, -20, -1, 1, 20, 80]) {
      const moment = centring(pitch);
      expect(fanExcursion(moment, Math.abs(moment), pitch, 0, 1)).toBeGreaterThan(0);
      expect(fanExcursion(-moment, Math.abs(moment), pitch, 0, 1)).toBeLessThan(0);
    }
  });
  it('is the share of full scale, and is cut off at the rim toward over-centre', () => {
    expect(fanExcursion(-1, 5, 20, 0, 10)).toBeCloseTo(0.5, 14);
    expect(fanExcursion(-1, 1e9, 20, 0, 10)).toBe(FAN_RIM);
    expect(fanExcursion(-1, Number.POSITIVE_INFINITY, 20, 0, 10)).toBe(FAN_RIM);
  });
  it('is a gap where there is no force, never a zero', () => {
    expect(fanExcursion(-1, Number.NaN, 20, 0, 10)).toBeNaN();
  });
});

describe('the drawn fan', () => {
  const angles = Float64Array.from([-90, -45, 0, 45, 90]);
  const size = { base: 30, reach: 10 };

  it('stands at its pitch: the point of +90 degrees is straight above the axis', () => {
    const strip = new Float32Array(30);
    fillFanStrip(strip, angles, new Float64Array(5), size, 1);
    expect(strip.slice(12, 15)).toEqual(Float32Array.from([0, 30, 0]));
    expect(strip[24 + 1]).toBeCloseTo(0, 5);
    expect(strip[24 + 2]).toBeCloseTo(30, 5);
  });
  it('has the radius of the base arc plus the excursion, on its own side only', () => {
    const excursions = Float64Array.from([0.5, 1, 0, -0.5, -1]);
    const outward = new Float32Array(30);
    const inward = new Float32Array(30);
    fillFanStrip(outward, angles, excursions, size, 1);
    fillFanStrip(inward, angles, excursions, size, -1);
    const radius = (strip: Float32Array, i: number) =>
      Math.hypot(strip[6 * i + 4], strip[6 * i + 5]);
    expect([0, 1, 2, 3, 4].map((i) => Math.round(radius(outward, i)))).toEqual([
      35, 40, 30, 30, 30,
    ]);
    expect([0, 1, 2, 3, 4].map((i) => Math.round(radius(inward, i)))).toEqual([30, 30, 30, 25, 20]);
  });
  it('lies on the base arc in a gap, and draws no edge across it', () => {
    const excursions = Float64Array.from([0.5, Number.NaN, 0.5, 0.5, 0.5]);
    const strip = new Float32Array(30);
    fillFanStrip(strip, angles, excursions, size, 1);
    expect(Math.hypot(strip[10], strip[11])).toBeCloseTo(30, 4);
    const edge = new Float32Array(24);
    expect(fillFanEdge(edge, angles, excursions, size, 1)).toBe(2);
  });
  it('leaves the edge open along the rim', () => {
    const excursions = Float64Array.from([FAN_RIM, FAN_RIM, 0.2, 0.2, 0.2]);
    expect(fillFanEdge(new Float32Array(24), angles, excursions, size, 1)).toBe(3);
  });
  it('has two triangles between neighbouring samples, within its points', () => {
    const triangles = stripTriangles(5);
    expect(triangles).toHaveLength(24);
    expect(Math.max(...triangles)).toBe(9);
  });
  it('keeps its base arc outside the parts', () => {
    for (const clearance of [1, 20, 400]) {
      expect(fanSize(clearance).base).toBeGreaterThan(clearance);
      expect(fanSize(clearance).base).toBeGreaterThan(FAN_RIM * fanSize(clearance).reach);
    }
  });
});

describe('the brackets where friction holds', () => {
  const size = { base: 20, reach: 8 };
  const bands = [
    [-24, 23],
    [60, 60.2],
  ] as const;

  it('lie just inside the base arc from end to end, with a stroke out to it at either end', () => {
    const segments = new Float32Array(6 * heldRoom(bands));
    const count = fillHeld(segments, bands, size);
    expect(count).toBe(heldRoom(bands));
    const points = Array.from({ length: 2 * count }, (_, i) => {
      const [y, z] = [segments[3 * i + 1], segments[3 * i + 2]];
      return { radius: Math.hypot(y, z), deg: (Math.atan2(z, y) * 180) / Math.PI };
    });
    for (const { deg, radius } of points) {
      expect(bands.some(([from, to]) => deg > from - 1e-4 && deg < to + 1e-4)).toBe(true);
      expect(radius).toBeLessThan(size.base + 1e-5);
      expect(radius).toBeGreaterThan(size.base - 0.5 * size.reach);
    }
    const ends = points.filter(({ radius }) => Math.abs(radius - size.base) < 1e-5);
    expect(ends.map(({ deg }) => Math.round(10 * deg) / 10)).toEqual([-24, 23, 60, 60.2]);
  });

  it('are none where nothing is held', () => {
    expect(heldRoom([])).toBe(0);
    expect(fillHeld(new Float32Array(0), [], size)).toBe(0);
  });
});
