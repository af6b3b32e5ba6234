import { strToU8 } from 'fflate';
import type { Design } from '../../../src/design/design';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { materialsOf } from '../../../src/design/resolve';
import { POSE_IDENTITY } from '../../../src/engine/math/pose';
import { shareLink } from '../../../src/output/share/shareLink';
import { pngWithDesign } from '../../../src/state/carried/pngDesign';
import { svgWithDesign } from '../../../src/state/carried/svgWithDesign';
import { copyText } from '../../../src/state/partClipboard';
import { serializeShelf } from '../../../src/state/shelfFile';
import { itemOf } from '../../../src/state/shelfItem';
import { pixelPng } from '../../support/png';
import { asset } from './asset';
import { meshDesign, meshes } from './goodBodies';
import { notes, shortPolar, tables } from './goodTexts';

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
    // An empty drawing and one pixel, each with a design in it.
    'SVG of our own': svgWithDesign(DRAWING, asset('designs/1-bare-grip.json')),
    'PNG of our own': pngWithDesign(pixelPng(), asset('designs/1-bare-grip.json')),
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

function read(text: string): Design {
  const design = parseDesign(text);
  if (!design.ok) throw new Error(JSON.stringify(design.error));
  return design.value;
}

const DRAWING = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10">\n</svg>';

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
