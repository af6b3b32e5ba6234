import { COS1, COS2, type Harmonics, SIN1, SIN2 } from '../../engine/feathering/harmonics';
import { radiansFromDegrees } from '../../engine/units';

/** Sines and cosines of the chart's pitches, worked out once: a share's line is then four products a sample. */
export class PitchTurns {
  private readonly sin1: Float64Array;
  private readonly cos1: Float64Array;
  private readonly sin2: Float64Array;
  private readonly cos2: Float64Array;

  constructor(pitchDeg: Float64Array) {
    const pitch = pitchDeg.map(radiansFromDegrees);
    this.sin1 = pitch.map((angle) => Math.sin(angle));
    this.cos1 = pitch.map((angle) => Math.cos(angle));
    this.sin2 = pitch.map((angle) => Math.sin(2 * angle));
    this.cos2 = pitch.map((angle) => Math.cos(2 * angle));
  }

  /** The moment of these coefficients at a sample, N m: `featheringMoment` with its sines at hand. */
  moment(h: Harmonics, i: number): number {
    return (
      h[SIN1] * this.sin1[i] +
      h[COS1] * this.cos1[i] +
      h[SIN2] * this.sin2[i] +
      h[COS2] * this.cos2[i]
    );
  }
}
