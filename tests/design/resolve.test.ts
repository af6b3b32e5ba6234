import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import { NO_MATERIALS, resolveValues, valueOrigin, valuesOf } from '../../src/design/resolve';
import {
  withCatalogue,
  withMaterial,
  withoutCatalogue,
  withoutMaterial,
  withValue,
} from '../../src/design/writeValue';
import { M } from '../../src/engine/mass/moments';
import { designOf, fullHead } from './designs';

const M3X22 = { standard: 'ISO 4762', size: 'M3', lengthMm: 22 } as const;
const pose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] } as const;

/** As the issue writes it: a reference, a material, and nothing else. */
const bought = {
  id: 'bolt',
  kind: 'bolt',
  name: 'Bolt',
  catalogue: M3X22,
  material: 'steel',
  pose,
} as unknown as Part;

function massOf(part: Part, materials = NO_MATERIALS): number {
  const model = new HeadModel();
  const loaded = model.load({ ...designOf([part]), materials });
  if (!loaded.ok) throw new Error(loaded.error.path);
  return model.placed(part.id)?.moments_G[M] ?? Number.NaN;
}

describe('a part that leaves its dimensions to a standard', () => {
  test('has those of the row: head 5.5 x 3, key 2.5, thread 18 of 22 mm (ISO 4762 M3)', () => {
    const values = valuesOf(bought, NO_MATERIALS);
    expect(values.headDiameterMm).toBe(5.5);
    expect(values.headHeightMm).toBe(3);
    expect(values.socketAcrossMm).toBe(2.5);
    expect(values.shankDiameterMm).toBe(3);
    expect(values.threadPitchMm).toBe(0.5);
    expect(values.lengthMm).toBe(22);
    expect(values.threadLengthMm).toBe(18);
    expect(values.densityKgM3).toBe(7850);
    expect(valueOrigin(bought, 'headHeightMm')).toBe('catalogue');
    expect(valueOrigin(bought, 'densityKgM3')).toBe('material');
    expect(valueOrigin(bought, 'extensionLengthMm')).toBe('catalogue');
  });

  test('lets a dimension written beside the reference win, and nothing else', () => {
    const tall = { ...bought, headHeightMm: 5 } as Part;
    const values = valuesOf(tall, NO_MATERIALS);
    expect(values.headHeightMm).toBe(5);
    expect(values.headDiameterMm).toBe(5.5);
    expect(valueOrigin(tall, 'headHeightMm')).toBe('written');
    expect(massOf(tall)).toBeGreaterThan(massOf(bought));
  });

  test('survives a file as it was written, reference and all', () => {
    const design = designOf([bought, ...fullHead().filter((part) => part.id === 'grip')]);
    const again = parseDesign(serializeDesign(design));
    expect(again.ok && again.value).toEqual(design);
    expect(serializeDesign(design)).not.toContain('headDiameterMm');
  });

  test('follows a change of length with everything that goes with it', () => {
    const longer = withValue(bought, 'lengthMm', 16, NO_MATERIALS);
    expect(longer.catalogue?.lengthMm).toBe(16);
    expect(valuesOf(longer, NO_MATERIALS).lengthMm).toBe(16);
    expect('lengthMm' in longer).toBe(false);
    // Threaded up to the head below b + 3 P: nearly nothing of plain shank is left.
    const thread = valuesOf(longer, NO_MATERIALS).threadLengthMm as number;
    expect(thread).toBeGreaterThan(13);
    expect(thread).toBeLessThanOrEqual(16);
  });

  test('keeps no word of a value that is back at the standard', () => {
    const changed = withValue(bought, 'headHeightMm', 4, NO_MATERIALS);
    expect('headHeightMm' in changed).toBe(true);
    const back = withValue(changed, 'headHeightMm', 3, NO_MATERIALS);
    expect(back).toEqual(bought);
  });

  test('keeps its dimensions when the reference is let go, and loses its own when one is taken', () => {
    const own = withoutCatalogue(bought, NO_MATERIALS);
    expect('catalogue' in own).toBe(false);
    expect(massOf(own)).toBe(massOf(bought));
    const again = withCatalogue({ ...own, headHeightMm: 9 } as Part, M3X22);
    expect(valuesOf(again, NO_MATERIALS).headHeightMm).toBe(3);
  });
});

describe('another row taken for a part', () => {
  test('lets go of what was measured of the former one, and its size in the name follows', () => {
    const weighed = {
      ...bought,
      name: 'Blade bolt M3 x 22',
      measured: { massGrams: 1.49 },
    } as unknown as Part;
    const other = withCatalogue(weighed, { standard: 'ISO 4762', size: 'M4', lengthMm: 25 });
    expect(other.measured).toBeUndefined();
    expect(other.name).toBe('Blade bolt M4 \u00d7 25');
    const nut = { ...bought, name: 'Locking nut M3' } as Part;
    expect(withCatalogue(nut, M3X22).name).toBe('Locking nut M3 \u00d7 22');
    expect(withCatalogue({ ...bought, name: 'My bolt' } as Part, M3X22).name).toBe('My bolt');
  });
});

describe('a part made of a material', () => {
  test('has its density, a number beside it wins, and the material comes back when that goes', () => {
    const titanium = withMaterial(bought, 'densityKgM3', 'titanium');
    const density = valuesOf(titanium, NO_MATERIALS).densityKgM3;
    expect(density).toBe(4430); // Ti-6Al-4V, annealed bar (data sheets).
    expect(massOf(titanium)).toBeCloseTo((massOf(bought) * 4430) / 7850, 15);
    const weighed = withValue(titanium, 'densityKgM3', 4400, NO_MATERIALS);
    expect(valuesOf(weighed, NO_MATERIALS).densityKgM3).toBe(4400);
    expect(withValue(weighed, 'densityKgM3', 4430, NO_MATERIALS)).toEqual(titanium);
    const loose = withoutMaterial(titanium, 'densityKgM3', NO_MATERIALS);
    expect('material' in loose).toBe(false);
    expect(valuesOf(loose, NO_MATERIALS).densityKgM3).toBe(4430);
  });

  test('follows the design\u2019s own material when that is changed', () => {
    const own = (densityKgM3: number) => [{ id: 'bar', name: 'Bar from the shelf', densityKgM3 }];
    const part = { ...bought, material: 'bar' } as unknown as Part;
    const model = new HeadModel();
    expect(model.load({ ...designOf([part]), materials: own(8000) }).ok).toBe(true);
    const before = model.placed('bolt')?.moments_G[M] ?? Number.NaN;
    // The same part object: only the list of materials is another.
    expect(model.sync({ ...designOf([part]), materials: own(4000) }).ok).toBe(true);
    expect(model.placed('bolt')?.moments_G[M]).toBeCloseTo(before / 2, 15);
    const gone = model.sync(designOf([part]));
    expect(gone.ok).toBe(false);
    if (!gone.ok) expect(gone.error.path).toBe('parts[0].material');
    expect(model.placed('bolt')?.moments_G[M]).toBeCloseTo(before / 2, 15);
  });
});

describe('a part that leaves nothing out', () => {
  test('is its own set of values: nothing is made anew on a drag', () => {
    const [grip] = fullHead();
    const full = Object.fromEntries(Object.entries(valuesOf(grip, NO_MATERIALS)));
    const complete = { ...full, ...grip } as unknown as Part;
    const values = resolveValues(complete, NO_MATERIALS);
    expect(values.ok && (values.value as unknown)).toBe(complete);
  });
});
