import { socketNamed } from '../design/check';
import type { Design, Mount, Part } from '../design/design';
import { POSITION_LIMITS, TURN_LIMITS } from '../design/limits';
import { MEASURED_LIMITS } from '../design/measured';
import { type Materials, materialsOf, valuesOf } from '../design/resolve';
import { withMeasured, withValue } from '../design/writeValue';
import { isUsed, type ParameterUnit } from '../parts/contract';
import { partType } from '../parts/registry';

/**
 * One number of a design that may be turned: a parameter of a part (`heightMm`), one component of a vector parameter or
 * of a free pose, the offset or turn of a mount, or a mass from the scale. Values are as in the file: mm, deg, g, kg/m3.
 */
export interface KnobRef {
  /** Id of the part. */
  readonly part: string;
  /** Name of a parameter, or one of `PLACE_FIELDS` or `MEASURED_MASS`. */
  readonly field: string;
  /** Of a vector parameter, `positionMm` and `rotationDeg`. */
  readonly component?: 0 | 1 | 2;
}

export const PLACE_FIELDS = ['positionMm', 'rotationDeg', 'offsetMm', 'turnDeg'] as const;
type PlaceField = (typeof PLACE_FIELDS)[number];
const MASS_FIELD = 'massGrams';
/** Key under which the scale's mass stands, apart from a parameter of the same name (a point mass has one). */
export const MEASURED_MASS = `measured.${MASS_FIELD}`;

/** What a knob may be set to, in its own unit; the rules between the part's numbers may forbid some of it. */
export interface KnobRange {
  readonly unit: ParameterUnit;
  readonly min: number;
  readonly max: number;
}

/** The numbers of one part that count for something: unused extras and fixed seats are left out. */
export function knobsOfPart(design: Design, part: Part): readonly KnobRef[] {
  const values = valuesOf(part, materialsOf(design));
  const { parameters } = partType(part.kind);
  const knobs: KnobRef[] = [];
  for (const [field, parameter] of Object.entries(parameters)) {
    if (!isUsed(parameter, values)) continue;
    if (parameter.type === 'number') knobs.push({ part: part.id, field });
    if (parameter.type === 'vector') knobs.push(...components(part.id, field));
  }
  if (part.measured?.massGrams !== undefined) knobs.push({ part: part.id, field: MEASURED_MASS });
  return [...knobs, ...placeKnobs(design, part)];
}

/** The same of all visible parts, in list order. */
export function knobsOf(design: Design): readonly KnobRef[] {
  return design.parts.filter((part) => !part.hidden).flatMap((part) => knobsOfPart(design, part));
}

function placeKnobs(design: Design, part: Part): readonly KnobRef[] {
  if (part.pose) {
    return [...components(part.id, 'positionMm'), ...components(part.id, 'rotationDeg')];
  }
  const range = part.socket && seatRange(design, part.socket);
  const slides = range && range[1] > range[0];
  return [
    ...(slides ? [{ part: part.id, field: 'offsetMm' }] : []),
    ...(part.socket ? [{ part: part.id, field: 'turnDeg' }] : []),
  ];
}

function components(part: string, field: string): readonly KnobRef[] {
  return ([0, 1, 2] as const).map((component) => ({ part, field, component }));
}

/** Part of a knob; undefined where the design has none of that id. */
export function knobPart(design: Pick<Design, 'parts'>, { part }: KnobRef): Part | undefined {
  return design.parts.find((one) => one.id === part);
}

export function isPlace(field: string): field is PlaceField {
  return (PLACE_FIELDS as readonly string[]).includes(field);
}

/** Two references to the same number. */
export function sameKnob(a: KnobRef, b: KnobRef): boolean {
  return a.part === b.part && a.field === b.field && a.component === b.component;
}

/** A short text that tells knobs apart: a key for lists. */
export function knobKey({ part, field, component }: KnobRef): string {
  return `${part}/${field}${component === undefined ? '' : `.${component}`}`;
}

/** The value now, in the knob's unit; undefined where the part is gone or has no such number. */
export function knobValue(design: Design, ref: KnobRef): number | undefined {
  const part = knobPart(design, ref);
  if (!part) return undefined;
  const { field, component } = ref;
  if (field === MEASURED_MASS) return part.measured?.massGrams;
  if (isPlace(field)) return placeValue(design, part, field, component);
  const value: unknown = valuesOf(part, materialsOf(design))[field];
  if (component !== undefined) return (value as readonly number[] | undefined)?.[component];
  return typeof value === 'number' ? value : undefined;
}

function placeValue(
  design: Design,
  { pose, socket }: Part,
  field: PlaceField,
  component: KnobRef['component'],
): number | undefined {
  if (field === 'positionMm' || field === 'rotationDeg') return pose?.[field][component ?? 0];
  if (!socket) return undefined;
  return field === 'turnDeg'
    ? (socket.turnDeg ?? 0)
    : (socket.offsetMm ?? seatOf(design, socket)?.defaultOffsetMm);
}

/** The part with the knob at another value. Nothing is checked: the model refuses what breaks a rule. */
export function withKnob(part: Part, ref: KnobRef, value: number, materials: Materials): Part {
  const { field, component } = ref;
  if (field === MEASURED_MASS) return withMeasured(part, { ...part.measured, massGrams: value });
  if (field === 'positionMm' || field === 'rotationDeg') {
    if (!part.pose) return part;
    return {
      ...part,
      pose: { ...part.pose, [field]: part.pose[field].with(component ?? 0, value) },
    } as unknown as Part;
  }
  if (field === 'offsetMm' || field === 'turnDeg') {
    return part.socket ? ({ ...part, socket: { ...part.socket, [field]: value } } as Part) : part;
  }
  if (component === undefined) return withValue(part, field, value, materials);
  const old = valuesOf(part, materials)[field] as unknown as readonly [number, number, number];
  const next = old.with(component, value) as unknown as readonly [number, number, number];
  return withValue(part, field, next, materials);
}

/** The knob's own limits; undefined where there is no such number. */
export function knobRange(design: Design, ref: KnobRef): KnobRange | undefined {
  const part = knobPart(design, ref);
  if (!part) return undefined;
  const { field } = ref;
  if (field === MEASURED_MASS) return { ...MEASURED_LIMITS.massGrams, unit: 'g' };
  if (field === 'positionMm') return { ...POSITION_LIMITS, unit: 'mm' };
  if (field === 'rotationDeg' || field === 'turnDeg') return { ...TURN_LIMITS, unit: 'deg' };
  if (field === 'offsetMm') {
    const range = part.socket && seatRange(design, part.socket);
    return range && { unit: 'mm', min: range[0], max: range[1] };
  }
  const parameter = partType(part.kind).parameters[field];
  if (parameter?.type !== 'number' && parameter?.type !== 'vector') return undefined;
  return { unit: parameter.unit, min: parameter.min, max: parameter.max };
}

/** The socket that a mount names, on its parent as it is now. */
function seatOf(design: Design, mount: Mount) {
  const parent = design.parts.find((one) => one.id === mount.part);
  const sockets = parent && partType(parent.kind).sockets(valuesOf(parent, materialsOf(design)));
  return (sockets && socketNamed(sockets, mount.name)) ?? undefined;
}

function seatRange(design: Design, mount: Mount): readonly [number, number] | undefined {
  return seatOf(design, mount)?.offsetRangeMm;
}
