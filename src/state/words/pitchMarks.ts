import type { EquilibriumKind } from '../../engine/feathering/equilibria';
import { degreesFromRadians } from '../../engine/units';
import type { HeadReading } from '../reading';

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
