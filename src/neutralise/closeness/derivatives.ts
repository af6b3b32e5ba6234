import type { Design, Part } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { materialsOf } from '../../design/resolve';
import { CENTRAL, DOWNWARD, type Stencil, UPWARD } from '../../engine/math/stencil';
import type { ParameterUnit } from '../../parts/contract';
import { type KnobRef, knobPart, knobRange, knobsOfPart, knobValue, withKnob } from '../knobs';
import { HeadProbe, type TermsChoice } from './headProbe';
import { isMoved } from './tolerances';

/** How a head answers to one number: per unit of that number (1/mm, 1/g, 1/deg, m3/kg), laid out as the probe's row. */
export interface Derivative {
  readonly ref: KnobRef;
  readonly unit: ParameterUnit;
  readonly value: number;
  readonly outcome:
    | {
        readonly kind: 'found';
        /** 'up', 'down': the rules of the part allow a change to one side only. */
        readonly side: 'both' | 'up' | 'down';
        readonly slopes: Float64Array;
        /** A cautious estimate of the error of each slope: order 6 against order 8, and rounding. */
        readonly errors: Float64Array;
      }
    /** Cannot be varied alone: the rule that refuses the least change to both sides. */
    | { readonly kind: 'refused'; readonly fault: DesignFault }
    /** No slope: the form of the part changes here (a collar of no height is none). */
    | { readonly kind: 'corner' };
}

/** Numbers of the parts that turn with the grip or hang on it, and count for something. */
export function variedNumbers(design: Design): readonly KnobRef[] {
  return design.parts
    .filter((part) => !part.hidden && isMoved(design, part))
    .flatMap((part) => knobsOfPart(design, part));
}

/**
 * Derivatives of totals (kg, m), moment (N m) and force (N) at set pitches to numbers of the design, each by itself; what
 * sits on a part moves along. By values at eight steps, of order 8: exact to rounding where the answer is a polynomial of
 * degree up to 8 in the number (a mass, a density, a place; a length within a part, of degree 5), 1e-9 of it and better
 * for what is smooth (domes, angles, the linkage). Where a corner lies within the steps (a limit between two forms of a
 * part) the error estimate says so. Null for a number that the design does not have.
 */
export function derivativesOf(
  design: Design,
  refs: readonly KnobRef[],
  pitchesDeg: ArrayLike<number>,
  terms: TermsChoice,
): readonly Derivative[] {
  const probe = HeadProbe.of(design, pitchesDeg, terms);
  if (!probe.ok) return [];
  return refs.flatMap((ref) => {
    const found = derivativeOf(design, probe.value, ref);
    return found ? [found] : [];
  });
}

/** The same of one number, on a probe that holds the design; it holds it again afterwards. */
export function derivativeOf(design: Design, probe: HeadProbe, ref: KnobRef): Derivative | null {
  const part = knobPart(design, ref);
  const value = knobValue(design, ref);
  const range = knobRange(design, ref);
  if (!part || value === undefined || !range) return null;
  const outcome = differentiate(design, probe, part, ref, value, spanOf(value, range.unit));
  return { ref, unit: range.unit, value, outcome };
}

/** Largest change that is tried, in the number's unit, beside 2 % of its value: enough to stand out from rounding. */
const LEAST_SPAN: Readonly<Record<ParameterUnit, number>> = {
  mm: 0.04,
  g: 0.02,
  deg: 0.4,
  'kg/m3': 10,
  N: 0.1,
  '1': 0.04,
};
const SPAN_SHARE = 0.02;
/** A refused change is halved this often before the other side, or none, is tried. */
const HALVINGS = 4;

function spanOf(value: number, unit: ParameterUnit): number {
  return Math.max(LEAST_SPAN[unit], SPAN_SHARE * Math.abs(value));
}

function differentiate(
  design: Design,
  probe: HeadProbe,
  part: Part,
  ref: KnobRef,
  value: number,
  span: number,
): Derivative['outcome'] {
  const centre = probe.read(new Float64Array(probe.layout.count));
  const materials = materialsOf(design);
  const put = (at: number) => probe.setPart(withKnob(part, ref, at, materials));
  const sides = [
    ['both', CENTRAL, 4],
    ['up', UPWARD, 8],
    ['down', DOWNWARD, 8],
  ] as const;
  let refused: DesignFault | null = null;
  try {
    for (const [side, stencil, reach] of sides) {
      for (let halving = 0; halving <= HALVINGS; halving++) {
        const step = span / reach / 2 ** halving;
        const fault = firstFault(stencil, step, value, put);
        if (fault) refused = tellingFault(refused, fault);
        else return outcomeOf(side, slopesOf(probe, centre, stencil, step, value, put));
      }
    }
  } finally {
    probe.setPart(part);
  }
  if (!refused) throw new Error(`differentiate(): nothing was tried of ${ref.field}`);
  return { kind: 'refused', fault: refused };
}

interface Slopes {
  readonly slopes: Float64Array;
  readonly errors: Float64Array;
}

/** A slope whose error is more than this share of it, and not rounding, is none. */
const CORNER = 1e-3;

function outcomeOf(
  side: 'both' | 'up' | 'down',
  { slopes, errors, rounding }: Slopes & { readonly rounding: Float64Array },
): Derivative['outcome'] {
  const corner = slopes.some((slope, i) => {
    // A force that is not there (over centre, no arm) has no slope, and is no corner.
    if (Number.isNaN(slope)) return false;
    return !(errors[i] <= CORNER * Math.abs(slope) + 1e4 * rounding[i]);
  });
  return corner ? { kind: 'corner' } : { kind: 'found', side, slopes, errors };
}

/** Of two refusals the one that tells more: a rule between numbers before the number's own limits, else the first. */
function tellingFault(first: DesignFault | null, other: DesignFault): DesignFault {
  return first && !isOwnLimit(first) ? first : isOwnLimit(other) ? (first ?? other) : other;
}

function isOwnLimit({ reason }: DesignFault): boolean {
  return ['tooSmall', 'tooLarge', 'offsetOutOfRange'].includes(reason.code);
}

/** The outermost places decide: the rules are limits. */
function firstFault(
  { offsets }: Stencil,
  step: number,
  value: number,
  put: (at: number) => DesignFault | null,
): DesignFault | null {
  return put(value + step * Math.min(...offsets)) ?? put(value + step * Math.max(...offsets));
}

function slopesOf(
  probe: HeadProbe,
  centre: Float64Array,
  stencil: Stencil,
  step: number,
  value: number,
  put: (at: number) => DesignFault | null,
): Slopes & { readonly rounding: Float64Array } {
  const count = centre.length;
  const slopes = Float64Array.from(centre, (one) => one * stencil.order8Centre);
  const coarse = Float64Array.from(centre, (one) => one * stencil.order6Centre);
  const sizes = probe.sizes(centre);
  const row = new Float64Array(count);
  stencil.offsets.forEach((offset, k) => {
    if (put(value + step * offset)) row.fill(Number.NaN);
    else probe.read(row);
    for (let i = 0; i < count; i++) {
      slopes[i] += stencil.order8[k] * row[i];
      coarse[i] += stencil.order6[k] * row[i];
    }
  });
  const errors = new Float64Array(count);
  const rounding = sizes.map((size) => (ROUNDING * size) / step);
  for (let i = 0; i < count; i++) {
    slopes[i] /= step;
    coarse[i] /= step;
    errors[i] = Math.abs(slopes[i] - coarse[i]) + rounding[i];
  }
  return { slopes, errors, rounding };
}

/** Rounding of one value of a head, of its own size, times the sum of a stencil's weights. */
const ROUNDING = 1e-15;
