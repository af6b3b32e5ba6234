import type { Design, Mount, Part } from '../design/design';
import { materialsOf, valuesOf } from '../design/resolve';
import type { Socket } from '../parts/contract';
import { partType } from '../parts/registry';

/** A socket of a present part where another part could sit. */
export interface Place {
  readonly part: Part;
  readonly socket: Socket;
}

/**
 * Sockets of the present parts that a part of `kind` fits and that are free (or take any number). For a part that is
 * there already, `moving`: not its own sockets, nor those of what it carries; its present seat counts as free.
 */
export function placesFor(design: Design, kind: string, moving: string | null = null): Place[] {
  const { mates } = partType(kind);
  const carried = moving === null ? new Set<string>() : withCarried(design.parts, moving);
  const taken = new Set(
    design.parts
      .filter((part) => part.socket && part.id !== moving)
      .map((part) => seatKey(part.socket as Mount)),
  );
  const places: Place[] = [];
  for (const part of design.parts) {
    if (carried.has(part.id)) continue;
    for (const socket of partType(part.kind).sockets(valuesOf(part, materialsOf(design)))) {
      const free = socket.stacks || !taken.has(seatKey({ part: part.id, name: socket.name }));
      if (free && mates.includes(socket.mates)) places.push({ part, socket });
    }
  }
  return places;
}

export function seatKey(mount: Pick<Mount, 'part' | 'name'>): string {
  return `${mount.part}\u0000${mount.name}`;
}

/** The part and everything that sits on it, down the tree. */
export function withCarried(parts: readonly Part[], id: string): ReadonlySet<string> {
  const found = new Set([id]);
  for (let grown = true; grown; ) {
    grown = false;
    for (const part of parts) {
      if (part.socket && found.has(part.socket.part) && !found.has(part.id)) {
        found.add(part.id);
        grown = true;
      }
    }
  }
  return found;
}
