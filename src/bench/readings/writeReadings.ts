import { degreesFromRadians, mmFromMetres, rpmFromAngularSpeed } from '../../engine/units';
import type { Reading, RunMetadata } from './types';

interface Column {
  readonly heading: string;
  has(reading: Reading): boolean;
  text(reading: Reading): string;
}

/** Columns of the written table. Headings are plain English, which `guessHeading` reads back with their units. */
const COLUMNS: readonly Column[] = [
  numbers('time [s]', ({ time }) => time),
  numbers('pitch [deg]', ({ pitch }) => pitch && degreesFromRadians(pitch)),
  numbers('force [N] tension +', ({ force }) => force),
  numbers('moment [N mm]', ({ moment }) => moment && mmFromMetres(moment)),
  words('direction of travel', ({ travel }) => travel ?? ''),
  numbers('speed [rpm]', ({ speed }) => speed && rpmFromAngularSpeed(speed)),
  words('run', ({ run }) => run),
  words('note', ({ note }) => note),
];

/**
 * Readings as a table (RFC 4180 but for the lines of metadata, which begin with "#": commas, CR LF, quotes where needed),
 * with every digit that a double needs, so that `previewReadings` gives them back to rounding. `scale` says whether scale
 * readings are metres (written in mm) or plain divisions. A text that a spreadsheet would take for a formula gets an
 * apostrophe in front.
 */
export function writeReadings(
  readings: readonly Reading[],
  metadata: RunMetadata,
  scale: 'length' | 'divisions' = 'length',
): string {
  const scaleColumn =
    scale === 'length'
      ? numbers('scale reading [mm]', ({ scale: value }) => value && mmFromMetres(value))
      : numbers('scale reading [div]', ({ scale: value }) => value);
  const all = [...COLUMNS.slice(0, 2), scaleColumn, ...COLUMNS.slice(2)];
  const columns = all.filter((column) => readings.some((reading) => column.has(reading)));
  const lines = [
    columns.map(({ heading }) => heading),
    ...readings.map((reading) => columns.map((column) => column.text(reading))),
  ];
  const body = lines.map((cells) => `${cells.map(quoted).join(',')}\r\n`);
  return `\ufeff${metadataLines(metadata).join('')}${body.join('')}`;
}

function numbers(heading: string, value: (reading: Reading) => number | null): Column {
  return {
    heading,
    has: (reading) => value(reading) !== null,
    text: (reading) => numberText(value(reading)),
  };
}

function words(heading: string, text: (reading: Reading) => string): Column {
  return {
    heading,
    has: (reading) => text(reading) !== '',
    text: (reading) => safe(text(reading)),
  };
}

/** Plain digits: 15 significant ones, what every double keeps, so that 17.1 is not written 17.100000000000001. */
function numberText(value: number | null): string {
  return value === null ? '' : String(Number(value.toPrecision(15)));
}

function metadataLines(metadata: RunMetadata): string[] {
  const { speed, fitted, arm, gauge, gaugeStep, date, note } = metadata;
  const lines: readonly (readonly [string, string])[] = [
    ['speed', speed === null ? '' : `${numberText(rpmFromAngularSpeed(speed))} rpm`],
    ['fitted', fitted],
    ['arm', arm === null ? '' : `${numberText(mmFromMetres(arm))} mm`],
    ['gauge', gauge],
    ['gauge step', gaugeStep === null ? '' : `${numberText(gaugeStep)} N`],
    ['date', date],
    ['note', note],
  ];
  return lines.flatMap(([name, value]) =>
    value === '' ? [] : [`# ${name}: ${value.replace(/[\r\n]+/g, ' ')}\r\n`],
  );
}

function safe(text: string): string {
  return /^[\s\p{Cc}]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(text) ? `'${text}` : text;
}

function quoted(cell: string): string {
  return /[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
