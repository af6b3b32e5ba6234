import type { Design, Part } from '../../design/design';
import { materialNamed, materialsOf, valuesOf } from '../../design/resolve';
import { toleranceValues } from '../../neutralise/closeness/tolerances';
import { partType } from '../../parts/registry';
import { fnv1a } from '../revision';

/**
 * Revision of a drawing: what is drawn, as a short text. The same part gives the same text whatever else of the design
 * changed; any change of a dimension, a material, a tolerance or the part's name gives another (two agree by chance once in 2.7e8).
 */
export function revisionOf(design: Design, part: Part): string {
  const values = valuesOf(part, materialsOf(design));
  const { generalClass, densityPercent } = toleranceValues(design.tolerance);
  const own = (design.tolerance?.own ?? []).filter((row) => row.part === part.id);
  const sorted = Object.entries(values).toSorted(([a], [b]) => (a < b ? -1 : 1));
  const material = materialNamed(part, partType(part.kind).parameters.densityKgM3) ?? null;
  return fnv1a(
    JSON.stringify([part.kind, part.name, sorted, material, generalClass, densityPercent, own]),
  ).slice(0, 7);
}

/** Identification: the part's mark within the design and the beginning of the design's name, letters and digits only. */
export function drawingNumber(design: Design, part: Part): string {
  return `${stem(part.id, 14)}-${stem(design.name, 12)}`;
}

function stem(name: string, most: number): string {
  const letters = name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-+|-+$/g, '');
  return (letters === '' ? 'head' : letters).slice(0, most).replace(/-$/, '').toUpperCase();
}
