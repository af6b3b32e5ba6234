import { DESIGN_FORMAT, DESIGN_VERSION } from '../../../src/design/design';
import { writeStl } from '../../../src/meshes/writeStl';
import { objText, stlText, TONON, threeMf } from '../../meshes/files';

/** Sound inputs of about any size, by door: what grows is what a person has much of. */
export const GROWN: Readonly<Record<string, (size: number) => Uint8Array | string>> = {
  design: (size) =>
    JSON.stringify({
      format: DESIGN_FORMAT,
      version: DESIGN_VERSION,
      name: 'Many',
      rotor: { speedRpm: 1000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
      parts: Array.from({ length: Math.ceil(size / 150) }, (_, k) => ({
        id: `p${k}`,
        kind: 'pointMass',
        name: 'Lump',
        massGrams: 1,
        pose: { positionMm: [k % 100, 0, 0], rotationDeg: [0, 0, 0] },
      })),
    }),
  'pasted readings': (size) =>
    rows('pitch (deg),force (N)\n', size, (k) => `${k % 40},${k % 7}.5\n`),
  'readings file': (size) =>
    rows('pitch (deg)   force (N)\n', size, (k) => `${k % 40}        ${k % 7}.25\n`),
  'cells pasted into the grid': (size) => rows('', size, (k) => `${k % 40}\t1.5\tpush\tnote\n`),
  'STL, text': (size) => stlText(many(Math.ceil(size / 1000))),
  'STL, binary': (size) => writeStl([many(Math.ceil(size / 200))], 1, 'many'),
  OBJ: (size) => objText(many(Math.ceil(size / 160))),
  '3MF': (size) => threeMf(many(Math.ceil(size / 160))),
  'STEP, before the kernel': (size) =>
    `${rows('ISO-10303-21;HEADER;ENDSEC;DATA;\n', size, (k) => `#${k + 1}=CARTESIAN_POINT('a''b',(0.,1.,2.));\n`)}ENDSEC;END-ISO-10303-21;`,
};

function rows(head: string, size: number, row: (k: number) => string): string {
  let text = head;
  for (let k = 0; text.length < size; k++) text += row(k);
  return text;
}

/** Tetrahedra side by side. */
function many(count: number) {
  const points = TONON.positions.length;
  const positions = new Float64Array(points * count);
  const triangles = new Uint32Array(TONON.triangles.length * count);
  for (let k = 0; k < count; k++) {
    const shift = [60 * (k % 30), 60 * (Math.floor(k / 30) % 30), 60 * Math.floor(k / 900)];
    TONON.positions.forEach((value, i) => {
      positions[points * k + i] = value + shift[i % 3];
    });
    TONON.triangles.forEach((value, i) => {
      triangles[TONON.triangles.length * k + i] = value + 4 * k;
    });
  }
  return { positions, triangles };
}
