import { AT_HIGH, AT_LOW, AT_MIDDLE, type Motion, type Where } from './motion';
import {
  BOUND,
  BY_AZIMUTH,
  BY_PIECE,
  BY_PITCH,
  BY_TARGET,
  CORNERS,
  FROM,
  HIGH,
  KEY,
  LEVEL,
  LOW,
  NODE,
  type Rows,
  SPLIT,
  TARGET,
  TO,
} from './rows';
import type { PlacedSurface } from './surface';
import type { Target } from './target';

/** A wide gap is proven to this share of itself: nobody needs a hundredth of a millimetre of thirty. */
export const WIDE = 4e-3;
/** And the depth of an overlap to this one. */
export const DEEP = 0.02;

/**
 * Among rows of one bound the large ones come first, or, where surfaces of triangles cross and every piece about the
 * crossing is bounded by zero, the small ones, so that one is followed to its end: by so much a halving, m. It takes a
 * tenth of a micrometre off what is proven.
 */
const STEP = 1e-10;
const LEVELS = 1000;

/**
 * Works out the bound of a row of `ClearanceSearch` (see there for what it rests on), says what to halve next, and keeps the
 * nearest point of the surface that it has met. Written to be asked a million times: nothing is allocated.
 */
export class RowJudge {
  best = Infinity;
  bestPitch = 0;
  bestAzimuth = 0;
  readonly bestPoint = new Float64Array(3);
  /** What a bound may lie below the best and be done with: the tolerance, or a share of a wide gap. */
  allowed = 0;
  evaluations = 0;
  private readonly point = new Float64Array(3);
  private readonly found = new Float64Array(4);
  private readonly facing = new Float64Array(3);
  private readonly place = new Float64Array(3);
  private surface!: PlacedSurface;
  private motion!: Motion;
  private target!: Target;
  private tolerance = 0;
  // Direction toward which the least of a row lies, and its interval of azimuth: set by `judge`.
  private nx = 0;
  private ny = 0;
  private nz = 0;
  private across = 0;
  private azimuth = 0;
  private cosTurn = 1;
  private sinTurn = 0;
  private chord = 0;

  constructor(private readonly rows: Rows) {}

  /** Until a point has been looked at, the nearest one is the surface's first corner at `pitch`, how near is not known. */
  begin(
    surface: PlacedSurface,
    motion: Motion,
    target: Target,
    tolerance: number,
    pitch: number,
  ): void {
    this.surface = surface;
    this.motion = motion;
    this.target = target;
    this.tolerance = tolerance;
    this.allowed = tolerance;
    this.best = Infinity;
    this.bestPitch = pitch;
    this.bestAzimuth = 0;
    this.bestPoint.set(surface.corners.subarray(0, 3));
    this.evaluations = 0;
  }

  /** Works out a row's bound and what to halve next, and looks at the distance at its most promising points. */
  judge(row: number): void {
    this.evaluations++;
    const v = this.rows.values;
    const { motion } = this;
    motion.aim(v[row + LOW], v[row + HIGH]);
    const isTriangle = v[row + NODE] < 0;
    this.middle(row, isTriangle);
    const x = this.point[0];
    const y = this.point[1];
    const z = this.point[2];
    this.azimuth = (v[row + FROM] + v[row + TO]) / 2;
    const halfTurn = (v[row + TO] - v[row + FROM]) / 2;
    this.cosTurn = Math.cos(halfTurn);
    this.sinTurn = Math.sin(halfTurn);
    this.chord = 2 * Math.sin(halfTurn / 2);
    const distance = this.distanceAt(row, AT_MIDDLE, this.azimuth, x, y, z);
    if (isTriangle) this.note(row, distance, AT_MIDDLE, this.azimuth, x, y, z);
    // The gradient in the rotor frame at the middle azimuth.
    const c = Math.cos(this.azimuth);
    const s = Math.sin(this.azimuth);
    this.nx = c * this.found[1] + s * this.found[2];
    this.ny = c * this.found[2] - s * this.found[1];
    this.nz = this.found[3];
    this.across = Math.sqrt(this.nx * this.nx + this.ny * this.ny);
    motion.face(this.nx, this.ny, this.nz, this.facing);
    if (isTriangle) this.boundTriangle(row, distance, halfTurn, x, y, z);
    else this.boundNode(row, distance, halfTurn, x, y, z);
  }

  /** Middle of a row's piece, C. */
  private middle(row: number, isTriangle: boolean): void {
    const v = this.rows.values;
    const { point, surface } = this;
    for (let k = 0; k < 3; k++) {
      const a = row + CORNERS + k;
      point[k] = isTriangle
        ? (v[a] + v[a + 3] + v[a + 6]) / 3
        : surface.centres[3 * v[row + NODE] + k];
    }
  }

  /** Distance of a point of the part from the row's target; leaves the gradient (F) in `found`. */
  private distanceAt(
    row: number,
    where: Where,
    azimuth: number,
    x: number,
    y: number,
    z: number,
  ): number {
    const p = this.place;
    this.motion.place(where, x, y, z, p);
    const c = azimuth === 0 ? 1 : Math.cos(azimuth);
    const s = azimuth === 0 ? 0 : Math.sin(azimuth);
    const px = c * p[0] - s * p[1];
    const py = s * p[0] + c * p[1];
    this.target.distance(this.rows.values[row + TARGET], px, py, p[2], this.found);
    return this.found[0];
  }

  /** Remembers a point of the surface that is nearer than any before it; a box about triangles of a mesh is no keep-out. */
  private note(
    row: number,
    distance: number,
    where: Where,
    azimuth: number,
    x: number,
    y: number,
    z: number,
  ): void {
    const v = this.rows.values;
    if (v[row + TARGET] >= 0 || distance >= this.best) return;
    const middle = (v[row + LOW] + v[row + HIGH]) / 2;
    this.best = distance;
    this.allowed = Math.max(this.tolerance, distance > 0 ? WIDE * distance : -DEEP * distance);
    this.bestPitch = where === AT_LOW ? v[row + LOW] : where === AT_HIGH ? v[row + HIGH] : middle;
    this.bestAzimuth = azimuth;
    this.bestPoint[0] = x;
    this.bestPoint[1] = y;
    this.bestPoint[2] = z;
  }

  private boundTriangle(
    row: number,
    distance: number,
    halfTurn: number,
    x: number,
    y: number,
    z: number,
  ): void {
    const { motion, facing } = this;
    const v = this.rows.values;
    const fx = facing[0];
    const fy = facing[1];
    const fz = facing[2];
    const here = fx * x + fy * y + fz * z;
    let least = Infinity;
    let size = 0;
    let reach = 0;
    let turning = 0;
    let corner = 0;
    for (let k = 0; k < 9; k += 3) {
      const a = row + CORNERS + k;
      const px = v[a];
      const py = v[a + 1];
      const pz = v[a + 2];
      const along = fx * px + fy * py + fz * pz - here;
      const turned = halfTurn > 0 ? this.turnLoss(px, py, pz) : 0;
      const gain = along + motion.leastGain(px, py, pz) - turned;
      if (gain < least) {
        least = gain;
        corner = a;
      }
      size = Math.max(size, (px - x) ** 2 + (py - y) ** 2 + (pz - z) ** 2);
      reach = Math.max(reach, motion.reach(px, py, pz));
      turning = Math.max(turning, turned);
    }
    const piece = this.target.flat ? 0 : Math.sqrt(size);
    this.settle(row, distance + least, piece, reach, halfTurn, turning);
    if (v[row + BOUND] >= this.best - this.allowed) return;
    this.tryCorner(row, halfTurn, v[corner], v[corner + 1], v[corner + 2]);
  }

  private boundNode(
    row: number,
    distance: number,
    halfTurn: number,
    x: number,
    y: number,
    z: number,
  ): void {
    const { motion, surface, facing } = this;
    const v = this.rows.values;
    const h = 3 * v[row + NODE];
    const { halves } = surface.tree;
    const hx = halves[h];
    const hy = halves[h + 1];
    const hz = halves[h + 2];
    const fx = facing[0];
    const fy = facing[1];
    const fz = facing[2];
    const r = surface.axes;
    const support =
      hx * Math.abs(fx * r[0] + fy * r[3] + fz * r[6]) +
      hy * Math.abs(fx * r[1] + fy * r[4] + fz * r[7]) +
      hz * Math.abs(fx * r[2] + fy * r[5] + fz * r[8]);
    const radius = Math.sqrt(hx * hx + hy * hy + hz * hz);
    const piece = Math.min(radius, support + radius * motion.lean());
    let gain = motion.leastGain(x, y, z) - piece;
    const reach = motion.reach(x, y, z);
    let turning = 0;
    if (halfTurn > 0) {
      turning = this.turnLoss(x, y, z) + radius * this.across * this.chord;
      gain -= turning;
    }
    this.settle(row, distance + gain, radius, reach, halfTurn, turning);
  }

  /**
   * What azimuth may take off n . p of a point within the row's interval of it: exact for the point at the middle pitch,
   * and what pitch moves it besides.
   */
  private turnLoss(x: number, y: number, z: number): number {
    if (this.across === 0) return 0;
    const p = this.place;
    this.motion.place(AT_MIDDLE, x, y, z, p);
    const now = this.nx * p[0] + this.ny * p[1];
    const slope = this.ny * p[0] - this.nx * p[1];
    const whole = Math.sqrt(now * now + slope * slope);
    const within = -now >= whole * this.cosTurn;
    const least = within ? -whole : now * this.cosTurn - Math.abs(slope) * this.sinTurn;
    return now - least + this.across * this.chord * this.motion.levelReach(x, y, z);
  }

  /** Writes bound and next cut: across whatever is largest. */
  private settle(
    row: number,
    bound: number,
    piece: number,
    reach: number,
    halfTurn: number,
    turning: number,
  ): void {
    const v = this.rows.values;
    // What held for the whole holds for its part.
    if (bound > v[row + BOUND]) v[row + BOUND] = bound;
    if (this.target.floor > v[row + BOUND]) v[row + BOUND] = this.target.floor;
    const level = ++v[row + LEVEL];
    v[row + KEY] = v[row + BOUND] - STEP * (this.target.tree ? level : LEVELS - level);
    const target = this.target.size(v[row + TARGET]);
    const isBox = v[row + TARGET] >= 0;
    // A plane sees only what azimuth does along its normal; anything round or cornered turns its gradient too.
    const swing = halfTurn === 0 ? 0 : this.target.flat ? turning : this.swing(halfTurn);
    let split = BY_PIECE;
    let most = piece;
    if (reach > most) {
      split = BY_PITCH;
      most = reach;
    }
    if (swing > most) {
      split = BY_AZIMUTH;
      most = swing;
    }
    if (isBox && target >= most) split = BY_TARGET;
    v[row + SPLIT] = split;
  }

  /** How far azimuth moves the middle of a row. */
  private swing(halfTurn: number): number {
    const p = this.place;
    this.motion.place(AT_MIDDLE, this.point[0], this.point[1], this.point[2], p);
    return halfTurn * Math.sqrt(p[0] * p[0] + p[1] * p[1]);
  }

  /** The corner that leans farthest toward the keep-out, at the end of pitch and azimuth that brings it nearer. */
  private tryCorner(row: number, halfTurn: number, x: number, y: number, z: number): void {
    const v = this.rows.values;
    if (v[row + TARGET] >= 0) return;
    const { motion, place: p } = this;
    let where: Where = AT_MIDDLE;
    let near = Infinity;
    let slope = 0;
    let radius = 0;
    for (let end: Where = AT_LOW; end <= AT_HIGH; end++) {
      motion.place(end as Where, x, y, z, p);
      const there = this.nx * p[0] + this.ny * p[1] + this.nz * p[2];
      if (there >= near) continue;
      near = there;
      where = end as Where;
      slope = this.ny * p[0] - this.nx * p[1];
      radius = p[0] * p[0] + p[1] * p[1];
    }
    let { azimuth } = this;
    // n . p falls with azimuth where its slope is negative: to the end, or to where the slope is used up.
    if (halfTurn > 0 && this.across > 0) {
      const stop = Math.abs(slope) / (this.across * Math.sqrt(radius) + 1e-300);
      azimuth -= Math.sign(slope) * Math.min(halfTurn, stop);
    }
    this.note(row, this.distanceAt(row, where, azimuth, x, y, z), where, azimuth, x, y, z);
  }
}
