import { threadPitchDiameter, threadRootDiameter } from '../../engine/mass/thread';
import { threadOf } from '../threadTable';
import type { BoltValues } from './parameters';

/** Everything of a bolt but its material and its class: which one was bought is marked on the head, not in the table. */
export type BoltDimensions = Omit<BoltValues, 'densityKgM3' | 'propertyClass'>;

type Thread = Pick<
  BoltDimensions,
  | 'lengthMm'
  | 'threadLengthMm'
  | 'threadRunOutMm'
  | 'threadForm'
  | 'shankDiameterMm'
  | 'threadPitchMm'
  | 'pointDiameterMm'
>;

/** Run-out of a rolled thread into a plain shank over the pitch, normal series of ISO 3508 (memory). */
const RUN_OUT = 2.5;

/**
 * Thread, shank and point of a bought screw. The thread reaches the head up to a length of `fullThreadTo`, and wherever
 * thread and run-out leave no plain shank; a thread that does has no run-out, since it is rolled on a blank of about its
 * own mean diameter. The end is chamfered down to the root diameter d3 (ISO 4753, chamfered end).
 */
export function screwThread(
  size: string,
  lengthMm: number,
  threadMm: number,
  fullThreadTo: number,
): Thread {
  const { diameterMm, pitchMm } = threadOf(size);
  const runOut = shown(RUN_OUT * pitchMm);
  const full = lengthMm <= fullThreadTo || threadMm + runOut >= lengthMm;
  return {
    lengthMm,
    threadLengthMm: full ? lengthMm : threadMm,
    threadRunOutMm: full ? 0 : runOut,
    threadForm: 'rolled',
    shankDiameterMm: diameterMm,
    threadPitchMm: shown(pitchMm),
    pointDiameterMm: shown(threadRootDiameter(diameterMm, pitchMm)),
  };
}

/**
 * A screw threaded from end to end with the given flat point. The socket takes at most half of the length and the point's
 * chamfer a quarter: only screws cut shorter than the standard lists come to that.
 */
export function setScrewThread(size: string, lengthMm: number, pointMm: number): Thread {
  const thread = screwThread(size, lengthMm, lengthMm, lengthMm);
  const pitchDiameter = threadPitchDiameter(thread.shankDiameterMm, thread.threadPitchMm);
  const steepest = Math.max(pointMm, pitchDiameter - lengthMm / 2);
  return { ...thread, pointDiameterMm: shown(steepest) };
}

/** Button and extension fields as they stand on a screw that has neither. */
export function plainHead(headDiameterMm: number, headHeightMm: number) {
  return {
    headDiameterMm,
    headHeightMm,
    headTopDiameterMm: shown(headDiameterMm / 2),
    headRimHeightMm: shown(headHeightMm / 2),
    extensionLengthMm: 0,
    extensionDiameterMm: headDiameterMm,
  };
}

/** A worked-out dimension to a tenth of a micrometre, as a field shows it. */
export function shown(mm: number): number {
  return Number(mm.toFixed(4));
}
