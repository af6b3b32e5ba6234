import { WebIO } from '@gltf-transform/core';
import { unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { meshVolumeMoments } from '../../../src/engine/mass/mesh';
import { createMoments, M } from '../../../src/engine/mass/moments';
import { contentLines, grouped, lengthText } from '../../../src/output/files/contentText';
import {
  bodyParts,
  FIRST_CHOICE,
  type SolidChoice,
  solidContent,
  stepRequest,
  triangleFile,
} from '../../../src/output/files/solidChoice';
import type { Head } from '../../../src/output/files/useRestingHead';
import { carriedDesign } from '../../../src/state/carried/carriedDesign';
import { createSession } from '../../../src/state/createSession';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { DEMOS, demo, exactMoments } from '../solids/heads';

function headOf(design: Design, pitchDeg = 0): Head {
  const { live } = createSession(design, () => {});
  return { reading: live.reading, design, pitchDeg };
}

/** A head that is one pin of 25.4 mm across and along. */
function pinHead(): Head {
  const read = parseDesign(
    JSON.stringify({
      format: 'stillgrip-design',
      version: 1,
      name: 'Inch pin \u00d8 1 in',
      rotor: { speedRpm: 1000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
      parts: [
        {
          id: 'pin',
          kind: 'cylinder',
          name: 'Pin',
          diameterMm: 25.4,
          lengthMm: 25.4,
          boreMm: 0,
          densityKgM3: 7850,
          pose: { positionMm: [40, 0, 0], rotationDeg: [0, 0, 0] },
        },
      ],
    }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return headOf(read.value);
}

function span(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
}

/** Points of a 3MF's objects in its own unit, by an independent XML parser; and the unit. */
function threeMfPoints(bytes: Uint8Array): { unit: string; points: number[][]; names: string[] } {
  const points: number[][] = [];
  const names: string[] = [];
  let unit = '';
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    const at = attributes as Record<string, string>;
    if (name === 'model') unit = at.unit;
    if (name === 'object') names.push(at.name);
    if (name === 'vertex') points.push([Number(at.x), Number(at.y), Number(at.z)]);
  });
  parser.on('error', (error) => {
    throw error;
  });
  parser.write(new TextDecoder().decode(unzipSync(bytes)['3D/3dmodel.model'])).close();
  return { unit, points, names };
}

describe('a pin of 25.4 mm as the room saves it', () => {
  const head = pinHead();
  const saved = (format: 'stl' | 'threeMf' | 'glb', more: Partial<SolidChoice> = {}) =>
    triangleFile(head, { ...FIRST_CHOICE, format, ...more }, format);

  it.each([
    ['head', 'mm', 25.4],
    ['part', 'mm', 25.4],
    ['chosen', 'in', 1],
    ['part', 'in', 1],
  ] as const)('as %s in %s measures %f in STL (three) and 3MF (saxes)', (what, unit, size) => {
    const stl = new STLLoader().parse(saved('stl', { what, unit }).buffer as ArrayBuffer);
    const array = stl.getAttribute('position').array;
    const threeMf = threeMfPoints(saved('threeMf', { what, unit }));
    expect(threeMf.unit).toBe(unit === 'mm' ? 'millimeter' : 'inch');
    for (let k = 0; k < 3; k++) {
      expect(span(Array.from(array).filter((_, i) => i % 3 === k))).toBeCloseTo(size, 4);
      expect(span(threeMf.points.map((point) => point[k]))).toBeCloseTo(size, 9);
    }
  });

  it('is 0.0254 m in GLB, whatever unit is chosen, by glTF Transform', async () => {
    const document = await new WebIO().readBinary(saved('glb', { unit: 'in' }));
    const place = document.getRoot().listMeshes()[0].listPrimitives()[0].getAttribute('POSITION');
    const [low, high] = [place?.getMin([]) ?? [], place?.getMax([]) ?? []];
    for (let k = 0; k < 3; k++) expect(high[k] - low[k]).toBeCloseTo(0.0254, 8);
  });

  it('opens again from the 3MF as the design', () => {
    expect(carriedDesign(saved('threeMf'))).toEqual({ ok: true, value: head.design });
  });

  it('alone stands in its own frame, with the head where it is', () => {
    const middle = (what: SolidChoice['what']) => {
      const { points } = threeMfPoints(saved('threeMf', { what }));
      const x = points.map((point) => point[0]);
      return (Math.max(...x) + Math.min(...x)) / 2;
    };
    expect(middle('head') - middle('part')).toBeCloseTo(40, 9);
  });

  it('has a file name made of the names of design and part', () => {
    expect(solidContent(head, { ...FIRST_CHOICE, what: 'part' }).stem).toBe(
      'inch-pin-\u00f8-1-in-pin',
    );
  });
});

describe('what is said to be in a file', () => {
  const choice = { ...FIRST_CHOICE, format: 'stl' } as const;

  it('is what is in it: triangles counted by three, the stated distance not exceeded by the volume', () => {
    const head = headOf(demo(DEMOS[2]));
    const lines = contentLines(solidContent(head, choice), choice, METRIC_UNITS).join('\n');
    const stl = new STLLoader().parse(triangleFile(head, choice, 'stl').buffer as ArrayBuffer);
    const positions = Float64Array.from(stl.getAttribute('position').array);
    const count = positions.length / 9;
    expect(lines).toContain(`${grouped(count)} triangles`);
    const stated = Number(/within ([\d.]+)\u00a0mm/.exec(lines)?.[1]);
    expect(stated).toBeGreaterThan(0);
    const triangles = Uint32Array.from({ length: positions.length / 3 }, (_, i) => i);
    const volume = meshVolumeMoments({ positions, triangles }, createMoments())[M];
    const exact = exactMoments(solidContent(head, choice).bodies)[M] * 1e9;
    let area = 0;
    for (let i = 0; i < positions.length; i += 9) {
      const [u, v] = [3, 6].map((j) =>
        [0, 1, 2].map((k) => positions[i + j + k] - positions[i + k]),
      );
      area +=
        Math.hypot(
          u[1] * v[2] - u[2] * v[1],
          u[2] * v[0] - u[0] * v[2],
          u[0] * v[1] - u[1] * v[0],
        ) / 2;
    }
    expect(Math.abs(volume - exact)).toBeLessThan(1.02 * area * stated);
    for (const { name } of solidContent(head, choice).bodies) expect(lines).toContain(name);
  });

  it('names what is left out and why', () => {
    const design = demo(DEMOS[2]);
    const [first, ...rest] = design.parts;
    const head = headOf({ ...design, parts: [...rest, { ...first, hidden: true }] });
    const lines = contentLines(solidContent(head, choice), choice, METRIC_UNITS).join('\n');
    expect(lines).toContain(`Left out: ${first.name} (hidden)`);
  });

  it('says that a blade cannot be STEP, and asks the kernel for the rest', () => {
    const head = headOf(demo(DEMOS[2]));
    const content = solidContent(head, { ...FIRST_CHOICE, format: 'step' });
    const lines = contentLines(content, { ...FIRST_CHOICE, format: 'step' }, METRIC_UNITS);
    const blades = content.bodies.filter(({ kind }) => kind === 'blade');
    expect(blades).toHaveLength(1);
    expect(lines.join('\n')).toContain(`Not in STEP: ${blades[0].name}`);
    expect(stepRequest(content, 'mm').bodies).toHaveLength(content.bodies.length - 1);
    const alone = { ...FIRST_CHOICE, what: 'part', part: blades[0].id, format: 'step' } as const;
    expect(contentLines(solidContent(head, alone), alone, METRIC_UNITS)[0]).toMatch(/None of this/);
  });

  it('says that there is nothing where there is nothing', () => {
    const head = headOf({ ...demo(DEMOS[2]), parts: [] });
    expect(contentLines(solidContent(head, choice), choice, METRIC_UNITS)).toHaveLength(1);
    expect(() => triangleFile(head, choice, 'stl')).toThrow(/nothing/i);
    const one = { ...choice, what: 'part' } as const;
    expect(solidContent(head, one).bodies).toEqual([]);
  });

  it('is every part that has a body to choose from, and several leave out those not wanted', () => {
    const head = headOf(demo(DEMOS[2]));
    const all = bodyParts(head).map(({ part }) => part.id);
    expect(all.length).toBeGreaterThan(5);
    const without = new Set(all.slice(2));
    const { bodies } = solidContent(head, { ...choice, what: 'chosen', without });
    expect(bodies.map(({ id }) => id).toSorted()).toEqual(all.slice(0, 2).toSorted());
  });
});

describe('a distance that is not exceeded', () => {
  it('is rounded up, never down, with its unit', () => {
    expect(lengthText(0.0000123456, METRIC_UNITS)).toBe('0.013\u00a0mm');
    expect(lengthText(0.000012, METRIC_UNITS)).toBe('0.012\u00a0mm');
    expect(lengthText(0.0000254, INCH_UNITS)).toBe('0.0010\u00a0in');
    expect(lengthText(0.00999, METRIC_UNITS)).toBe('10\u00a0mm');
  });

  it('and counts have their thousands set apart', () => {
    expect([12, 123, 1234, 1234567].map(grouped)).toEqual([
      '12',
      '123',
      '1\u202f234',
      '1\u202f234\u202f567',
    ]);
  });
});
