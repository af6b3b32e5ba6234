import type { RotorConditions } from '../feathering/rotor';

/** Which pitch of an interval. */
export type Where = 0 | 1 | 2;
export const AT_LOW = 0;
export const AT_MIDDLE = 1;
export const AT_HIGH = 2;

/**
 * How the points of a part move with the pitch. Points are given in the frame that carries them (C), m; the rotor frame is
 * R. `aim` chooses an interval of pitch; everything else is about that interval or its middle. Written to be asked a
 * million times: nothing is allocated.
 */
export interface Motion {
  /** Pitches from `low` to `high`, rad. */
  aim(low: number, high: number): void;
  /** A point at the interval's low end, middle or high end, R. */
  place(where: Where, x: number, y: number, z: number, out: Float64Array): void;
  /** Fixes a direction n (R) for `leastGain` and `lean`, and gives n at the middle in C. */
  face(nx: number, ny: number, nz: number, out_C: Float64Array): void;
  /** A lower bound of n . p(t) - n . p(middle) over the interval. */
  leastGain(x: number, y: number, z: number): number;
  /** How far a point may be at most from where it is at the middle; and how far seen along the shaft. */
  reach(x: number, y: number, z: number): number;
  levelReach(x: number, y: number, z: number): number;
  /**
   * A bound of |n . (R(t) - R(middle)) q| for |q| = 1 over the interval: what turning adds along n to a piece of size 1.
   */
  lean(): number;
}

/** Parts that turn with the grip: C is the grip frame. Bounds along a direction are exact. */
export class GripMotion implements Motion {
  private readonly cosTilt: number;
  private readonly sinTilt: number;
  private readonly offset: number;
  private low = 0;
  private high = 0;
  private cosLow = 1;
  private sinLow = 0;
  private cosHigh = 1;
  private sinHigh = 0;
  private cosMid = 1;
  private sinMid = 0;
  /** n in the tilted frame of the feathering axis, across it. */
  private ny = 0;
  private nz = 0;

  constructor(rotor: RotorConditions) {
    this.cosTilt = Math.cos(rotor.precone);
    this.sinTilt = Math.sin(rotor.precone);
    this.offset = rotor.torqueOffset;
  }

  aim(low: number, high: number): void {
    if (low === this.low && high === this.high) return;
    this.low = low;
    this.high = high;
    const middle = (low + high) / 2;
    this.cosLow = Math.cos(low);
    this.sinLow = Math.sin(low);
    this.cosHigh = Math.cos(high);
    this.sinHigh = Math.sin(high);
    this.cosMid = Math.cos(middle);
    this.sinMid = Math.sin(middle);
  }

  place(where: Where, x: number, y: number, z: number, out: Float64Array): void {
    if (where === AT_MIDDLE) this.put(this.cosMid, this.sinMid, x, y, z, out);
    else if (where === AT_LOW) this.put(this.cosLow, this.sinLow, x, y, z, out);
    else this.put(this.cosHigh, this.sinHigh, x, y, z, out);
  }

  private put(c: number, s: number, x: number, y: number, z: number, out: Float64Array): void {
    const h = y * c - z * s;
    const k = y * s + z * c;
    out[0] = x * this.cosTilt - k * this.sinTilt;
    out[1] = this.offset + h;
    out[2] = x * this.sinTilt + k * this.cosTilt;
  }

  face(nx: number, ny: number, nz: number, out_C: Float64Array): void {
    this.ny = ny;
    this.nz = nz * this.cosTilt - nx * this.sinTilt;
    out_C[0] = nx * this.cosTilt + nz * this.sinTilt;
    out_C[1] = this.ny * this.cosMid + this.nz * this.sinMid;
    out_C[2] = this.nz * this.cosMid - this.ny * this.sinMid;
  }

  /** n . p(t) = const + b cos t + c sin t, so its least value over the interval is known. */
  leastGain(_x: number, y: number, z: number): number {
    const b = this.ny * y + this.nz * z;
    const c = this.nz * y - this.ny * z;
    const now = b * this.cosMid + c * this.sinMid;
    const afterLow = b * this.sinLow - c * this.cosLow >= 0;
    const beforeHigh = c * this.cosHigh - b * this.sinHigh >= 0;
    if (afterLow && beforeHigh) return -Math.sqrt(b * b + c * c) - now;
    const atLow = b * this.cosLow + c * this.sinLow;
    const atHigh = b * this.cosHigh + c * this.sinHigh;
    return Math.min(atLow, atHigh) - now;
  }

  reach(_x: number, y: number, z: number): number {
    return (Math.sqrt(y * y + z * z) * (this.high - this.low)) / 2;
  }

  levelReach(_x: number, y: number, z: number): number {
    const h = Math.abs(y * this.cosMid - z * this.sinMid);
    const k = Math.abs(y * this.sinMid + z * this.cosMid);
    const half = (this.high - this.low) / 2;
    // Y changes with k, X only where the axis is tilted; 1 - cos is below half the square.
    const bow = (half * half) / 2;
    return k * half + h * bow + Math.abs(this.sinTilt) * (h * half + k * bow);
  }

  lean(): number {
    return (Math.sqrt(this.ny * this.ny + this.nz * this.nz) * (this.high - this.low)) / 2;
  }
}
