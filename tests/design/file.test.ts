import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/design/design';
import { describeFault } from '../../src/design/faultText';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { designOf, fullHead } from './designs';

const THREE_LUMPS = readFileSync(new URL('../fixtures/three-lumps.json', import.meta.url), 'utf8');

/** The same file in the layout in which it was first written down. */
const AS_TYPED = `{ "format": "stillgrip-design", "version": 1, "name": "Three lumps",
  "rotor": { "speedRpm": 10000, "bladeCount": 2, "torqueOffsetMm": 0, "preconeDeg": 0 },
  "parts": [
    { "id": "a", "kind": "pointMass", "name": "lump", "massGrams": 0.8,
      "pose": { "positionMm": [25, 12, 4], "rotationDeg": [0, 0, 0] } },
    { "id": "b", "kind": "block", "name": "slab", "sizeMm": [90, 30, 3.6], "densityKgM3": 1600,
      "pose": { "positionMm": [80, 0, 0], "rotationDeg": [0, 5, 0] } },
    { "id": "c", "kind": "cylinder", "name": "pin", "diameterMm": 5.5, "boreMm": 2.2, "lengthMm": 12, "densityKgM3": 7850,
      "pose": { "positionMm": [40, 0, 9], "rotationDeg": [0, 0, 0] } } ] }
`;

function parsed(text: string): Design {
  const design = parseDesign(text);
  if (!design.ok) throw new Error(describeFault(design.error));
  return design.value;
}

describe('a design file', () => {
  test('with three free shapes is accepted as it stands, numbers as typed', () => {
    expect(parsed(THREE_LUMPS)).toEqual(JSON.parse(THREE_LUMPS));
  });

  test('is accepted as people lay it out, lists and objects on one line', () => {
    expect(parsed(AS_TYPED)).toEqual(JSON.parse(THREE_LUMPS));
  });

  test('may begin with a byte order mark and end lines as other systems do', () => {
    const text = `\ufeff${THREE_LUMPS.replaceAll('\n', '\r\n')}`;
    expect(parsed(text)).toEqual(JSON.parse(THREE_LUMPS));
  });

  test('with every kind of mount survives saving and opening', () => {
    const design = designOf(fullHead());
    expect(parsed(serializeDesign(design))).toEqual(design);
  });

  test('is written the same whatever the order of keys in memory', () => {
    const shuffled = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(shuffled);
      if (typeof value !== 'object' || value === null) return value;
      const entries = Object.entries(value).toReversed();
      return Object.fromEntries(entries.map(([key, item]) => [key, shuffled(item)]));
    };
    const design = { ...designOf(fullHead()), note: 'Invented.' };
    const text = serializeDesign(design);
    expect(serializeDesign(shuffled(design) as Design)).toBe(text);
    expect(serializeDesign(parsed(text))).toBe(text);
  });

  test('is laid out for reading: a fixed order, lists of numbers on one line', () => {
    const text = serializeDesign(parsed(THREE_LUMPS));
    expect(text.split('\n').slice(0, 20)).toEqual([
      '{',
      '  "format": "stillgrip-design",',
      '  "version": 1,',
      '  "name": "Three lumps",',
      '  "rotor": {',
      '    "speedRpm": 10000,',
      '    "bladeCount": 2,',
      '    "torqueOffsetMm": 0,',
      '    "preconeDeg": 0',
      '  },',
      '  "parts": [',
      '    {',
      '      "id": "a",',
      '      "kind": "pointMass",',
      '      "name": "lump",',
      '      "massGrams": 0.8,',
      '      "pose": {',
      '        "positionMm": [25, 12, 4],',
      '        "rotationDeg": [0, 0, 0]',
      '      }',
    ]);
    expect(text.endsWith('}\n')).toBe(true);
  });

  test('is not written with a number that JSON cannot hold', () => {
    const design = parsed(THREE_LUMPS);
    const broken = { ...design, rotor: { ...design.rotor, speedRpm: Number.NaN } };
    expect(() => serializeDesign(broken)).toThrow(/not finite: NaN/);
  });
});

describe('a damaged file', () => {
  test('cut off at any byte is refused with the place, never half loaded', () => {
    const bytes = Buffer.from(serializeDesign({ ...parsed(THREE_LUMPS), name: 'Drei Körper' }));
    const whole = bytes.toString().trimEnd().length;
    for (let length = 0; length < bytes.length; length++) {
      const text = bytes.subarray(0, length).toString();
      const design = parseDesign(text);
      if (text.length >= whole && !text.includes('\ufffd')) {
        expect(design.ok).toBe(true);
        continue;
      }
      expect(design.ok).toBe(false);
      if (design.ok) continue;
      const { reason } = design.error;
      expect(reason.code).toBe(length === 0 ? 'empty' : 'truncated');
      if (reason.code === 'truncated') expect(reason.line).toBe(text.split('\n').length);
    }
  });
});
