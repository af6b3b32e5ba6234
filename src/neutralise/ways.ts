import type { Design } from '../design/design';
import { type Choice, type Pick, picksOf, withPick, withWeight } from './choices';
import { type KnobRef, knobValue } from './knobs';
import { barCount, barsWithin, type KnobSpec, type SearchRequest, waysCount } from './request';

/** One knob as a search turns it within one way. */
export interface WayKnob {
  readonly ref: KnobRef;
  readonly also: readonly KnobRef[];
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

/** A head to be solved: the picks are in it, bars and new weights too; the knobs are still to be turned. */
export interface Way {
  readonly design: Design;
  readonly picks: readonly Pick[];
  /** Numbers set to a bar's diameter before the knobs are turned. */
  readonly bars: readonly { readonly spec: number; readonly value: number }[];
  /** Ids of new weights. */
  readonly added: readonly string[];
  readonly knobs: readonly WayKnob[];
  /** Which of the request's knobs those are; null for a new weight's length. */
  readonly spec: readonly number[] | null;
}

/**
 * Every way of a request, one after another: for each combination of picks, as it is and with each set of knobs. A number
 * stands for so many ways that need no look: a pick in them changes nothing, or has no place to go.
 */
export function* waysOf(request: SearchRequest): Generator<Way | number> {
  for (const picked of combinations(request.choices)) {
    let design: Design | null = request.design;
    const picks: Pick[] = [];
    for (const pick of picked) {
      if (!pick || !design) continue;
      design = withPick(design, pick);
      picks.push(pick);
    }
    // A pick that changes nothing: the same head comes up without it.
    if (!design) {
      yield waysCount(request);
      continue;
    }
    yield { design, picks, bars: [], added: [], knobs: [], spec: null };
    yield* knobWays(request, design, picks);
    yield* weightWays(request, design, picks);
  }
}

/** Every combination of one entry of each choice. */
export function* combinations(choices: readonly Choice[]): Generator<readonly (Pick | null)[]> {
  const lists = choices.map(picksOf);
  const at = lists.map(() => 0);
  for (;;) {
    yield lists.map((list, i) => list[at[i]]);
    let i = 0;
    while (i < at.length && ++at[i] === lists[i].length) at[i++] = 0;
    if (i === at.length) return;
  }
}

function* knobWays(
  { knobs, together }: SearchRequest,
  design: Design,
  picks: readonly Pick[],
): Generator<Way | number> {
  const sets = together ? [knobs.map((_, i) => i)] : knobs.map((_, i) => [i]);
  for (const set of sets) {
    if (set.length === 0) continue;
    // A part of theirs may be gone: a pick took it out.
    const gone = set.some((i) =>
      [knobs[i].ref, ...(knobs[i].also ?? [])].some((ref) => knobValue(design, ref) === undefined),
    );
    if (gone) {
      yield set.reduce((all, i) => all * barCount(knobs[i]), 1);
      continue;
    }
    const barred = set.filter((i) => knobs[i].step === 'bars');
    const free = set.filter((i) => knobs[i].step !== 'bars');
    const lists = barred.map((i) => barsWithin(knobs[i].min, knobs[i].max));
    for (const values of product(lists)) {
      const bars = barred.map((spec, k) => ({ spec, value: values[k] }));
      let next = design;
      for (const { spec, value } of bars) next = withBar(next, knobs[spec], value);
      yield {
        design: next,
        picks,
        bars,
        added: [],
        knobs: free.map((i) => wayKnob(knobs[i])),
        spec: free,
      };
    }
  }
}

/** A knob set to a bar's diameter, and what goes along with it by the same change. */
function withBar(design: Design, { ref, also = [] }: KnobSpec, value: number): Design {
  const change = value - (knobValue(design, ref) ?? value);
  return [ref, ...also].reduce((next, one, k) => {
    const own = k === 0 ? value : (knobValue(next, one) ?? 0) + change;
    return withPick(next, { kind: 'values', ref: one, value: own }) ?? next;
  }, design);
}

function wayKnob({ ref, also = [], min, max, step }: KnobSpec): WayKnob {
  return { ref, also, min, max, step: step === 'bars' ? 0 : step };
}

function* product(lists: readonly (readonly number[])[]): Generator<readonly number[]> {
  const [first, ...rest] = lists;
  if (!first) {
    yield [];
    return;
  }
  for (const value of first) for (const others of product(rest)) yield [value, ...others];
}

function* weightWays(
  { weight }: SearchRequest,
  design: Design,
  picks: readonly Pick[],
): Generator<Way | number> {
  if (!weight) return;
  const { bolt, side, minMm, maxMm, stepMm } = weight;
  for (const material of weight.materials) {
    for (const diameterMm of weight.diametersMm) {
      const made = withWeight(design, { bolt, side, diameterMm, material, lengthMm: minMm });
      if (!made) {
        yield 1;
        continue;
      }
      const refs = made.ids.map((part) => ({ part, field: 'lengthMm' }));
      const [ref, ...also] = refs;
      yield {
        design: made.design,
        picks,
        bars: [],
        added: made.ids,
        knobs: [{ ref, also, min: minMm, max: maxMm, step: stepMm }],
        spec: null,
      };
    }
  }
}
