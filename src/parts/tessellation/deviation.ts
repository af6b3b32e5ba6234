import { airfoilHalfThickness } from '../../engine/mass/airfoil';
import type { AirfoilLoft, Outline, SectionLoft, Solid } from '../../engine/mass/solid';

/**
 * How far the triangles of a solid at `segmentsPerTurn` lie from its true surface at most, m: the sagitta of chords under
 * arcs and round walls, and a quarter of the diagonal gap where a panel is twisted. 0 for what has plane sides or is
 * triangles itself. Of an airfoil's section the curve is looked at in sixteen points of each chord, with a tenth on top.
 */
export function surfaceDeviation({ shape }: Solid, segmentsPerTurn: number): number {
  const turn = 1 - Math.cos(Math.PI / segmentsPerTurn);
  switch (shape.shape) {
    case 'revolution':
      return largestRadius(shape.profile) * turn + arcSagitta(shape.profile, segmentsPerTurn);
    case 'prism':
      return Math.max(
        arcSagitta(shape.outer, segmentsPerTurn),
        ...shape.holes.map((hole) => arcSagitta(hole, segmentsPerTurn)),
      );
    case 'airfoilLoft':
      return airfoilDeviation(shape, segmentsPerTurn);
    case 'sectionLoft':
      return twistDeviation(shape, segmentsPerTurn);
    default:
      return 0;
  }
}

/** An arc's points reach no farther out than its ends by more than its own chord. */
function largestRadius(profile: Outline): number {
  return profile.reduce((most, [radius, z, bulge = 0], i) => {
    const [nextRadius, nextZ] = profile[(i + 1) % profile.length];
    const rise = (Math.abs(bulge) * Math.hypot(nextRadius - radius, nextZ - z)) / 2;
    return Math.max(most, Math.max(radius, nextRadius) + rise);
  }, 0);
}

/** Largest sagitta of the chords that `flatten` lays under an outline's arcs. */
function arcSagitta(outline: Outline, segmentsPerTurn: number): number {
  return outline.reduce((most, [x, y, bulge = 0], i) => {
    if (bulge === 0) return most;
    const [nextX, nextY] = outline[(i + 1) % outline.length];
    const half = 2 * Math.atan(Math.abs(bulge));
    const radius = Math.hypot(nextX - x, nextY - y) / 2 / Math.sin(half);
    const chords = Math.max(2, Math.ceil((segmentsPerTurn * half) / Math.PI - 1e-9));
    return Math.max(most, radius * (1 - Math.cos(half / chords)));
  }, 0);
}

const LOOKS = 16;

/** The section's chords as `loftSurface` lays them, and the twist of its panels. */
function airfoilDeviation({ root, tip }: AirfoilLoft, segmentsPerTurn: number): number {
  const panels = 2 * Math.max(4, Math.ceil(segmentsPerTurn / 4));
  const at = (k: number) => (1 - Math.cos((Math.PI * k) / panels)) / 2;
  let most = 0;
  for (let k = 0; k < panels; k++) {
    const [s0, s1] = [at(k), at(k + 1)];
    const twist =
      Math.abs(
        (tip.thickness - root.thickness) * (airfoilHalfThickness(s1) - airfoilHalfThickness(s0)),
      ) / 4;
    const sweep = (Math.abs(tip.chord - root.chord) * (s1 - s0)) / 4;
    for (const { chord, thickness } of [root, tip]) {
      const bow = bowOver(s0, s1, chord, thickness);
      most = Math.max(most, 1.1 * bow + Math.hypot(twist, sweep));
    }
  }
  return most;
}

/** Greatest distance of the section between two chord fractions from the straight line between its ends. */
function bowOver(s0: number, s1: number, chord: number, thickness: number): number {
  const z0 = thickness * airfoilHalfThickness(s0);
  const z1 = thickness * airfoilHalfThickness(s1);
  const [dx, dz] = [chord * (s1 - s0), z1 - z0];
  const length = Math.hypot(dx, dz);
  let most = 0;
  for (let i = 1; i < LOOKS; i++) {
    // Denser toward the nose, where the curve is steepest.
    const s = s0 + (s1 - s0) * (i / LOOKS) ** 2;
    const off = dx * (thickness * airfoilHalfThickness(s) - z0) - dz * chord * (s - s0);
    most = Math.max(most, Math.abs(off) / length);
  }
  return most;
}

/** The polygons are the shape itself; only panels that turn from root to tip leave their two triangles. */
function twistDeviation({ root, tip }: SectionLoft, segmentsPerTurn: number): number {
  const pieces = 2 * Math.max(1, Math.round(segmentsPerTurn / 24));
  const count = root.corners.length;
  const change = (i: number) => tip.corners[i % count] - root.corners[i % count];
  let most = 0;
  for (let i = 0; i < count; i += 2) {
    const gap = Math.hypot(change(i + 2) - change(i), change(i + 3) - change(i + 1));
    most = Math.max(most, gap / (4 * pieces));
  }
  return most;
}
