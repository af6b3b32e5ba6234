import type { LanguageCode } from '../messages/languages';

/** Choices about display; they change no number of the design. Kept in the browser, not in the design file. */
export interface DisplayUnits {
  readonly length: 'mm' | 'in';
  readonly mass: 'g' | 'oz';
  readonly force: 'N' | 'ozf';
  readonly moment: 'N mm' | 'ozf in';
}

export const METRIC_UNITS: DisplayUnits = { length: 'mm', mass: 'g', force: 'N', moment: 'N mm' };
export const INCH_UNITS: DisplayUnits = {
  length: 'in',
  mass: 'oz',
  force: 'ozf',
  moment: 'ozf in',
};
/** Millimetres and grams with ounces-force: common on benches with an ounce gauge. */
export const MIXED_UNITS: DisplayUnits = {
  length: 'mm',
  mass: 'g',
  force: 'ozf',
  moment: 'ozf in',
};

export const LAYERS = [
  'pull',
  'ellipse',
  'axes',
  'ghosts',
  'fan',
  'plane',
  'centre',
  'bearings',
  'clearance',
] as const;
export type Layer = (typeof LAYERS)[number];

export const CHART_QUANTITIES = ['force', 'slider', 'servo', 'moment', 'energy'] as const;
export type ChartQuantity = (typeof CHART_QUANTITIES)[number];

/** What lies under the stage. */
export const LOWER_ROOMS = ['pitch', 'speed', 'air', 'loads', 'balance'] as const;
export type LowerRoomName = (typeof LOWER_ROOMS)[number];

/** What the page is for at the moment: building the head, finding what cancels, making it, measuring, learning. */
export const ROOMS = ['head', 'neutralise', 'make', 'bench', 'learn'] as const;
export type RoomName = (typeof ROOMS)[number];

/** What lies under the stage in the room Neutralise. */
export const NEUTRALISE_VIEWS = [
  'pitch',
  'answers',
  'family',
  'closely',
  'clearance',
  'tryOuts',
] as const;
export type NeutraliseView = (typeof NEUTRALISE_VIEWS)[number];

/** What lies under the stage in the room Make. */
export const MAKE_VIEWS = ['drawing', 'report', 'files'] as const;
export type MakeView = (typeof MAKE_VIEWS)[number];

/** What lies under the stage in the room Bench. */
export const BENCH_VIEWS = ['benchPlan', 'readings', 'fit', 'correct', 'practice'] as const;
export type BenchView = (typeof BENCH_VIEWS)[number];

/** What lies under the stage in the room Learn. */
export const LEARN_VIEWS = ['pitch', 'letGo', 'pulls', 'racket', 'words'] as const;
export type LearnView = (typeof LEARN_VIEWS)[number];

export interface Settings {
  readonly units: DisplayUnits;
  /** Of all text and numbers; 'system': the browser's, as far as the page speaks it. */
  readonly language: LanguageCode | 'system';
  readonly theme: 'system' | 'light' | 'dark';
  readonly layers: Readonly<Record<Layer, boolean>>;
  /** Keys of a single letter, sign or digit work; off for who dictates or shakes (WCAG 2.2, 2.1.4). */
  readonly letterKeys: boolean;
  readonly chartQuantity: ChartQuantity;
  readonly chartShares: boolean;
  /** The bench's readings lie over the chart. */
  readonly chartBench: boolean;
  readonly lowerRoom: LowerRoomName;
  readonly room: RoomName;
  readonly neutraliseView: NeutraliseView;
  readonly makeView: MakeView;
  readonly benchView: BenchView;
  readonly learnView: LearnView;
}

export const DEFAULT_SETTINGS: Settings = {
  units: METRIC_UNITS,
  language: 'system',
  theme: 'system',
  layers: {
    pull: true,
    ellipse: true,
    axes: false,
    ghosts: true,
    fan: true,
    plane: true,
    centre: false,
    bearings: false,
    clearance: true,
  },
  letterKeys: true,
  chartQuantity: 'force',
  chartShares: true,
  chartBench: true,
  lowerRoom: 'pitch',
  room: 'head',
  neutraliseView: 'answers',
  makeView: 'drawing',
  benchView: 'benchPlan',
  learnView: 'pitch',
};
