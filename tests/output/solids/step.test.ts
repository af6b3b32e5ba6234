import fc from 'fast-check';
import loadImporter from 'occt-import-js';
import { cast, getOC, isShape3D, iterTopo, type Shape3D } from 'replicad';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { JXX, M, type Moments } from '../../../src/engine/mass/moments';
import { POSE_IDENTITY, type Pose, rotationFixedXyz } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';
import type { SolidUnit } from '../../../src/output/solids/bodyMesh';
import type { FileBody } from '../../../src/output/solids/fileBodies';
import { stepFile } from '../../../src/output/solids/stepBodies';
import { isExact } from '../../../src/output/solids/stepFit';
import { describedStep, stepString } from '../../../src/output/solids/stepText';
import { validValues } from '../../parts/sample';
import { bodyOf, DEMOS, demoBodies, exactMoments, inMetres } from './heads';
import { kernelMoments, readStepText, startKernel } from './kernel';

// The kernel takes seconds on a busy machine.
vi.setConfig({ testTimeout: 60_000 });
beforeAll(startKernel, 60_000);

async function written(bodies: readonly FileBody[], unit: SolidUnit = 'mm') {
  const step = bodies.map(({ name, solids, pose }) => ({ name, solids, pose, colour: '#8D9693' }));
  return stepFile({ bodies: step, unit, title: 'Test', description: 'For a test' });
}

/**
 * Relative to the moments about the file's origin that count: 1e-9 of the volume, and of the volume times the reach once
 * or twice, which is what the kernel's own 1e-7 mm allows for parts of a centimetre.
 */
function expectSame(found: Moments, exact: Moments): void {
  const si = inMetres(found, 0.001);
  const reach = Math.sqrt((exact[JXX] + exact[JXX + 1] + exact[JXX + 2]) / exact[M]);
  for (let k = 0; k < exact.length; k++) {
    const arm = k === M ? 1 : k < JXX ? reach : reach * reach;
    expect(Math.abs(si[k] - exact[k]) / (exact[M] * arm), `moment ${k}`).toBeLessThan(1e-9);
  }
}

function facesOf(shape: Shape3D): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { geomType } of shape.faces) counts[geomType] = (counts[geomType] ?? 0) + 1;
  return counts;
}

function solidsIn(shape: Shape3D): Shape3D[] {
  return Array.from(iterTopo(shape.wrapped, 'solid'), cast).filter(isShape3D);
}

const EXACT_KINDS = [
  'bolt',
  'nut',
  'washer',
  'weight',
  'bearing',
  'cylinder',
  'block',
  'pitchArm',
  'pitchLink',
  'grip',
];

describe('STEP of a part with its default sizes', () => {
  it.each(EXACT_KINDS)(
    '%s comes back with volume and second moments to 1e-9, one body a material',
    async (kind) => {
      const body = bodyOf(kind);
      expect(isExact(body)).toBe(true);
      const { text, made } = await written([body]);
      const shape = await readStepText(text);
      expectSame(kernelMoments(shape), exactMoments([body]));
      const densities = new Set(
        body.solids.map((solid) => ('density' in solid ? solid.density : 0)),
      );
      // Rod and eyes of a link only touch along a line: the kernel leaves them three bodies.
      const count = kind === 'pitchLink' ? 3 : densities.size;
      expect(made[0]).toMatchObject({ solids: count, joined: true });
      expect(Math.abs(made[0].volumeError)).toBeLessThan(1e-12);
      expect(solidsIn(shape)).toHaveLength(count);
    },
  );

  it.each(['blade', 'meshBody', 'pointMass'])(
    '%s has no true surfaces and is not offered',
    (kind) => {
      expect(isExact(bodyOf(kind))).toBe(false);
    },
  );
});

describe('STEP of sampled parts', () => {
  it.each(['bolt', 'nut', 'washer', 'weight', 'bearing'])(
    '%s: volume and second moments to 1e-9 whatever its sizes',
    async (kind) => {
      await fc.assert(
        fc.asyncProperty(validValues(kind), async (values) => {
          const body = bodyOf(kind, values);
          const { text } = await written([body]);
          expectSame(kernelMoments(await readStepText(text)), exactMoments([body]));
        }),
        { seed: 6, numRuns: 8 },
      );
    },
  );
});

describe('the surfaces in the file', () => {
  it('of a chamfered socket head screw are planes, cylinders and cones, and no patches', async () => {
    const bolt = bodyOf('bolt', {
      headForm: 'socket',
      headDiameterMm: 5.5,
      headHeightMm: 3,
      headChamferMm: 0.3,
      socketAcrossMm: 2.5,
      socketDepthMm: 1.3,
      extensionLengthMm: 0,
      pointDiameterMm: 2,
    });
    const faces = facesOf(await readStepText((await written([bolt])).text));
    expect(Object.keys(faces).toSorted()).toEqual(['CONE', 'CYLINDRE', 'PLANE']);
    expect(faces.CYLINDRE).toBeGreaterThanOrEqual(2);
    // The seat ring, the head's top, the floor and six walls of the socket, the end.
    expect(faces.PLANE).toBeGreaterThanOrEqual(9);
  });

  it('of a washer are two planes and two whole cylinders', async () => {
    const faces = facesOf(await readStepText((await written([bodyOf('washer')])).text));
    expect(faces).toEqual({ PLANE: 2, CYLINDRE: 2 });
  });
});

describe('a pin of 25.4 mm', () => {
  const pin = bodyOf('cylinder', { diameterMm: 25.4, lengthMm: 25.4, boreMm: 0 });

  it.each(['mm', 'in'] as const)(
    'asked for in %s is 25.4 mm wide and long to the kernel',
    async (unit) => {
      const shape = await readStepText((await written([pin], unit)).text);
      const [low, high] = shape.boundingBox.bounds;
      // The kernel's box is wider by its tolerance of 1e-7 mm.
      for (let k = 0; k < 3; k++) expect(high[k] - low[k]).toBeCloseTo(25.4, 6);
    },
  );

  it.each([
    ['millimeter', 25.4],
    ['inch', 1],
  ] as const)(
    'is %s %f to another reader, in whichever unit it was written',
    async (linearUnit, size) => {
      const importer = await loadImporter({ print: () => {}, printErr: () => {} });
      for (const unit of ['mm', 'in'] as const) {
        const bytes = new TextEncoder().encode((await written([pin], unit)).text);
        const { success, meshes } = importer.ReadStepFile(bytes, { linearUnit } as never);
        expect(success).toBe(true);
        const along = meshes.flatMap(
          (mesh: { attributes: { position: { array: readonly number[] } } }) =>
            Array.from(mesh.attributes.position.array).filter((_, i) => i % 3 === 2),
        );
        expect(Math.max(...along) - Math.min(...along)).toBeCloseTo(size, 6);
      }
    },
  );

  it('has the number 1 in the file where inches are asked for, and 25.4 where not', async () => {
    const number = (text: string) =>
      /RADIUS|CYLINDRICAL_SURFACE\('',#\d+,([\d.E+-]+)\)/.exec(text)?.[1];
    expect(Number(number((await written([pin], 'mm')).text))).toBeCloseTo(12.7, 12);
    const inches = (await written([pin], 'in')).text;
    expect(Number(number(inches))).toBeCloseTo(0.5, 12);
    expect(inches).toContain("CONVERSION_BASED_UNIT('INCH'");
  });
});

describe('a head in STEP', () => {
  it('has every turned and straight part where it stands', async () => {
    const { bodies } = demoBodies(DEMOS[1], 15);
    const exact = bodies.filter(isExact);
    expect(exact.length).toBeGreaterThan(3);
    const { text, made } = await written(exact);
    expect(made.every(({ joined }) => joined)).toBe(true);
    expectSame(kernelMoments(await readStepText(text)), exactMoments(exact));
    for (const { name } of exact) expect(text).toContain(`PRODUCT(${stepString(name)}`);
  });

  it('keeps a part turned and moved anyhow to 1e-9', async () => {
    const pose: Pose = {
      rotation: rotationFixedXyz(radians(0.3), radians(-1.1), radians(2)),
      translation: [0.01, -0.02, 0.003],
    };
    const body = { ...bodyOf('bolt'), pose };
    expectSame(
      kernelMoments(await readStepText((await written([body])).text)),
      exactMoments([body]),
    );
    expect(body.pose).not.toBe(POSE_IDENTITY);
  });

  it('says what was simplified in its header, whatever the letters', async () => {
    const text = describedStep(
      (await written([bodyOf('washer')])).text,
      "Ø's \\",
      'Thread as a cylinder',
    );
    expect(text).toContain("FILE_DESCRIPTION(('Thread as a cylinder')");
    expect(text).toContain("FILE_NAME('\\X2\\00D8\\X0\\''s \\\\'");
    expect((await readStepText(text)).faces).toHaveLength(4);
    expect(getOC()).toBeDefined();
  });
});
