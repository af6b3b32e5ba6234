import type { Equilibria } from '../../engine/feathering/equilibria';
import { degreesFromRadians } from '../../engine/units';

/**
 * The force fan: the size of the push-rod force (or of the moment, where there is no arm) against pitch, bent round
 * the feathering axis.
 *
 * A base arc stands for zero. *Home* is the equilibrium nearest flat pitch, whichever kind it is: a grip that centres
 * has a rest angle there, one that runs away has a flee angle there. The curve lies outside the base arc where the
 * moment drives the grip toward home and inside where it drives it away from home. So a fan that bulges is a grip
 * that comes back, one that is hollowed out is a grip that flees, and one that lies on its arc stays where it is put.
 */

/** Pitch that the fan takes as home, degrees; flat where the head is neutral or has no equilibrium. */
export function homePitch(equilibria: Equilibria): number {
  if (equilibria.kind === 'neutral') return 0;
  let home: number | null = null;
  let homeIsRest = false;
  for (const root of equilibria.roots) {
    const pitch = degreesFromRadians(root.pitch);
    const nearer = home === null ? 1 : Math.abs(home) - Math.abs(pitch);
    // Of two equally near, the rest angle.
    if (nearer > 1e-9 || (nearer > -1e-9 && root.kind === 'stable' && !homeIsRest)) {
      home = pitch;
      homeIsRest = root.kind === 'stable';
    }
  }
  return home ?? 0;
}

/** How far in and out the curve may go, as shares of the reach at full scale. */
export const FAN_RIM = 1.15;

/**
 * Signed excursion of the curve from the base arc, in units of full scale: positive outward. `size` is |force| or
 * |moment|. Cut off at the rim, where a force grows without limit toward over-centre; NaN where `size` is none.
 */
export function fanExcursion(
  moment: number,
  size: number,
  pitchDeg: number,
  homeDeg: number,
  fullScale: number,
): number {
  if (!(size >= 0) || !(fullScale > 0)) return Number.NaN;
  const towardHome = Math.sign(moment) * Math.sign(homeDeg - pitchDeg);
  const cut = Math.min(FAN_RIM, size / fullScale);
  return towardHome === 0 ? 0 : towardHome * cut;
}

/** Radii of a fan, mm. */
export interface FanSize {
  readonly base: number;
  /** Excursion at full scale. */
  readonly reach: number;
}

/**
 * Base radius and reach for a grip whose parts stay within `clearance` of the feathering axis: the base arc passes
 * outside the parts, and only a curve near full scale inward comes between them.
 */
export function fanSize(clearance: number): FanSize {
  const reach = 0.5 * clearance;
  return { base: clearance + 0.6 * reach, reach };
}

/**
 * Fills one side of the fan (`side` 1: outward, -1: inward) as a strip of 2 points a sample, base arc first, into
 * `positions` (xyz, in the fan's plane: x = 0, y toward the leading edge at flat pitch, z up). Samples on the other
 * side, and gaps, lie on the base arc.
 */
export function fillFanStrip(
  positions: Float32Array,
  angles: Float64Array,
  excursions: Float64Array,
  size: FanSize,
  side: 1 | -1,
): void {
  for (let i = 0; i < angles.length; i++) {
    const angle = (angles[i] * Math.PI) / 180;
    const e = excursions[i];
    const radius = e * side > 0 ? size.base + e * size.reach : size.base;
    const c = Math.cos(angle);
    const s = Math.sin(angle);
    positions[6 * i + 1] = size.base * c;
    positions[6 * i + 2] = size.base * s;
    positions[6 * i + 4] = radius * c;
    positions[6 * i + 5] = radius * s;
  }
}

/** Triangle indices of a strip of `count` samples. */
export function stripTriangles(count: number): Uint16Array {
  const triangles = new Uint16Array(6 * (count - 1));
  for (let i = 0; i < count - 1; i++) {
    const a = 2 * i;
    triangles.set([a, a + 1, a + 3, a, a + 3, a + 2], 6 * i);
  }
  return triangles;
}

/** Of every `DASH_PERIOD` samples of an inward edge, the first `DASH_ON` are drawn: dashed without a pattern. */
const DASH_PERIOD = 4;
const DASH_ON = 3;

/**
 * Fills the edge of one side as line segments (6 numbers each): solid outward, dashed inward. Returns how many.
 * Stretches at the rim are left open: the force goes on beyond them.
 */
export function fillFanEdge(
  segments: Float32Array,
  angles: Float64Array,
  excursions: Float64Array,
  size: FanSize,
  side: 1 | -1,
): number {
  let count = 0;
  for (let i = 0; i + 1 < angles.length; i++) {
    const from = excursions[i];
    const to = excursions[i + 1];
    if (!belongs(from, to, side)) continue;
    if (side < 0 && i % DASH_PERIOD >= DASH_ON) continue;
    writePoint(segments, 6 * count, angles[i], size.base + clip(from, side) * size.reach);
    writePoint(segments, 6 * count + 3, angles[i + 1], size.base + clip(to, side) * size.reach);
    count++;
  }
  return count;
}

/** A held stretch is drawn in steps of at most this many degrees. */
const HELD_STEP_DEG = 3;
/** How far inside the base arc a bracket lies, as a share of the reach: a held force is small and leaves it free. */
const HELD_INSIDE = 0.25;

/** How many segments `fillHeld` may need. */
export function heldRoom(bandsDeg: readonly (readonly [number, number])[]): number {
  let count = 0;
  for (const [from, to] of bandsDeg) count += heldSteps(from, to) + 2;
  return count;
}

/**
 * Fills brackets just inside the base arc round the pitches where friction holds the grip (6 numbers a segment): an arc and
 * a stroke out to the base arc at either end. Returns how many segments.
 */
export function fillHeld(
  segments: Float32Array,
  bandsDeg: readonly (readonly [number, number])[],
  size: FanSize,
): number {
  let count = 0;
  const radius = size.base - HELD_INSIDE * size.reach;
  for (const [from, to] of bandsDeg) {
    const steps = heldSteps(from, to);
    for (let i = 0; i < steps; i++) {
      writePoint(segments, 6 * count, from + ((to - from) * i) / steps, radius);
      writePoint(segments, 6 * count + 3, from + ((to - from) * (i + 1)) / steps, radius);
      count++;
    }
    for (let i = 0; i < 2; i++) {
      const pitchDeg = i === 0 ? from : to;
      writePoint(segments, 6 * count, pitchDeg, radius);
      writePoint(segments, 6 * count + 3, pitchDeg, size.base);
      count++;
    }
  }
  return count;
}

function heldSteps(from: number, to: number): number {
  return Math.max(1, Math.ceil((to - from) / HELD_STEP_DEG));
}

function belongs(from: number, to: number, side: 1 | -1): boolean {
  if (!Number.isFinite(from) || !Number.isFinite(to)) return false;
  const a = from * side;
  const b = to * side;
  if (a >= FAN_RIM && b >= FAN_RIM) return false;
  return a > 0 || b > 0;
}

function clip(excursion: number, side: 1 | -1): number {
  return excursion * side > 0 ? excursion : 0;
}

function writePoint(out: Float32Array, at: number, pitchDeg: number, radius: number): void {
  const angle = (pitchDeg * Math.PI) / 180;
  out[at] = 0;
  out[at + 1] = radius * Math.cos(angle);
  out[at + 2] = radius * Math.sin(angle);
}
