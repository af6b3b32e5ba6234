import { centreOfMass } from '../engine/mass/inertia';
import { JXX, JYY, JYZ, JZZ, M, type Moments } from '../engine/mass/moments';
import type { Vec3 } from '../engine/math/vector';
import { kilogramsFromGrams } from '../engine/units';
import type { WeighedTotal } from './design';
import type { PlacedPart } from './headNode';
import { type MassOrigin, massOrigins } from './massOrigin';
import { MEASURED_LIMITS } from './measured';

/** One line of the card, SI, grip frame, about the grip's origin. */
export interface CardFigures {
  readonly mass: number;
  /** Null without mass. */
  readonly centre: Vec3 | null;
  /** Moment of inertia about the feathering axis, J_yy + J_zz. */
  readonly inertia: number;
  /** J_yy - J_zz: positive centres, negative flees. */
  readonly difference: number;
  /** J_yz. */
  readonly product: number;
}

export interface CardRow extends CardFigures {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /**
   * Signed share of `difference`, in per cent of the sum of all absolute values: parts that cancel keep finite shares,
   * and the shares add up to 100 only where all lean one way. Null for a hidden part and a push rod, and where nothing leans.
   */
  readonly share: number | null;
  readonly origins: readonly MassOrigin[];
}

export interface MassCard {
  /** Parts in the sum, in list order. */
  readonly rows: readonly CardRow[];
  /** Push rods: they do not turn with the grip. */
  readonly rods: readonly CardRow[];
  /** Parts left out of it. */
  readonly hidden: readonly CardRow[];
  readonly total: CardFigures;
  /** Sum of |J_yy - J_zz| over the parts in the sum, kg m^2: what the shares refer to. */
  readonly absolute: number;
  readonly weighed: WeighedComparison | null;
}

/** The whole grip on the scale beside the sum, kg. */
export interface WeighedComparison {
  readonly mass: number;
  readonly step: number;
  /** Scale less sum. */
  readonly difference: number;
  /** In per cent of the sum; null where the sum is nothing. */
  readonly percent: number | null;
  /** What may differ without anything being wrong: see `allowanceOf`. */
  readonly allowance: number;
  readonly within: boolean;
}

/** A mass worked out from dimensions and density counts as known to this (common practice). */
export const MODEL_SHARE = 0.02;
/** Beside the spread about the axis, what is smaller than this is rounding and is none. */
const ROUNDING = 1e-12;

/**
 * Who weighs what and pulls which way: every part of a head with the sum, and the sum beside the scale. `totals` are
 * the head's own (`HeadModel.totals`). Pure; the arrays of `parts` are read, not kept.
 */
export function massCard(
  parts: readonly PlacedPart[],
  totals: Moments,
  weighedTotal?: WeighedTotal,
): MassCard {
  const visible = parts.filter(({ part, carriedBy }) => !part.hidden && carriedBy === 'grip');
  const rods = parts.filter(({ part, carriedBy }) => !part.hidden && carriedBy === 'rod');
  const hidden = parts.filter(({ part, carriedBy }) => part.hidden && isWeighed(carriedBy));
  const absolute = visible.reduce(
    (sum, { moments_G }) => sum + Math.abs(figuresOf(moments_G).difference),
    0,
  );
  return {
    rows: visible.map((placed) => rowOf(placed, absolute)),
    rods: rods.map((placed) => rowOf(placed, 0)),
    hidden: hidden.map((placed) => rowOf(placed, 0)),
    total: figuresOf(totals),
    absolute,
    weighed: weighedTotal ? compare(weighedTotal, totals[M], visible) : null,
  };
}

/** A keep-out has no line on the card. */
function isWeighed(carrier: PlacedPart['carriedBy']): boolean {
  return carrier === 'grip' || carrier === 'rod';
}

export function figuresOf(moments: Moments): CardFigures {
  const inertia = moments[JYY] + moments[JZZ];
  const settled = (value: number) => (Math.abs(value) <= ROUNDING * inertia ? 0 : value);
  const centre = centreOfMass(moments);
  const reach = Math.sqrt((inertia + moments[JXX]) / moments[M]);
  const [x, y, z] = centre ?? [0, 0, 0];
  const place = (value: number) => (Math.abs(value) <= ROUNDING * reach ? 0 : value);
  return {
    mass: moments[M],
    centre: centre && [place(x), place(y), place(z)],
    inertia,
    difference: settled(moments[JYY] - moments[JZZ]),
    product: settled(moments[JYZ]),
  };
}

function rowOf(placed: PlacedPart, absolute: number): CardRow {
  const figures = figuresOf(placed.moments_G);
  const { id, name, kind } = placed.part;
  return {
    id,
    name,
    kind,
    ...figures,
    share: absolute > 0 ? (100 * figures.difference) / absolute : null,
    origins: massOrigins(placed.part, placed.values),
  };
}

function compare(
  weighedTotal: WeighedTotal,
  sum: number,
  visible: readonly PlacedPart[],
): WeighedComparison {
  const mass = kilogramsFromGrams(weighedTotal.massGrams);
  const step = kilogramsFromGrams(weighedTotal.massStepGrams ?? STANDARD_STEP);
  const allowance = step + visible.reduce((total, placed) => total + allowanceOf(placed), 0);
  const difference = mass - sum;
  return {
    mass,
    step,
    difference,
    percent: sum > 0 ? (100 * difference) / sum : null,
    allowance,
    within: Math.abs(difference) <= allowance,
  };
}

const STANDARD_STEP = MEASURED_LIMITS.massStepGrams.standard;

/** How far one part's mass may be out, kg: its scale's step where it was weighed, `MODEL_SHARE` of it where it was not. */
function allowanceOf({ part, moments_G }: PlacedPart): number {
  const { measured } = part;
  return measured?.massGrams === undefined
    ? MODEL_SHARE * Math.abs(moments_G[M])
    : kilogramsFromGrams(measured.massStepGrams ?? STANDARD_STEP);
}
