import { describe, expect, it } from 'vitest';
import { checkMount } from '../../../src/design/check';
import { checkDesign } from '../../../src/design/checkDesign';
import { checkParts, longTexts } from '../../../src/design/checkParts';
import { checkTryOuts } from '../../../src/design/checkTryOuts';
import type { Design, Part } from '../../../src/design/design';
import { designFrom } from '../../../src/design/file';
import { NO_MATERIALS } from '../../../src/design/resolve';
import { packPicture, unpackPicture } from '../../../src/parts/meshBody/picture';
import { designOf, fullHead, mounted, partOf } from '../designs';

const seen = () => true;
const check = (parts: readonly Part[], trusted?: (part: Part) => boolean) =>
  checkParts(parts, NO_MATERIALS, trusted);

/** What a part of the full head with that is refused for, in a file and in memory. */
function withPart(id: string, more: object) {
  const parts = fullHead().map((part) => (part.id === id ? { ...part, ...more } : part));
  const design = designOf(parts as Part[]);
  const read = designFrom(JSON.parse(JSON.stringify(design)));
  return [read.ok ? null : read.error, checkDesign(design as Design)];
}

describe('what only some parts have', () => {
  it.each<[string, object, string, object]>([
    [
      'blade',
      { sectionCoordinates: {} },
      '.sectionCoordinates',
      { code: 'wrongType', expected: 'list', found: 'object' },
    ],
    [
      'blade',
      { sectionCoordinates: [1, 0, 'x'] },
      '.sectionCoordinates[2]',
      { code: 'wrongType', expected: 'number', found: 'text' },
    ],
    [
      'blade',
      { sectionCoordinates: [1, 0, 3.5] },
      '.sectionCoordinates[2]',
      { code: 'tooLarge', value: 3.5, limit: 3, unit: '1' },
    ],
    [
      'blade',
      { sectionName: 'x'.repeat(121) },
      '.sectionName',
      { code: 'textTooLong', length: 121, limit: 120 },
    ],
    [
      'link',
      { slider: 'left' },
      '.slider',
      { code: 'notAChoice', found: 'left', options: ['below', 'above'] },
    ],
    [
      'bolt',
      { catalogue: { standard: 'ISO 4762', size: 'M3', lengthMm: 301 } },
      '.catalogue.lengthMm',
      { code: 'tooLarge', value: 301, limit: 300, unit: 'mm' },
    ],
    [
      'bolt',
      { catalogue: { standard: 'ISO 4762', size: 'M3', lengthMm: 1.5 } },
      '.catalogue.lengthMm',
      { code: 'tooSmall', value: 1.5, limit: 2, unit: 'mm' },
    ],
  ])('%s with %j is refused alike in a file and in memory', (id, more, path, reason) => {
    const index = fullHead().findIndex((part) => part.id === id);
    const wanted = { path: `parts[${index}]${path}`, reason };
    expect(withPart(id, more)).toEqual([wanted, wanted]);
  });

  it('a list of numbers may be as long as its limit and no longer', () => {
    const [, whole] = withPart('blade', { sectionCoordinates: Array(2000).fill(0) });
    const reason = whole?.reason as unknown as { limit: number };
    expect(whole?.reason).toMatchObject({ code: 'tooMany', count: 2000 });
    for (const found of withPart('blade', { sectionCoordinates: Array(reason.limit).fill(0) })) {
      expect(found?.reason.code).not.toBe('tooMany');
    }
    for (const found of withPart('blade', {
      sectionCoordinates: Array(reason.limit + 1).fill(0),
    })) {
      expect(found).toEqual({
        path: 'parts[7].sectionCoordinates',
        reason: { code: 'tooMany', count: reason.limit + 1, limit: reason.limit },
      });
    }
  });

  it('a length where the catalogue has none', () => {
    const catalogue = { standard: 'ISO 4032', size: 'M3', lengthMm: 5 };
    const [file, memory] = withPart('nut', { catalogue });
    expect(file?.reason).toEqual({ code: 'unknownKey', key: 'lengthMm' });
    expect(memory).toEqual({
      path: 'parts[8].catalogue.lengthMm',
      reason: { code: 'tooLarge', value: 5, limit: 0, unit: 'mm' },
    });
    // A blade is in no catalogue at all.
    expect(withPart('blade', { catalogue })[1]?.path).toBe('parts[7].catalogue.lengthMm');
  });

  it('a seat beyond either end of its range, which belong to it', () => {
    const at = (offsetMm: number) =>
      withPart('nut', { socket: { part: 'bolt', name: 'thread', offsetMm } })[1];
    const reason = at(1000)?.reason;
    if (reason?.code !== 'offsetOutOfRange') throw new Error('it was taken');
    const { low, high } = reason;
    expect([low, high].every(Number.isFinite)).toBe(true);
    expect([low, (low + high) / 2, high].map(at)).toEqual([null, null, null]);
    for (const value of [low - 1e-6, high + 1e-6]) {
      expect(at(value)).toMatchObject({ path: 'parts[8].socket.offsetMm', reason: { value } });
    }
  });

  it('a part without a mount has no seat to be wrong', () => {
    expect(checkMount(partOf('block', 'a'), null)).toBeNull();
  });
});

describe('a list of parts', () => {
  const many = (count: number) => {
    const one = partOf('pointMass', 'p');
    return Array.from({ length: count }, (_, k) => ({ ...one, id: `p${k}` }));
  };
  const withPicture = (length: number) => partOf('meshBody', 'm', { picture: 'x'.repeat(length) });

  it('holds ten thousand', () => {
    expect(check(many(10_000), seen)).toBeNull();
    expect(check(many(10_001), seen)).toEqual({
      path: 'parts',
      reason: { code: 'tooManyParts', count: 10_001, limit: 10_000 },
    });
  });

  it('holds long texts of 24 million letters, those of pictures, names of files and no others', () => {
    // A file is read up to 32 million, of which 8 million are for numbers.
    expect(longTexts(many(3))).toBe(0);
    const named = partOf('meshBody', 'm', { picture: 'x'.repeat(100), sourceName: 'body.stl' });
    expect(longTexts([named, ...many(2), withPicture(1000)])).toBe(1108);
    expect(longTexts([partOf('meshBody', 'm', { picture: undefined })])).toBe(0);
    expect(check([withPicture(24_000_000)], seen)).toBeNull();
    expect(check([withPicture(24_000_001)], seen)).toEqual({
      path: 'parts',
      reason: { code: 'tooLong', length: 24_000_001, limit: 24_000_000 },
    });
  });

  it('names a circle from its first part in the list, whichever led to it', () => {
    const on = (id: string, kind: 'nut' | 'bolt' | 'weight', part: string, name: string) =>
      mounted(kind, id, part, name);
    const ring = [
      on('w', 'weight', 'n', 'headTop'),
      on('b', 'bolt', 'n', 'boltHole'),
      on('n', 'nut', 'b', 'thread'),
    ];
    expect(check(ring)).toEqual({
      path: 'parts[1].socket.part',
      reason: { code: 'cycle', ids: ['b', 'n'] },
    });
  });
});

describe('parts that were found sound before', () => {
  const bolt = partOf('bolt', 'bolt');
  const off = mounted('nut', 'nut', 'bolt', 'thread', {
    socket: { part: 'bolt', name: 'thread', offsetMm: 1000 },
  });
  const lost = mounted('nut', 'nut', 'elsewhere', 'thread');
  const only =
    (...trusted: readonly Part[]) =>
    (part: Part) =>
      trusted.includes(part);

  it('are not looked at again where their parent is the same', () => {
    expect(check([bolt, off])?.reason.code).toBe('offsetOutOfRange');
    expect(check([bolt, off], seen)).toBeNull();
    // Not even beside one that is new.
    const washer = mounted('washer', 'w', 'bolt', 'underHead');
    expect(check([bolt, off, washer], only(bolt, off))).toBeNull();
  });

  it('are where their parent changed, is not there, or they did themselves', () => {
    expect(check([bolt, off], only(off))?.reason.code).toBe('offsetOutOfRange');
    expect(check([bolt, off], only(bolt))?.reason.code).toBe('offsetOutOfRange');
    expect(check([bolt, lost], seen)?.reason).toEqual({
      code: 'missingParent',
      parent: 'elsewhere',
    });
  });
});

describe('what all try-outs hold together', () => {
  it('are long texts of 24 million letters', () => {
    // A box whose picture has 60,000 points that no triangle uses, and is as good as the box's own.
    const box = partOf('meshBody', 'box') as unknown as { picture: string };
    const mesh = unpackPicture(box.picture);
    if (!mesh.ok) throw new Error(mesh.error);
    const positions = new Float64Array(180_000);
    positions.set(mesh.value.positions);
    const picture = packPicture({ positions, triangles: mesh.value.triangles });
    const parts = (count: number) =>
      Array.from({ length: count }, (_, k) => partOf('meshBody', `m${k}`, { picture }));
    const most = Math.floor(24_000_000 / picture.length);
    const design = (count: number) => ({
      ...designOf(parts(count)),
      tryOuts: [
        { id: 'a', name: '' },
        { id: 'b', name: '', parts: parts(most - 10) },
      ],
    });
    expect(checkTryOuts(design(10))).toBeNull();
    expect(checkTryOuts(design(11))).toEqual({
      path: 'tryOuts',
      reason: { code: 'tooLong', length: (most + 1) * picture.length, limit: 24_000_000 },
    });
  });

  it('are 20,000 parts', () => {
    const parts = (count: number) =>
      Array.from({ length: count }, (_, k) => ({ ...partOf('pointMass', 'p'), id: `p${k}` }));
    const [half, more] = [parts(10_000), parts(1)];
    const other = (id: string, own: Part[]) => ({ id, name: '', parts: own });
    const design = { ...designOf(half), tryOuts: [{ id: 'a', name: '' }, other('b', half)] };
    expect(checkTryOuts(design)).toBeNull();
    expect(checkTryOuts({ ...design, tryOuts: [...design.tryOuts, other('c', more)] })).toEqual({
      path: 'tryOuts',
      reason: { code: 'tooManyTryOutParts', count: 20_001, limit: 20_000 },
    });
  });
});
