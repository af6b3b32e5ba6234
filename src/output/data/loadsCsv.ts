import type { Design } from '../../design/design';
import type { BoltCheckName, HeadLoads, Margin } from '../../design/forces/loadTypes';
import { speedRange } from '../../design/forces/speedSweep';
import { mmFromMetres } from '../../engine/units';
import { t } from '../../messages';
import { phrase } from '../../messages/phrases';
import type { HeadReading } from '../../state/reading';
import { firstLimitText } from '../../state/words/firstLimit';
import { conditionLines } from './conditionLines';
import { type Cell, csvFile } from './csv';

type Unit = 'N' | 'N mm' | 'MPa' | '1';

/** What a bolt's checks are told in. */
const CHECK_UNITS: Readonly<Record<BoltCheckName, Unit>> = {
  shear: 'N',
  bending: 'N mm',
  shearAndBending: '1',
  cheekPressure: 'MPa',
  rootPressure: 'MPa',
  headPull: 'MPa',
  thread: 'N',
};

/** What grip, bearings and bolts carry at a pitch and the design's speed, one load a line, each with its unit. */
export function loadsCsv(reading: HeadReading, design: Design, pitchDeg: number): string {
  const loads = reading.loadsAt(pitchDeg);
  const nameOf = (id: string) => reading.part(id)?.part.name || id;
  const header = [
    t('csv.part'),
    t('csv.load'),
    t('csv.value'),
    t('csv.unit'),
    t('csv.limit'),
    t('csv.use'),
    t('csv.source'),
  ];
  const at = t('csv.loadsAt', { pitch: loads.pitchDeg, rpm: loads.speedRpm });
  const rows = [
    ...gripRows(loads),
    ...loads.pulls.map(({ id, pull }) => row(nameOf(id), t('csv.pull'), 'N', pull)),
    ...bearingRows(loads, nameOf),
    ...boltRows(loads, nameOf),
  ];
  const lines = [...conditionLines(design), at, firstLine(reading, design, nameOf)];
  return csvFile([...lines, t('loads.caution')], header, rows);
}

/** The limit that is met first within the pitch in use, judged at overspeed: the table is of one pitch and speed only. */
function firstLine(reading: HeadReading, design: Design, nameOf: (id: string) => string): string {
  const { overspeedRpm } = speedRange(design.rotor);
  const limit = reading.limitInUse(overspeedRpm);
  const pitchDeg = limit?.pitchDeg ?? reading.usedPitchDeg;
  const text = firstLimitText(limit, reading.loadsAt(pitchDeg, overspeedRpm), nameOf);
  return t('csv.judgedAt', { rpm: overspeedRpm, text });
}

function gripRows({ axialPull, thrust, flap }: HeadLoads): Cell[][] {
  const rows = [row('', t('csv.axial'), 'N', axialPull)];
  if (thrust) rows.push(row('', t('csv.thrust'), 'N', thrust.force));
  rows.push(row('', t('csv.flapMass'), 'N mm', flap.fromMass));
  if (flap.fromThrust !== null) rows.push(row('', t('csv.flapThrust'), 'N mm', flap.fromThrust));
  return rows;
}

function bearingRows({ bearings }: HeadLoads, nameOf: (id: string) => string): Cell[][] {
  return bearings.flatMap(({ id, radial, axial, rating }) => [
    row(nameOf(id), t('csv.radial'), 'N', radial),
    row(nameOf(id), t('csv.bearingAxial'), 'N', axial),
    marginRow(nameOf(id), t('csv.rating'), 'N', rating),
  ]);
}

function boltRows({ bolts }: HeadLoads, nameOf: (id: string) => string): Cell[][] {
  return bolts.flatMap(({ id, pull, checks }) => [
    row(nameOf(id), t('csv.boltPull'), 'N', pull),
    ...checks.map(({ name, margin }) =>
      marginRow(nameOf(id), t(`loads.check.${name}`), CHECK_UNITS[name], margin),
    ),
  ]);
}

function row(part: string, load: string, unit: Unit, value: number): Cell[] {
  return [part, load, inUnit(value, unit), unit, null, null, ''];
}

/** Where no limit is known the reason stands in the source's place. */
function marginRow(part: string, load: string, unit: Unit, margin: Margin): Cell[] {
  const value = inUnit(margin.value, unit);
  if (margin.kind === 'unknown') {
    return [part, load, value, unit, null, null, t(`loads.why.${margin.why}`)];
  }
  const own = phrase(margin.source);
  const source = margin.outside ? t('loads.outside', { source: own }) : own;
  return [part, load, value, unit, inUnit(margin.limit, unit), 100 * margin.use, source];
}

function inUnit(value: number, unit: Unit): number {
  if (unit === 'N mm') return mmFromMetres(value);
  return unit === 'MPa' ? megapascals(value) : value;
}

/** One N a mm^2 is one MPa. */
function megapascals(pascals: number): number {
  return pascals / mmFromMetres(1) ** 2;
}
