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
    const seat = seatOf(placed, model);
    if (!seat) return [];
    const strength = boltClass(seat.facts.strengthClass);
    return [{ placed, ...seat, under: washersUnder(placed, model), strength }];
  });
}

/** Nominal diameter of the first of them, m; zero where there is none. */
export function seatedDiameter(model: HeadModel): number {
  for (const placed of model.parts) {
    const seat = seatOf(placed, model);
    if (seat) return seat.facts.nominalDiameter;
  }
  return 0;
}

/** What a visible bolt is, and the fork that it sits in; null for any other part. */
function seatOf({ part, values }: PlacedPart, model: HeadModel) {
  if (part.hidden || !part.socket) return null;
  const { fastener } = partType(part.kind);
  const grip = fastener && model.placed(part.socket.part);
  const fork = grip && partType(grip.part.kind).fork?.(grip.values);
  const facts = fork && fastener(values);
  return facts ? { facts, fork, grip } : null;
}

/** Height of what comes between the head and its seat, m. */
function washersUnder(bolt: PlacedPart, model: HeadModel): number {
  const { raisedBy } = partType(bolt.part.kind);
  return model.parts.reduce((sum, { part, values }) => {
    const stacked = part.socket?.part === bolt.part.id && part.socket.name === raisedBy;
    return stacked ? sum + (partType(part.kind).stackHeight?.(values) ?? 0) : sum;
  }, 0);
}
