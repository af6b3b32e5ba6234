import { readFileSync } from 'node:fs';
import { crc32, deflateSync } from 'node:zlib';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { DESIGN_FORMAT, DESIGN_VERSION, type Design } from '../../../src/design/design';
import { designFrom, parseDesign, serializeDesign } from '../../../src/design/file';
import { materialsOf } from '../../../src/design/resolve';
import { POSE_IDENTITY } from '../../../src/engine/math/pose';
import { bodyPart } from '../../../src/meshes/bodyPart';
import { writeStl } from '../../../src/meshes/writeStl';
import { shareLink } from '../../../src/output/share/shareLink';
import { glbFile } from '../../../src/output/solids/glbFile';
import { threeMfFile } from '../../../src/output/solids/threeMfFile';
import { examplePolar } from '../../../src/panels/conditions/polarDesk';
import { pngWithDesign } from '../../../src/state/carried/pngDesign';
import { svgWithDesign } from '../../../src/state/carried/svgWithDesign';
import { copyText } from '../../../src/state/partClipboard';
import { serializeShelf } from '../../../src/state/shelfFile';
import { itemOf } from '../../../src/state/shelfItem';
import { glb, importOf, objText, stlText, TONON, threeMf } from '../../meshes/files';
import { bodyOf } from '../../output/solids/heads';
import { boxMesh } from '../../support/meshes';

/** Good inputs by name, the same bytes at every run: assets and fixtures, and files of our own writers. */
export type Corpus = ReadonlyMap<string, Uint8Array>;

export async function goodInputs(): Promise<Corpus> {
  const mesh = await meshDesign();
  const nut = asset('designs/4-turned-nut.json');
  const files: Record<string, Uint8Array | string> = {
    'bare grip': asset('designs/1-bare-grip.json'),
    'turned nut': nut,
    'both sides': asset('designs/5-both-sides.json'),
    'full size': asset('designs/6-full-size.json'),
    'all sections': serializeDesign(fullDesign()),
    'mesh part': serializeDesign(mesh),
    'lesson 1': asset('lessons/1-two-lumps.json'),
    'lesson 8': asset('lessons/8-air-takes-over.json'),
    'lesson 10': asset('lessons/10-how-close.json'),
    ...partTexts(read(nut), mesh),
    'link to a bare grip': linkTo(read(asset('designs/1-bare-grip.json'))),
    'link to a turned nut': linkTo(read(nut)),
    'rescue note': JSON.stringify({
      id: 'id',
      revision: 3,
      writer: 'tab',
      stamps: ['a', 'b'],
      name: 'Kept',
      savedAt: 1,
      text: asset('designs/1-bare-grip.json'),
    }),
    ...tables(),
    ...(await meshes()),
    ...pictures(asset('designs/1-bare-grip.json')),
    ...notes(),
    'mark of a lesson': lessonMark(),
  };
  return new Map(
    Object.entries(files).map(([name, file]) => [
      name,
      // A copy: a Buffer's slice is the same memory, and a bent input would bend the good one.
      typeof file === 'string' ? strToU8(file) : Uint8Array.from(file),
    ]),
  );
}

function asset(path: string): string {
  return readFileSync(new URL(`../../../assets/${path}`, import.meta.url), 'utf8');
}

function read(text: string): Design {
  const design = parseDesign(text);
  if (!design.ok) throw new Error(JSON.stringify(design.error));
  return design.value;
}

function linkTo(design: Design): string {
  const link = shareLink(design);
  if (!link.ok) throw new Error('too long for a link');
  return link.value;
}

/** A design that says something in most of its sections. */
function fullDesign(): Design {
  const design = read(asset('designs/4-turned-nut.json'));
  const polar = { name: 'section.csv', text: shortPolar() };
  return read(
    serializeDesign({
      ...design,
      note: 'Every section',
      materials: [{ id: 'own', name: 'Own alloy', densityKgM3: 7000 }],
      air: { ...design.air, section: 'table', polar },
      friction: {
        ...design.friction,
        drag: [
          { travelMm: -3, forceN: 0.4 },
          { travelMm: 3, forceN: 0.5 },
        ],
      },
      otherGrips: [{ name: 'B', massGrams: 30, stationMm: 40 }],
      tryOuts: [
        { id: 'one', name: 'One', adopted: true },
        { id: 'two', name: 'Two', parts: design.parts.slice(0, 2) },
      ],
      bench: {
        gaugeStepN: 0.1,
        calibration: {
          kind: 'line',
          scaleUnit: 'mm',
          pairs: [
            { scale: -5, pitchDeg: -20 },
            { scale: 5, pitchDeg: 20 },
          ],
        },
        runs: [
          {
            id: 'run',
            name: 'By hand',
            speedRpm: 7000,
            rows: [
              { pitchDeg: 0, forceN: 0.1, travel: 'push' },
              { pitchDeg: 10, forceN: 1.5, travel: 'pull' },
            ],
          },
        ],
      },
    } as unknown as Design),
  );
}

/** A design with a body from a file in it. */
async function meshDesign(): Promise<Design> {
  const body = bodyPart(await importOf('box.stl', writeStl([boxMesh(20, 10, 5)], 1, 'box')), {
    unit: 'mm',
    role: 'part',
  });
  const pose = { positionMm: [30, 0, 0], rotationDeg: [0, 0, 0] };
  const made = designFrom({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    name: 'Mesh',
    rotor: { speedRpm: 9000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
    parts: [{ id: 'box', name: 'Box', ...body, densityKgM3: 1140, pose }],
  });
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}

function partTexts(design: Design, mesh: Design): Record<string, string> {
  const copied = (from: Design, kind: string) => {
    const part = from.parts.find((one) => one.kind === kind);
    if (!part) throw new Error(`no ${kind}`);
    return copyText(part, POSE_IDENTITY, from);
  };
  const shelf = (from: Design) =>
    serializeShelf(
      from.parts.slice(0, 4).map((part, k) => {
        return itemOf(part, materialsOf(from), { id: `${k}`, savedAt: 1, name: part.name });
      }),
    );
  return {
    'copied bolt': copied(design, 'bolt'),
    'copied blade': copied(design, 'blade'),
    'copied mesh': copied(mesh, 'meshBody'),
    shelf: shelf(design),
    'shelf with a mesh': shelf(mesh),
  };
}

function shortPolar(): string {
  const lines = examplePolar().split('\n');
  return lines.filter((_, k) => k < 2 || k % 8 === 2).join('\n');
}

const OUTLINE =
  '1 0\n0.6 0.045\n0.3 0.06\n0.05 0.035\n0 0\n0.05 -0.035\n0.3 -0.06\n0.6 -0.045\n1 0\n';
const SIDE = '0 0\n0.05 0.035\n0.3 0.06\n0.6 0.045\n1 0\n';

function tables(): Record<string, string> {
  const readings = asset('bench/2-bare-grip.csv');
  const plain = readings
    .split('\n')
    .filter((line) => !line.includes('#'))
    .join('\n');
  const reynolds = shortPolar().split('\n');
  return {
    'drag at rest': asset('bench/1-drag-at-rest.csv'),
    readings,
    'readings with semicolons': plain.replaceAll(',', ';').replaceAll('.', ','),
    'readings with tabs': plain.replaceAll(',', '\t'),
    'readings parted by blanks':
      'pitch(deg)  force(N)\n-10   1.5\n  0   0.25\n 10  -1.75\n 20  -2.5\n',
    cells: '-10\t1.5\tpush\tfirst\n0\t0.2 N\tpull\n10;-3.5 ozf;held;last\n20\t4 N C\n',
    polar: shortPolar(),
    'polar with Reynolds numbers': [
      ...reynolds.slice(0, 2),
      'Re = 60000',
      ...reynolds.slice(2).filter((line) => line !== ''),
      'Re = 120000',
      ...reynolds.slice(2),
    ].join('\n'),
    outline: `Own section\n${OUTLINE}`,
    'outline side by side': `Own section\n5 5\n\n${SIDE}\n${SIDE.replaceAll(' 0.0', ' -0.0')}`,
    drag: 'travel force\n-4.5  0.62\n0  0.31\n4.5  0.58\n',
    'list of numbers': '-20 -10; 0 10 20.5',
    'typed number': '1 1/8 in',
    'typed sum': '2*(3+4.5)/2 mm',
  };
}

async function meshes(): Promise<Record<string, Uint8Array>> {
  const block = bodyOf('block', { sizeMm: [20, 10, 5] });
  const options = { title: 'Head', description: 'Test', unit: 'mm', segmentsPerTurn: 12 } as const;
  const design = asset('designs/1-bare-grip.json');
  const ours = threeMfFile([block, block], { ...options, date: '2026-01-31', design });
  return {
    'STL text': stlText(TONON),
    'STL binary': writeStl([TONON], 1, 'tetrahedron'),
    'STL of our own': writeStl([boxMesh(20, 10, 5)], 1, 'box'),
    OBJ: objText(TONON),
    '3MF': undated(threeMf(TONON)),
    '3MF of our own': undated(ours),
    GLB: await glb(TONON),
    'GLB of our own': glbFile([block], 'Head', 12),
    'STEP block': readFileSync(new URL('../../meshes/block.step', import.meta.url)),
    'STEP pin': readFileSync(new URL('../../meshes/pin.step', import.meta.url)),
  };
}

/** A package without the hour of its making. */
export function undated(bytes: Uint8Array): Uint8Array {
  return zipSync(unzipSync(bytes), { mtime: '2026-01-31T12:00:00', level: 6 });
}

/** An empty drawing and one white pixel (ISO/IEC 15948), each with a design in it. */
function pictures(design: string): Record<string, Uint8Array | string> {
  const chunk = (type: string, data: Uint8Array) => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    const [size, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    size.writeUInt32BE(data.length);
    sum.writeUInt32BE(crc32(body));
    return Buffer.concat([size, body, sum]);
  };
  const png = Buffer.concat([
    Buffer.from('89504e470d0a1a0a', 'hex'),
    chunk('IHDR', Uint8Array.of(0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0)),
    chunk('IDAT', deflateSync(Uint8Array.of(0, 255))),
    chunk('IEND', new Uint8Array(0)),
  ]);
  const svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">\n</svg>';
  return {
    'SVG of our own': svgWithDesign(svg, design),
    'PNG of our own': pngWithDesign(Uint8Array.from(png), design),
  };
}

function lessonMark(): string {
  return JSON.stringify({
    text: asset('lessons/1-two-lumps.json'),
    step: 1,
    told: false,
    answer: null,
    finished: false,
    design: asset('designs/1-bare-grip.json'),
    pitchDeg: 3.5,
    selection: null,
    settings: { layers: {}, theme: 'dark' },
  });
}

function notes(): Record<string, string> {
  return {
    settings: JSON.stringify({ units: { length: 'in', mass: 'oz' }, theme: 'dark', room: 'make' }),
    plan: JSON.stringify({ goal: 'centring', speeds: 'range', weightSide: 'both', knobs: null }),
    'let go': JSON.stringify({ dampingPercent: 5, restitution: 0.3, slowness: 10 }),
    'drawing choice': JSON.stringify({ format: 'A4 landscape', projection: 'third', step: 0.01 }),
    'bench draft': JSON.stringify({
      run: null,
      place: 'pitch',
      unit: 'N',
      about: { name: 'x', speedRpm: 7000 },
      rows: [{ pitch: '1', force: '2', travel: 'push', note: '' }],
    }),
  };
}
