import type { Design, Part } from '../../design/design';
import { INCH_MM } from '../../engine/units';
import { toleranceOf } from '../../neutralise/closeness/tolerances';
import { fixed } from '../../state/quantities';
import type { LengthUnit } from './sheetTypes';
import { trimmed } from './threadName';

/** Writes lengths as they stand on the sheet. */
export interface SizeWriter {
  /** A length of the part, mm, with the tolerance of the field that it is (if it has one of its own). */
  size(field: string, valueMm: number): string;
  /** Whether a field has a tolerance of its own: it is then dimensioned by itself and not from the datum. */
  hasOwn(field: string): boolean;
  /** Made to a standard by somebody else; else it is made from this sheet. */
  readonly bought: boolean;
  readonly unit: LengthUnit;
}

/** To a tenth of a micrometre. */
const DECIMALS = 4;
/** Inches always with as many, as is usual (ASME Y14.5): to 1.3 micrometres. */
const INCH_DECIMALS = 4;
/** Below this with one more. */
const SMALL_INCH = 0.01;

export function lengthText(valueMm: number, unit: LengthUnit): string {
  if (unit === 'mm') return trimmed(valueMm, DECIMALS);
  const inches = valueMm / INCH_MM;
  return fixed(inches, inches < SMALL_INCH ? INCH_DECIMALS + 1 : INCH_DECIMALS);
}

/** A tolerance is never rounded to nothing: a small one in inches with two digits. */
function toleranceText(plusMinusMm: number, unit: LengthUnit): string {
  const inches = plusMinusMm / INCH_MM;
  return unit === 'in' && inches < 0.001
    ? trimmed(Number(inches.toPrecision(2)), 8)
    : lengthText(plusMinusMm, unit);
}

export function sizeWriter(design: Design, part: Part, unit: LengthUnit): SizeWriter {
  const own = (field: string) =>
    design.tolerance?.own?.find((row) => row.part === part.id && row.field === field);
  return {
    size(field, valueMm) {
      const text = lengthText(valueMm, unit);
      if (!own(field)) return text;
      const found = toleranceOf(design, part, { part: part.id, field }, valueMm, 'mm');
      return found ? `${text} \u00b1${toleranceText(found.plusMinus, unit)}` : text;
    },
    hasOwn: (field) => own(field) !== undefined,
    bought: part.catalogue !== undefined,
    unit,
  };
}
