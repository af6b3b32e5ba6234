import { describe, expect, it } from 'vitest';
import { M } from '../../src/engine/mass/moments';
import { sumSolids } from '../../src/engine/mass/weigh';
import { grip } from '../../src/parts/grip';
import { meshBody } from '../../src/parts/meshBody';
import { packPicture, unpackPicture } from '../../src/parts/meshBody/picture';
import { weldedMeshes } from '../../src/parts/tessellate';
import { momentsDeviation } from '../support/closeness';
import { ballMesh, boxMesh } from '../support/meshes';
import { seeded } from '../support/seeded';
import { boxShape, solid, weighed } from '../support/shapes';
import { importOf, objText } from './files';

type Values = Parameters<typeof meshBody.solids>[0];
const standard = Object.fromEntries(
  Object.entries(meshBody.parameters).map(([key, one]) => [key, one.default]),
) as unknown as Values;

async function imported(mesh: ReturnType<typeof boxMesh>): Promise<Values> {
  const { picture, volumeMoments, report } = await importOf('box.obj', objText(mesh));
  if (!volumeMoments) throw new Error('is cracked');
  return { ...standard, picture, volumeMoments, triangleCount: [report.triangles] };
}

describe('a body from a mesh', () => {
  it('weighs what a block of its size and unit weighs, wherever it is put', async () => {
    const values = await imported(boxMesh(3, 2, 1));
    for (const [unit, metres] of [
      ['mm', 1e-3],
      ['cm', 1e-2],
      ['m', 1],
      ['in', 0.0254],
      ['ft', 0.3048],
      ['micron', 1e-6],
    ] as const) {
      const seen = sumSolids(meshBody.solids({ ...values, unit }), new Float64Array(10));
      const block = boxShape(3 * metres, 2 * metres, metres);
      expect(momentsDeviation(seen, weighed(solid(block, 1140)))).toBeLessThan(1e-14);
    }
    const turned = { ...values, turnDeg: [0, 0, 90], shiftMm: [5, 0, 0] } as const;
    const pose = { rotation: [0, -1, 0, 1, 0, 0, 0, 0, 1], translation: [0.005, 0, 0] } as const;
    const seen = sumSolids(meshBody.solids(turned), new Float64Array(10));
    const block = weighed(solid(boxShape(0.003, 0.002, 0.001), 1140, pose));
    expect(momentsDeviation(seen, block)).toBeLessThan(1e-14);
    expect(meshBody.bodyPose?.(turned)).toEqual(pose);
    const [drawn] = weldedMeshes(meshBody.solids(turned));
    expect(drawn.triangles.length).toBe(36);
  });

  it('in the role of a grip offers the seats of a grip, by name, mating and place', () => {
    const gripValues = Object.fromEntries(
      Object.entries(grip.parameters).map(([key, one]) => [key, one.default]),
    ) as unknown as Parameters<typeof grip.solids>[0];
    expect(meshBody.sockets(standard)).toEqual([]);
    const own = meshBody.sockets({ ...standard, role: 'grip' });
    // How wide its holes are and where its barrel ends a mesh does not say: bearings go anywhere up to the bolt.
    const plain = (seats: typeof own) =>
      seats.map((seat) => ({
        ...seat,
        size: undefined,
        ...(seat.mates === 'bearingSeat'
          ? { pose: null, defaultOffsetMm: 0, offsetRangeMm: null }
          : {}),
      }));
    expect(plain(own)).toEqual(plain(grip.sockets(gripValues)));
  });

  it('is refused when its moments are no body, or not those of its picture', async () => {
    const values = await imported(boxMesh(3, 2, 1));
    const m = values.volumeMoments;
    const cases: [Partial<Values>, string][] = [
      [{ volumeMoments: m.map((v) => -v) }, 'volumeMoments'],
      [{ volumeMoments: m.slice(1) }, 'volumeMoments'],
      [{ volumeMoments: m.with(4, -m[4]) }, 'volumeMoments'],
      [{ volumeMoments: m.map((v) => v * 1.001) }, 'picture'],
      [{ volumeMoments: m.with(1, 0.01 * m[0]) }, 'picture'],
      [{ triangleCount: [11] }, 'picture'],
      [{ picture: packPicture(boxMesh(3, 2, 1.001)) }, 'picture'],
      [{ picture: '' }, 'picture'],
    ];
    expect(meshBody.problems(values)).toEqual([]);
    for (const [change, field] of cases) {
      const problems = meshBody.problems({ ...values, ...change });
      expect(problems).toMatchObject([{ field, rule: 'unsound' }]);
    }
  });

  it('keeps a fine mesh with a coarser picture', async () => {
    const values = await imported(ballMesh(10, 150));
    expect(values.triangleCount[0]).toBeGreaterThan(20_000);
    expect(meshBody.problems(values)).toEqual([]);
    const [m] = sumSolids(meshBody.solids(values), new Float64Array(10));
    expect(m).toBe(values.volumeMoments[M] * 1e-3 ** 3 * 1140);
  });
});

describe('a packed picture', () => {
  it('comes back with its points rounded to float32 about the middle', () => {
    const mesh = ballMesh(10, 9);
    const far = { ...mesh, positions: mesh.positions.map((v) => v + 1000) };
    const back = unpackPicture(packPicture(far));
    if (!back.ok) throw new Error(back.error);
    expect(back.value.triangles).toEqual(mesh.triangles);
    back.value.positions.forEach((v, i) => {
      // Half a unit in the last place of float32 at 10, and of a double at 1000.
      expect(Math.abs(v - far.positions[i])).toBeLessThanOrEqual(10 * 2 ** -24 + 1000 * 2 ** -52);
    });
  });

  it('that is no picture is refused, whatever it is', () => {
    const good = packPicture(boxMesh(1, 2, 3));
    const { unit } = seeded(99);
    for (let n = 0; n < 2000; n++) {
      const at = Math.floor(unit() * good.length);
      const bent = good.slice(0, at) + String.fromCharCode(33 + unit() * 90) + good.slice(at + 1);
      const back = unpackPicture(bent);
      if (back.ok) expect(back.value.triangles.every((v) => v < 8)).toBe(true);
    }
    for (const text of [
      '',
      'AAAA',
      '====',
      'a b',
      good.slice(4),
      good.slice(0, -4),
      `${good}AAAA`,
      'A'.repeat(2e6),
    ]) {
      expect(unpackPicture(text).ok, text.slice(0, 10)).toBe(false);
    }
  });
});
