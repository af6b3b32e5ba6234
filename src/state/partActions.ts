import type { Design, FreePose, Mount, Part } from '../design/design';
import { freshIdAmong, freshNameAmong } from '../design/freshName';
import { adoptPart, type CarriedPart } from '../design/ownMaterials';
import { freePoseOf } from '../design/placement';
import { type Materials, materialsOf, NO_MATERIALS } from '../design/resolve';
import { swapPart } from '../design/swap';
import { fail, type Result, succeed } from '../engine/result';
import { partText } from '../messages';
import type { ParameterValue } from '../parts/contract';
import { type PartKind, partType } from '../parts/registry';
import type { Gesture } from './gesture';
import type { Live } from './live';
import { withCarried } from './places';
import { type Refusal, refusalOf } from './refusal';
import { replacePart } from './replacePart';
import type { AppStore } from './store';

export type Place = { readonly pose: FreePose } | { readonly socket: Mount };

/** Adding, removing and ordering parts. Each call is one undo step; a refused one changes nothing. */
export interface PartActions {
  /** A part with its type's defaults, selected; gives its id. */
  addPart(kind: PartKind, place: Place): Result<string, Refusal>;
  /**
   * A part that comes from this or another design or the shelf: new id and name, same everything else, selected. The
   * own materials that it names come with it (`adoptPart`), in the same undo step.
   */
  pastePart(part: Part, materials?: Materials): Result<string, Refusal>;
  /**
   * A part from the shelf in the place of one of the same kind, which keeps id, seat and hiding: see `swapPart` of the
   * design. Refused as a whole where the head does not take it.
   */
  swapPart(id: string, carried: CarriedPart): Result<Design, Refusal>;
  /** Removes the part and everything mounted on it, down the tree. */
  removePart(id: string): void;
  /** A copy beside the original (same mount, or the same pose), selected; gives its id. */
  duplicatePart(id: string): Result<string, Refusal>;
  /**
   * A copy on the other side of the chord plane: on another socket of the same part that it fits, or else placed
   * freely with z turned round (y kept). Selected; gives its id.
   */
  mirrorPart(id: string): Result<string, Refusal>;
  renamePart(id: string, name: string): void;
  setHidden(id: string, hidden: boolean): void;
  /** Moves the part by `steps` places in the list (negative: up). */
  movePart(id: string, steps: number): void;
  /** Takes a part off its socket and puts it at `pose`, or puts it on a socket. */
  placePart(id: string, place: Place): Result<Part, Refusal>;
  /** Takes a part off its socket and leaves it where it is. */
  freePart(id: string): Result<Part, Refusal>;
}

export function createPartActions(store: AppStore, live: Live, gesture: Gesture): PartActions {
  const get = store.getState;

  /** A changed list is an undo step of its own: a drag under way ends first. */
  function write(
    parts: readonly Part[],
    changed?: string,
    materials = materialsOf(get().design),
  ): Result<void, Refusal> {
    gesture.end();
    const own = materials.length > 0 ? { materials } : {};
    const outcome = live.commitDesign({ ...get().design, ...own, parts });
    if (outcome.ok) return succeed(undefined);
    return fail(
      refusalOf(
        outcome.error,
        parts.map((part) => part.id),
        changed,
      ),
    );
  }

  const edit = (id: string, change: (part: Part) => Part) => replacePart(live, id, change);

  function insert(part: Part, at: number, materials?: Materials): Result<string, Refusal> {
    const { parts } = get().design;
    const outcome = write([...parts.slice(0, at), part, ...parts.slice(at)], part.id, materials);
    if (!outcome.ok) return outcome;
    store.setState({ selection: part.id, picking: null });
    return succeed(part.id);
  }

  function copyOf(id: string, change: (part: Part) => Part): Result<string, Refusal> {
    const { parts } = get().design;
    const at = parts.findIndex((other) => other.id === id);
    if (at < 0) return fail({ field: id, rule: 'unknownPart' });
    const part = parts[at];
    const named = { ...part, id: freshId(parts, part.kind), name: freshName(parts, part.name) };
    return insert(change(named as Part), at + 1);
  }

  return {
    addPart(kind, place) {
      const type = partType(kind);
      const { parts } = get().design;
      const values: Record<string, ParameterValue> = {};
      for (const [field, parameter] of Object.entries(type.parameters)) {
        if (!parameter.optional) values[field] = parameter.default;
      }
      const id = freshId(parts, kind);
      const name = freshName(parts, partText(`part.${kind}.label`, type.label));
      return insert({ id, kind, name, ...values, ...place } as unknown as Part, parts.length);
    },
    pastePart(pasted, brought = NO_MATERIALS) {
      const { design } = get();
      const { parts } = design;
      const { part, materials } = adoptPart(
        { part: pasted, materials: brought },
        materialsOf(design),
      );
      const copy = { ...part, id: freshId(parts, part.kind), name: freshName(parts, part.name) };
      return insert(copy as Part, parts.length, materials);
    },
    swapPart(id, { part, materials }) {
      const { design } = get();
      const others = design.parts.filter((one) => one.id !== id);
      const named = { ...part, name: freshName(others, part.name) } as Part;
      const swapped = swapPart(design, id, { part: named, materials });
      const ids = design.parts.map((one) => one.id);
      if (!swapped.ok) return fail(refusalOf(swapped.error, ids, id));
      gesture.end();
      const outcome = live.commitDesign(swapped.value);
      return outcome.ok ? swapped : fail(refusalOf(outcome.error, ids, id));
    },
    removePart(id) {
      const { design, selection } = get();
      if (!live.model.placed(id)) return;
      const gone = withCarried(design.parts, id);
      write(design.parts.filter((part) => !gone.has(part.id)));
      if (selection !== null && gone.has(selection)) store.setState({ selection: null });
    },
    duplicatePart(id) {
      return copyOf(id, (part) => part);
    },
    mirrorPart(id) {
      const placed = live.model.placed(id);
      return copyOf(id, (part) => {
        const other = part.socket && otherSocket(live, part, part.socket);
        if (other) return placedAt(part, { socket: other });
        const pose = part.pose ?? (placed ? freePoseOf(placed.pose) : undefined);
        return pose ? placedAt(part, { pose: mirrored(pose) }) : part;
      });
    },
    renamePart(id, name) {
      edit(id, (part) => (part.name === name ? part : { ...part, name }));
    },
    setHidden(id, hidden) {
      edit(id, (part) => {
        if ((part.hidden ?? false) === hidden) return part;
        const { hidden: _, ...rest } = part;
        return (hidden ? { ...rest, hidden: true } : rest) as Part;
      });
    },
    movePart(id, steps) {
      const parts = [...get().design.parts];
      const from = parts.findIndex((part) => part.id === id);
      const to = Math.min(parts.length - 1, Math.max(0, from + steps));
      if (from < 0 || from === to) return;
      const [part] = parts.splice(from, 1);
      parts.splice(to, 0, part);
      write(parts);
    },
    placePart(id, place) {
      return edit(id, (part) => placedAt(part, place));
    },
    freePart(id) {
      const placed = live.model.placed(id);
      if (!placed) return fail({ field: id, rule: 'unknownPart' });
      return edit(id, (part) => placedAt(part, { pose: freePoseOf(placed.pose) }));
    },
  };
}

function placedAt(part: Part, place: Place): Part {
  const { pose: _pose, socket: _socket, ...rest } = part;
  return { ...rest, ...place } as Part;
}

/** Reflected in the chord plane z = 0: turns about x and y change their sense, one about z does not. */
function mirrored(pose: FreePose): FreePose {
  const [x, y, z] = pose.positionMm;
  const [rx, ry, rz] = pose.rotationDeg;
  return { positionMm: [x, y, 0 - z], rotationDeg: [0 - rx, 0 - ry, rz] };
}

/** Another socket of the same parent that the part fits, where there is one. */
function otherSocket(live: Live, part: Part, mount: Mount): Mount | null {
  const { mates } = partType(part.kind);
  const sockets = live.model.placed(mount.part)?.sockets ?? [];
  const other = sockets.find(
    (socket) => socket.name !== mount.name && mates.includes(socket.mates),
  );
  return other ? { part: mount.part, name: other.name } : null;
}

function freshId(parts: readonly Part[], kind: string): string {
  return freshIdAmong(new Set(parts.map((part) => part.id)), kind);
}

function freshName(parts: readonly Part[], name: string): string {
  return freshNameAmong(new Set(parts.map((part) => part.name)), name);
}
