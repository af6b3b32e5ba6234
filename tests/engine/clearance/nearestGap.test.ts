import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { DEEP, WIDE } from '../../../src/engine/clearance/judge';
import { GripMotion } from '../../../src/engine/clearance/motion';
import {
  BUDGET,
  type Gap,
  nearestGap,
  placeKeepOut,
  TOLERANCE,
} from '../../../src/engine/clearance/nearestGap';
import { placeSurface } from '../../../src/engine/clearance/surface';
import { buildTree } from '../../../src/engine/clearance/triangleTree';
import { BruteMesh, gripMatrix, matrixOf, pointBy } from './bruteForce';
import { FLATS, meshOf, type RandomCase, randomCases } from './randomHeads';

vi.setConfig({ testTimeout: 300_000 });

const HEADS = 500;
/** Pitches and azimuths that the other hand looks at. */
const PITCHES = 7;
const AZIMUTHS = 6;
/** Of every solid at most so many points are looked at for the depth of an overlap. */
const POINTS = 120;
/** Its boxes and its distance between triangles are kept in single precision: 2^-24 of some 0.2 m, a few times over, m. */
const SINGLE = 1e-7;

interface Compared {
  readonly one: RandomCase;
  readonly gap: Gap;
  readonly parts: readonly BruteMesh[];
  readonly keepOut: BruteMesh;
  /** Distance of the meshes by the other hand. */
  distance(pitch: number, azimuth: number, beyond?: number): number;
  /** Points of the part's surface, and how deep the deepest of them lies in the keep-out's mesh. */
  deepest(pitch: number, azimuth: number): number;
}

function compare(one: RandomCase): Compared {
  const kept = placeKeepOut(one.shape, one.keepOutPose, one.fixedTo);
  const surface = placeSurface(buildTree(one.meshes), one.pose);
  const gap = nearestGap(surface, new GripMotion(one.rotor), kept, one);
  const parts = one.meshes.map((mesh) => new BruteMesh(mesh));
  const keepOut = new BruteMesh(meshOf(one.shape));
  const toKeepOut = matrixOf(one.keepOutPose).invert();
  const matrix = (pitch: number, azimuth: number) =>
    toKeepOut
      .clone()
      .multiply(gripMatrix(one.rotor, pitch, azimuth))
      .multiply(matrixOf(one.pose));
  return {
    one,
    gap,
    parts,
    keepOut,
    distance: (pitch, azimuth, beyond) =>
      Math.min(...parts.map((part) => keepOut.distanceTo(part, matrix(pitch, azimuth), beyond))),
    deepest(pitch, azimuth) {
      const move = matrix(pitch, azimuth);
      return Math.min(
        ...parts.flatMap((part) =>
          part.surfacePoints(POINTS).map((point) => keepOut.signedDistance(pointBy(move, point))),
        ),
      );
    },
  };
}

/** The other hand's cylinder has flats: it lies inside the true one by their sagitta at most. */
function sagitta({ shape }: RandomCase): number {
  return shape.shape === 'cylinder' ? shape.radius * (1 - Math.cos(Math.PI / FLATS)) : 0;
}

function grid({ low, high, fixedTo }: RandomCase): (readonly [number, number])[] {
  const turns = fixedTo === 'case' ? AZIMUTHS : 1;
  return Array.from({ length: PITCHES * turns }, (_, i) => [
    low + ((high - low) * (i % PITCHES)) / (PITCHES - 1),
    (2 * Math.PI * Math.floor(i / PITCHES)) / turns,
  ]);
}

describe('the gap of 500 random heads, against mesh distances by three-mesh-bvh', () => {
  const compared = fc
    .sample(randomCases, { seed: 20260, numRuns: HEADS })
    .map((one) => compare(one));
  const clear = compared.filter(({ gap }) => gap.meeting === 'clear');
  const cut = compared.filter(({ gap }) => gap.meeting === 'cut' && gap.gap < -1e-5);

  it('has clear ones and overlapping ones of every form enough to say something', () => {
    for (const shape of ['plane', 'box', 'cylinder', 'mesh']) {
      const of = (list: readonly Compared[]) =>
        list.filter(({ one }) => one.shape.shape === shape).length;
      expect(of(clear), shape).toBeGreaterThan(5);
      expect(of(cut), shape).toBeGreaterThan(15);
    }
  });

  it('is the distance between the meshes at the pitch and azimuth that it names, within its error', () => {
    for (const { one, gap, distance } of clear) {
      const there = distance(gap.pitch, gap.azimuth);
      const words = `${one.kind} ${one.shape.shape} ${one.fixedTo}`;
      expect(gap.gap, words).toBeGreaterThan(there - sagitta(one) - SINGLE);
      expect(gap.gap - gap.error, words).toBeLessThan(there + SINGLE);
    }
  });

  it('is not undercut at any pitch and azimuth of a grid, beyond its error', () => {
    let looked = 0;
    for (const { one, gap, distance } of clear) {
      const bound = gap.gap - gap.error - SINGLE;
      if (bound <= 0) continue;
      looked++;
      for (const [pitch, azimuth] of grid(one)) {
        const words = `${one.kind} ${one.shape.shape} ${one.fixedTo}`;
        expect(distance(pitch, azimuth, bound), words).toBeGreaterThanOrEqual(bound);
      }
    }
    expect(looked).toBeGreaterThan(150);
  });

  it('joins a point of the part with a point of the keep-out that far apart', () => {
    for (const { one, gap, parts, keepOut } of clear) {
      const onPart = pointBy(gripMatrix(one.rotor, gap.pitch, gap.azimuth), gap.onPart);
      const apart = Math.hypot(...onPart.map((value, i) => value - gap.onKeepOut[i]));
      expect(apart).toBeCloseTo(gap.gap, 12);
      const local = pointBy(matrixOf(one.pose).invert(), gap.onPart);
      const offPart = Math.min(...parts.map((part) => Math.abs(part.signedDistance(local))));
      expect(offPart).toBeLessThan(SINGLE);
      const k = pointBy(matrixOf(one.keepOutPose).invert(), gap.onKeepOut);
      expect(Math.abs(keepOut.signedDistance(k))).toBeLessThan(sagitta(one) + SINGLE);
    }
  });

  it('is an overlap where a point of the part lies as deep in the keep-out as it says', () => {
    for (const { one, gap, keepOut } of cut) {
      const at = pointBy(gripMatrix(one.rotor, gap.pitch, gap.azimuth), gap.onPart);
      const k = pointBy(matrixOf(one.keepOutPose).invert(), at);
      const depth = keepOut.signedDistance(k);
      const words = `${one.kind} ${one.shape.shape} ${one.fixedTo}`;
      // The other hand's plate is finite: what leaves it at the sides is not deep in it.
      if (one.shape.shape === 'plane' && Math.max(...k.map(Math.abs)) > 0.4) continue;
      expect(Math.abs(depth - gap.gap), words).toBeLessThan(sagitta(one) + SINGLE);
    }
  });

  it('is overlapped no deeper than it says by any corner or edge of the part on a grid', () => {
    for (const { one, gap, deepest } of cut) {
      const spots = grid(one).filter((_, i) => i % 13 === 0);
      const least = Math.min(...spots.map(([pitch, azimuth]) => deepest(pitch, azimuth)));
      expect(least, `${one.kind} ${one.shape.shape} ${one.fixedTo}`).toBeGreaterThan(
        gap.gap - gap.error - SINGLE,
      );
    }
  });

  it('is never called clear where the other hand finds an overlap on the grid', () => {
    for (const { one, gap, distance, deepest } of clear) {
      // What could not be proven apart is not called clear.
      if (gap.gap > 0.02 || gap.gap <= gap.error) continue;
      for (const [pitch, azimuth] of [0, 3, 6].map((i) => grid(one)[i])) {
        expect(distance(pitch, azimuth)).toBeGreaterThan(0);
        expect(deepest(pitch, azimuth)).toBeGreaterThan(0);
      }
    }
  });

  it('is proven to the tolerance, a small share of a wide gap or of a deep overlap', () => {
    const open = compared.filter(({ gap }) => {
      const share = gap.gap > 0 ? WIDE * gap.gap : DEEP * -gap.gap;
      return gap.error > Math.max(TOLERANCE, share) * (1 + 1e-9);
    });
    // Depth in a mesh is looked for by its own bound, to a twentieth or within a budget; a convex one always ends.
    const left = open.filter(({ one, gap }) => one.shape.shape !== 'mesh' || gap.gap > 0);
    // Round parts that lie along round keep-outs, all of it nearly as near: what is proven then is said, and is not bad.
    expect(Math.max(...left.map(({ gap }) => gap.error))).toBeLessThan(3e-4);
    expect(left.length).toBeLessThan(0.02 * HEADS);
    expect(Math.max(...compared.map(({ gap }) => gap.evaluations))).toBeLessThanOrEqual(
      BUDGET + 5000,
    );
  });

  it('is bounded truly however early the search is broken off', () => {
    for (const { one, gap } of compared) {
      if (gap.meeting === 'keepOutInside' || one.shape.shape === 'mesh') continue;
      const kept = placeKeepOut(one.shape, one.keepOutPose, one.fixedTo);
      const surface = placeSurface(buildTree(one.meshes), one.pose);
      for (const budget of [5, 25, 120, 600]) {
        const early = nearestGap(surface, new GripMotion(one.rotor), kept, one, TOLERANCE, budget);
        if (early.meeting === 'keepOutInside') continue;
        // A point was found that far away: no bound may lie above it.
        const words = `${one.kind} ${one.shape.shape} ${one.fixedTo} ${budget}`;
        expect(early.gap - early.error, words).toBeLessThanOrEqual(gap.gap + 1e-12);
      }
    }
  });

  it('does not change when head and keep-out of the case are turned about the shaft together', () => {
    for (const { one, gap } of compared.slice(0, 40)) {
      if (one.fixedTo !== 'case') continue;
      const turn = 0.7;
      const turned = pointBy(
        gripMatrix({ ...one.rotor, torqueOffset: 0, precone: 0 as never }, 0, turn),
        one.keepOutPose.translation,
      );
      const pose = {
        rotation: turnedColumns(one, turn),
        translation: turned,
      };
      const again = compare({ ...one, keepOutPose: pose });
      expect(Math.abs(again.gap.gap - gap.gap)).toBeLessThanOrEqual(
        gap.error + again.gap.error + 1e-12,
      );
    }
  });
});

function turnedColumns({ keepOutPose }: RandomCase, turn: number) {
  const r = keepOutPose.rotation;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const rows: number[] = [];
  for (let k = 0; k < 3; k++) rows[k] = c * r[k] - s * r[3 + k];
  for (let k = 0; k < 3; k++) rows[3 + k] = s * r[k] + c * r[3 + k];
  for (let k = 6; k < 9; k++) rows[k] = r[k];
  return rows as unknown as RandomCase['keepOutPose']['rotation'];
}
