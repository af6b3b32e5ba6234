import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { inspectMesh, isWatertight, meshVolumeMoments } from '../../src/engine/mass/mesh';
import { createMoments, JXX, JYY, JZZ, M } from '../../src/engine/mass/moments';
import type { Solid, TriangleMesh } from '../../src/engine/mass/solid';
import { solidMoments, sumSolids } from '../../src/engine/mass/weigh';
import { add, cross, dot, length, scale, subtract, type Vec3 } from '../../src/engine/math/vector';
import { type Handle, isUsed, type ParameterValue } from '../../src/parts/contract';
import { PART_TYPES, partType } from '../../src/parts/registry';
import { weldedMeshes } from '../../src/parts/tessellate';
import { contains } from './contains';
import { defaults, mend, problemsOf, type Values, validValues, withinLimits } from './sample';

// Seconds on a quiet machine, more beside other work.
vi.setConfig({ testTimeout: 60_000 });

const RUNS = { seed: 20260, numRuns: 120 };
const kinds = PART_TYPES.map((type) => type.kind);

function solidsOf(kind: string, values: Values): readonly Solid[] {
  return partType(kind).solids(values as never);
}

/** The axis-aligned box of a mesh, and what the tolerances need of it. */
function boxOf(mesh: TriangleMesh) {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  mesh.positions.forEach((value, i) => {
    low[i % 3] = Math.min(low[i % 3], value);
    high[i % 3] = Math.max(high[i % 3], value);
  });
  const volume = (high[0] - low[0]) * (high[1] - low[1]) * (high[2] - low[2]);
  const reach = Math.hypot(...low.map((value, i) => Math.max(Math.abs(value), Math.abs(high[i]))));
  return { low, high, volume, reach };
}

/** A share (2 pi / n)^2 / 6 of a circle's area is lost with n chords. */
function chordLoss(segments: number): number {
  return ((2 * Math.PI) / segments) ** 2 / 6;
}

function isHollow(solid: Solid): boolean {
  return 'density' in solid && solid.density < 0;
}

function exactVolumeMoments(solid: Solid): Float64Array {
  const moments = solidMoments(solid, createMoments());
  // The surface of a solid of negative density faces inward, so that volumes add up.
  const density = 'density' in solid ? Math.abs(solid.density) : 1;
  return moments.map((value) => value / density);
}

describe.each(kinds)('the part type %s', (kind) => {
  const type = partType(kind);
  const parameters = Object.entries(type.parameters);

  it('has defaults inside their limits that break no rule', () => {
    for (const [key, parameter] of parameters) {
      expect(withinLimits(parameter, parameter.default), key).toBe(true);
      if (parameter.type === 'number' || parameter.type === 'vector') {
        expect(parameter.step, key).toBeGreaterThan(0);
        expect(parameter.min, key).toBeLessThan(parameter.max);
      }
    }
    expect(problemsOf(kind, defaults(kind))).toEqual([]);
  });

  it('says in words what every parameter is, each in its own words', () => {
    const labels = parameters.map(([, parameter]) => parameter.label);
    expect(new Set(labels).size).toBe(labels.length);
    for (const [key, { label, help }] of [...parameters, ['', type] as const]) {
      expect(label.trim(), key).not.toBe('');
      expect(help, key).toMatch(/^[A-Z].*\.$/);
    }
    const helps = parameters.map(([, parameter]) => parameter.help);
    expect(new Set(helps).size).toBe(helps.length);
  });

  it('names the unit of every number in its key', () => {
    const suffix = {
      mm: /Mm$/,
      g: /Grams$/,
      deg: /Deg$/,
      'kg/m3': /ensityKgM3$/,
      N: /N$/,
      '1': /(Percent|Coefficient)$/,
    };
    for (const [key, parameter] of parameters) {
      if (parameter.type === 'number' || parameter.type === 'vector')
        expect(key).toMatch(suffix[parameter.unit]);
    }
  });

  it('can be mended from most broken values by obeying what its rules say', () => {
    const scrambled = fc.sample(validValues(kind), { seed: 7, numRuns: 60 });
    let mended = 0;
    for (let i = 0; i < scrambled.length; i++) {
      const other = scrambled[(i + 1) % scrambled.length];
      const keys = Object.keys(other).filter((_, k) => k % 2 === 0);
      const mixed = { ...scrambled[i] };
      for (const key of keys) mixed[key] = other[key];
      if (mend(kind, mixed)) mended++;
    }
    expect(mended).toBeGreaterThan(30);
  });

  it('weighs something wherever its rules are kept', () => {
    fc.assert(
      fc.property(validValues(kind), (values) => {
        const moments = sumSolids(solidsOf(kind, values), createMoments());
        expect(moments.every(Number.isFinite)).toBe(true);
        expect(moments[M]).toBeGreaterThan(0);
        for (const solid of solidsOf(kind, values)) {
          // A solid of negative density takes away from another; the whole weighs something all the same.
          const taken = isHollow(solid);
          const mass = solidMoments(solid, createMoments())[M];
          expect(taken ? -mass : mass, solid.name).toBeGreaterThan(0);
        }
      }),
      RUNS,
    );
  });

  it('is drawn closed and facing outward, solid by solid', () => {
    fc.assert(
      fc.property(validValues(kind), fc.constantFrom(12, 16, 33, 48), (values, segmentsPerTurn) => {
        const solids = solidsOf(kind, values);
        for (const [i, mesh] of weldedMeshes(solids, { segmentsPerTurn }).entries()) {
          const faults = inspectMesh(mesh);
          expect(isWatertight(faults) && faults.degenerateTriangles === 0, mesh.name).toBe(true);
          const volume = meshVolumeMoments(mesh, createMoments())[M];
          expect(isHollow(solids[i]) ? -volume : volume, mesh.name).toBeGreaterThan(0);
        }
      }),
      RUNS,
    );
  });

  /*
   * Walls lie inside outer rounds and holes by at most the chord loss e = (2 pi / n)^2 / 6 of a circle's area, so
   * between true and drawn solid lies at most e times the rounds' volume: pi / 4 of the bounding box for the outside
   * and as much for a hole (a sphere loses 5/2 e of pi / 6). Every bit of it is within `reach` of the origin. A loft's
   * section loses as an ellipse does; the twist of its panels, where root and tip differ in thickness over chord,
   * loses no more than another half of its box.
   */
  it('is drawn with the volume and moments that are weighed, within the loss of the chords', () => {
    fc.assert(
      fc.property(validValues(kind), fc.constantFrom(24, 48, 96), (values, segmentsPerTurn) => {
        const solids = solidsOf(kind, values);
        weldedMeshes(solids, { segmentsPerTurn }).forEach((mesh, i) => {
          if (mesh.symbolic) return;
          const drawn = meshVolumeMoments(mesh, createMoments());
          const exact = exactVolumeMoments(solids[i]);
          const { volume, reach } = boxOf(mesh);
          const lost = ((Math.PI / 2) * chordLoss(segmentsPerTurn) + 1e-12) * volume;
          for (let k = 0; k < drawn.length; k++) {
            const arm = k === M ? 1 : k < JXX ? reach : reach * reach;
            expect(Math.abs(drawn[k] - exact[k]), `${mesh.name} ${k}`).toBeLessThanOrEqual(
              lost * arm,
            );
          }
        });
      }),
      RUNS,
    );
  });

  it('is drawn four times as well with twice the segments', () => {
    const solids = solidsOf(kind, defaults(kind));
    const [coarse, fine] = [96, 192].map((segmentsPerTurn) =>
      weldedMeshes(solids, { segmentsPerTurn }),
    );
    solids.forEach((solid, i) => {
      if (coarse[i].symbolic) return;
      const exact = exactVolumeMoments(solid);
      const before = meshVolumeMoments(coarse[i], createMoments());
      const after = meshVolumeMoments(fine[i], createMoments());
      for (const k of [M, JXX, JYY, JZZ]) {
        const error = Math.abs(before[k] - exact[k]);
        // Plane-sided solids are exact already.
        if (error <= 1e-9 * exact[k]) continue;
        const gain = error / Math.abs(after[k] - exact[k]);
        // An arc takes a whole number of chords, so the step is not always exactly two.
        expect(gain, `${solid.name} ${k}`).toBeGreaterThan(3.4);
        expect(gain, `${solid.name} ${k}`).toBeLessThan(4.7);
      }
    });
  });

  it('has solids that do not overlap', () => {
    fc.assert(
      fc.property(validValues(kind), fc.integer({ min: 1, max: 2 ** 31 }), (values, seed) => {
        const solids = solidsOf(kind, values);
        if (solids.length < 2) return;
        // Kept off corners, where solids that touch share the point to the last digit.
        const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
        const random = fc.sample(fc.tuple(share, share, share), { seed, numRuns: 60 });
        weldedMeshes(solids, { segmentsPerTurn: 24 }).forEach((mesh, i) => {
          const points = random.flatMap((at) => [pointInBox(mesh, at), pointUnderSkin(mesh, at)]);
          for (const point of points.filter((one) => contains(solids[i], one))) {
            // A hole takes away one of those that hold the point: one body is left, or nothing in an empty hole.
            const holders = solids.filter((solid) => contains(solid, point));
            const holes = holders.filter(isHollow).length;
            const left = holders.length - 2 * holes;
            const names = holders.map((solid) => solid.name).join(', ');
            if (holes === 0) expect(left, names).toBe(1);
            else expect([0, 1], names).toContain(left);
          }
        });
      }),
      RUNS,
    );
  });

  it('weighs and seats the same whatever a parameter says that counts for nothing', () => {
    const dependent = parameters.filter(([, parameter]) => parameter.usedWhen);
    for (const [, { usedWhen }] of dependent) {
      const other = type.parameters[usedWhen?.key ?? ''];
      expect(other.usedWhen).toBeUndefined();
      if (other.type === 'choice') expect(other.options).toContain(usedWhen?.is);
      else expect([other.type, usedWhen?.is]).toEqual(['number', undefined]);
    }
    if (dependent.length === 0) return;
    let idle = 0;
    fc.assert(
      fc.property(validValues(kind), validValues(kind), (values, others) => {
        for (const [key, parameter] of dependent) {
          if (isUsed(parameter, values)) continue;
          const changed = { ...values, [key]: others[key] };
          if (problemsOf(kind, changed).length > 0) continue;
          idle++;
          const weigh = (of: Values) => [...sumSolids(solidsOf(kind, of), createMoments())];
          expect(weigh(changed), key).toEqual(weigh(values));
          expect(type.sockets(changed as never), key).toEqual(type.sockets(values as never));
        }
      }),
      { ...RUNS, numRuns: 60 },
    );
    expect(idle).toBeGreaterThan(10);
  });

  it('moves each handle with the parameter it names', () => {
    fc.assert(
      fc.property(validValues(kind), (values) => {
        for (const handle of type.handles(values as never)) expectToMove(kind, values, handle);
      }),
      RUNS,
    );
  });

  it('offers sockets in finite right-handed frames, each under its own name', () => {
    fc.assert(
      fc.property(validValues(kind), (values) => {
        const sockets = type.sockets(values as never);
        expect(new Set(sockets.map((socket) => socket.name)).size).toBe(sockets.length);
        for (const { pose, offsetRangeMm, defaultOffsetMm, label } of sockets) {
          const [a, b, c, d, e, f, g, h, i] = pose.rotation;
          const columns: Vec3[] = [
            [a, d, g],
            [b, e, h],
            [c, f, i],
          ];
          expect(length(subtract(cross(columns[0], columns[1]), columns[2]))).toBeLessThan(1e-15);
          for (const column of columns) expect(length(column)).toBeCloseTo(1, 15);
          expect(pose.translation.every(Number.isFinite)).toBe(true);
          expect(label).not.toBe('');
          expect(offsetRangeMm[0]).toBeLessThanOrEqual(defaultOffsetMm);
          expect(offsetRangeMm[1]).toBeGreaterThanOrEqual(defaultOffsetMm);
        }
        if (type.raisedBy) {
          expect(sockets.find((socket) => socket.name === type.raisedBy)?.stacks).toBe(true);
        }
      }),
      RUNS,
    );
  });
});

type Share = readonly [number, number, number];

function pointInBox(mesh: TriangleMesh, at: Share): Vec3 {
  const { low, high } = boxOf(mesh);
  const coordinate = (axis: 0 | 1 | 2) => low[axis] + at[axis] * (high[axis] - low[axis]);
  return [coordinate(0), coordinate(1), coordinate(2)];
}

/** Under a point of some triangle by 1/500 of the box's shortest side, where a thin overlap shows. */
function pointUnderSkin(mesh: TriangleMesh, at: Share): Vec3 {
  const { low, high } = boxOf(mesh);
  const count = mesh.triangles.length / 3;
  const triangle = 3 * Math.min(count - 1, Math.floor(at[0] * count));
  const [a, b, c] = [0, 1, 2].map((k): Vec3 => {
    const p = 3 * mesh.triangles[triangle + k];
    return [mesh.positions[p], mesh.positions[p + 1], mesh.positions[p + 2]];
  });
  const flat = cross(subtract(b, a), subtract(c, a));
  const depth = Math.min(...low.map((value, axis) => high[axis] - value)) / 500;
  const root = Math.sqrt(at[1]);
  const onFace = add(add(scale(a, 1 - root), scale(b, root * (1 - at[2]))), scale(c, root * at[2]));
  return add(onFace, scale(flat, -depth / (length(flat) || 1)));
}

/** Changes the handle's parameter a little and compares the way it went with what the handle promises. */
function expectToMove(kind: string, values: Values, handle: Handle): void {
  const key = handle.parameter;
  const component = handle.kind === 'linear' ? handle.component : undefined;
  const old = component === undefined ? (values[key] as number) : (values[key] as Vec3)[component];
  const change = 1e-3 * Math.max(1, Math.abs(old));
  let next: ParameterValue = old + change;
  if (component !== undefined) {
    const vector = [...(values[key] as Vec3)];
    vector[component] = old + change;
    next = vector as unknown as Vec3;
  }
  const moved = partType(kind)
    .handles({ ...values, [key]: next } as never)
    .find(
      (other) =>
        other.parameter === key &&
        (other.kind === 'linear' ? other.component : undefined) === component,
    );
  expect(moved, key).toBeDefined();
  const way = subtract((moved as Handle).position, handle.position);
  let expected: Vec3;
  if (handle.kind === 'linear') {
    expect(length(handle.direction), key).toBeCloseTo(1, 14);
    expected = scale(handle.direction, change / handle.perMm / 1000);
  } else {
    // A small turn, to second order: chord along axis x arm, shortened toward the axis.
    const angle = (handle.sense * change * Math.PI) / 180;
    const arm = subtract(handle.position, handle.centre);
    const across = cross(handle.axis, arm);
    const inward = cross(handle.axis, across);
    const [s, v] = [Math.sin(angle), 1 - Math.cos(angle)];
    expect(dot(handle.axis, arm), key).toBeCloseTo(0, 14);
    expected = [0, 1, 2].map((i) => s * across[i] + v * inward[i]) as unknown as Vec3;
  }
  const miss = length(subtract(way, expected));
  // Positions near one metre carry 2e-16 of rounding each; the way is a thousandth of a millimetre or more.
  expect(miss, key).toBeLessThanOrEqual(
    1e-9 * length(expected) + 1e-15 * Math.max(1e-3, length(handle.position)),
  );
}
