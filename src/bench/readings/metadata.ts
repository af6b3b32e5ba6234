import { MAX_NAME, MAX_NOTE, type NumberLimits } from '../../design/limits';
import { BENCH_RUN_LIMITS } from '../../design/sections/bench';
import { mmFromMetres, rpmFromAngularSpeed } from '../../engine/units';
import { digits } from '../digits';
import { numberText, readCell } from './cellValue';
import { plainWords } from './headings';
import type { Layout, LineAbove } from './layout';
import { countCell, type NumberStyle, newCount, ownDecimal, styleOf } from './numbers';
import { isNumeric } from './sniff';
import type { DecimalSign, Delimiter, RunMetadata } from './types';
import { type Dimension, dimensionOf, siFrom, type UnitName, unitFromText } from './unitNames';

/** A line above the table of the form "name: value", both as written. */
export interface MetadataLine {
  readonly row: number;
  readonly name: string;
  readonly value: string;
  /** What the program took it for; null where it is kept and not understood. */
  readonly field: MetadataField | null;
}

type MetadataField = keyof RunMetadata | 'sign' | 'forceUnit';

export interface TableMetadata {
  readonly lines: readonly MetadataLine[];
  readonly run: RunMetadata;
  /** The unit of forces, where a line says so. */
  readonly forceUnit: UnitName | null;
  /** Which sense of a force is written positive, where a line says so. */
  readonly positive: 'tension' | 'compression' | null;
}

const FIELDS: readonly (readonly [MetadataField, RegExp])[] = [
  ['speed', /^(?:rotor |head |test )?speed$|^rpm$|drehzahl|toerental|^vitesse|^revs$/],
  ['gaugeStep', /gauge step|resolution|^step$|auflosung|least count/],
  ['forceUnit', /^(?:force )?units?$|^einheit$/],
  ['sign', /^signs?$|sign convention|^positive$|vorzeichen/],
  ['arm', /^(?:pitch |gauge |measuring )?arm(?: length)?$|^hebel/],
  ['gauge', /gauge|^instrument$|messgerat|dynamometer/],
  [
    'fitted',
    /fitted|^with$|^parts?(?: on)?$|configuration|^config$|^set ?up$|^build$|aufbau|^run$|^test$/,
  ],
  ['date', /^date$|^datum$|^fecha$|^data$|^day$/],
  ['note', /^notes?$|^remarks?$|^comments?$|bemerkung|^title$/],
];

/**
 * The lines "name: value" (also with "=", or name, value and unit in cells of their own) above a table. Those that are
 * understood fill `run`; all are kept. A value that cannot be read, or that no run of a design may have (`LONGEST`,
 * `BENCH_RUN_LIMITS`), leaves its field empty and stays in `lines`.
 */
export function readMetadata(
  layout: Layout,
  delimiter: Delimiter,
  table: DecimalSign,
): TableMetadata {
  const lines: MetadataLine[] = [];
  for (const above of layout.above)
    for (const { name, value } of pairsOf(above, delimiter))
      lines.push({ row: above.row, name, value, field: fieldFor(name, value) });
  return { lines, ...understood(lines, table) };
}

interface Pair {
  readonly name: string;
  readonly value: string;
}

/** One pair from a line, or several that stand in cells of their own ("speed: 10200 rpm; arm: 17 mm"). */
function pairsOf({ cells, line }: LineAbove, delimiter: Delimiter): Pair[] {
  const filled = cells.filter((cell) => cell !== '');
  const each = filled.flatMap((cell) => pairOf(cell) ?? []);
  if (each.length === filled.length) return each;
  // In the line as it stands, a comma may be the number's and a blank the text's.
  const whole = pairOf(line.replace(/[,;|\s]+$/, ''));
  if (whole) {
    const value = whole.value.replace(/^[,;|\s]+/, '');
    return [
      { name: whole.name, value: delimiter === ',' ? value : value.replace(/\s*[;|\t]\s*/g, ' ') },
    ];
  }
  const [first, ...rest] = filled;
  const name = first.replace(/^(?:[#%!]+|\/\/)\s*/, '');
  if (rest.length === 0 || !/^\p{L}/u.test(name)) return [];
  return [{ name, value: rest.join(isNumeric(rest[0]) ? ' ' : ', ') }];
}

function pairOf(text: string): { name: string; value: string } | null {
  const match = /^\s*(?:[#%!]+|\/\/)?\s*(\p{L}[^:=]{0,60}?)\s*[:=]\s*(.*?)\s*$/su.exec(text);
  return match && { name: match[1], value: match[2] };
}

function fieldOf(name: string): MetadataField | null {
  const words = plainWords(name);
  return FIELDS.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
}

/** Letters that a design keeps of a text; a longer one is some other line that begins alike. */
const LONGEST: Partial<Readonly<Record<MetadataField, number>>> = {
  fitted: MAX_NAME,
  gauge: MAX_NAME,
  date: MAX_NAME,
  note: MAX_NOTE,
};

function fieldFor(name: string, value: string): MetadataField | null {
  const field = fieldOf(name);
  return field && value.length <= (LONGEST[field] ?? Number.POSITIVE_INFINITY) ? field : null;
}

/** The value where a run may have it in that unit, else null. */
function within<T>(
  value: T | null,
  { min, max }: NumberLimits,
  inUnit: (value: T) => number,
): T | null {
  return value !== null && inUnit(value) >= min && inUnit(value) <= max ? value : null;
}

function understood(
  lines: readonly MetadataLine[],
  table: DecimalSign,
): Omit<TableMetadata, 'lines'> {
  function textOf(field: MetadataField): string {
    return lines.find((line) => line.field === field)?.value ?? '';
  }
  const unit = unitFromText(textOf('forceUnit'));
  const forceUnit = unit && dimensionOf(unit) === 'force' ? unit : null;
  const run: RunMetadata = {
    speed: within(
      quantityOf(textOf('speed'), 'speed', 'rpm', table),
      BENCH_RUN_LIMITS.speedRpm,
      (speed) => digits(rpmFromAngularSpeed(speed)),
    ),
    fitted: textOf('fitted'),
    arm: within(quantityOf(textOf('arm'), 'length', null, table), BENCH_RUN_LIMITS.armMm, (arm) =>
      digits(mmFromMetres(arm)),
    ),
    gauge: textOf('gauge'),
    gaugeStep: within(
      quantityOf(textOf('gaugeStep'), 'force', forceUnit, table),
      BENCH_RUN_LIMITS.gaugeStepN,
      Number,
    ),
    date: textOf('date'),
    note: textOf('note'),
  };
  return { run, forceUnit, positive: positiveOf(textOf('sign')) };
}

function positiveOf(text: string): 'tension' | 'compression' | null {
  const match = /(tension|compression|zug|druck)\b([^,;.]*)/i.exec(text);
  if (!match) return null;
  const isTension = /[tz]/i.test(match[1]);
  const isNegative = /[-\u2212]|neg/i.test(match[2]);
  return isTension === isNegative ? 'compression' : 'tension';
}

/** A number and its unit in SI; null where it is no such quantity. */
export function quantityOf(
  text: string,
  dimension: Dimension,
  assumed: UnitName | null,
  table: DecimalSign,
): number | null {
  const read = readCell(text, styleFor(text, table));
  if ('code' in read) return null;
  const unit = read.unit ?? assumed;
  return unit && dimensionOf(unit) === dimension ? siFrom(read.value, unit) : null;
}

/** A single number proves its own decimal sign or takes the table's. */
function styleFor(text: string, table: DecimalSign): NumberStyle {
  const count = newCount();
  countCell(count, numberText(text), 0);
  return styleOf(count, ownDecimal(count) ?? table);
}
