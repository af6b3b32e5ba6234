import type { EquilibriumKind } from '../../engine/feathering/equilibria';
import { degreesFromRadians } from '../../engine/units';
import type { HeadReading } from '../../state/reading';

/** A rest, flee or tangent angle as dial and chart mark it: filled, hollow or half-filled circle. */
export interface PitchMark {
  readonly pitchDeg: number;
  readonly kind: EquilibriumKind;
}

/** Marks of a reading, ascending; none where the head is neutral at every pitch. */
export function pitchMarks(reading: HeadReading): readonly PitchMark[] {
  const { equilibria } = reading;
  if (equilibria.kind === 'neutral') return [];
  return equilibria.roots.map((root) => ({
    pitchDeg: degreesFromRadians(root.pitch),
    kind: root.kind,
  }));
}

export interface PitchSpan {
  readonly fromDeg: number;
  readonly toDeg: number;
}

/**
 * The pitches that lie beyond over-centre seen from flat pitch: there the arm has swung through, and control acts the
 * wrong way round. Part of [-90, 90]; empty spans are left out.
 */
export function beyondOverCentre(overCentreDeg: readonly number[]): readonly PitchSpan[] {
  const above = overCentreDeg.filter((angle) => angle >= 0);
  const below = overCentreDeg.filter((angle) => angle < 0);
  const spans: PitchSpan[] = [];
  if (below.length > 0) spans.push({ fromDeg: -90, toDeg: Math.max(...below) });
  if (above.length > 0) spans.push({ fromDeg: Math.min(...above), toDeg: 90 });
  return spans.filter((span) => span.toDeg - span.fromDeg > 1e-9);
}
