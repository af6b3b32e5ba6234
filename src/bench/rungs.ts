import type { Design, Part } from '../design/design';
import { HeadModel } from '../design/headModel';
import { materialsOf, valuesOf } from '../design/resolve';
import { M } from '../engine/mass/moments';
import type { SeatSize } from '../parts/contract';
import { partType } from '../parts/registry';

/** Steps of the build ladder, in the order in which the head is put together. */
export const RUNG_KEYS = ['drag', 'bare', 'bolt', 'ordinary', 'asDesigned'] as const;
export type RungKey = (typeof RUNG_KEYS)[number];

/** One step of the ladder as a design of its own: parts that are not on yet are hidden, ordinary ones stand in. */
export interface Rung {
  readonly key: RungKey;
  readonly design: Design;
  /** Visible parts of it, and those that the rung before does not have or has in another form. */
  readonly on: readonly string[];
  readonly added: readonly string[];
}

/** Why a rung is left out. */
export type MissingRung =
  /** The design has no such parts. */
  | { readonly key: RungKey; readonly why: 'noParts' }
  /** A new part has no ordinary counterpart that the head takes: it would have to be flown without. */
  | { readonly key: RungKey; readonly why: 'noOrdinary'; readonly part: string }
  /** Nothing is new: the head as designed is the one with the ordinary bolt. */
  | { readonly key: RungKey; readonly why: 'nothingNew' };

export interface RungChoices {
  /** Parts that are new, made to cancel; left out: what `newParts` guesses. */
  readonly newParts?: readonly string[];
  /** What stands in for a new part, by its id: same kind, same id; null: simply left off. */
  readonly ordinary?: Readonly<Record<string, Part | null>>;
}

export interface Rungs {
  readonly rungs: readonly Rung[];
  readonly missing: readonly MissingRung[];
  readonly newParts: readonly string[];
}

/** A nut this many times as heavy as a bought one is not bought. */
const HEAVY = 1.5;

/**
 * The build ladder of a design: drag at rest (everything on, rotor still), bare grip, with the blade bolt and what holds
 * it, with the blade, and with the new part in the ordinary one's place (as designed). Parts that the design hides stay
 * hidden. What is a bolt, blade or nut is told by the part types' facts.
 */
export function buildRungs(design: Design, choices: RungChoices = {}): Rungs {
  const newParts = choices.newParts ?? guessNewParts(design);
  const missing: MissingRung[] = [];
  const bolts = subtree(design, (part) => has(design, part, 'fastener'));
  const blades = subtree(
    design,
    (part) => has(design, part, 'lifting') || has(design, part, 'bladeRoot'),
  );
  const before = ordinaryHead(design, newParts, choices);
  if ('part' in before) missing.push({ key: 'ordinary', why: 'noOrdinary', part: before.part });
  const base = 'part' in before ? design : before.design;
  const without = (ids: ReadonlySet<string>) => hideParts(base, ids);
  const found: [RungKey, Design][] = [['drag', design]];
  if (bolts.size + blades.size > 0) found.push(['bare', without(new Set([...bolts, ...blades]))]);
  else missing.push({ key: 'bare', why: 'noParts' });
  if (bolts.size > 0 && blades.size > 0) found.push(['bolt', without(blades)]);
  else missing.push({ key: 'bolt', why: 'noParts' });
  if (newParts.length === 0) missing.push({ key: 'ordinary', why: 'nothingNew' });
  else if (!('part' in before)) found.push(['ordinary', before.design]);
  found.push(['asDesigned', design]);
  return { rungs: found.map(([key, one], i) => rungOf(key, one, found[i - 1])), missing, newParts };
}

/** The same rungs where some are not made: what is new on each is told from the one that is made before it. */
export function madeRungs(rungs: readonly Rung[], leftOut: readonly RungKey[]): Rung[] {
  const made = rungs.filter(({ key }) => !leftOut.includes(key));
  if (made.length === rungs.length) return [...made];
  return made.map(({ key, design }, i) => {
    const before = made[i - 1];
    return rungOf(key, design, before && [before.key, before.design]);
  });
}

function rungOf(key: RungKey, design: Design, before: [RungKey, Design] | undefined): Rung {
  const shown = design.parts.filter((part) => !part.hidden);
  const known = before && before[0] !== 'drag' ? before[1].parts : [];
  const added = shown.filter((part) => {
    const old = known.find(({ id }) => id === part.id);
    return old === undefined || old.hidden || !sameForm(old, part);
  });
  return { key, design, on: shown.map(({ id }) => id), added: added.map(({ id }) => id) };
}

function sameForm(a: Part, b: Part): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** The design with these parts hidden; others as they are. */
export function hideParts(design: Design, ids: ReadonlySet<string>): Design {
  return {
    ...design,
    parts: design.parts.map((part) => (ids.has(part.id) ? { ...part, hidden: true } : part)),
  };
}

type Fact = 'fastener' | 'lifting' | 'bladeRoot' | 'retention';

function has(design: Design, part: Part, fact: Fact): boolean {
  const read = partType(part.kind)[fact] as ((values: never) => unknown) | undefined;
  return Boolean(read?.(valuesOf(part, materialsOf(design)) as never));
}

/** Parts that are `root`, and everything mounted on them. */
function subtree(design: Design, root: (part: Part) => boolean): Set<string> {
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

/**
 * Visible parts screwed on a bolt that were not bought: those that name no catalogue row and weigh more than half as much
 * again as a bought one in their place (or have none).
 */
export function guessNewParts(design: Design): readonly string[] {
  const onBolts = subtree(design, (part) => has(design, part, 'fastener'));
  return design.parts
    .filter((part) => {
      if (part.hidden || part.catalogue || !onBolts.has(part.id)) return false;
      if (!has(design, part, 'retention')) return false;
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
function ordinaryHead(
  design: Design,
  newParts: readonly string[],
  { ordinary = {} }: RungChoices,
): { readonly design: Design } | { readonly part: string } {
  let head = design;
  for (const id of newParts) {
    const part = design.parts.find((one) => one.id === id);
    if (!part) throw new RangeError(`buildRungs(): there is no part ${id}`);
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
      has(design, one, 'retention'),
  );
  return others.length === 0;
}
