import type { Part } from '../design/design';
import type { PartValues } from '../design/values';
import type { Equilibria } from '../engine/feathering/equilibria';
import type { Harmonics } from '../engine/feathering/harmonics';
import type { RotorConditions } from '../engine/feathering/rotor';
import type { ParallelRod } from '../engine/linkage/parallelRod';
import type { Moments } from '../engine/mass/moments';
import type { Pose } from '../engine/math/pose';

/** One part as it stands in the head. `pose_G` places the part frame in the grip frame; moments about the grip origin. */
export interface PartReading {
  readonly part: Part;
  /** All of its parameters: written, from catalogue, material or default. */
  readonly values: PartValues;
  readonly pose_G: Pose;
  readonly moments_G: Moments;
  /** The part's share of the feathering moment, N m. All zero while the part is hidden. */
  readonly harmonics: Harmonics;
  /** 'rod': hangs on its socket, stays parallel to the shaft, acts as a lump at the socket. */
  readonly carriedBy: 'grip' | 'rod';
}

/** Sampled curves over `pitchDeg` (ascending); NaN marks a gap (arm over centre, or no arm). */
export interface CurveSamples {
  readonly pitchDeg: Float64Array;
  /** Total feathering moment, N m. */
  readonly moment: Float64Array;
  /** Push-rod force, N, tension positive. */
  readonly force: Float64Array;
  /** Potential energy, J. */
  readonly energy: Float64Array;
}

/**
 * Everything derived from the design, kept up to date by `live`. The arrays are updated in place: read them when
 * told of a change, do not keep them.
 */
export interface HeadReading {
  /** Grows by one with every change of anything derived from the design. */
  readonly revision: number;
  readonly order: readonly string[];
  part(id: string): PartReading | undefined;
  readonly rotor: RotorConditions;
  readonly usedPitchDeg: number;
  /** Sum of all visible parts about the grip origin (rods as lumps at their ball). */
  readonly totals: Moments;
  readonly harmonics: Harmonics;
  /** Rest and flee angles in [-90, 90] degrees. */
  readonly equilibria: Equilibria;
  /** The arm's ball and the side of its slider; null without an arm. */
  readonly rod: ParallelRod | null;
  /** Pitch at which the arm goes over centre in [-90, 90], degrees; empty without an arm. */
  readonly overCentreDeg: readonly number[];
  readonly curve: CurveSamples;
  /** Total moment at a pitch, N m. */
  momentAt(pitchDeg: number): number;
  /** Push-rod force at a pitch, N, tension positive; null without an arm or over centre. */
  forceAt(pitchDeg: number): number | null;
  energyAt(pitchDeg: number): number;
}
