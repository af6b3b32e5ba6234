import { type Result, succeed } from '../engine/result';
import type { Design, Part } from './design';
import type { DesignFault } from './fault';
import { HeadModel } from './headModel';
import { adoptPart, type CarriedPart } from './ownMaterials';
import { materialsOf } from './resolve';

/**
 * `design` with the part `id` replaced by a carried one of the same kind: id, place in the list, seat or pose, and
 * whether it is hidden stay; name, dimensions, catalogue row, material and measurements are the carried part's. How far
 * along its seat it may sit is its parent's business, so the offset stays too. The fault where the head does not take
 * it, such as a part mounted on it that would lose its seat. Throws where there is no such part or the kinds differ: a
 * programmer's fault.
 */
export function swapPart(
  design: Design,
  id: string,
  carried: CarriedPart,
): Result<Design, DesignFault> {
  const index = design.parts.findIndex((part) => part.id === id);
  const old = design.parts[index];
  if (old?.kind !== carried.part.kind) {
    throw new RangeError(`swapPart(): ${id} is no ${carried.part.kind}`);
  }
  const { part, materials } = adoptPart(carried, materialsOf(design));
  const next: Design = {
    ...design,
    ...(materials.length > 0 ? { materials } : {}),
    parts: design.parts.with(index, inPlaceOf(old, part)),
  };
  const outcome = new HeadModel().load(next);
  return outcome.ok ? succeed(next) : outcome;
}

function inPlaceOf(old: Part, part: Part): Part {
  const { id: _id, pose: _pose, socket: _socket, hidden: _hidden, ...own } = part;
  const { id, pose, socket, hidden } = old;
  return {
    id,
    ...own,
    ...(hidden ? { hidden } : {}),
    ...(pose ? { pose } : {}),
    ...(socket ? { socket } : {}),
  } as Part;
}
