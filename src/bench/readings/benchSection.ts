import { fail, type Result, succeed } from '../../engine/result';
import {
  angularSpeedFromRpm,
  metresFromMm,
  mmFromMetres,
  rpmFromAngularSpeed,
} from '../../engine/units';
import type { DecimalSign, Delimiter, ReadingsMapping, StoredReadings, Travel } from './types';

/** Proposal for the `bench` section of a design file; like the others it holds what was typed, units in the keys. */
interface BenchSection {
  readonly runs: readonly BenchRun[];
}

/** One run: a table that was read, or rows typed by hand; never both. */
export interface BenchRun {
  readonly id: string;
  readonly name: string;
  readonly speedRpm?: number;
  /** What was fitted, in words; `parts` names those of the design. */
  readonly fitted?: string;
  readonly parts?: readonly string[];
  readonly armMm?: number;
  readonly gauge?: string;
  readonly gaugeStepN?: number;
  readonly date?: string;
  readonly note?: string;
  readonly table?: BenchTable;
  readonly rows?: readonly BenchRow[];
  /** Pitch steps that the person named in a log of time and force alone. */
  readonly steps?: readonly BenchStep[];
  /** Readings, counted from 0 in their order, that the person set aside: kept, shown, not counted. */
  readonly setAside?: readonly number[];
  /** Left out of the fit as a whole by the person. */
  readonly uncounted?: boolean;
  /** Id of the try-out whose head was measured; left out: the head on the stage. */
  readonly tryOut?: string;
}

/** A table as it came, with how it is read. */
export interface BenchTable {
  readonly encoding: string;
  readonly text: string;
  readonly delimiter?: Delimiter;
  readonly decimal?: DecimalSign;
  readonly columns: ReadingsMapping;
}

/** Samples `from` up to before `to` of a log, counted from 0, that were taken at one pitch. */
export interface BenchStep {
  readonly from: number;
  readonly to: number;
  readonly pitchDeg: number;
  readonly travel?: Travel;
}

/** A reading typed by hand. Tension is positive; pitch or scale is there. */
export interface BenchRow {
  readonly pitchDeg?: number;
  readonly scaleMm?: number;
  readonly forceN: number;
  readonly travel?: Travel;
  readonly note?: string;
}

export const MAX_RUNS = 200;
/** Characters of all tables of a design together: half of what a design file may have. */
export const MAX_BENCH_TEXT = 16_000_000;
export const BENCH_LIMITS = {
  speedRpm: { min: 0, max: 1_000_000, unit: 'rpm' },
  armMm: { min: 0.01, max: 10_000, unit: 'mm' },
  gaugeStepN: { min: 0, max: 1e5, unit: 'N' },
  pitchDeg: { min: -180, max: 180, unit: 'deg' },
  scaleMm: { min: -10_000, max: 10_000, unit: 'mm' },
  forceN: { min: -1e6, max: 1e6, unit: 'N' },
} as const;

/** A table that was taken, as a run of the section; what is not known is left out. */
export function runFromTable(id: string, stored: StoredReadings): BenchRun {
  const { name, encoding, text, options, mapping, metadata } = stored;
  const { speed, fitted, arm, gauge, gaugeStep, date, note } = metadata;
  return {
    id,
    name,
    ...(speed === null ? {} : { speedRpm: digits12(rpmFromAngularSpeed(speed)) }),
    ...(fitted === '' ? {} : { fitted }),
    ...(arm === null ? {} : { armMm: digits12(mmFromMetres(arm)) }),
    ...(gauge === '' ? {} : { gauge }),
    ...(gaugeStep === null ? {} : { gaugeStepN: gaugeStep }),
    ...(date === '' ? {} : { date }),
    ...(note === '' ? {} : { note }),
    table: { encoding, text, ...options, columns: mapping },
  };
}

/** The way back; fails for a run that was typed by hand. */
export function tableOfRun(run: BenchRun): Result<StoredReadings, 'typedByHand'> {
  if (!run.table) return fail('typedByHand');
  const { encoding, text, delimiter, decimal, columns } = run.table;
  return succeed({
    name: run.name,
    encoding,
    text,
    options: { ...(delimiter && { delimiter }), ...(decimal && { decimal }) },
    mapping: columns,
    metadata: {
      speed: run.speedRpm === undefined ? null : angularSpeedFromRpm(run.speedRpm),
      fitted: run.fitted ?? '',
      arm: run.armMm === undefined ? null : metresFromMm(run.armMm),
      gauge: run.gauge ?? '',
      gaugeStep: run.gaugeStepN ?? null,
      date: run.date ?? '',
      note: run.note ?? '',
    },
  });
}

/** 10200 rpm is written 10200, not 10199.999999999998. */
function digits12(value: number): number {
  return Number(value.toPrecision(12));
}
