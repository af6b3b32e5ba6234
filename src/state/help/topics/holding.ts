import { airLoadAt } from '../../../design/forces/airLoad';
import { addAir, headBearings, loadsOnBearings } from '../../../design/forces/headBearings';
import { FRICTION_SECTION } from '../../../design/sections/friction';
import { sectionValues } from '../../../design/sections/section';
import { type DragTable, dragAt } from '../../../engine/friction/dragTable';
import { createAxisLoad, spinAxisLoad } from '../../../engine/loads/axisLoad';
import { metresFromMm } from '../../../engine/units';
import type { HelpHead } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { term, type Worked, work, workSum } from '../worked';
import { travelRatio } from './control';
import { totalMoment } from './turning';

/** Friction, and where it keeps the grip. */
export const HOLDING = {
  friction: {
    symbol: 'M_f',
    work: frictionLines,
    sources: ['coulomb', 'bearingCatalogues'],
    see: ['dragAtRest', 'bearingFriction', 'holdingBand', 'hysteresis'],
    also: 'stick slip holds starting factor',
  },
  dragAtRest: {
    symbol: 'F_drag',
    work: dragOnly,
    sources: ['trade', 'virtualWork'],
    see: ['friction', 'sliderTravel', 'gaugeStep'],
    also: 'linkage drag measured',
  },
  bearingFriction: {
    symbol: 'M_b',
    work: bearingsOnly,
    sources: ['bearingCatalogues'],
    see: ['friction', 'bearingLoad', 'thrustBearing'],
    also: 'coefficient starting factor',
  },
  holdingBand: {
    work: bandLines,
    sources: ['coulomb', 'ours'],
    see: ['friction', 'restAngle', 'featheringMoment'],
    also: 'stays where it is put friction holds arcs',
  },
} as const satisfies Entries;

interface Friction {
  readonly lines: readonly Worked[];
  readonly drag: Worked | null;
  readonly bearings: Worked | null;
}

/** Friction at the pitch by its formulas, as `design/forces/headFriction` has it; null where it is not counted. */
function frictionOf(head: HelpHead): Friction | null {
  if (!head.reading.friction.counted || !head.reading.friction.known) return null;
  const drag = dragLine(head);
  const bearings = bearingLine(head);
  const shares = [drag, bearings].flatMap((line) => (line ? [line] : []));
  const sum = workSum(
    'M_f',
    'moment',
    shares.map(({ result }) => result),
  );
  return { lines: shares.length > 0 ? [...shares, sum] : [], drag, bearings };
}

function dragTable({ design }: HelpHead): DragTable {
  const rows = design.friction?.drag ?? [];
  return {
    travel: rows.map(({ travelMm }) => metresFromMm(travelMm)),
    force: rows.map(({ forceN }) => forceN),
  };
}

function dragLine(head: HelpHead): Worked | null {
  const table = dragTable(head);
  const ratio = travelRatio(head);
  if (table.travel.length === 0 || !ratio || !head.reading.linkage) return null;
  const travel = head.reading.linkage.travelAt(head.pitchDeg);
  return work(
    'M_drag',
    'moment',
    '{F} \u00b7 |{r}| / {n}',
    {
      F: term('F_drag', 'force', dragAt(table, travel)),
      r: ratio,
      n: term('n', 'count', head.design.rotor.bladeCount),
    },
    ({ F, r, n }) => (F * Math.abs(r)) / n,
  );
}

/** Every bearing's running friction under its load, times the starting factor. */
function bearingLine(head: HelpHead): Worked | null {
  const { model, reading, pitch, design } = head;
  const bearings = headBearings(model);
  if (bearings.length === 0) return null;
  const { startingFactor } = sectionValues(FRICTION_SECTION, design.friction);
  const load = spinAxisLoad(reading.totals, model.rotor, pitch, createAxisLoad());
  addAir(load, airLoadAt(reading.air, pitch, design.rotor.bladeCount), model.rotor);
  const each = loadsOnBearings(bearings, load);
  const terms = Object.fromEntries(
    bearings.flatMap(({ facts }, i) => [
      [`mu${i}`, term(`\u03bc_${i + 1}`, 'ratio', facts.frictionCoefficient)],
      [`P${i}`, term(`P_${i + 1}`, 'force', Math.hypot(each[i].radial, each[i].axial))],
      [`d${i}`, term(`d_${i + 1}`, 'length', facts.frictionDiameter)],
    ]),
  );
  const sum = bearings.map((_, i) => `{mu${i}} \u00b7 {P${i}} \u00b7 {d${i}}`).join(' + ');
  return work(
    'M_b',
    'moment',
    `\u00bd \u00b7 {k} \u00b7 ( ${sum} )`,
    { k: term('k_start', 'ratio', startingFactor), ...terms },
    (v: Readonly<Record<string, number>>) =>
      (v.k / 2) *
      bearings.reduce((total, _, i) => total + v[`mu${i}`] * v[`P${i}`] * v[`d${i}`], 0),
  );
}

function frictionLines(head: HelpHead): Working {
  const found = frictionOf(head);
  return found && found.lines.length > 0
    ? { kind: 'worked', lines: found.lines }
    : { kind: 'none', why: 'help.none.friction' };
}

function dragOnly(head: HelpHead): Working {
  const line = dragLine(head);
  return line ? { kind: 'worked', lines: [line] } : { kind: 'none', why: 'help.none.drag' };
}

function bearingsOnly(head: HelpHead): Working {
  const line = bearingLine(head);
  return line ? { kind: 'worked', lines: [line] } : { kind: 'none', why: 'help.none.bearings' };
}

/** What friction has to spare at the pitch: it holds the grip where this is not negative. */
function bandLines(head: HelpHead): Working {
  const found = frictionOf(head);
  if (!found || found.lines.length === 0) return { kind: 'none', why: 'help.none.friction' };
  const moment = totalMoment(head);
  if (Number.isNaN(moment.value)) return { kind: 'none', why: 'help.none.reach' };
  return {
    kind: 'worked',
    lines: [
      work(
        'to spare',
        'moment',
        '{f} \u2212 |{M}|',
        { f: term('M_f', 'moment', head.reading.friction.at(head.pitchDeg)), M: moment },
        ({ f, M }) => f - Math.abs(M),
      ),
    ],
  };
}
