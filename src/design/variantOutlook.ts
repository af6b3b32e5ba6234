import { PitchGrid } from '../engine/feathering/pitchGrid';
import { type Result, succeed } from '../engine/result';
import { degreesFromRadians, radiansFromDegrees } from '../engine/units';
import { type CurveColumns, emptyColumns, fillCurve } from './curve';
import type { Design, Part } from './design';
import type { DesignFault } from './fault';
import { limitInUse } from './forces/headLoads';
import type { LimitInUse } from './forces/loadTypes';
import { type HeadOutlook, type LookedAt, lookAt, outlookOf } from './headOutlook';
import { SECTION_NAMES } from './sections';

/** What the table of try-outs says of one of them. Angles in degrees, everything else SI. */
export interface VariantFigures extends HeadOutlook {
  /** Friction holds it there; null: the design does not count friction, or nothing gives it. */
  readonly bandsDeg: readonly (readonly [number, number])[] | null;
  readonly frictionCounted: boolean;
  /** The limit that is met first in the pitch in use; null where none is known or the rotor stands still. */
  readonly limit: LimitInUse | null;
}

/** The same with its curves over the pitches that were asked for. */
export interface VariantOutlook extends VariantFigures {
  readonly curve: CurveColumns;
  /** Where the arm goes over centre: the curve of a force has a pole there. */
  readonly overCentreDeg: readonly number[];
}

interface Remembered {
  readonly design: Design;
  readonly pitchDeg: Float64Array;
  readonly result: Result<VariantOutlook, DesignFault>;
}

const remembered = new WeakMap<readonly Part[], Remembered>();

/**
 * What the design would do with these parts, from a model of its own. Remembered by the identity of the list, and worked
 * out anew only where a section, the own materials or the pitches are other objects: a drag of the parts on the stage
 * leaves every other variant alone. Tested to equal what opening the design with these parts shows, to the bit.
 */
export function variantOutlook(
  design: Design,
  parts: readonly Part[],
  pitchDeg: Float64Array,
): Result<VariantOutlook, DesignFault> {
  const known = knownOutlook(design, parts, pitchDeg);
  if (known) return known;
  const looked = lookAt({ ...design, parts });
  const result = looked.ok ? succeed(fullOutlook(looked.value, pitchDeg)) : looked;
  remembered.set(parts, { design, pitchDeg, result });
  return result;
}

/** The same where it is remembered, else null: nothing is worked out. */
export function knownOutlook(
  design: Design,
  parts: readonly Part[],
  pitchDeg: Float64Array,
): Result<VariantOutlook, DesignFault> | null {
  const known = remembered.get(parts);
  if (!known || known.pitchDeg !== pitchDeg || known.design.materials !== design.materials) {
    return null;
  }
  return SECTION_NAMES.every((name) => known.design[name] === design[name]) ? known.result : null;
}

/** The figures of a head that has been looked at; its limit at the design's speed or another. */
export function figuresOf(looked: LookedAt, speedRpm?: number): VariantFigures {
  const { forces, equilibria, from, to } = looked;
  return {
    ...outlookOf(looked),
    bandsDeg: forces.friction?.known
      ? forces
          .bands(from, to, equilibria)
          .map(([low, high]) => [degreesFromRadians(low), degreesFromRadians(high)] as const)
      : null,
    frictionCounted: forces.friction !== null,
    limit: limitInUse(forces, speedRpm),
  };
}

function fullOutlook(looked: LookedAt, pitchDeg: Float64Array): VariantOutlook {
  const figures = figuresOf(looked);
  const { verdict } = figures;
  const curve = emptyColumns(pitchDeg.length);
  fillCurve(looked.forces, new PitchGrid(pitchDeg.map(radiansFromDegrees)), curve);
  return {
    ...figures,
    curve,
    overCentreDeg: 'overCentreDeg' in verdict ? verdict.overCentreDeg : [],
  };
}
