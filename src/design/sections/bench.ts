import type { NumberLimits } from '../limits';

/**
 * What the measuring bench keeps in a design: the runs as they came, the gauge and the scale's calibration. Held as typed,
 * units in the keys; nothing of it enters the model of the head.
 */
export interface BenchRecord {
  /** Where the gauge pulls; left out: in the push rod. */
  readonly place?: BenchPlace;
  /** Of a gauge at the slider: the way along Z that its pull moves the slider; left out: +1. */
  readonly pullsAlong?: 1 | -1;
  readonly gaugeStepN?: number;
  readonly gaugeLimitN?: number;
  /** Standard deviation of a reading beside the step; left out: learnt from the readings. */
  readonly gaugeNoiseN?: number;
  readonly calibration?: BenchCalibration;
  readonly runs?: readonly BenchRunRecord[];
}

export interface BenchCalibration {
  readonly kind: 'line' | 'linkage';
  readonly scaleUnit: 'mm' | 'div';
  /** Scale readings and the pitch that an angle gauge showed there. */
  readonly pairs: readonly { readonly scale: number; readonly pitchDeg: number }[];
}

/** One run: a table that was read, or rows typed by hand; never both. */
export interface BenchRunRecord {
  readonly id: string;
  readonly name: string;
  readonly speedRpm?: number;
  readonly fitted?: string;
  readonly parts?: readonly string[];
  readonly armMm?: number;
  readonly gauge?: string;
  readonly gaugeStepN?: number;
  readonly date?: string;
  readonly note?: string;
  readonly table?: BenchTableRecord;
  readonly rows?: readonly BenchRowRecord[];
  /** Readings, counted from 0, that were set aside: kept, shown, not counted. */
  readonly setAside?: readonly number[];
}

export interface BenchTableRecord {
  readonly encoding: string;
  /** Every character as it came. */
  readonly text: string;
  readonly delimiter?: (typeof BENCH_DELIMITERS)[number];
  readonly decimal?: '.' | ',';
  readonly columns: readonly BenchColumnRecord[];
}

export interface BenchColumnRecord {
  readonly role: (typeof BENCH_ROLES)[number];
  readonly unit: string | null;
  readonly flipped: boolean;
  readonly travel: (typeof BENCH_TRAVELS)[number] | null;
}

export interface BenchRowRecord {
  readonly pitchDeg?: number;
  readonly scaleMm?: number;
  readonly forceN: number;
  readonly travel?: (typeof BENCH_TRAVELS)[number];
  readonly note?: string;
}

export const BENCH_PLACES = ['rod', 'slider', 'arm'] as const;
type BenchPlace = (typeof BENCH_PLACES)[number];
export const BENCH_TRAVELS = ['push', 'pull', 'up', 'down', 'held'] as const;
export const BENCH_DELIMITERS = [',', ';', '\t', '|', 'spaces'] as const;
export const BENCH_ROLES = [
  'pitch',
  'scale',
  'force',
  'moment',
  'sense',
  'travel',
  'speed',
  'time',
  'unit',
  'run',
  'note',
  'ignore',
] as const;

export const MAX_BENCH_RUNS = 200;
export const MAX_BENCH_ROWS = 10_000;
export const MAX_BENCH_COLUMNS = 200;
export const MAX_BENCH_PAIRS = 200;
export const MAX_BENCH_UNIT = 16;
/** Characters of all tables of a design together as a file has them, line ends and quotes escaped. */
export const MAX_BENCH_TEXT = 16_000_000;

export const BENCH_NUMBER_LIMITS = {
  gaugeStepN: { min: 0, max: 100_000, unit: 'N' },
  gaugeLimitN: { min: 0.001, max: 1_000_000, unit: 'N' },
  gaugeNoiseN: { min: 0, max: 100_000, unit: 'N' },
} as const satisfies Readonly<Record<string, NumberLimits>>;
export const BENCH_RUN_LIMITS = {
  speedRpm: { min: 0, max: 1_000_000, unit: 'rpm' },
  armMm: { min: 0.01, max: 10_000, unit: 'mm' },
  gaugeStepN: BENCH_NUMBER_LIMITS.gaugeStepN,
} as const satisfies Readonly<Record<string, NumberLimits>>;
export const BENCH_ROW_LIMITS = {
  pitchDeg: { min: -180, max: 180, unit: 'deg' },
  scaleMm: { min: -10_000, max: 10_000, unit: 'mm' },
  forceN: { min: -1_000_000, max: 1_000_000, unit: 'N' },
} as const satisfies Readonly<Record<string, NumberLimits>>;
export const BENCH_PAIR_LIMITS = {
  scale: { min: -1_000_000, max: 1_000_000, unit: '1' },
  pitchDeg: BENCH_ROW_LIMITS.pitchDeg,
} as const satisfies Readonly<Record<string, NumberLimits>>;
