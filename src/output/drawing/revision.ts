import type { Design, Part } from '../../design/design';
import { materialNamed, materialsOf, valuesOf } from '../../design/resolve';
import { toleranceValues } from '../../neutralise/closeness/tolerances';
import { partType } from '../../parts/registry';

/** Seven hexadecimal digits of FNV-1a (32 bits, the published offset and prime) of a text's UTF-16 units. */
function digest(text: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0').slice(0, 7);
}

/**
 * Revision of a drawing: what is drawn, as a short text. The same part gives the same text whatever else of the design
 * changed; any change of a dimension, a material, a tolerance or the part's name gives another (two in 2.7e8 agree by chance).
 */
export function revisionOf(design: Design, part: Part): string {
  const values = valuesOf(part, materialsOf(design));
  const { generalClass, densityPercent } = toleranceValues(design.tolerance);
  const own = (design.tolerance?.own ?? []).filter((row) => row.part === part.id);
  const sorted = Object.entries(values).toSorted(([a], [b]) => (a < b ? -1 : 1));
  const material = materialNamed(part, partType(part.kind).parameters.densityKgM3) ?? null;
  return digest(
    JSON.stringify([part.kind, part.name, sorted, material, generalClass, densityPercent, own]),
  );
}

/** Identification number: the design's and the part's name, letters and digits only. */
export function drawingNumber(design: Design, part: Part): string {
  return `${stem(design.name)}-${stem(part.id)}`;
}

function stem(name: string): string {
  const letters = name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return (letters === '' ? 'head' : letters).slice(0, 24).toUpperCase();
}
