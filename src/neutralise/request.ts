import type { Design } from '../design/design';
import { headLinkage } from '../design/forces/headLinkage';
import { servoGeometry } from '../design/forces/servo';
import { type TravelEnd, travelEnds } from '../design/forces/travel';
import { HeadModel } from '../design/headModel';
import { radiansFromDegrees } from '../engine/units';
import { BAR_DIAMETERS_MM, type Choice, picksOf } from './choices';
import { type KnobRange, type KnobRef, knobRange, knobValue } from './knobs';
import type { Wanted } from './trialHead';

/** A number that a search may turn. Values in the knob's own unit. */
export interface KnobSpec {
  readonly ref: KnobRef;
  /** Numbers that go along by the same change, such as the weight on the other side. */
  readonly also?: readonly KnobRef[];
  readonly min: number;
  readonly max: number;
  /** What it is made in steps of; 0: as exact as can be; 'bars': only diameters of common bar. */
  readonly step: number | 'bars';
}

/** New weights to try on a bolt: every diameter in every material, the length found for each. */
export interface WeightSpec {
  readonly bolt: string;
  readonly side: 'headTop' | 'boltEnd' | 'both';
  readonly diametersMm: readonly number[];
  readonly materials: readonly string[];
  readonly minMm: number;
  readonly maxMm: number;
  readonly stepMm: number;
}

export interface SearchRequest {
  readonly design: Design;
  readonly wanted: Wanted;
  readonly knobs: readonly KnobSpec[];
  /** All knobs at once; false: each alone, one after another. */
  readonly together: boolean;
  readonly choices: readonly Choice[];
  readonly weight: WeightSpec | null;
}

/** Why a search cannot be begun. `knob` counts from 0. */
export type RequestFault =
  | { readonly code: 'nothingMayChange' }
  | { readonly code: 'noParts' }
  | { readonly code: 'noSuchNumber'; readonly knob: number }
  | {
      readonly code: 'limitsReversed';
      readonly knob: number;
      readonly min: number;
      readonly max: number;
    }
  | {
      readonly code: 'outsideRange';
      readonly knob: number;
      readonly which: 'min' | 'max';
      readonly value: number;
      readonly range: KnobRange;
    }
  | { readonly code: 'badStep'; readonly knob: number; readonly step: number }
  | { readonly code: 'noBars'; readonly knob: number; readonly min: number; readonly max: number }
  | { readonly code: 'sameNumberTwice'; readonly knob: number }
  | { readonly code: 'pitchReversed'; readonly fromDeg: number; readonly toDeg: number }
  | { readonly code: 'pitchOutside'; readonly deg: number; readonly limitDeg: number }
  /** The linkage does not let the grip go so far. */
  | {
      readonly code: 'beyondTravel';
      readonly deg: number;
      readonly endDeg: number;
      readonly why: TravelEnd['why'] | 'noReach';
    }
  | { readonly code: 'badForce'; readonly forceN: number }
  | { readonly code: 'noServo' }
  | { readonly code: 'standsStill' }
  | { readonly code: 'weightLimits'; readonly min: number; readonly max: number }
  | { readonly code: 'noWeights' }
  | { readonly code: 'tooMany'; readonly count: number; readonly limit: number };

/** More combinations than this are refused. */
export const MOST_COMBINATIONS = 200_000;
/** Pitches are asked for within this, degrees either way. */
export const MOST_PITCH_DEG = 90;

/** The first thing that keeps a search from being begun; null where it can. */
export function requestFault(request: SearchRequest): RequestFault | null {
  const { design, knobs, choices, weight } = request;
  if (design.parts.every(({ hidden }) => hidden)) return { code: 'noParts' };
  if (knobs.length === 0 && choices.length === 0 && !weight) return { code: 'nothingMayChange' };
  const goal = goalFault(request);
  if (goal) return goal;
  for (let knob = 0; knob < knobs.length; knob++) {
    const found = knobFault(design, knobs, knob);
    if (found) return found;
  }
  if (weight && weight.diametersMm.length * weight.materials.length === 0)
    return { code: 'noWeights' };
  if (weight && !(weight.minMm < weight.maxMm && weight.minMm > 0)) {
    return { code: 'weightLimits', min: weight.minMm, max: weight.maxMm };
  }
  const count = combinationCount(request);
  return count > MOST_COMBINATIONS ? { code: 'tooMany', count, limit: MOST_COMBINATIONS } : null;
}

function goalFault({ wanted, design }: SearchRequest): RequestFault | null {
  const { goal, speedsRpm } = wanted;
  if (goal.kind === 'neutral') return null;
  if (speedsRpm.every((rpm) => rpm === 0)) return { code: 'standsStill' };
  if (goal.kind === 'leastServo' && !servoGeometry(design.control)) return { code: 'noServo' };
  const pitches =
    goal.kind === 'centring'
      ? [goal.restDeg - goal.awayDeg, goal.restDeg + goal.awayDeg]
      : [goal.fromDeg, goal.toDeg];
  const [fromDeg, toDeg] = pitches;
  if (!(fromDeg < toDeg)) return { code: 'pitchReversed', fromDeg, toDeg };
  for (const deg of pitches) {
    if (!(Math.abs(deg) <= MOST_PITCH_DEG))
      return { code: 'pitchOutside', deg, limitDeg: MOST_PITCH_DEG };
  }
  if (goal.kind === 'centring' && !(goal.forceN >= 0))
    return { code: 'badForce', forceN: goal.forceN };
  return travelFault(design, pitches);
}

/** A pitch that the linkage does not reach, or where it is over centre; null where all of them are within. */
function travelFault(design: Design, pitches: readonly number[]): RequestFault | null {
  const model = new HeadModel();
  if (!model.load(design).ok) return null;
  const linkage = headLinkage(model);
  if (!linkage) return null;
  const [from, to] = [-MOST_PITCH_DEG, MOST_PITCH_DEG].map(radiansFromDegrees);
  const ends = travelEnds(linkage, model, from, to);
  if (!ends) return { code: 'beyondTravel', deg: pitches[0], endDeg: 0, why: 'noReach' };
  for (const deg of pitches) {
    const end = deg < 0 ? ends.low : ends.high;
    if (Math.abs(deg) >= Math.abs(end.deg) && end.why !== 'open') {
      return { code: 'beyondTravel', deg, endDeg: end.deg, why: end.why };
    }
  }
  return null;
}

function knobFault(design: Design, knobs: readonly KnobSpec[], knob: number): RequestFault | null {
  const { ref, also = [], min, max, step } = knobs[knob];
  const range = knobRange(design, ref);
  const there = [ref, ...also].every((one) => knobValue(design, one) !== undefined);
  if (!range || !there) return { code: 'noSuchNumber', knob };
  if (!(min < max)) return { code: 'limitsReversed', knob, min, max };
  if (!(min >= range.min)) return { code: 'outsideRange', knob, which: 'min', value: min, range };
  if (!(max <= range.max)) return { code: 'outsideRange', knob, which: 'max', value: max, range };
  if (step === 'bars') {
    if (barsWithin(min, max).length === 0) return { code: 'noBars', knob, min, max };
  } else if (!(step >= 0 && step <= max - min)) return { code: 'badStep', knob, step };
  const own = (one: KnobRef) => `${one.part}/${one.field}/${one.component}`;
  const before = knobs
    .slice(0, knob)
    .flatMap((one) => [one.ref, ...(one.also ?? [])])
    .map(own);
  return [ref, ...also].some((one) => before.includes(own(one)))
    ? { code: 'sameNumberTwice', knob }
    : null;
}

export function barsWithin(min: number, max: number): readonly number[] {
  return BAR_DIAMETERS_MM.filter((value) => value >= min && value <= max);
}

/** How many heads a search looks at. */
export function combinationCount(request: SearchRequest): number {
  const choices = request.choices.reduce((product, choice) => product * picksOf(choice).length, 1);
  return choices * waysCount(request);
}

/** So many heads one knob stands for: one, or one a bar. */
export function barCount({ step, min, max }: KnobSpec): number {
  return step === 'bars' ? barsWithin(min, max).length : 1;
}

/** Ways of turning within one combination of picks: none at all, the knobs, the new weights. */
export function waysCount({ knobs, together, weight }: SearchRequest): number {
  const turned = together
    ? knobs.length > 0
      ? knobs.reduce((product, spec) => product * barCount(spec), 1)
      : 0
    : knobs.reduce((sum, spec) => sum + barCount(spec), 0);
  const weights = weight ? weight.diametersMm.length * weight.materials.length : 0;
  return 1 + turned + weights;
}
