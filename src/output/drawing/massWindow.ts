import type { Design, Part } from '../../design/design';
import { materialsOf, valueOrigin, valuesOf } from '../../design/resolve';
import type { PartValues } from '../../design/values';
import { createMoments, M } from '../../engine/mass/moments';
import { sumSolids } from '../../engine/mass/weigh';
import { gramsFromKilograms } from '../../engine/units';
import { underSizeH13 } from '../../neutralise/closeness/iso286';
import { toleranceOf } from '../../neutralise/closeness/tolerances';
import type { KnobRef } from '../../neutralise/knobs';
import { isUsed, type ParameterUnit, parameterUnit } from '../../parts/contract';
import { partType } from '../../parts/registry';

/** What the finished part may weigh, g. */
export interface MassWindow {
  readonly nominal: number;
  readonly least: number;
  readonly most: number;
}

/**
 * Mass of a part as drawn, with every length and density at the end of its tolerance that makes it lightest, and heaviest,
 * by the exact model. Each number is tried alone to see which end that is; all are then set together. Where that breaks a
 * rule of the part, the changes are added up instead. A bolt's shank is made to h13, as its sheet says, and its thread goes with
 * it: class 6g lies within (ISO 965-1). A nut's thread is taken as exact. Bodies of which one number bounds another (a thread as long as the
 * screw) have equal numbers moved together.
 */
export function massWindow(design: Design, part: Part): MassWindow {
  const values = valuesOf(part, materialsOf(design));
  const nominal = massOf(part, values);
  const light: Record<string, unknown> = { ...values };
  const heavy: Record<string, unknown> = { ...values };
  let lighter = 0;
  let heavier = 0;
  for (const one of toleranced(design, part, values)) {
    const ends = one.ends.map((change) => tried(part, values, one, change));
    for (const end of ends) {
      const change = end.mass - nominal;
      if (change < 0) {
        Object.assign(light, end.change);
        lighter += change;
      } else if (change > 0) {
        Object.assign(heavy, end.change);
        heavier += change;
      }
    }
  }
  const least = massWithin(part, light) ?? nominal + lighter;
  const most = massWithin(part, heavy) ?? nominal + heavier;
  return { nominal, least, most };
}

/** A bolt's thread and plain shank. */
const SHANK = 'shankDiameterMm';

interface Varied {
  readonly fields: readonly string[];
  readonly alone: string;
  /** How far below and above its value it may lie. */
  readonly ends: readonly [number, number];
}

function toleranced(design: Design, part: Part, values: PartValues): Varied[] {
  const { parameters } = partType(part.kind);
  const numbers = Object.keys(parameters).filter(
    (name) =>
      ['mm', 'kg/m3'].includes(parameterUnit(parameters[name])) &&
      typeof values[name] === 'number' &&
      isUsed(parameters[name], values),
  );
  return numbers.flatMap((field) => {
    const unit = parameterUnit(parameters[field]);
    const value = values[field] as number;
    if (value === 0) return [];
    const ends = endsOf(design, part, { part: part.id, field }, value, unit);
    if (!ends) return [];
    const fields = numbers.filter(
      (name) => values[name] === value && parameterUnit(parameters[name]) === unit,
    );
    return [{ alone: field, fields, ends }];
  });
}

function endsOf(
  design: Design,
  part: Part,
  ref: KnobRef,
  value: number,
  unit: ParameterUnit,
): Varied['ends'] | null {
  const found = toleranceOf(design, part, ref, value, unit);
  if (found) return found.plusMinus > 0 ? [-found.plusMinus, found.plusMinus] : null;
  const fits = ref.field === SHANK && valueOrigin(part, ref.field) !== 'catalogue';
  const under = fits ? underSizeH13(value) : null;
  return under === null ? null : [-under, 0];
}

function tried(part: Part, values: PartValues, one: Varied, by: number) {
  const value = (values[one.alone] as number) + by;
  for (const fields of [[one.alone], one.fields]) {
    const change = Object.fromEntries(fields.map((field) => [field, value]));
    const mass = massWithin(part, { ...values, ...change });
    if (mass !== null) return { change, mass };
  }
  return { change: {}, mass: massOf(part, values) };
}

function massOf(part: Part, values: PartValues): number {
  return gramsFromKilograms(sumSolids(partType(part.kind).solids(values), createMoments())[M]);
}

/** Null where a rule of the part is broken. */
function massWithin(part: Part, values: Readonly<Record<string, unknown>>): number | null {
  const own = values as PartValues;
  return partType(part.kind).problems(own).length > 0 ? null : massOf(part, own);
}
