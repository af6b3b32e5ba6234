import { cpus } from 'node:os';
import { accuracyAfter } from './accuracy';
import { bytesOfNothing, bytesPerCall, engineTick } from './bytes';
import { demoHeads, grown } from './heads';
import {
  catalogueRate,
  halvingByMesh,
  hoverRate,
  importRate,
  knobRate,
  toleranceRate,
} from './longer';
import { interleaved, type Timed } from './measure';
import { spreadOf } from './meshIntegral';
import { type Peer, peerOf } from './pieces';
import { writeReadme } from './readme';
import { type Figures, tableOf } from './report';
import { weighAll } from './routes/engine';
import { manifoldRoute } from './routes/manifold';
import { OwnHead } from './routes/ours';
import { plainSpread } from './routes/plain';
import { threeMoments } from './routes/threeMesh';

/**
 * `npm run timing`: speed beside other routes to the same numbers, in one interleaved run, two designs by turns. Writes
 * the table of the README (`--dry`: prints it only). Fails where a route gives another answer.
 */
const GROWTH = [11, 100, 1000, 10_000];
/** Calls over which bytes are counted. */
const TICKS = 100_000;

const manifold = await manifoldRoute();
const heads = demoHeads();
const own = heads.map((head) => new OwnHead(head));
const peers = heads.map(peerOf);
requireAgreement();

const accuracy = accuracyAfter(1_000_000);
if (accuracy.fresh > 1e-12 || accuracy.dragged > 1e-12) {
  throw new Error(`J_yy - J_zz is off by ${accuracy.fresh}, ${accuracy.dragged} of it`);
}

const state = (i: number) => ((i >> 1) & 1) as 0 | 1;
const parts = (i: number) => peers[i & 1].states[state(i)];
const cached = peers.map((peer) => manifold.oneChanged(peer));
const routes = interleaved(
  [
    { name: 'change', calls: 2000, run: (i) => own[i & 1].change(state(i)) },
    { name: 'changeAndChart', calls: 1000, run: (i) => own[i & 1].changeAndChart(state(i)) },
    { name: 'chart', calls: 1000, run: (i) => own[i & 1].inertialChart() },
    { name: 'weighAll', calls: 2000, run: (i) => weighAll(parts(i)) },
    { name: 'load', calls: 100, run: (i) => own[i & 1].reload(state(i)) },
    {
      name: 'analysis',
      calls: 20,
      run: (i) => own[i & 1].change(state(i)) + own[i & 1].chart() + own[i & 1].equilibria(),
    },
    { name: 'plain', calls: 100, run: (i) => plainSpread(parts(i)) },
    { name: 'three', calls: 4, run: (i) => spreadOf(threeMoments(parts(i))) },
    { name: 'manifoldAll', calls: 4, run: (i) => spreadOf(manifold.whole(parts(i))) },
    { name: 'manifoldOne', calls: 8, run: (i) => spreadOf(cached[i & 1](state(i))) },
  ],
  15,
);

const sizes = GROWTH.map((count) => heads.map((head) => new OwnHead(grown(head, count))));
const growth = interleaved(
  sizes.map((pair, s) => ({
    name: `${GROWTH[s]}`,
    calls: 2000,
    run: (i: number) => pair[i & 1].change(state(i)),
  })),
  15,
);

const figures: Figures = {
  machine: `${cpus().length} cores, Node ${process.versions.node}`,
  routes: Object.fromEntries(routes.map((one): [string, Timed] => [one.name, one])),
  growth,
  accuracy,
  bytes: {
    engine: bytesPerCall(engineTick(own[0]), TICKS),
    nothing: bytesOfNothing(TICKS),
    change: bytesPerCall((i) => own[i & 1].change(state(i)), 20_000),
  },
  tolerance: toleranceRate(() => spreadOf(manifold.whole(parts(0)))),
  hover: hoverRate(),
  knob: knobRate((dragged) => halvingByMesh(manifold, dragged)),
  catalogue: catalogueRate(),
  mesh: await importRate(),
};
const table = tableOf(figures);
console.log(table);
if (!process.argv.includes('--dry')) writeReadme('timing', table);

/** All routes weigh the same head: meshes within what chords cut off, objects to rounding. */
function requireAgreement(): void {
  for (const h of [0, 1] as const) {
    for (const s of [0, 1] as const) {
      const peer: Peer = peers[h];
      const spread = own[h].change(s);
      agree('plain objects', plainSpread(peer.states[s]), spread, 1e-12);
      agree('weighed anew', weighAll(peer.states[s]), spread, 1e-12);
      agree('three.js', spreadOf(threeMoments(peer.states[s])), spread, 3e-3);
      agree('manifold', spreadOf(manifold.whole(peer.states[s])), spread, 3e-3);
      agree('manifold, kept', spreadOf(manifold.oneChanged(peer)(s)), spread, 3e-3);
    }
  }
}

function agree(name: string, value: number, spread: number, share: number): void {
  const off = Math.abs(value / spread - 1);
  if (!(off < share)) throw new Error(`${name}: ${value} for ${spread}, off by ${off}`);
}
