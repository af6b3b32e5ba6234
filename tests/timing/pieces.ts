import type { Part } from '../../src/design/design';
import { HeadModel } from '../../src/design/headModel';
import type { Solid } from '../../src/engine/mass/solid';
import type { Pose } from '../../src/engine/math/pose';
import { partType } from '../../src/parts/registry';
import type { Dragged } from './heads';

/** A part as the mesh routes take it: its solids in its own frame, and where it stands. */
export interface PlacedSolids {
  readonly solids: readonly Solid[];
  readonly pose: Pose;
}

/** Both states of a dragged head as lists of placed parts, and which of them changes. */
export interface Peer {
  readonly states: readonly [readonly PlacedSolids[], readonly PlacedSolids[]];
  readonly changed: number;
}

/** Parts that do not turn with the grip are left out, as the sums leave them out. */
export function peerOf({ design, states }: Dragged): Peer {
  const [first, second] = states.map((part) => placedSolids(design.parts, part, design));
  const changed = first.ids.indexOf(states[0].id);
  return { states: [first.parts, second.parts], changed };
}

function placedSolids(parts: readonly Part[], part: Part, design: Dragged['design']) {
  const model = new HeadModel();
  const loaded = model.load({
    ...design,
    parts: parts.map((one) => (one.id === part.id ? part : one)),
  });
  if (!loaded.ok) throw new Error(`placedSolids(): ${loaded.error.path}`);
  const turning = model.parts.filter((one) => one.carriedBy === 'grip' && !one.part.hidden);
  return {
    ids: turning.map((one) => one.part.id),
    parts: turning.map(({ part: { kind }, values, pose }) => ({
      solids: partType(kind).solids(values),
      pose,
    })),
  };
}

/** Chords to a turn in the mesh routes. */
export const SEGMENTS = 64;

/** Density of a solid, and whether it is a lump: a lump has no surface, so the mesh routes add it as a point. */
export function isLump(solid: Solid): solid is Extract<Solid, { shape: { shape: 'point' } }> {
  return solid.shape.shape === 'point';
}
