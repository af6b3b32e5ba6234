import type { Design, Part } from '../../design/design';
import { INCH_MM } from '../../engine/units';
import { toleranceOf } from '../../neutralise/closeness/tolerances';
import type { LengthUnit } from './sheetTypes';
import { trimmed } from './threadName';

/** Writes lengths as they stand on the sheet. */
export interface SizeWriter {
  /** A length of the part, mm, with the tolerance of the field that it is (if it has one of its own). */
  size(field: string, valueMm: number): string;
  /** Whether a field has a tolerance of its own: it is then dimensioned by itself and not from the datum. */
  hasOwn(field: string): boolean;
}

/** To a tenth of a micrometre, or a quarter of one where inches are asked for. */
const DECIMALS: Readonly<Record<LengthUnit, number>> = { mm: 4, in: 5 };

export function lengthText(valueMm: number, unit: LengthUnit): string {
  return trimmed(unit === 'mm' ? valueMm : valueMm / INCH_MM, DECIMALS[unit]);
}

export function sizeWriter(design: Design, part: Part, unit: LengthUnit): SizeWriter {
  const own = (field: string) =>
    design.tolerance?.own?.find((row) => row.part === part.id && row.field === field);
  return {
    size(field, valueMm) {
      const text = lengthText(valueMm, unit);
      if (!own(field)) return text;
      const found = toleranceOf(design, part, { part: part.id, field }, valueMm, 'mm');
      return found ? `${text} \u00b1${lengthText(found.plusMinus, unit)}` : text;
    },
    hasOwn: (field) => own(field) !== undefined,
  };
}
