import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { describeFault, FAULT_TEXTS } from '../../src/design/faultText';
import { parseDesign } from '../../src/design/file';
import { defaultValues, designOf, fullHead } from './designs';

type Json = Record<string, unknown>;
const SOURCE = readFileSync(new URL('../fixtures/three-lumps.json', import.meta.url), 'utf8');

/** Reasons met, to show when all tests are done that none is left untested. */
const seen = new Set<string>();
afterAll(() => {
  // Reached with injected migrations only: migrations.test.ts.
  const elsewhere = new Set([
    'migrationFailed',
    // Those of try-outs: tryOutsFile.test.ts.
    'repeatedTryOut',
    'shownTryOuts',
    'adoptedTwice',
    'tooManyTryOutParts',
  ]);
  const missed = Object.keys(FAULT_TEXTS).filter((code) => !seen.has(code) && !elsewhere.has(code));
  expect(missed).toEqual([]);
});

/** The line for a text, which must be refused. */
function refusal(text: string): string {
  const design = parseDesign(text);
  if (design.ok) throw new Error('the text was accepted');
  seen.add(design.error.reason.code);
  return describeFault(design.error);
}

/** The line for the three lumps with a change. */
function changed(change: (document: Json, parts: Json[]) => void): string {
  const document = JSON.parse(SOURCE) as Json;
  change(document, document.parts as Json[]);
  return refusal(JSON.stringify(document));
}

function timing(about: string, seconds: number): Json {
  return { about, spacingMm: 40, stringLengthMm: 500, swings: 10, seconds };
}

/** The line for the full head with one part's fields laid over. */
function headWith(id: string, more: Json): string {
  const parts = fullHead().map((part) => (part.id === id ? { ...part, ...more } : part));
  return refusal(JSON.stringify(designOf(parts as never)));
}

describe('a file that is no design', () => {
  test.each([
    ['', 'is empty'],
    [' \n\t ', 'is empty'],
    ['[]', 'must be an object; found list'],
    [
      `{"format":"${'x'.repeat(200)}"}`,
      `format: must be stillgrip-design; found "${'x'.repeat(59)}: this is not a design file`,
    ],
    [
      '{"format":"stillgrip-design","version":-1}',
      'version: must be a whole number from 0 up; found -1',
    ],
    [
      `{"format":"stillgrip-design","version":"${'x'.repeat(200)}"}`,
      `version: must be a whole number from 0 up; found "${'x'.repeat(39)}`,
    ],
    ['null', 'must be an object; found null'],
    ['"text"', 'must be an object; found text'],
    ['{}', 'format: must be stillgrip-design; found nothing: this is not a design file'],
    [
      '{"format":"other"}',
      'format: must be stillgrip-design; found "other": this is not a design file',
    ],
    ['{"format":"stillgrip-design"}', 'version: is missing'],
    [
      '{"format":"stillgrip-design","version":"1"}',
      'version: must be a whole number from 0 up; found "1"',
    ],
    [
      '{"format":"stillgrip-design","version":1.5}',
      'version: must be a whole number from 0 up; found 1.5',
    ],
    [
      '{"format":"stillgrip-design","version":0}',
      'version: is 0, which this program no longer reads; the present version is 1',
    ],
    ['hello', 'is not JSON: unexpected "hello" at line 1, column 1'],
    ['{"a":1,\n  "b":NaN}', 'b: is not JSON: unexpected "NaN}" at line 2, column 7'],
    ['{"a":1}}', 'is not JSON: unexpected "}" at line 1, column 8'],
    ['{"a":[1,2', 'a[1]: ends too early, at line 1, column 10: the file is cut off'],
    ['{"a":{"b":1,\n"b":2}}', 'a: "b" is given twice, again at line 2'],
  ])('%j', (text, line) => {
    expect(refusal(text)).toBe(line);
  });

  test('from the future says which version it is', () => {
    expect(changed((document) => (document.version = 7))).toBe(
      'version: is 7, from a newer program; this one reads up to 1. Open it with that program, or update this one',
    );
  });

  test('nested without end is refused before anything is built', () => {
    const deep = '['.repeat(1_000_000);
    expect(refusal(deep)).toMatch(/is nested deeper than 32 levels$/);
    expect(refusal(`{"format":"stillgrip-design","version":${deep}`)).toMatch(/^version\[0\]/);
  });

  test('too long to be one is refused unread', () => {
    expect(refusal(' '.repeat(32_000_001))).toBe(
      'has 32000001 characters; at most 32000000 are read',
    );
    expect(refusal(' '.repeat(32_000_000))).toBe('is empty');
  });
});

describe('a bad field is named with the reason', () => {
  test.each<[string, (document: Json, parts: Json[]) => void]>([
    ['rotor: is missing', (d) => delete d.rotor],
    [
      'rotor.speedRpm: must be at least 0 rpm; found -1 rpm',
      (d) => ((d.rotor as Json).speedRpm = -1),
    ],
    [
      'rotor.speedRpm: must be at most 200000 rpm; found 200001 rpm',
      (d) => ((d.rotor as Json).speedRpm = 200_001),
    ],
    [
      'rotor.bladeCount: must be a whole number; found 2.5',
      (d) => ((d.rotor as Json).bladeCount = 2.5),
    ],
    [
      'rotor.preconeDeg: must be at most 30 deg; found 31 deg',
      (d) => ((d.rotor as Json).preconeDeg = 31),
    ],
    ['rotor: has an unknown key "speed"', (d) => ((d.rotor as Json).speed = 1)],
    ['has an unknown key "parst"', (d) => (d.parst = [])],
    ['parts: must be a list; found object', (d) => (d.parts = {})],
    ['parts[1]: must be an object; found null', (_, p) => (p[1] = null as never)],
    ['parts[0].massGrams: must be a number; found null', (_, p) => (p[0].massGrams = null)],
    ['parts[0].massGrams: must be a number; found text', (_, p) => (p[0].massGrams = 'NaN')],
    ['parts[0].massGrams: is missing', (_, p) => delete p[0].massGrams],
    ['parts[0]: has an unknown key "massKg"', (_, p) => (p[0].massKg = 1)],
    ['parts[2].lengthMm: must be at least 0.05 mm; found -12 mm', (_, p) => (p[2].lengthMm = -12)],
    ['parts[2].boreMm: must be below diameterMm (5.5 mm); found 6 mm', (_, p) => (p[2].boreMm = 6)],
    ['parts[2].id: repeats the id "a" of parts[0]', (_, p) => (p[2].id = 'a')],
    ['parts[2].id: must not be empty', (_, p) => (p[2].id = '')],
    [
      'parts[2].id: has 65 characters; at most 64 are allowed',
      (_, p) => (p[2].id = 'x'.repeat(65)),
    ],
    ['parts[1].hidden: must be true or false; found number', (_, p) => (p[1].hidden = 1)],
    ['parts[1].sizeMm: must hold 3 numbers; found 2', (_, p) => (p[1].sizeMm = [1, 2])],
    ['parts[1].sizeMm: must hold 3 numbers; found 4', (_, p) => (p[1].sizeMm = [1, 2, 3, 4])],
    ['parts[1].sizeMm[2]: must be a number; found null', (_, p) => (p[1].sizeMm = [1, 2, null])],
    [
      'parts[1].pose.positionMm[0]: must be at most 10000 mm; found 20000 mm',
      (_, p) => (p[1].pose = { positionMm: [2e4, 0, 0], rotationDeg: [0, 0, 0] }),
    ],
    [
      'parts[1].pose.rotationDeg[1]: must be at least -360 deg; found -361 deg',
      (_, p) => (p[1].pose = { positionMm: [0, 0, 0], rotationDeg: [0, -361, 0] }),
    ],
    [
      'parts[0]: must have exactly one of pose and socket; found neither',
      (_, p) => delete p[0].pose,
    ],
    [
      'parts[0]: must have exactly one of pose and socket; found both',
      (_, p) => (p[0].socket = { part: 'b', name: 'x' }),
    ],
    ['parts[0].kind: must be text; found number', (_, p) => (p[0].kind = 3)],
    ['parts[0].kind: is missing', (_, p) => delete p[0].kind],
  ])('%s', (line, change) => {
    expect(changed(change)).toBe(line);
  });

  test('numbers that JSON spells but no number can hold are not finite', () => {
    expect(refusal(SOURCE.replace('0.8', '1e999'))).toBe(
      'parts[0].massGrams: must be a finite number',
    );
    expect(refusal(SOURCE.replace('"speedRpm": 10000', '"speedRpm": -1e999'))).toBe(
      'rotor.speedRpm: must be a finite number',
    );
  });

  test('an unknown kind is named, on one line whatever it holds', () => {
    expect(changed((_, parts) => (parts[0].kind = 'pointmass\n\u2028'))).toMatch(
      /^parts\[0\]\.kind: is an unknown kind "pointmass\\n "; known are grip, .*, meshBody, keepOut$/,
    );
    expect(changed((_, parts) => (parts[0].kind = 'constructor'))).toMatch(/kind "constructor"/);
  });

  test('keys that reach for the prototype are unknown keys', () => {
    for (const key of ['__proto__', '\\u005f_proto__']) {
      const text = SOURCE.replace('"massGrams"', `"${key}": { "massGrams": 1 }, "massGrams"`);
      expect(refusal(text)).toBe('parts[0]: has an unknown key "__proto__"');
    }
    expect(refusal(SOURCE.replace('"massGrams"', '"constructor": 1, "massGrams"'))).toBe(
      'parts[0]: has an unknown key "constructor"',
    );
    expect(({} as Json).massGrams).toBeUndefined();
  });

  test('more parts than are allowed', () => {
    const line = changed((document, parts) => {
      document.parts = Array.from({ length: 10_001 }, (_, i) => ({ ...parts[0], id: `p${i}` }));
    });
    expect(line).toBe('parts: holds 10001 parts; at most 10000 are allowed');
  });

  test('a choice that is not offered', () => {
    expect(headWith('link', { slider: 'left' })).toBe(
      'parts[2].slider: must be one of below, above; found "left"',
    );
    expect(headWith('link', { slider: 3 })).toBe('parts[2].slider: must be text; found number');
  });
});

describe('a mount that does not hold is refused at its field', () => {
  test.each<[string, string, Json]>([
    ['parts[3].threadLengthMm', 'bolt', { threadLengthMm: 31 }],
    [
      'parts[8].socket.part: names a part that is not in the design: "blot"',
      'nut',
      { socket: { part: 'blot', name: 'thread' } },
    ],
    [
      'parts[8].socket.name: part "bolt" has no socket "tread"; it has underHead',
      'nut',
      { socket: { part: 'bolt', name: 'tread' } },
    ],
    [
      'parts[8].socket.name: a "nut" does not fit the socket "underHead": it takes underHead, the part fits thread',
      'nut',
      { socket: { part: 'bolt', name: 'underHead' } },
    ],
    [
      'parts[11].socket.name: a "pointMass" does not fit the socket "thread": it takes thread, the part fits none',
      'lump',
      { pose: undefined, socket: { part: 'bolt', name: 'thread' } },
    ],
    [
      'parts[8].socket.offsetMm: must lie between 10 and ',
      'nut',
      { socket: { part: 'bolt', name: 'thread', offsetMm: 9.99 } },
    ],
    [
      'parts[8].socket.turnDeg: must be at most 360 deg; found 400 deg',
      'nut',
      { socket: { part: 'bolt', name: 'thread', turnDeg: 400 } },
    ],
    [
      'parts[8].socket: has an unknown key "offset"',
      'nut',
      { socket: { part: 'bolt', name: 'thread', offset: 12 } },
    ],
    ['parts[8].socket.part: must not be empty', 'nut', { socket: { part: '', name: 'thread' } }],
  ])('%s', (line, id, more) => {
    const found = headWith(id, more);
    expect(found.slice(0, line.length)).toBe(line);
  });

  test('an offset at the very end of its range holds, whatever rounding made the end', () => {
    // In floating point 25 - 16.4 is 8.600000000000001, and a person types 8.6.
    const parts = fullHead().map((part) => {
      if (part.id === 'bolt') return { ...part, lengthMm: 25, threadLengthMm: 16.4 };
      const socket = { part: 'bolt', name: 'thread', offsetMm: 8.6 };
      return part.id === 'nut' ? { ...part, socket } : part;
    });
    expect(25 - 16.4).toBeGreaterThan(8.6);
    expect(parseDesign(JSON.stringify(designOf(parts as never))).ok).toBe(true);
  });

  test('circles are found: on oneself, and of two behind a part that is not in the circle', () => {
    const nut = { kind: 'nut', name: '', ...defaultValues('nut') };
    const washer = { kind: 'washer', name: '', ...defaultValues('washer') };
    const bolt = { kind: 'bolt', name: '', ...defaultValues('bolt') };
    const weight = { kind: 'weight', name: '', ...defaultValues('weight') };
    const on = (part: string, name: string) => ({ socket: { part, name } });
    // No registered type seats its own kind: these circles do not fit either, and the circle is what is told.
    const self = designOf([{ id: 'n', ...nut, ...on('n', 'nutFace') }] as never);
    expect(refusal(JSON.stringify(self))).toMatch(/^parts\[0\]\.socket\.part: .*circle: "n"$/);
    const two = designOf([
      { id: 'w', ...washer, ...on('b', 'underHead') },
      { id: 'x', ...weight, ...on('b', 'headTop') },
      { id: 'b', ...bolt, ...on('n', 'boltHole') },
      { id: 'n', ...nut, ...on('b', 'thread') },
    ] as never);
    expect(refusal(JSON.stringify(two))).toMatch(/^parts\[2\]\.socket\.part: .*circle: "b", "n"$/);
  });

  test.each<[string, string, Json]>([
    [
      'parts[3].catalogue.standard: must be one of',
      'bolt',
      { catalogue: { standard: 'ISO 1', size: 'M3', lengthMm: 12 } },
    ],
    [
      'parts[3].catalogue.size: is not in the catalogue, which has M1.6, M2, M2.5, M3',
      'bolt',
      { catalogue: { standard: 'ISO 4762', size: 'M3.3', lengthMm: 12 } },
    ],
    [
      'parts[3].catalogue.lengthMm: is missing: this size comes in lengths',
      'bolt',
      { catalogue: { standard: 'ISO 4762', size: 'M3' } },
    ],
    [
      'parts[3].catalogue.lengthMm: must be at most 300 mm; found 1000000 mm',
      'bolt',
      { catalogue: { standard: 'ISO 4762', size: 'M3', lengthMm: 1e6 } },
    ],
    [
      'parts[8].catalogue: has an unknown key "lengthMm"',
      'nut',
      { catalogue: { standard: 'ISO 4032', size: 'M3', lengthMm: 5 } },
    ],
    [
      'parts[7]: has an unknown key "catalogue"',
      'blade',
      { catalogue: { standard: 'ISO 4762', size: 'M3', lengthMm: 12 } },
    ],
    [
      'parts[3].material: names the material "unobtainium", which is neither in the tables nor in the design',
      'bolt',
      { densityKgM3: undefined, material: 'unobtainium' },
    ],
    ['parts[3].densityKgM3: is missing', 'bolt', { densityKgM3: undefined }],
    ['parts[3].headHeightMm: is missing', 'bolt', { headHeightMm: undefined }],
    [
      'parts[3].measured.massGrams: must be at least 0.001 g; found 0 g',
      'bolt',
      { measured: { massGrams: 0 } },
    ],
    [
      'parts[3].measured.swings[0].seconds: is missing',
      'bolt',
      { measured: { swings: [{ about: 'span', spacingMm: 40, stringLengthMm: 500, swings: 10 }] } },
    ],
    [
      'parts[3].measured.swings[1].about: is a second timing about the span axis',
      'bolt',
      { measured: { swings: [timing('span', 10), timing('span', 11)] } },
    ],
    [
      'parts[3].measured.swings: holds 4 entries; at most 3 are allowed',
      'bolt',
      {
        measured: { swings: ['span', 'chord', 'thickness', 'span'].map((axis) => timing(axis, 9)) },
      },
    ],
    // A body cannot turn more heavily about one axis than about both others together.
    [
      'parts[3].measured.swings: cannot be true: the timings leave a spread of -',
      'bolt',
      { measured: { swings: [timing('span', 90), timing('chord', 4), timing('thickness', 4)] } },
    ],
  ])('%s', (line, id, more) => {
    const found = headWith(id, more);
    expect(found.slice(0, line.length)).toBe(line);
  });

  test('a section that crosses itself is told with the reason', () => {
    const sectionCoordinates = [1, 0, 0, 0.1, 1, 0.1, 0, 0];
    expect(headWith('blade', { sectionCoordinates })).toMatch(
      /^parts\[7\]\.sectionCoordinates: cannot be used: /,
    );
  });

  test('own materials are told apart and kept within their own range', () => {
    const steel = { id: 'bar', name: 'My bar', densityKgM3: 7800 };
    expect(changed((document) => void (document.materials = [steel, steel]))).toBe(
      'materials[1].id: repeats the id "bar" of materials[0]',
    );
    expect(
      changed((document) => void (document.materials = [{ ...steel, densityHighKgM3: 7000 }])),
    ).toBe('materials[0].densityHighKgM3: must be at least 7800 kg/m3; found 7000 kg/m3');
    expect(
      changed((document) => void (document.materials = [{ ...steel, densityLowKgM3: 8.7 }])),
    ).toBe('materials[0].densityLowKgM3: must be at least 1560 kg/m3; found 8.7 kg/m3');
    expect(changed((document) => void (document.weighedTotal = { massGrams: -1 }))).toBe(
      'weighedTotal.massGrams: must be at least 0.001 g; found -1 g',
    );
  });
});

test('a limit that is a difference of typed decimals is written without the rounding of its last digit', () => {
  const url = new URL('../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const design = JSON.parse(readFileSync(url, 'utf8'));
  const arm = design.parts.find(({ id }: { id: string }) => id === 'arm');
  // 0.6 - 0.5 is 0.09999999999999998 in binary.
  Object.assign(arm, { armStartMm: 0.5, armReachMm: 0.6, ballHeightMm: 15 });
  const read = parseDesign(JSON.stringify(design));
  if (read.ok) throw new Error('it was taken');
  expect(describeFault(read.error)).toMatch(/ballHeightMm: .*\(0\.1 mm\); found 15 mm$/);
});
