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

  /**
   * Adds to every sample the moment of these coefficients (N m: `featheringMoment` with its sines at hand) times what `per`
   * has there, and times a factor.
   */
  addMoments(out: Float64Array, h: Harmonics, per: Float64Array | null, factor: number): void {
    const { sin1, cos1, sin2, cos2 } = this;
    const [s1, c1, s2, c2] = [h[SIN1], h[COS1], h[SIN2], h[COS2]];
    for (let i = 0; i < out.length; i++) {
      const moment = s1 * sin1[i] + c1 * cos1[i] + s2 * sin2[i] + c2 * cos2[i];
      out[i] += factor * (moment * (per ? per[i] : 1));
    }
  }
}
