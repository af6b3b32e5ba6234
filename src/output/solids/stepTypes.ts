import type { Solid } from '../../engine/mass/solid';
import type { Pose } from '../../engine/math/pose';
import type { SolidUnit } from './bodyMesh';

/** Reason of a job that failed because the kernel could not be fetched. */
export const NO_KERNEL = 'the kernel could not be fetched';

/** One part for the CAD kernel: plain data that crosses into the worker. */
export interface StepBody {
  readonly name: string;
  readonly colour: string;
  readonly solids: readonly Solid[];
  readonly pose: Pose;
}

export interface StepRequest {
  readonly bodies: readonly StepBody[];
  readonly unit: SolidUnit;
  readonly title: string;
  /** Goes into the file's header: what is simplified, conditions. */
  readonly description: string;
}

/** What became of one part. */
export interface StepMade {
  readonly name: string;
  /** Separate solids in the file: one a material, more where pieces could not be joined soundly. */
  readonly solids: number;
  /** Difference of its volume, as the kernel measures it, from the closed form, as a share of it. */
  readonly volumeError: number;
  /** False where the pieces lie side by side because joining them did not come out sound. */
  readonly joined: boolean;
}

export interface StepFile {
  readonly text: string;
  readonly made: readonly StepMade[];
}
