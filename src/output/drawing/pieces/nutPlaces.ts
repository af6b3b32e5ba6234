import { threadMinorDiameter } from '../../../engine/mass/thread';
import type { ValuesByKind } from '../../../parts/registry';
import { CORNER, chamferCircle } from '../piece';

type Nut = ValuesByKind['nut'];

/** Places along a nut, mm from its clamped face, and radii. */
export interface Places {
  readonly body: number;
  /** Where the thread ends, and with it collar and ring. */
  readonly thread: number;
  readonly ring: number;
  readonly end: number;
  readonly minor: number;
  readonly major: number;
  readonly closed: boolean;
  readonly side: number;
  readonly face: number;
  readonly farFace: number;
}

export function placesOf(values: Nut): Places {
  const body = values.heightMm;
  const thread = body + values.collarHeightMm;
  const hexagon = values.form === 'hex';
  const half = values.acrossMm / 2;
  const chamfer = values.chamferMm;
  const side = hexagon ? half * CORNER : half;
  const face = hexagon ? chamferCircle(values.acrossMm, chamfer) : half - chamfer;
  const closed = values.closedEndMm > 0;
  return {
    body,
    thread,
    ring: thread - values.insertHeightMm,
    end: thread + values.closedEndMm,
    minor: threadMinorDiameter(values.threadDiameterMm, values.threadPitchMm) / 2,
    major: values.threadDiameterMm / 2,
    closed,
    side,
    face,
    farFace: hasUpperChamfer(values) ? face : side,
  };
}

/** A closed end right on the body leaves no chamfer there. */
export function hasUpperChamfer(values: Nut): boolean {
  return values.chamferMm > 0 && (values.closedEndMm === 0 || values.collarHeightMm > 0);
}
