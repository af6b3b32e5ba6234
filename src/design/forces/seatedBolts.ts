import { type BoltClass, boltClass } from '../../engine/loads/boltClasses';
import type { FastenerFacts, ForkFacts } from '../../parts/facts';
import { partType } from '../../parts/registry';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';

/** A bolt in its fork with everything that the checks need. */
export interface SeatedBolt {
  readonly placed: PlacedPart;
  readonly facts: FastenerFacts;
  readonly fork: ForkFacts;
  readonly grip: PlacedPart;
  /** What lies between the head's underside and the upper cheek (washers), m. */
  readonly under: number;
  readonly strength: BoltClass | null;
}

/** Visible bolts that sit in a fork, in list order. */
export function seatedBolts(model: HeadModel): readonly SeatedBolt[] {
  return model.parts.flatMap((placed): SeatedBolt[] => {
    if (placed.part.hidden) return [];
    const facts = partType(placed.part.kind).fastener?.(placed.values);
    const grip = placed.part.socket && model.placed(placed.part.socket.part);
    const fork = grip && partType(grip.part.kind).fork?.(grip.values);
    if (!facts || !fork) return [];
    return [
      {
        placed,
        facts,
        fork,
        grip,
        under: washersUnder(placed, model),
        strength: boltClass(facts.strengthClass),
      },
    ];
  });
}

/** Height of what comes between the head and its seat, m. */
function washersUnder(bolt: PlacedPart, model: HeadModel): number {
  const { raisedBy } = partType(bolt.part.kind);
  return model.parts.reduce((sum, { part, values }) => {
    const stacked = part.socket?.part === bolt.part.id && part.socket.name === raisedBy;
    return stacked ? sum + (partType(part.kind).stackHeight?.(values) ?? 0) : sum;
  }, 0);
}
