import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { JXX, M, SX } from '../../src/engine/mass/moments';
import { writeStl } from '../../src/meshes/writeStl';
import { boxMesh } from '../support/meshes';
import {
  faultOfFile,
  glb,
  importOf,
  meshXml,
  modelXml,
  objText,
  package3mf,
  stlText,
  TONON,
  threeMf,
} from './files';

// Published: F. Tonon, J. Math. Stat. 1(1), 2004; centroid x is the mean of the paper's corners (its own is misprinted).
const VOLUME = 1873.233236;
const CENTROID = [15.9249475, 0.78281, 3.72962];
/** The paper prints corners to 5e-6; float32 rounds a corner of 52 by 2e-6: times the area of 1150. */
const PRINTED = 1150 * 7e-6;

describe('the tetrahedron of Tonon', () => {
  it.each([
    ['binary STL', 'tetra.stl', () => writeStl([TONON], 1, 'solid test'), 'mm'],
    ['text STL', 'tetra.stl', () => stlText(TONON), 'mm'],
    ['OBJ', 'tetra.obj', () => objText(TONON), 'mm'],
    ['3MF', 'tetra.3mf', () => threeMf(TONON), 'mm'],
    ['GLB', 'tetra.glb', () => glb(TONON), 'm'],
  ])('has the published volume and centroid through %s', async (_, name, bytes, unit) => {
    const { report, volumeMoments } = await importOf(name, await bytes());
    expect(report).toMatchObject({
      verdict: 'sound',
      triangles: 4,
      points: 4,
      shells: 1,
      openEdges: 0,
      notes: [],
    });
    expect(report.unit.unit).toBe(unit);
    const moments = volumeMoments as number[];
    expect(Math.abs(moments[M] - VOLUME)).toBeLessThan(PRINTED);
    CENTROID.forEach((value, k) => {
      expect(Math.abs(moments[SX + k] / moments[M] - value)).toBeLessThan(1.5e-5);
    });
  });

  it('is the same to the last digit through OBJ, 3MF and text STL, which hold doubles', async () => {
    const files = [
      await importOf('a.obj', objText(TONON)),
      await importOf('a.3mf', threeMf(TONON)),
    ];
    expect(files[1].volumeMoments).toEqual(files[0].volumeMoments);
    const text = await importOf('a.stl', stlText(TONON));
    // The points come in another order, so sums round otherwise.
    expect((text.report.volume as number) / (files[0].report.volume as number)).toBeCloseTo(1, 14);
  });
});

describe('STL', () => {
  it('is binary when its length says so, though its header begins with "solid"', async () => {
    const bytes = writeStl([TONON], 1, 'x');
    bytes.set(new TextEncoder().encode('solid body from a program'));
    expect((await importOf('a.stl', bytes)).report.format).toBe('stlBinary');
  });
  it('may have bytes after its last triangle, which are noted', async () => {
    const bytes = new Uint8Array([...writeStl([TONON], 1, 'x'), 1, 2, 3]);
    const { report } = await importOf('a.stl', bytes);
    expect(report.notes).toEqual([{ kind: 'trailingBytes', bytes: 3 }]);
    expect(report.verdict).toBe('sound');
  });
  it('may hold several solids one after another, in capitals', async () => {
    const far = { ...TONON, positions: TONON.positions.map((value) => value + 100) };
    const text = new TextDecoder().decode(stlText(TONON)) + new TextDecoder().decode(stlText(far));
    const bytes = new TextEncoder().encode(text.toUpperCase());
    const { report } = await importOf('a.stl', bytes);
    expect(report).toMatchObject({ format: 'stlText', shells: 2, verdict: 'sound' });
  });
});

describe('OBJ', () => {
  it('takes negative indices and cuts a hollow face by its ears', async () => {
    // An L of area 3 seen from +z, 1 thick: volume 3.
    const plan = [
      [0, 0],
      [2, 0],
      [2, 1],
      [1, 1],
      [1, 2],
      [0, 2],
    ];
    const points = [0, 1].flatMap((z) => plan.map(([x, y]) => `v ${x} ${y} ${z}`));
    const top = 'f -6 -5 -4 -3 -2 -1';
    // From a corner from which a fan would fold over.
    const bottom = 'f 5 4 3 2 1 6';
    const sides = plan.map((_, i) => {
      const next = (i + 1) % 6;
      return `f ${i + 1} ${next + 1} ${next + 7} ${i + 7}`;
    });
    const text = [...points, top, bottom, ...sides].join('\n');
    const { report } = await importOf('l.obj', new TextEncoder().encode(text));
    expect(report.verdict).toBe('sound');
    expect(report.volume).toBeCloseTo(3, 14);
  });
});

describe('3MF', () => {
  it('places components and items by their transforms, a mirror turned outward again', async () => {
    const cube = boxMesh(2, 2, 2);
    const resources = `<object id="1">${meshXml(cube)}</object><object id="2"><components><component objectid="1" transform="1 0 0 0 1 0 0 0 1 10 0 0"/><component objectid="1" transform="-1 0 0 0 1 0 0 0 1 -10 0 0"/></components></object>`;
    const build = '<item objectid="2" transform="0 3 0 -1 0 0 0 0 1 0 0 5"/>';
    const { report, volumeMoments } = await importOf(
      'a.3mf',
      package3mf(modelXml(resources, build)),
    );
    expect(report).toMatchObject({ verdict: 'sound', shells: 2, shellsTurned: 0, triangles: 24 });
    // x goes to 3 y, y to -x, z up by 5: two boxes 2 x 6 x 2 about y = 30 and -30.
    const [m, sx, sy, sz, xx, yy] = volumeMoments as number[];
    expect(m).toBeCloseTo(48, 12);
    expect([sx, sy]).toEqual([expect.closeTo(0, 10), expect.closeTo(0, 10)]);
    expect(sz).toBeCloseTo(240, 10);
    expect(xx).toBeCloseTo((48 * 4) / 12, 10);
    expect(yy).toBeCloseTo(48 * (900 + 36 / 12), 8);
  });
  it('reads the unit, and components from other parts of the package', async () => {
    const production = 'http://schemas.microsoft.com/3dmanufacturing/production/2015/06';
    const resources =
      '<object id="7"><components><component objectid="1" p:path="/3D/Objects/a.model"/></components></object>';
    const model = modelXml(
      resources,
      '<item objectid="7"/>',
      `xmlns:p="${production}" requiredextensions="p"`,
    );
    const other = modelXml(`<object id="1">${meshXml(TONON)}</object>`, '');
    const inch = (text: string) => text.replace('millimeter', 'inch');
    const bytes = package3mf(inch(model), { '3D/Objects/a.model': inch(other) });
    const { report } = await importOf('a.3mf', bytes);
    expect(report.unit).toMatchObject({ unit: 'in', because: 'stated' });
    expect(Math.abs((report.volume as number) - VOLUME)).toBeLessThan(PRINTED);
  });
  it('refuses an extension that it must know by its name', async () => {
    const lattice = 'http://schemas.microsoft.com/3dmanufacturing/beamlattice/2017/02';
    const model = modelXml('', '', `xmlns:b="${lattice}" requiredextensions="b"`);
    expect(await faultOfFile('a.3mf', package3mf(model))).toEqual({
      kind: 'unsupported',
      format: '3mf',
      name: lattice,
    });
  });
});

describe('GLB', () => {
  it('applies the transforms of nodes, and turns a mirrored one outward', async () => {
    const bytes = await glb(boxMesh(0.01, 0.02, 0.03), (document) => {
      const [node] = document.getRoot().listNodes();
      node.setScale([-2, 1, 1]).setTranslation([0, 0, 1]);
      node.setRotation([0, 0, Math.SQRT1_2, Math.SQRT1_2]);
    });
    const { report, volumeMoments } = await importOf('a.glb', bytes);
    expect(report).toMatchObject({ verdict: 'sound', turnedInsideOut: false });
    const moments = volumeMoments as number[];
    // float32 corners: 6e-8 of each side.
    expect(moments[M] / 12e-6).toBeCloseTo(1, 6);
    // Twice as long, along y now: 20 mm squared over 12, and x has the 20 mm side.
    expect(moments[JXX] / moments[M]).toBeCloseTo(0.02 ** 2 / 12, 9);
    expect(moments[SX + 2] / moments[M]).toBeCloseTo(1, 6);
  });
});

describe('STEP', () => {
  it('a block of 30 x 20 x 4 mm written by hand has its volume and centre through the CAD kernel', async () => {
    const bytes = readFileSync(new URL('./block.step', import.meta.url));
    const { report, volumeMoments } = await importOf('block.step', new Uint8Array(bytes));
    expect(report).toMatchObject({ format: 'step', verdict: 'sound', shells: 1 });
    expect(report.volume).toBeCloseTo(2400, 9);
    const moments = volumeMoments as number[];
    expect(moments.slice(SX, SX + 3).map((value) => value / moments[M])).toEqual([
      expect.closeTo(15, 9),
      expect.closeTo(10, 9),
      expect.closeTo(2, 9),
    ]);
  }, 30_000);

  it('a pin of radius 5 mm loses no more of its volume than flats of two degrees cut off', async () => {
    const bytes = readFileSync(new URL('./pin.step', import.meta.url));
    const { report } = await importOf('pin.step', new Uint8Array(bytes));
    expect(report).toMatchObject({ verdict: 'sound', shells: 1 });
    const lost = 1 - (report.volume as number) / (Math.PI * 25 * 20);
    expect(lost).toBeGreaterThan(0);
    // (2 pi / 180)^2 / 6.
    expect(lost).toBeLessThan(2.1e-4);
  }, 30_000);
});
