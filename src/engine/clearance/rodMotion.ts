import type { RotorConditions } from '../feathering/rotor';
import { createLinkState, type Linkage, linkState } from '../linkage/linkage';
import { rodRotation } from '../linkage/rodPose';
import { IDENTITY, type Mat3 } from '../math/vector';
import { radians } from '../units';
import { AT_MIDDLE, type Motion, type Where } from './motion';

/** The least turn from the base onto the rod's line also twists: by at most tan(tilt / 2) of it, below 1 up to 90 degrees. */
const TWIST = Math.SQRT2;

/**
 * The push rod: C is its own part frame, origin on the arm's ball, z along the rod. Its orientation is the one drawn
 * (`rodRotation`). Both balls bound its axis: the arm's ball goes round the feathering axis, the slider's along the shaft,
 * one way only between the ends of the working range, within which `aim` must stay. `base` is its rotation at flat pitch.
 */
export class RodMotion implements Motion {
  private readonly state = createLinkState();
  private low = Number.NaN;
  private high = Number.NaN;
  private readonly length: number;
  private readonly ball: readonly [Float64Array, Float64Array, Float64Array];
  private readonly slider = new Float64Array(3);
  private readonly rotation: [Mat3, Mat3, Mat3] = [IDENTITY, IDENTITY, IDENTITY];
  private swing = 0;
  private leastBall = 0;
  private mostBall = 0;
  private leastSlider = 0;
  private mostSlider = 0;
  private ballNow = 0;
  private sliderNow = 0;

  constructor(
    private readonly linkage: Linkage,
    private readonly rotor: RotorConditions,
    private readonly base: Mat3,
  ) {
    if (linkage.length === null) throw new Error('RodMotion(): linkage has no length');
    this.length = linkage.length;
    this.ball = [new Float64Array(3), new Float64Array(3), new Float64Array(3)];
  }

  aim(low: number, high: number): void {
    if (low === this.low && high === this.high) return;
    this.low = low;
    this.high = high;
    const pitches = [low, (low + high) / 2, high];
    for (let i = 0; i < 3; i++) {
      const found = linkState(this.linkage, this.rotor, radians(pitches[i]), this.state);
      this.ball[i].set(found.ball);
      this.slider[i] = found.sliderZ;
      this.rotation[i] = this.turned();
    }
    const away = Math.max(
      Math.abs(this.slider[0] - this.slider[1]),
      Math.abs(this.slider[2] - this.slider[1]),
    );
    this.swing = Math.min(2, (TWIST * (this.ballReach() + away)) / this.length);
  }

  private turned(): Mat3 {
    const [x, y, z] = this.state.axis;
    return rodRotation(this.base, [x, y, z]);
  }

  private ballReach(): number {
    return (this.state.reach * (this.high - this.low)) / 2;
  }

  place(where: Where, x: number, y: number, z: number, out: Float64Array): void {
    const r = this.rotation[where];
    const p = this.ball[where];
    out[0] = p[0] + r[0] * x + r[1] * y + r[2] * z;
    out[1] = p[1] + r[3] * x + r[4] * y + r[5] * z;
    out[2] = p[2] + r[6] * x + r[7] * y + r[8] * z;
  }

  face(nx: number, ny: number, nz: number, out_C: Float64Array): void {
    const r = this.rotation[AT_MIDDLE];
    out_C[0] = r[0] * nx + r[3] * ny + r[6] * nz;
    out_C[1] = r[1] * nx + r[4] * ny + r[7] * nz;
    out_C[2] = r[2] * nx + r[5] * ny + r[8] * nz;
    const across = nx * this.linkage.sliderX + ny * this.linkage.sliderY;
    const a = across + nz * this.slider[0];
    const b = across + nz * this.slider[2];
    this.sliderNow = across + nz * this.slider[1];
    this.leastSlider = Math.min(a, b);
    this.mostSlider = Math.max(a, b);
    const atLow = along(this.ball[0], nx, ny, nz);
    const now = along(this.ball[1], nx, ny, nz);
    const atHigh = along(this.ball[2], nx, ny, nz);
    this.ballNow = now;
    // A circle of the ball's radius leaves its chord by no more than r (1 - cos(half the interval)).
    const bow = this.state.reach * (1 - Math.cos((this.high - this.low) / 2));
    this.leastBall = Math.min(atLow, now, atHigh) - bow;
    this.mostBall = Math.max(atLow, now, atHigh) + bow;
  }

  leastGain(x: number, y: number, z: number): number {
    // Along the axis a point lies at a fixed share between the balls, beyond them in the cups.
    const s = (this.linkage.side * z * this.sense()) / this.length;
    const ball = (1 - s) * ((s <= 1 ? this.leastBall : this.mostBall) - this.ballNow);
    const slider = s * ((s >= 0 ? this.leastSlider : this.mostSlider) - this.sliderNow);
    return ball + slider - Math.sqrt(x * x + y * y) * this.swing;
  }

  /** +1 where the part's z runs as the shaft's does at flat pitch. */
  private sense(): 1 | -1 {
    return this.base[8] < 0 ? -1 : 1;
  }

  reach(x: number, y: number, z: number): number {
    return this.ballReach() + Math.sqrt(x * x + y * y + z * z) * this.swing;
  }

  levelReach(x: number, y: number, z: number): number {
    return this.reach(x, y, z);
  }

  lean(): number {
    return this.swing;
  }
}

function along(p: Float64Array, nx: number, ny: number, nz: number): number {
  return nx * p[0] + ny * p[1] + nz * p[2];
}
