import type { Design, Part, Tolerance } from '../../design/design';
import { MEASURED_LIMITS } from '../../design/measured';
import { materialsOf, valueOrigin, valuesOf } from '../../design/resolve';
import { type SectionValues, sectionValues } from '../../design/sections/section';
import { TOLERANCE_SECTION } from '../../design/sections/tolerance';
import { carrierOf, type ParameterUnit } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { type KnobRef, knobRange, knobsOfPart, knobValue, MEASURED_MASS, sameKnob } from '../knobs';
import { angleDeviation, lengthDeviation } from './iso2768';

export type ToleranceValues = SectionValues<typeof TOLERANCE_SECTION>;

export function toleranceValues(written: Tolerance | undefined): ToleranceValues {
  return sectionValues(TOLERANCE_SECTION, written);
}

/** Where a number's tolerance comes from: written beside it, the general class, the density's share, the scale's step. */
export type ToleranceSource = 'own' | 'general' | 'density' | 'scale';

/** A number that is not exact: it lies within `plusMinus` of `value`, both in its own unit. */
export interface Toleranced {
  readonly ref: KnobRef;
  readonly unit: ParameterUnit;
  readonly value: number;
  readonly plusMinus: number;
  readonly source: ToleranceSource;
}

/**
 * The numbers of the visible parts that are not exact, in the order of parts and fields: those with a tolerance of their
 * own; lengths from 0.5 mm and angles other than zero by the general class; densities by their share; a weighed mass by
 * half its scale's step. A row of a catalogue and the size of a thread are made to standards of their own and taken as
 * exact; so are ratios, and places at zero (a part set on an axis), which the class knows nothing of.
 */
export function tolerancesOf(design: Design): readonly Toleranced[] {
  return design.parts
    .filter((part) => !part.hidden && isMoved(design, part))
    .flatMap((part) => knobsOfPart(design, part).flatMap((ref) => toleranced(design, part, ref)));
}

/** Turns with the grip or hangs on it: what stands still (a keep-out) moves no force. */
export function isMoved(design: Pick<Design, 'materials'>, part: Part): boolean {
  const carrier = carrierOf(partType(part.kind), valuesOf(part, materialsOf(design)));
  return carrier === 'grip' || carrier === 'rod';
}

function toleranced(design: Design, part: Part, ref: KnobRef): readonly Toleranced[] {
  const value = knobValue(design, ref);
  const range = knobRange(design, ref);
  const found = value !== undefined && range && toleranceOf(design, part, ref, value, range.unit);
  if (!found || !(found.plusMinus > 0)) return [];
  return [{ ref, unit: range.unit, value, ...found }];
}

/** The tolerance that holds for a number; null where it is exact. */
export function toleranceOf(
  design: Design,
  part: Part,
  ref: KnobRef,
  value: number,
  unit: ParameterUnit,
): Pick<Toleranced, 'plusMinus' | 'source'> | null {
  const own = design.tolerance?.own?.find((row) => sameKnob(row, ref));
  if (own) return { plusMinus: own.plusMinus, source: 'own' };
  if (ref.field === MEASURED_MASS) {
    const step = part.measured?.massStepGrams ?? MEASURED_LIMITS.massStepGrams.standard;
    return { plusMinus: step / 2, source: 'scale' };
  }
  const { generalClass, densityPercent } = toleranceValues(design.tolerance);
  if (unit === 'kg/m3') return { plusMinus: (value * densityPercent) / 100, source: 'density' };
  if (isStandard(part, ref)) return null;
  const deviation =
    unit === 'mm'
      ? lengthDeviation(value, generalClass)
      : unit === 'deg' && value !== 0
        ? angleDeviation(generalClass)
        : null;
  return deviation === null ? null : { plusMinus: deviation, source: 'general' };
}

/** Names of a thread's nominal size (a bolt's shank has it too): made to ISO 965, not to a general tolerance. */
const THREAD_FIELD = /^(threadDiameter|threadPitch|shankDiameter)Mm$/;

function isStandard(part: Part, { field }: KnobRef): boolean {
  if (THREAD_FIELD.test(field)) return true;
  return field in partType(part.kind).parameters && valueOrigin(part, field) === 'catalogue';
}

/** The list of own tolerances with one number's changed; undefined lets it go. */
export function withTolerance(
  tolerance: Tolerance | undefined,
  ref: KnobRef,
  plusMinus: number | undefined,
): NonNullable<Tolerance['own']> {
  const others = (tolerance?.own ?? []).filter((row) => !sameKnob(row, ref));
  const { part, field, component } = ref;
  if (plusMinus === undefined) return others;
  return [...others, { part, field, ...(component === undefined ? {} : { component }), plusMinus }];
}
