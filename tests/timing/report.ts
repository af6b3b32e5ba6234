import type { Accuracy } from './accuracy';
import type { Rate } from './longer';
import { ratio, type Timed } from './measure';

export interface Figures {
  readonly machine: string;
  readonly routes: Readonly<Record<string, Timed>>;
  readonly growth: readonly Timed[];
  readonly accuracy: Accuracy;
  readonly bytes: { readonly engine: number; readonly nothing: number; readonly change: number };
  readonly tolerance: Rate;
  readonly hover: { readonly rate: number; readonly stations: number };
  readonly knob: Rate;
  readonly catalogue: { readonly rate: number; readonly combinations: number };
  readonly mesh: Rate & { readonly triangles: number };
}

/** The table of the README. */
export function tableOf(figures: Figures): string {
  const { routes, growth, accuracy, bytes } = figures;
  const row = (job: string, own: Timed, peer: string, other: Timed) =>
    `| ${job} | ${micros(own)} | ${peer} | ${micros(other)} | ${digits(ratio(other, own))} |`;
  const alone = (job: string, own: string) => `| ${job} | ${own} | | | |`;
  const rates = (job: string, { own, peer }: Rate, name: string, unit: string) =>
    `| ${job} | ${digits(own)} ${unit} | ${name} | ${digits(peer ?? Number.NaN)} ${unit} | ${digits(own / (peer ?? Number.NaN))} |`;
  const { change, changeAndChart, chart, weighAll, load, analysis, plain, three } = routes;
  const { manifoldAll, manifoldOne } = routes;
  const flat = growth.map(({ name }, i) => `${name}: ${ratio(growth[i], growth[0]).toFixed(2)}`);
  return `
${figures.machine}; medians of 15 rounds in which all routes take turns, two heads of eleven parts by turns; the last
column is the median of the rounds' ratios. What is given as a rate is the median of five runs of one design, for the mesh of
three, with the other route between them. Meshes have 64 chords to a turn.

| job | here | other route | there | times |
|---|---|---|---|---|
${row('one part changed: weighed, placed, summed, with all checks', change, 'manifold, other parts kept', manifoldOne)}
${row('the same, principal axes and moment at 721 pitches', changeAndChart, 'manifold, other parts kept (sum alone)', manifoldOne)}
${row('all parts weighed, placed, summed', weighAll, 'manifold, all rebuilt', manifoldAll)}
${row('the same', weighAll, 'three.js meshes, all rebuilt', three)}
${row('the same', weighAll, 'the same formulas with plain objects', plain)}
${row('a whole design taken on, with all its rules', load, 'manifold, all rebuilt', manifoldAll)}
${alone('moment at 721 pitches', micros(chart))}
${alone('one part changed, chart of 721 points with rod, air, friction, servo, all rest angles', micros(analysis))}
${rates('heads of a tolerance run', figures.tolerance, 'manifold, all rebuilt (sum alone)', 'a second')}
${rates('neutralise with one knob', figures.knob, 'halving on manifold', 'a second')}
${rates('STL of a million triangles: read, checked, weighed, picture', figures.mesh, 'three.js read, integrated', 'triangles a second')}
${alone(`neutralise over a catalogue (${figures.catalogue.combinations} combinations, a knob solved in each)`, `${digits(figures.catalogue.rate)} a second`)}
${alone(`hover solved, ${figures.hover.stations} stations`, `${digits(figures.hover.rate)} a second`)}

One part changed in heads of more parts, times the smallest: ${flat.join(', ')}.
Error of J_yy - J_zz of 24 parts against fifty digits: ${accuracy.fresh.toExponential(1)} of it, after
${accuracy.drags.toLocaleString('en')} drags ${accuracy.dragged.toExponential(1)}.
Heap per tick: ${bytes.engine.toFixed(2)} bytes for the engine's own work (one part placed anew, sums, 721 moments),
where a call that does nothing is measured at ${bytes.nothing.toFixed(2)}; ${Math.round(bytes.change).toLocaleString('en')} bytes with the part read, checked and weighed
from what was typed.
`;
}

function micros({ micros: time }: Timed): string {
  return time < 1000 ? `${digits(time)} µs` : `${digits(time / 1000)} ms`;
}

/** Two digits, or whole numbers above a hundred: these machines are noisy. */
function digits(value: number): string {
  const rounded = Number(value.toPrecision(2));
  return rounded >= 100 ? rounded.toLocaleString('en') : String(rounded);
}
