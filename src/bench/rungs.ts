import type { Design, Part } from '../design/design';
import { BENCH_RUNGS } from '../design/sections/bench';
import { addTexts, t } from '../messages';
import { BENCH_PLAN } from '../messages/en/benchPlan';
import { guessNewParts, hasFact, ordinaryHead, subtree } from './ordinaryHead';

/** Steps of the build ladder, in the order in which the head is put together. */
export const RUNG_KEYS = BENCH_RUNGS;
export type RungKey = (typeof RUNG_KEYS)[number];

addTexts('benchPlan', BENCH_PLAN);

export function rungName(key: RungKey): string {
  return t(`bench.rung.${key}`);
}

/** The name as files carry it, whatever language wrote them. */
export function rungFileName(key: RungKey): string {
  return BENCH_PLAN[`bench.rung.${key}`];
}

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

/**
 * The build ladder of a design: drag at rest (everything on, rotor still), bare grip, with the blade bolt and what holds
 * it, with the blade, and with the new part in the ordinary one's place (as designed). Parts that the design hides stay
 * hidden. What is a bolt, blade or nut is told by the part types' facts.
 */
export function buildRungs(design: Design, choices: RungChoices = {}): Rungs {
  const newParts = choices.newParts ?? guessNewParts(design);
  const missing: MissingRung[] = [];
  const bolts = subtree(design, (part) => hasFact(design, part, 'fastener'));
  const blades = subtree(
    design,
    (part) => hasFact(design, part, 'lifting') || hasFact(design, part, 'bladeRoot'),
  );
  const before = ordinaryHead(design, newParts, choices.ordinary);
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
