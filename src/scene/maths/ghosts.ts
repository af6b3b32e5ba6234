import type { Equilibria, EquilibriumKind } from '../../engine/feathering/equilibria';
import { degreesFromRadians } from '../../engine/units';

/** Where the chord plane would lie at a rest or flee angle, in the axis frame (x along the feathering axis). */
export interface GhostChord {
  readonly pitchDeg: number;
  readonly kind: EquilibriumKind;
  /** Four corners of the outline: leading edge inboard and outboard, trailing edge outboard and inboard. */
  readonly corners: readonly (readonly [x: number, y: number, z: number])[];
}

/** Extent of the chord plane in the grip frame, any unit. */
export interface ChordExtent {
  readonly inboard: number;
  readonly outboard: number;
  readonly leading: number;
  readonly trailing: number;
}

/** One outline for every rest, flee and tangent angle; none where the head is neutral at every pitch. */
export function ghostChords(equilibria: Equilibria, extent: ChordExtent): readonly GhostChord[] {
  if (equilibria.kind === 'neutral') return [];
  return equilibria.roots.map((root) => {
    const c = Math.cos(root.pitch);
    const s = Math.sin(root.pitch);
    const { inboard, outboard, leading, trailing } = extent;
    return {
      pitchDeg: degreesFromRadians(root.pitch),
      kind: root.kind,
      corners: [
        [inboard, leading * c, leading * s],
        [outboard, leading * c, leading * s],
        [outboard, trailing * c, trailing * s],
        [inboard, trailing * c, trailing * s],
      ],
    };
  });
}
