import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { detectFormat, extensionFits } from '../../../src/meshes/readers/detect';
import { readObj } from '../../../src/meshes/readers/obj';
import { PointPool } from '../../../src/meshes/readers/pointPool';
import { fitsBinaryStl, readStlBinary } from '../../../src/meshes/readers/stlBinary';
import { readStlText } from '../../../src/meshes/readers/stlText';
import { writeStl } from '../../../src/meshes/writeStl';
import { TONON } from '../files';

const quiet = () => {};

function trianglesOf(text: string) {
  const result = readObj(strToU8(text), quiet);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return { ...result.value, triangles: [...result.value.triangles] };
}
function objFault(text: string) {
  const result = readObj(strToU8(text), quiet);
  return result.ok ? undefined : result.error;
}

describe('OBJ', () => {
  const square = 'v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\n';

  // Wavefront's description (appendix B1, from memory): indices from 1, negative ones back from the last point.
  it('counts points from one, or back from the last, with or without texture and normal', () => {
    expect(trianglesOf(`${square}f 1/5/2 2//7 3\nf -1 -2/1 -3`).triangles).toEqual([
      0, 1, 2, 3, 2, 1,
    ]);
    expect([...trianglesOf(`${square}f 1 2 3`).positions]).toEqual([
      0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0,
    ]);
  });

  it('cuts a convex face into a fan from its first corner', () => {
    expect(trianglesOf(`${square}f 1 2 3 4`)).toMatchObject({
      triangles: [0, 1, 2, 0, 2, 3],
      notes: [],
    });
    expect(trianglesOf(`${square}f 4 3 2 1`).triangles).toEqual([3, 2, 1, 3, 1, 0]);
  });

  it('takes corners in a straight line for no hollow', () => {
    expect(trianglesOf(`${square}v 0.5 0 0\nf 1 5 2 3 4`)).toMatchObject({
      triangles: [0, 4, 1, 0, 1, 2, 0, 2, 3],
      notes: [],
    });
  });

  it.each([0.125, 3, 1000])('cuts a hollow face into its own area at any size: %d', (size) => {
    // An arrow of seven corners; twice its area by the shoelace formula.
    const outline = [
      [0, 0],
      [5, 1],
      [4, 3],
      [9, 2],
      [7, 8],
      [6, 5],
      [1, 7],
    ].map((at) => at.map((value) => value * size));
    const twice = outline.reduce((sum, [x, y], k) => {
      const [u, v] = outline[(k + 1) % outline.length];
      return sum + x * v - u * y;
    }, 0);
    for (const corners of ['1 2 3 4 5 6 7', '4 5 6 7 1 2 3', '7 6 5 4 3 2 1']) {
      const text = `${outline.map(([x, y]) => `v ${x} ${y} 0\n`).join('')}f ${corners}`;
      const { triangles, notes } = trianglesOf(text);
      const parts = [0, 3, 6, 9, 12].map((t) => {
        const [a, b, c] = triangles.slice(t, t + 3).map((v) => outline[v]);
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
      });
      const way = corners.startsWith('7') ? -1 : 1;
      expect(parts.every((part) => Math.sign(part) === way)).toBe(true);
      expect(parts.reduce((sum, part) => sum + part, 0) / (way * twice)).toBeCloseTo(1, 12);
      expect(notes).toEqual([]);
    }
  });

  it.each(['1:', '1.', '1+', '.5', '+1', '1e', '0', '-0', '-', '/1', '1;2', '-1.', '31', '-31'])(
    'names no point by %j, though there are thirty',
    (word) => {
      const points = Array.from({ length: 30 }, (_, k) => `v ${k} ${k * k} 0\n`).join('');
      expect(trianglesOf(`${points}f 1 2 3`).triangles).toEqual([0, 1, 2]);
      expect(readObj(strToU8(`${points}f 1 2 ${word}`), quiet)).toMatchObject({
        ok: false,
        error: {
          kind: 'malformed',
          detail: expect.stringContaining(`names the point "${word}" of 30`),
        },
      });
    },
  );

  // An arrowhead: area by the shoelace formula 1; every triangle of a right cut turns as the face does.
  it.each([
    ['z', (x: number, y: number) => [x, y, 3]],
    ['x', (x: number, y: number) => [3, x, y]],
    ['y', (x: number, y: number) => [y, 3, x]],
  ] as const)('cuts a hollow face square to %s by its ears, either way round', (_, place) => {
    const outline = [
      [0, 0],
      [2, 1],
      [0, 2],
      [1, 1],
    ];
    for (const way of [
      [0, 1, 2, 3],
      [3, 2, 1, 0],
      [2, 3, 0, 1],
    ]) {
      const points = way.map((k) => place(outline[k][0], outline[k][1]));
      const text = points.map((point) => `v ${point.join(' ')}`).join('\n');
      const { triangles, positions } = trianglesOf(`${text}\nf 1 2 3 4`);
      expect(triangles.length).toBe(6);
      const sense = way[0] > way[1] && way[0] === 3 ? -1 : 1;
      let whole = 0;
      for (let t = 0; t < 6; t += 3) {
        const [a, b, c] = triangles.slice(t, t + 3).map((v) => positions.slice(3 * v, 3 * v + 3));
        const u = b.map((one, k) => one - a[k]);
        const v = c.map((one, k) => one - a[k]);
        // The component of the cross product along the axis that the face is square to.
        const along = { z: [0, 1], x: [1, 2], y: [2, 0] }[_];
        const area = (u[along[0]] * v[along[1]] - u[along[1]] * v[along[0]]) / 2;
        expect(Math.sign(area)).toBe(sense);
        whole += area;
      }
      expect(Math.abs(whole)).toBeCloseTo(1, 12);
    }
  });

  it('leaves out lines and points and counts them, and passes over what it does not know', () => {
    const text = `# f 9 9 9\nmtllib a\n${square}vn 0 0 1\nl 1 2\np 1\nf 1 2 3\n`;
    expect(trianglesOf(text).notes).toEqual([{ kind: 'leftOut', what: 'lines', count: 2 }]);
    expect(objFault(`${square}cstype bezier\nf 1 2 3`)).toEqual({
      kind: 'unsupported',
      format: 'obj',
      name: 'free-form surfaces (cstype)',
    });
    expect(objFault(square)).toEqual({ kind: 'noTriangles', format: 'obj' });
  });

  it.each([
    'f 1 2',
    'f 0 1 2',
    'f 1 2 5',
    'f -5 1 2',
    'f 1 2 x',
    'f 1 2 /3',
    'f 1 2 3.0',
    'v 1 2',
    'v 1 2 x',
    'v 1 2 1e99',
  ])('refuses "%s" after four points', (line) => {
    expect(objFault(`${square}f 1 2 3\n${line}`)).toMatchObject({
      kind: 'malformed',
      format: 'obj',
      detail: expect.stringContaining('line 6'),
    });
  });

  it('names the index that is not there, and how many there are', () => {
    const told = objFault(`${square}f 1 2 5`);
    expect(told).toMatchObject({ detail: expect.stringMatching(/"5" of 4 in line 5/) });
  });
});

describe('STL as text', () => {
  const facet = (z: number) =>
    `facet normal 0 0 1 outer loop vertex 0 0 ${z} vertex 1 0 ${z} vertex 0 1 ${z} endloop endfacet `;
  const fault = (text: string) => {
    const result = readStlText(strToU8(text), quiet);
    return result.ok ? undefined : result.error;
  };

  it('holds solids of facets, whatever their names and line ends', () => {
    const text = `solid a facet of nothing\n${facet(0)}\nendsolid a b\nsolid\n${facet(2)}endsolid`;
    const result = readStlText(strToU8(text), quiet);
    if (!result.ok) throw new Error(JSON.stringify(result.error));
    expect([...result.value.triangles]).toEqual([0, 1, 2, 3, 4, 5]);
    expect(result.value.notes).toEqual([]);
    expect([...result.value.positions]).toEqual([
      0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 2, 1, 0, 2, 0, 1, 2,
    ]);
  });

  it.each(
    'facet normal outer loop vertex endloop endfacet endsolid'.split(' ').map((word) => [word]),
  )('misses "%s" where it is left out', (word) => {
    const whole = `solid a\n${facet(0)}\nendsolid`;
    expect(fault(whole)).toBeUndefined();
    expect(fault(whole.replace(` ${word} `, ' ').replace(`\n${word}`, '\n'))).toMatchObject({
      kind: 'malformed',
      format: 'stlText',
    });
  });

  it.each('facet normal outer loop vertex endloop endfacet endsolid'.split(' '))(
    'wants "%s" and no other word in its place',
    (word) => {
      const whole = `solid a\n${facet(0)}\nendsolid`;
      expect(fault(whole.replace(word, 'other'))).toMatchObject({
        kind: 'malformed',
        detail: expect.stringContaining(
          `has "other" where "${word === 'endsolid' ? 'facet' : word}"`,
        ),
      });
    },
  );

  it('refuses what is no number, an end too early, and a solid of nothing', () => {
    expect(fault(`solid\n${facet(0).replace('1 0 0', '1 0 x')}\nendsolid`)).toMatchObject({
      format: 'stlText',
      detail: expect.stringContaining('"x"'),
    });
    expect(fault(`solid\n${facet(0)}`)).toMatchObject({ kind: 'malformed', format: 'stlText' });
    expect(fault('solid a\nendsolid a')).toEqual({ kind: 'noTriangles', format: 'stlText' });
    expect(fault(`solid\n${facet(0)}\nendsolid\nrest`)).toMatchObject({
      kind: 'malformed',
      format: 'stlText',
    });
    expect(fault(`solid\n${facet(1e99)}\nendsolid`)).toMatchObject({
      kind: 'malformed',
      format: 'stlText',
    });
  });
});

describe('STL in bytes', () => {
  const whole = writeStl([TONON], 1, 'x');

  it('has 84 bytes, and 50 for each triangle', () => {
    expect(fitsBinaryStl(whole)).toBe(true);
    expect(fitsBinaryStl(whole.slice(0, -1))).toBe(false);
    expect(fitsBinaryStl(whole.slice(0, 83))).toBe(false);
    expect(fitsBinaryStl(new Uint8Array(84))).toBe(true);
    const none = readStlBinary(new Uint8Array(84), quiet);
    expect(none).toMatchObject({ error: { kind: 'noTriangles', format: 'stlBinary' } });
    expect(readStlBinary(new Uint8Array(83), quiet)).toMatchObject({
      error: { kind: 'malformed', format: 'stlBinary' },
    });
    expect(readStlBinary(whole.slice(0, -1), quiet)).toMatchObject({
      error: {
        kind: 'malformed',
        format: 'stlBinary',
        detail: expect.stringMatching(/4 triangles but ends after 3/),
      },
    });
  });

  it('gives its corners in order, equal ones once', () => {
    const result = readStlBinary(whole, quiet);
    if (!result.ok) throw new Error(JSON.stringify(result.error));
    const { positions, triangles, notes } = result.value;
    expect([positions.length, triangles.length, notes]).toEqual([12, 12, []]);
    Array.from(TONON.triangles).forEach((v, k) => {
      for (let axis = 0; axis < 3; axis++) {
        const own = Math.fround(TONON.positions[3 * v + axis]);
        expect(positions[3 * triangles[k] + axis]).toBe(own);
      }
    });
  });

  it('names the triangle of which a corner is no place', () => {
    const bent = whole.slice();
    new DataView(bent.buffer).setFloat32(84 + 50 + 12 + 8, Number.NaN, true);
    expect(readStlBinary(bent, quiet)).toMatchObject({
      error: {
        kind: 'malformed',
        format: 'stlBinary',
        detail: expect.stringContaining('triangle 2'),
      },
    });
  });
});

describe('the format of a file', () => {
  const of = (text: string, extension = '') => detectFormat(strToU8(text, true), extension);

  it('is told by its first bytes, whatever it is called', () => {
    expect(of('PK\x03\x04', 'stl')).toBe('3mf');
    expect(of('glTF', 'obj')).toBe('glb');
    expect(of('ISO-10303-21;', 'stl')).toBe('step');
    expect(of(' \n/* a * note */ ISO-10303-21;')).toBe('step');
    expect(of('xISO-10303-21;', 'stl')).toBe('stlBinary');
    expect(of('xPK\x03\x04')).toBeUndefined();
    expect(detectFormat(writeStl([TONON], 1, 'solid'), 'obj')).toBe('stlBinary');
    expect(of('  SOLID a', 'obj')).toBe('stlText');
    expect(of('solidity', 'stl')).toBe('stlBinary');
    expect(of('solid \0', 'stl')).toBe('stlBinary');
    expect(of('solid \0')).toBeUndefined();
    expect(of('# note\n\n v -.5 1 2')).toBe('obj');
    expect(of('o\nf\t1 2 3\n')).toBe('obj');
    expect(of('v x\nfoo 1', 'txt')).toBeUndefined();
    expect(of('#\nv 1 2 3\n\0')).toBeUndefined();
  });

  it('is that of the extension where the bytes leave it open', () => {
    expect(['stl', 'obj', '3mf', 'glb', 'step', 'stp', 'txt'].map((one) => of('?', one))).toEqual([
      'stlBinary',
      'obj',
      '3mf',
      'glb',
      'step',
      'step',
      undefined,
    ]);
    expect(extensionFits('stl', 'stlText')).toBe(true);
    expect(extensionFits('stl', 'stlBinary')).toBe(true);
    expect(extensionFits('stp', 'step')).toBe(true);
    expect(extensionFits('obj', 'stlText')).toBe(false);
    expect(extensionFits('txt', 'obj')).toBe(false);
  });
});

describe('a pool of points', () => {
  it('gives equal points one number, however many there are, and -0 is 0', () => {
    const pool = new PointPool();
    const seen = new Map<string, number>();
    for (let i = 0; i < 20_000; i++) {
      const point = [i % 27, (i * 7) % 23, (i * 13) % 19] as const;
      const key = point.join();
      const known = seen.get(key);
      const index = pool.add(...point);
      if (known === undefined) seen.set(key, index);
      if (index !== (known ?? seen.size - 1)) expect(index).toBe(known ?? seen.size - 1);
    }
    expect(pool.count).toBe(seen.size);
    expect(pool.count).toBe(27 * 23 * 19);
    expect(pool.add(-0, 0, -0)).toBe(pool.add(0, 0, 0));
    const all = pool.toArray();
    expect(all.length).toBe(3 * pool.count);
    expect([...all.subarray(3, 6)]).toEqual([1, 7, 13]);
  });
});
