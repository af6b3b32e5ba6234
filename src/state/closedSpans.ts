import type { LinkageReading } from './reading';

export interface PitchSpan {
  readonly fromDeg: number;
  readonly toDeg: number;
}

/** Pitches in [-90, 90] that cannot be used, and what keeps them: seen from flat pitch, from its inner end on. */
export interface ClosedSpan extends PitchSpan {
  readonly why: 'overCentre' | 'unreachable' | 'stop';
  /** Where it begins, seen from flat; of a span about flat itself, an end that the pitch can be on the other side of. */
  readonly edgeDeg: number;
}

/**
 * The pitches beyond over-centre (there the arm has swung through, and control acts the wrong way round), beyond the
 * rod's reach, or beyond a stop of the slider, whichever comes first each way; all of them where flat pitch itself is out
 * of reach.
 */
export function closedSpans(linkage: LinkageReading | null): readonly ClosedSpan[] {
  if (!linkage || linkage.reach === 0) return [];
  if (!linkage.ends) {
    return linkage.unreachableDeg.map(([fromDeg, toDeg]) => ({
      fromDeg,
      toDeg,
      why: 'unreachable',
      edgeDeg: edgeOf(fromDeg, toDeg),
    }));
  }
  const { low, high } = linkage.ends;
  const spans: ClosedSpan[] = [];
  if (low.why !== 'open') {
    spans.push({ fromDeg: -90, toDeg: low.deg, why: low.why, edgeDeg: low.deg });
  }
  if (high.why !== 'open') {
    spans.push({ fromDeg: high.deg, toDeg: 90, why: high.why, edgeDeg: high.deg });
  }
  return spans.filter((span) => span.toDeg - span.fromDeg > 1e-9);
}

/** Those of them that have an edge to be marked: beyond the last angle that is looked at there is none. */
export function closedEdges(linkage: LinkageReading | null): readonly ClosedSpan[] {
  return closedSpans(linkage).filter(({ edgeDeg }) => isInside(edgeDeg));
}

function edgeOf(fromDeg: number, toDeg: number): number {
  if (isInside(fromDeg) !== isInside(toDeg)) return isInside(fromDeg) ? fromDeg : toDeg;
  return Math.abs(fromDeg) < Math.abs(toDeg) ? fromDeg : toDeg;
}

function isInside(deg: number): boolean {
  return Math.abs(deg) < 90 - 1e-9;
}

/** The push rod does not reach at flat pitch: nothing then ends the pitch at an angle, it cannot be set at all. */
export function flatOutOfReach(linkage: LinkageReading | null): boolean {
  return linkage !== null && linkage.reach > 0 && linkage.ends === null;
}
