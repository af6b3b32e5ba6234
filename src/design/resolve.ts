import { fail, type Result, succeed } from '../engine/result';
import { type CatalogueValues, catalogueValues } from '../parts/catalogue';
import type { Parameter, ParameterValue } from '../parts/contract';
import { findMaterial } from '../parts/materials';
import type { OwnMaterial } from '../parts/materials/material';
import { partType } from '../parts/registry';
import type { Design, Part } from './design';
import { type DesignFault, fault } from './fault';
import { type PartValues, valueOf } from './values';

/** What resolving a part needs of the design around it: its own materials. Compared by identity. */
export type Materials = readonly OwnMaterial[];
export const NO_MATERIALS: Materials = [];

export function materialsOf(design: Pick<Design, 'materials'>): Materials {
  return design.materials ?? NO_MATERIALS;
}

interface Remembered {
  readonly materials: Materials;
  readonly result: Result<PartValues, DesignFault>;
}
const remembered = new WeakMap<Part, Remembered>();

/**
 * A part's values, each from the first that has it: what is written in the part; its catalogue row; for a density, the
 * material that its key names; the default, where the parameter is optional or a row gives the rest. The fault (its path
 * within the part: `catalogue.size`, `lengthMm`) where a reference leads nowhere or a value is missing. A part that
 * leaves nothing out is its own set of values: nothing is made on the drag path. Remembered by the part's identity.
 */
export function resolveValues(part: Part, materials: Materials): Result<PartValues, DesignFault> {
  if (isComplete(part)) return succeed(part as unknown as PartValues);
  const known = remembered.get(part);
  if (known?.materials === materials) return known.result;
  const result = fillIn(part, materials);
  remembered.set(part, { materials, result });
  return result;
}

/** The values of a part that has been checked. Throws where they cannot be found: a programmer's fault. */
export function valuesOf(part: Part, materials: Materials): PartValues {
  const values = resolveValues(part, materials);
  if (!values.ok)
    throw new Error(`valuesOf(): part ${part.id} is not checked: ${values.error.path}`);
  return values.value;
}

/** Where a parameter's value comes from, for the page. */
export type ValueOrigin = 'written' | 'catalogue' | 'material' | 'default';

export function valueOrigin(part: Part, name: string): ValueOrigin {
  const { parameters } = partType(part.kind);
  if (valueOf(part, name) !== undefined) return 'written';
  if (rowOf(part)?.[name] !== undefined) return 'catalogue';
  return materialNamed(part, parameters[name]) === undefined ? 'default' : 'material';
}

/** The catalogue's values of a checked part; null without a catalogue. */
export function rowOf(part: Part): CatalogueValues | null {
  if (!part.catalogue) return null;
  const row = catalogueValues(partType(part.kind), part.catalogue);
  return row.ok ? row.value : null;
}

/** The id of the material that a density's key names, whether or not a number beside it wins. */
export function materialNamed(part: Part, parameter: Parameter): string | undefined {
  const key = materialKeyOf(parameter);
  return key === undefined ? undefined : (valueOf(part, key) as string | undefined);
}

/** The part's key that may name a material for a density. */
export function materialKeyOf(parameter: Parameter): string | undefined {
  return parameter.type === 'number' ? parameter.materialKey : undefined;
}

function isComplete(part: Part): boolean {
  if (part.catalogue) return false;
  const { parameters } = partType(part.kind);
  for (const name in parameters) {
    if (valueOf(part, name) === undefined || materialNamed(part, parameters[name]) !== undefined) {
      return false;
    }
  }
  return true;
}

function fillIn(part: Part, materials: Materials): Result<PartValues, DesignFault> {
  const type = partType(part.kind);
  let row: CatalogueValues | null = null;
  if (part.catalogue) {
    const found = catalogueValues(type, part.catalogue);
    if (!found.ok) {
      const { key } = found.error;
      return fail(fault(`catalogue.${key}`, { code: 'notInCatalogue', ...found.error }));
    }
    row = found.value;
  }
  const values: Record<string, ParameterValue> = {};
  for (const [name, parameter] of Object.entries(type.parameters)) {
    const density = densityOf(part, parameter, materials);
    if (!density.ok) return density;
    const usual = parameter.optional || row ? parameter.default : undefined;
    const value = valueOf(part, name) ?? row?.[name] ?? density.value ?? usual;
    if (value === undefined) return fail(fault(name, { code: 'missing' }));
    values[name] = value;
  }
  return succeed(values);
}

/** The density of the material that a parameter's key names; undefined where it names none. */
function densityOf(
  part: Part,
  parameter: Parameter,
  materials: Materials,
): Result<number | undefined, DesignFault> {
  const id = materialNamed(part, parameter);
  if (id === undefined) return succeed(undefined);
  const material = findMaterial(id, materials);
  if (material) return succeed(material.densityKgM3);
  return fail(fault(materialKeyOf(parameter) ?? '', { code: 'unknownMaterial', material: id }));
}
