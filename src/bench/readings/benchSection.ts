import {
  BENCH_ROW_LIMITS,
  BENCH_RUN_LIMITS,
  type BenchRowRecord,
  type BenchRunRecord,
  type BenchStepRecord,
} from '../../design/sections/bench';
import { fail, type Result, succeed } from '../../engine/result';
import {
  angularSpeedFromRpm,
  metresFromMm,
  mmFromMetres,
  rpmFromAngularSpeed,
} from '../../engine/units';
import { digits } from '../digits';
import type { DecimalSign, Delimiter, ReadingsMapping, StoredReadings } from './types';

/** A run of the design's `bench` section whose columns have units that this program knows. */
export interface BenchRun extends Omit<BenchRunRecord, 'table'> {
  readonly table?: BenchTable;
}

/** A table as it came, with how it is read. */
export interface BenchTable {
  readonly encoding: string;
  readonly text: string;
  readonly delimiter?: Delimiter;
  readonly decimal?: DecimalSign;
  readonly columns: ReadingsMapping;
}

export type BenchStep = BenchStepRecord;
export type BenchRow = BenchRowRecord;

/** What may be typed of a run and of a reading: as in a design file. */
export const BENCH_LIMITS = { ...BENCH_RUN_LIMITS, ...BENCH_ROW_LIMITS } as const;

/** A table that was taken, as a run of the section; what is not known is left out. */
export function runFromTable(id: string, stored: StoredReadings): BenchRun {
  const { name, encoding, text, options, mapping, metadata } = stored;
  const { speed, fitted, arm, gauge, gaugeStep, date, note } = metadata;
  return {
    id,
    name,
    ...(speed === null ? {} : { speedRpm: digits(rpmFromAngularSpeed(speed)) }),
    ...(fitted === '' ? {} : { fitted }),
    ...(arm === null ? {} : { armMm: digits(mmFromMetres(arm)) }),
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
