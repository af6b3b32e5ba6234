import type { Design, Part } from '../design/design';
import { HeadModel } from '../design/headModel';
import { materialsOf, valuesOf } from '../design/resolve';
import { M } from '../engine/mass/moments';
import type { SeatSize } from '../parts/contract';
import { partType } from '../parts/registry';

type Fact = 'fastener' | 'lifting' | 'bladeRoot' | 'retention';

/** Whether a part is such a thing, as its type tells (`parts/facts.ts`). */
export function hasFact(design: Design, part: Part, fact: Fact): boolean {
  const read = partType(part.kind)[fact] as ((values: never) => unknown) | undefined;
  return Boolean(read?.(valuesOf(part, materialsOf(design)) as never));
}

/** Parts that are `root`, and everything mounted on them. */
export function subtree(design: Design, root: (part: Part) => boolean): Set<string> {
  const ids = new Set(design.parts.filter(root).map(({ id }) => id));
  for (let grown = true; grown; ) {
    grown = false;
    for (const { id, socket } of design.parts) {
      if (ids.has(id) || !socket || !ids.has(socket.part)) continue;
      ids.add(id);
      grown = true;
    }
  }
  return ids;
}

/** A nut this many times as heavy as a bought one is not bought. */
const HEAVY = 1.5;

/**
 * Visible parts screwed on a bolt that were not bought: those that name no catalogue row and weigh more than half as much
 * again as a bought one in their place (or have none).
 */
export function guessNewParts(design: Design): readonly string[] {
  const onBolts = subtree(design, (part) => hasFact(design, part, 'fastener'));
  return design.parts
    .filter((part) => {
      if (part.hidden || part.catalogue || !onBolts.has(part.id)) return false;
      if (!hasFact(design, part, 'retention')) return false;
      const bought = ordinaryFor(design, part);
      return !bought || massOf(design, part) > HEAVY * massOf(design, bought);
    })
    .map(({ id }) => id);
}

function massOf(design: Design, part: Part): number {
  const model = new HeadModel();
  const parts = design.parts.map((one) => (one.id === part.id ? part : one));
  return model.load({ ...design, parts }).ok ? (model.placed(part.id)?.moments_G[M] ?? 0) : 0;
}

/** A bought part of the same kind and seat that keeps itself from turning; null where the tables have none. */
export function ordinaryFor(design: Design, part: Part): Part | null {
  const type = partType(part.kind);
  const materials = materialsOf(design);
  const seat = type.seatSize?.(valuesOf(part, materials) as never);
  for (const { standard, sizes } of type.catalogue?.standards ?? []) {
    for (const { size } of sizes) {
      const candidate = boughtPart(part, standard, size);
      const values = valuesOf(candidate, materials) as never;
      if (type.retention?.(values) !== 'prevailing') continue;
      if (sameSeat(seat, type.seatSize?.(values))) return candidate;
    }
  }
  return null;
}

function boughtPart(part: Part, standard: string, size: string): Part {
  const { id, kind, socket, pose } = part;
  const { material } = part as { readonly material?: string };
  return {
    id,
    kind,
    name: `${standard} ${size}`,
    catalogue: { standard, size },
    ...(material === undefined ? {} : { material }),
    ...(socket ? { socket } : {}),
    ...(pose ? { pose } : {}),
  } as unknown as Part;
}

function sameSeat(a: SeatSize | undefined, b: SeatSize | undefined): boolean {
  if (!a || !b || a.kind !== b.kind || a.diameterMm !== b.diameterMm) return false;
  return a.kind !== 'thread' || b.kind !== 'thread' || a.pitchMm === b.pitchMm;
}

/** The design with ordinary parts in place of the new ones, or the new part that has none. */
export function ordinaryHead(
  design: Design,
  newParts: readonly string[],
  ordinary: Readonly<Record<string, Part | null>> = {},
): { readonly design: Design } | { readonly part: string } {
  let head = design;
  for (const id of newParts) {
    const part = design.parts.find((one) => one.id === id);
    if (!part) throw new RangeError(`ordinaryHead(): there is no part ${id}`);
    const given = id in ordinary ? ordinary[id] : ordinaryFor(design, part);
    const leaveOff = given === null && (id in ordinary || !holdsBolt(design, part));
    if (given === null && !leaveOff) return { part: id };
    const parts = head.parts.map((one) =>
      one.id === id ? (given ?? ({ ...one, hidden: true } as Part)) : one,
    );
    head = { ...head, parts };
  }
  return new HeadModel().load(head).ok ? { design: head } : { part: newParts[0] };
}

/** It is the only visible part screwed on its bolt: without it the bolt is not held. */
function holdsBolt(design: Design, part: Part): boolean {
  const others = design.parts.filter(
    (one) =>
      one.id !== part.id &&
      !one.hidden &&
      one.socket?.part === part.socket?.part &&
      hasFact(design, one, 'retention'),
  );
  return others.length === 0;
}
