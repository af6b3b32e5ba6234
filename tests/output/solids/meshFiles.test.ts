import { type Document, WebIO } from '@gltf-transform/core';
import { unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { describe, expect, it } from 'vitest';
import { serializeDesign } from '../../../src/design/file';
import { meshVolumeMoments } from '../../../src/engine/mass/mesh';
import { createMoments, JXX, M } from '../../../src/engine/mass/moments';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import type { FileBody } from '../../../src/output/solids/fileBodies';
import { FINENESSES, fileDeviation, lostShare } from '../../../src/output/solids/fineness';
import { glbFile } from '../../../src/output/solids/glbFile';
import { stlFile } from '../../../src/output/solids/stlFile';
import { threeMfFile } from '../../../src/output/solids/threeMfFile';
import { carriedDesign } from '../../../src/state/carried/carriedDesign';
import { DESIGN_PART } from '../../../src/state/carried/threeMfDesign';
import { importOf } from '../../meshes/files';
import { bodyOf, DEMOS, demo, demoBodies, exactMoments, inMetres } from './heads';

const INCH = 0.0254;
const SEGMENTS = FINENESSES.standard;
const cube = bodyOf('block', { sizeMm: [25.4, 25.4, 25.4] });
const pin = bodyOf('cylinder', { diameterMm: 25.4, lengthMm: 25.4, boreMm: 0 });

function threeMf(bodies: readonly FileBody[], unit: 'mm' | 'in', title = 'Head', design = '{}') {
  const options = { title, description: 'Test', unit, segmentsPerTurn: SEGMENTS, design };
  return threeMfFile(bodies, { ...options, date: '2026-01-31' });
}

/** Triangles as three's own loader reads them: three corners each, none shared. */
function byThree(bytes: Uint8Array): TriangleMesh {
  const geometry = new STLLoader().parse(bytes.buffer as ArrayBuffer);
  const positions = Float64Array.from(geometry.getAttribute('position').array);
  return { positions, triangles: Uint32Array.from({ length: positions.length / 3 }, (_, i) => i) };
}

/** All triangles of a GLB in its world, as glTF Transform reads and places them. */
async function byGltfTransform(
  bytes: Uint8Array,
): Promise<{ document: Document; mesh: TriangleMesh }> {
  const document = await new WebIO().readBinary(bytes);
  const positions: number[] = [];
  const triangles: number[] = [];
  for (const node of document.getRoot().listNodes()) {
    const matrix = node.getWorldMatrix();
    for (const primitive of node.getMesh()?.listPrimitives() ?? []) {
      const first = positions.length / 3;
      const place = primitive.getAttribute('POSITION');
      for (let i = 0; i < (place?.getCount() ?? 0); i++) {
        const [x, y, z] = place?.getElement(i, [0, 0, 0]) ?? [0, 0, 0];
        for (let k = 0; k < 3; k++) {
          positions.push(matrix[k] * x + matrix[4 + k] * y + matrix[8 + k] * z + matrix[12 + k]);
        }
      }
      for (const index of primitive.getIndices()?.getArray() ?? []) triangles.push(first + index);
    }
  }
  const mesh = { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
  return { document, mesh };
}

function extents({ positions }: TriangleMesh): number[] {
  return [0, 1, 2].map((k) => {
    const values = positions.filter((_, i) => i % 3 === k);
    return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
  });
}

/** Area of a surface and how far it reaches from the origin. */
function areaAndReach({ positions: p, triangles }: TriangleMesh): [number, number] {
  let area = 0;
  let reach = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [i, j, k] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    const u = [0, 1, 2].map((a) => p[j + a] - p[i + a]);
    const v = [0, 1, 2].map((a) => p[k + a] - p[i + a]);
    area +=
      Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) /
      2;
    reach = Math.max(reach, Math.hypot(p[i], p[i + 1], p[i + 2]));
  }
  return [area, reach];
}

/**
 * A surface that lies within d of the true one bounds a volume that differs by at most its area times d, and moments by
 * that times the reach or its square. The true area is a little larger than that of the flats: 2 % are allowed for it.
 */
function expectMoments(
  found: ArrayLike<number>,
  mesh: TriangleMesh,
  bodies: readonly FileBody[],
  deviation: number,
): void {
  const exact = exactMoments(bodies);
  const [area, reach] = areaAndReach(mesh);
  for (let k = 0; k < exact.length; k++) {
    const arm = k === M ? 1 : k < JXX ? reach : reach * reach;
    // float32 moves every point by up to 2^-24 of its distance.
    const allowed = 1.02 * area * (deviation + 2 * reach * 2 ** -24) * arm;
    expect(Math.abs(found[k] - exact[k]), `moment ${k}`).toBeLessThanOrEqual(allowed);
  }
}

describe('a part of 25.4 mm', () => {
  it.each([
    ['mm', 25.4],
    ['in', 1],
  ] as const)('in %s measures %f in STL, by three and by our own reader', async (unit, size) => {
    const bytes = stlFile([cube], 'cube', unit, SEGMENTS);
    for (const extent of extents(byThree(bytes))) expect(extent).toBeCloseTo(size, 5);
    const { report } = await importOf('cube.stl', bytes);
    for (let k = 0; k < 3; k++) expect(report.high[k] - report.low[k]).toBeCloseTo(size, 5);
    expect(new TextDecoder().decode(bytes.subarray(0, 80)).trim()).toBe(`STL cube, ${unit}`);
  });

  it.each([
    ['mm', 25.4],
    ['in', 1],
  ] as const)(
    'in %s measures %f in 3MF, which says so, and 25.4 mm to the reader',
    async (unit, size) => {
      const { report } = await importOf('cube.3mf', threeMf([cube], unit));
      expect(report.unit.unit).toBe(unit);
      expect(report.unit.because).toBe('stated');
      for (let k = 0; k < 3; k++) expect(report.high[k] - report.low[k]).toBeCloseTo(size, 9);
    },
  );

  it('is 0.0254 m in GLB, by glTF Transform', async () => {
    const { mesh } = await byGltfTransform(glbFile([cube], 'cube', SEGMENTS));
    for (const extent of extents(mesh)) expect(extent).toBeCloseTo(0.0254, 8);
  });

  it('turned round is as wide at every fineness: corners lie on the true surface', () => {
    for (const segments of Object.values(FINENESSES)) {
      const [x, y, z] = extents(byThree(stlFile([pin], 'pin', 'mm', segments)));
      for (const extent of [x, y, z]) expect(extent).toBeCloseTo(25.4, 4);
    }
  });
});

describe('the stated error of the triangles', () => {
  it('is the sagitta r (1 - cos(pi / n)) of a round wall', () => {
    for (const segments of Object.values(FINENESSES)) {
      const sagitta = 0.0127 * (1 - Math.cos(Math.PI / segments));
      expect(fileDeviation([pin], segments)).toBeCloseTo(sagitta, 12);
    }
    expect(fileDeviation([cube], 24)).toBe(0);
  });

  it('of a pin is the share of the circle that a regular polygon leaves out', () => {
    const mesh = byThree(stlFile([pin], 'pin', 'mm', 96));
    const volume = meshVolumeMoments(mesh, createMoments())[M];
    const exact = Math.PI * 12.7 ** 2 * 25.4;
    expect(1 - volume / exact).toBeCloseTo(lostShare(96), 6);
  });
});

describe.each(DEMOS)('%s at 20 degrees of pitch', (file) => {
  const { bodies } = demoBodies(file, 20);
  const deviation = fileDeviation(bodies, SEGMENTS);

  it('has something in it', () => {
    expect(bodies.length).toBeGreaterThan(1);
    expect(deviation).toBeGreaterThan(0);
  });

  it('has its volume and second moments in STL, by three', () => {
    for (const [unit, metres] of [
      ['mm', 0.001],
      ['in', INCH],
    ] as const) {
      const mesh = byThree(stlFile(bodies, file, unit, SEGMENTS));
      const scaled = { ...mesh, positions: mesh.positions.map((value) => value * metres) };
      expectMoments(meshVolumeMoments(scaled, createMoments()), scaled, bodies, deviation);
    }
  });

  it('has its volume and second moments in 3MF, by our reader, and names every part', async () => {
    const bytes = threeMf(bodies, 'in', demo(file).name);
    const { report, volumeMoments } = await importOf('head.3mf', bytes);
    const mesh = byThree(stlFile(bodies, file, 'mm', SEGMENTS));
    const inSi = { ...mesh, positions: mesh.positions.map((value) => value * 0.001) };
    expect(report.trianglesInFile).toBe(mesh.triangles.length / 3);
    expect(report.weighable).toBe(true);
    expectMoments(inMetres(volumeMoments ?? [], INCH), inSi, bodies, deviation);
  });

  it('has its volume and second moments in GLB, by glTF Transform, Y up', async () => {
    const { document, mesh } = await byGltfTransform(glbFile(bodies, file, SEGMENTS));
    // Back from Y up: (x, y, z) there is (x, -z, y) here.
    const turned = mesh.positions.map((_, i, p) =>
      i % 3 === 0 ? p[i] : i % 3 === 1 ? -p[i + 1] : p[i - 1],
    );
    const back = { ...mesh, positions: turned };
    expectMoments(meshVolumeMoments(back, createMoments()), back, bodies, deviation);
    const names = document
      .getRoot()
      .listNodes()
      .map((node) => node.getName());
    for (const { name } of bodies) expect(names).toContain(name);
    const materials = document
      .getRoot()
      .listMaterials()
      .map((one) => one.getName());
    expect(new Set(materials)).toEqual(new Set(bodies.map(({ material }) => material)));
  });

  it('opens again from the 3MF as the very design', () => {
    const design = demo(file);
    const bytes = threeMf(bodies, 'mm', design.name, serializeDesign(design));
    expect(carriedDesign(bytes)).toEqual({ ok: true, value: design });
  });
});

describe('a GLB', () => {
  it('has z pointing up along its y, and y away along -z', async () => {
    const tall = bodyOf('block', { sizeMm: [10, 20, 30] });
    const { mesh } = await byGltfTransform(glbFile([tall], 'tall', SEGMENTS));
    const [x, y, z] = extents(mesh);
    expect([x, y, z].map((value) => Math.round(value * 1e6) / 1e3)).toEqual([10, 30, 20]);
  });

  it('is read by our own reader in metres', async () => {
    const { report, volumeMoments } = await importOf('cube.glb', glbFile([cube], 'cube', SEGMENTS));
    expect(report.unit.unit).toBe('m');
    expect(volumeMoments?.[M]).toBeCloseTo(0.0254 ** 3, 10);
  });
});

describe('a 3MF package', () => {
  const NASTY = 'Grip <1> & "long" \u00d8 5 \u00b1 0.1 \' \u0007\u6f22';

  function model(bytes: Uint8Array) {
    const text = new TextDecoder().decode(unzipSync(bytes)['3D/3dmodel.model']);
    const tags: { name: string; attributes: Record<string, string>; text: string }[] = [];
    const parser = new SaxesParser();
    parser.on('opentag', ({ name, attributes }) =>
      tags.push({ name, attributes: attributes as Record<string, string>, text: '' }),
    );
    parser.on('text', (piece) => {
      const last = tags[tags.length - 1];
      if (last) last.text += piece;
    });
    parser.on('error', (error) => {
      throw error;
    });
    parser.write(text).close();
    return tags;
  }

  it('says title, application, parts and materials, whatever letters they have, as well-formed XML', () => {
    const bodies = [
      { ...cube, name: NASTY, material: NASTY },
      { ...pin, name: 'pin', material: 'Steel' },
    ];
    const tags = model(threeMf(bodies, 'mm', NASTY));
    const clean = NASTY.replace('\u0007', '');
    const metadata = (name: string) =>
      tags.find((tag) => tag.name === 'metadata' && tag.attributes.name === name)?.text.trim();
    expect(metadata('Title')).toBe(clean);
    expect(metadata('Application')).toBe('Stillgrip');
    const objects = tags.filter(({ name }) => name === 'object');
    expect(objects.map(({ attributes }) => attributes.name)).toEqual([clean, 'pin', clean]);
    const bases = tags.filter(({ name }) => name === 'base');
    expect(bases.map(({ attributes }) => attributes.name)).toEqual([clean, 'Steel']);
    expect(objects[1].attributes).toMatchObject({ pid: '1', pindex: '1' });
    expect(bases[0].attributes.displaycolor).toMatch(/^#[0-9A-F]{6}$/);
  });

  it('gives a fault and no design when it is none of ours, cut short or not a package', () => {
    const bytes = threeMf([cube], 'mm', 'x', serializeDesign(demo(DEMOS[0])));
    expect(carriedDesign(bytes).ok).toBe(true);
    for (let end = 0; end < bytes.length; end += 37) {
      expect(carriedDesign(bytes.subarray(0, end)).ok, `cut at ${end}`).toBe(false);
    }
    expect(carriedDesign(stlFile([cube], 'x', 'mm', 12))).toEqual({
      ok: false,
      error: { kind: 'unreadable' },
    });
    const broken = threeMf([cube], 'mm', 'x', '{"format":"stillgrip-design","version":999}');
    expect(carriedDesign(broken)).toMatchObject({ ok: false, error: { kind: 'design' } });
    expect(Object.keys(unzipSync(bytes))).toContain(DESIGN_PART);
  });
});
