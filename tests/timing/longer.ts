import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { createHoverSolution, solveHover } from '../../src/engine/air/hover';
import { radiansFromDegrees } from '../../src/engine/units';
import { importMesh } from '../../src/meshes/importMesh';
import { writeStl } from '../../src/meshes/writeStl';
import { ToleranceRun } from '../../src/neutralise/closeness/toleranceRun';
import type { SearchRequest } from '../../src/neutralise/request';
import { runSearch } from '../../src/neutralise/search';
import { partType } from '../../src/parts/registry';
import { ballMesh } from '../support/meshes';
import { type Dragged, demo } from './heads';
import { median } from './measure';
import { addMeshMoments, spreadOf, type Ten } from './meshIntegral';
import type { PlacedSolids } from './pieces';
import type { ManifoldRoute } from './routes/manifold';
import { OwnHead } from './routes/ours';

/** A count done in a second by each of two routes in turns, or by one. */
export interface Rate {
  readonly own: number;
  readonly peer: number | null;
}

const ROUNDS = 5;

/** Made heads of a tolerance run in a second; the peer weighs every head with meshes. */
export function toleranceRate(wholeByMesh: () => number): Rate {
  const design = demo('4-turned-nut');
  const begun = (warm: number) => {
    const run = ToleranceRun.of(design);
    if (!run.ok) throw new Error(`toleranceRate(): ${run.error.kind}`);
    run.value.step(warm);
    return run;
  };
  // A run is thousands of heads, of which the compiler takes the first to do its best.
  for (let k = 0; k < 4; k++) begun(1000);
  return inTurns(
    () => {
      const run = begun(100);
      const began = performance.now();
      run.value.step(300);
      return (300 * 1000) / (performance.now() - began);
    },
    () => perSecond(5, wholeByMesh),
  );
}

/** Blades solved in hover, 91 pitches, in a second. */
export function hoverRate(): { readonly rate: number; readonly stations: number } {
  const { air } = new OwnHead({ design: demo('4-turned-nut'), states: twice('4-turned-nut') })
    .forces;
  if (air.kind !== 'estimated') throw new Error(`hoverRate(): no air, ${air.kind}`);
  const stations = air.blade.stations.length;
  const out = createHoverSolution(stations);
  const round = () => {
    const began = performance.now();
    for (let pitch = -45; pitch <= 45; pitch++) {
      solveHover(air.blade, air.section, air.conditions, radiansFromDegrees(pitch), out);
    }
    return (91 * 1000) / (performance.now() - began);
  };
  return { rate: median(Array.from({ length: 4 * ROUNDS }, round).slice(ROUNDS)), stations };
}

function twice(name: string): Dragged['states'] {
  const [part] = demo(name).parts;
  return [part, part];
}

const NUT_HEIGHT = {
  ref: { part: 'nut', field: 'heightMm' },
  min: 2.4,
  max: 20,
  step: 0.1,
} as const;

/** Searches with one knob in a second; the peer halves the nut's height on meshes, the other parts kept. */
export function knobRate(peer: (dragged: Dragged) => number): Rate {
  const dragged: Dragged = { design: demo('3-ordinary-bolt'), states: twice('3-ordinary-bolt') };
  const request = requestOf([NUT_HEIGHT], []);
  return inTurns(
    () => perSecond(3, () => runSearch(request).looked),
    () => perSecond(1, () => peer(dragged)),
  );
}

/** Combinations looked at in a second, with the nuts of a catalogue, washers, materials and a knob solved in each. */
export function catalogueRate(): { readonly rate: number; readonly combinations: number } {
  const rows = ['ISO 4032', 'ISO 7040', 'ISO 4035'].map((standard) => ({ standard, size: 'M3' }));
  const request = requestOf(
    [{ ref: { part: 'bolt', field: 'extensionLengthMm' }, min: 0, max: 22, step: 0 }],
    [
      { kind: 'catalogue', part: 'nut', rows },
      { kind: 'count', part: 'washer-top', counts: [0, 1, 2, 3] },
      { kind: 'material', part: 'bolt', field: 'densityKgM3', materials: ['steel', 'brass'] },
    ],
  );
  let combinations = 0;
  const rates = Array.from({ length: ROUNDS }, () => {
    const began = performance.now();
    combinations = runSearch(request).looked;
    return (combinations * 1000) / (performance.now() - began);
  });
  return { rate: median(rates), combinations };
}

function requestOf(
  knobs: SearchRequest['knobs'],
  choices: SearchRequest['choices'],
): SearchRequest {
  return {
    design: demo('3-ordinary-bolt'),
    wanted: { goal: { kind: 'neutral' }, speedsRpm: [10_200] },
    knobs,
    together: false,
    choices,
    weight: null,
  };
}

/** Halving of the nut's height until J_yy = J_zz within 0.001 mm, every step by meshes. */
export function halvingByMesh(route: ManifoldRoute, { design }: Dragged): number {
  const head = new OwnHead({ design, states: twice('3-ordinary-bolt') });
  const nut = head.model.placed('nut');
  if (!nut) throw new Error('halvingByMesh(): no nut');
  const others: PlacedSolids[] = head.model.parts
    .filter((one) => one.carriedBy === 'grip' && one !== nut)
    .map(({ part, values, pose }) => ({ solids: partType(part.kind).solids(values), pose }));
  const kept = route.whole(others);
  const spread = (heightMm: number) => {
    const values = { ...nut.values, heightMm };
    const own = route.whole([{ solids: partType('nut').solids(values), pose: nut.pose }]);
    return spreadOf(kept) + spreadOf(own);
  };
  let [low, high]: [number, number] = [NUT_HEIGHT.min, NUT_HEIGHT.max];
  const atLow = spread(low);
  while (high - low > 0.001) {
    const middle = (low + high) / 2;
    if (spread(middle) > 0 === atLow > 0) low = middle;
    else high = middle;
  }
  return low;
}

/** Triangles of a closed ball of a million in a second: ours with checks, moments and picture; three's only read and added up. */
export async function importRate(): Promise<Rate & { readonly triangles: number }> {
  const ball = ballMesh(20, 501);
  const triangles = ball.triangles.length / 3;
  const file = writeStl([ball], 1, 'ball');
  const own: number[] = [];
  const peer: number[] = [];
  for (let round = 0; round < 3; round++) {
    let began = performance.now();
    const read = await importMesh('ball.stl', file, () => {});
    own.push((1000 * triangles) / (performance.now() - began));
    if (!read.ok || read.value.report.verdict !== 'sound')
      throw new Error('importRate(): not sound');
    began = performance.now();
    const geometry = new STLLoader().parse(file.buffer as ArrayBuffer);
    const ten: Ten = new Array(10).fill(0);
    addMeshMoments(ten, geometry.getAttribute('position').array, 3, null, 1);
    peer.push((1000 * triangles) / (performance.now() - began));
  }
  return { own: median(own), peer: median(peer), triangles };
}

/** Two rates measured in turns, the first round not counted. */
function inTurns(own: () => number, peer: () => number): Rate {
  const rounds = Array.from({ length: ROUNDS + 1 }, () => [own(), peer()]).slice(1);
  return { own: median(rounds.map(([one]) => one)), peer: median(rounds.map(([, one]) => one)) };
}

function perSecond(calls: number, run: () => number): number {
  const began = performance.now();
  for (let i = 0; i < calls; i++) run();
  return (1000 * calls) / (performance.now() - began);
}
