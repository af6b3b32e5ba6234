import type { ParameterValue } from '../parts/contract';
import { partType } from '../parts/registry';
import type { Part } from './design';
import type { Measured } from './measured';
import { type Materials, materialKeyOf, rowOf, valuesOf } from './resolve';
import { sameValue, valueOf } from './values';

/**
 * A part with one parameter changed, as a person means it. In a catalogue part a length is the row's own, so that
 * everything that goes with it follows; a value that the row or the material gives anyway is left to it, any other is
 * written beside the reference. The same part where nothing changes.
 */
export function withValue(
  part: Part,
  field: string,
  value: ParameterValue,
  materials: Materials,
): Part {
  if (sameValue(valuesOf(part, materials)[field], value)) return part;
  const { catalogue } = part;
  if (catalogue && partType(part.kind).catalogue?.lengthParameter === field) {
    const lengthMm = value as number;
    return { ...withoutValue(part, field), catalogue: { ...catalogue, lengthMm } } as Part;
  }
  const bare = withoutValue(part, field);
  const given = bare === part ? undefined : givenValue(bare, field, materials);
  return sameValue(given, value) ? bare : ({ ...part, [field]: value } as Part);
}

/** What a part would have of a parameter that is not written in it; undefined where that leaves it without. */
function givenValue(bare: Part, field: string, materials: Materials): ParameterValue | undefined {
  const parameter = partType(bare.kind).parameters[field];
  const key = parameter && materialKeyOf(parameter);
  const referred = bare.catalogue || (key !== undefined && valueOf(bare, key) !== undefined);
  return referred ? valuesOf(bare, materials)[field] : undefined;
}

/** A part with one parameter left to catalogue, material or default. */
export function withoutValue(part: Part, field: string): Part {
  if (valueOf(part, field) === undefined) return part;
  const { [field as keyof Part]: _, ...rest } = part;
  return rest as Part;
}

/**
 * A part that takes its dimensions from a row: those written in it that the row has are let go, and so is what was
 * measured, which was another part. A size in its name follows.
 */
export function withCatalogue(part: Part, catalogue: NonNullable<Part['catalogue']>): Part {
  const row = rowOf({ ...part, catalogue }) ?? {};
  let bare = part;
  for (const name in row) bare = withoutValue(bare, name);
  const { measured: _, ...unmeasured } = bare;
  return { ...unmeasured, name: renamed(part.name, catalogue), catalogue } as Part;
}

/** "M3", "M2.5 x 12", "#4-40 x 12.7", "1/4-28" within a name. */
const SIZE_IN_NAME = /(?:\bM\d+(?:\.\d+)?|#\d+-\d+|\b\d\/\d-\d+)(?:\s*[x\u00d7]\s*\d+(?:\.\d+)?)?/;

function renamed(name: string, { size, lengthMm }: NonNullable<Part['catalogue']>): string {
  const words = lengthMm === undefined ? size : `${size} \u00d7 ${lengthMm}`;
  return name.replace(SIZE_IN_NAME, words);
}

/** A catalogue part as one with dimensions of its own, the same as they are now. */
export function withoutCatalogue(part: Part, materials: Materials): Part {
  const { catalogue: _, ...rest } = part;
  const { parameters } = partType(part.kind);
  const values = valuesOf(part, materials);
  const written: Record<string, ParameterValue> = {};
  for (const name in parameters) {
    const key = materialKeyOf(parameters[name]);
    const fromMaterial = key !== undefined && valueOf(part, key) !== undefined;
    if (!fromMaterial) written[name] = values[name];
  }
  return { ...written, ...rest } as unknown as Part;
}

/** A part whose density comes from a material of the tables or the design; a number written in its place is let go. */
export function withMaterial(part: Part, density: string, material: string): Part {
  const key = materialKeyOf(partType(part.kind).parameters[density]);
  if (key === undefined) throw new Error(`withMaterial(): ${density} names no material`);
  return { ...withoutValue(part, density), [key]: material } as Part;
}

/** A part whose density is the number it has now, whatever material it was. */
export function withoutMaterial(part: Part, density: string, materials: Materials): Part {
  const key = materialKeyOf(partType(part.kind).parameters[density]) ?? '';
  const value = valuesOf(part, materials)[density];
  return { ...withoutValue(part, key), [density]: value } as unknown as Part;
}

/** A part with what was measured of it; nothing measured leaves no trace. */
export function withMeasured(part: Part, measured: Measured): Part {
  const { measured: _, ...rest } = part;
  const kept = Object.entries(measured).filter(
    ([, value]) => value !== undefined && !isEmpty(value),
  );
  return (kept.length > 0 ? { ...rest, measured: Object.fromEntries(kept) } : rest) as Part;
}

function isEmpty(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
