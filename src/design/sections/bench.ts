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
  /** How the readings are fitted; left out: as the bench does where nothing is chosen. */
  readonly fit?: BenchFitRecord;
  readonly plan?: BenchPlanRecord;
  readonly runs?: readonly BenchRunRecord[];
}

/** How the runs are planned; what is left out is as the design makes it usual. */
export interface BenchPlanRecord {
  readonly pitchesDeg?: readonly number[];
  readonly speedsRpm?: readonly number[];
  /** Ways of travel in which every pitch is read. */
  readonly senses?: readonly BenchSense[];
  /** Steps of the build ladder that are not made. */
  readonly leftOut?: readonly BenchRung[];
  readonly settleSeconds?: number;
  /** Steps of the safety sheet that are ticked, and the day on which the last was. */
  readonly ticked?: readonly string[];
  readonly tickedOn?: string;
}

/** A pitch step that the person named in a log which has no pitch of its own: samples `from` up to before `to`. */
export interface BenchStepRecord {
  readonly from: number;
  readonly to: number;
  readonly pitchDeg: number;
  readonly travel?: (typeof BENCH_TRAVELS)[number];
}

export interface BenchFitRecord {
  readonly friction: (typeof BENCH_FRICTIONS)[number];
  readonly zeros: (typeof BENCH_ZEROS)[number];
  /** The modelled air: taken off, fitted by a factor, left in the readings. */
  readonly air: (typeof BENCH_AIRS)[number];
  /** Standard uncertainty of a pitch setting. */
  readonly pitchSigmaDeg: number;
  /** Of what all runs have alike, left out: as is usual. Gauge, arm or linkage, tachometer, zero of the pitch scale. */
  readonly gainPercent?: number;
  readonly leverPercent?: number;
  readonly speedPercent?: number;
  readonly pitchZeroDeg?: number;
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
  /** Pitch steps of a log of time and force alone. */
  readonly steps?: readonly BenchStepRecord[];
  /** Readings, counted from 0, that were set aside: kept, shown, not counted. */
  readonly setAside?: readonly number[];
  /** The whole run was left out of the fit: kept, shown, not counted. */
  readonly uncounted?: boolean;
  /** Id of the try-out whose head was measured; left out: the head that is on the stage. */
  readonly tryOut?: string;
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
export const BENCH_SENSES = ['pull', 'push', 'held'] as const;
export type BenchSense = (typeof BENCH_SENSES)[number];
export const BENCH_RUNGS = ['drag', 'bare', 'bolt', 'ordinary', 'asDesigned'] as const;
type BenchRung = (typeof BENCH_RUNGS)[number];
export const BENCH_FRICTIONS = ['none', 'force', 'moment', 'pull'] as const;
export const BENCH_ZEROS = ['none', 'free'] as const;
export const BENCH_AIRS = ['known', 'fitted', 'left'] as const;
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
export const MAX_BENCH_STEPS = 1000;
export const MAX_PLAN_PITCHES = 200;
export const MAX_PLAN_SPEEDS = 20;
/** Ticks of the safety sheet: more than it has steps. */
export const MAX_PLAN_TICKS = 50;
export const MAX_BENCH_UNIT = 16;
/** Characters of all tables of a design together as a file has them, line ends and quotes escaped. */
export const MAX_BENCH_TEXT = 16_000_000;

export const BENCH_NUMBER_LIMITS = {
  gaugeStepN: { min: 0, max: 100_000, unit: 'N' },
  gaugeLimitN: { min: 0.001, max: 1_000_000, unit: 'N' },
  gaugeNoiseN: { min: 0, max: 100_000, unit: 'N' },
} as const satisfies Readonly<Record<string, NumberLimits>>;
export const BENCH_SHARED_LIMITS = {
  gainPercent: { min: 0, max: 20, unit: '1' },
  leverPercent: { min: 0, max: 20, unit: '1' },
  speedPercent: { min: 0, max: 20, unit: '1' },
  pitchZeroDeg: { min: 0, max: 10, unit: 'deg' },
} as const satisfies Readonly<Record<string, NumberLimits>>;
export const BENCH_FIT_LIMITS = {
  pitchSigmaDeg: { min: 0, max: 10, unit: 'deg' },
  ...BENCH_SHARED_LIMITS,
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
export const BENCH_PLAN_LIMITS = {
  pitchDeg: { min: -90, max: 90, unit: 'deg' },
  speedRpm: { min: 1, max: 1_000_000, unit: 'rpm' },
  settleSeconds: { min: 0, max: 3600, unit: 's' },
} as const satisfies Readonly<Record<string, NumberLimits>>;
export const BENCH_STEP_LIMITS = {
  from: { min: 0, max: 10_000_000, unit: '1', whole: true },
  to: { min: 1, max: 10_000_000, unit: '1', whole: true },
  pitchDeg: BENCH_ROW_LIMITS.pitchDeg,
} as const satisfies Readonly<Record<string, NumberLimits>>;
