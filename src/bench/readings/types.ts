import type { BENCH_DELIMITERS, BENCH_ROLES, BENCH_TRAVELS } from '../../design/sections/bench';
import type { Radians } from '../../engine/units';
import type { UnitName } from './unitNames';

/** What a column holds. A `force` is that at the push rod or wherever the gauge pulled; `run` names the run of a row. */
export type ColumnRole = (typeof BENCH_ROLES)[number];

/**
 * How the control was moved when the reading was taken. `push` and `pull` name what the hand did at the gauge, `up` and
 * `down` which way the pitch went; which is which depends on the linkage and is not decided here.
 */
export type Travel = (typeof BENCH_TRAVELS)[number];

export interface ColumnMapping {
  readonly role: ColumnRole;
  /** Null where the role has none, or where nothing says which. */
  readonly unit: UnitName | null;
  /**
   * The column's positive numbers are this program's negative ones: compression for a force, lowering the leading edge
   * for a moment or a pitch.
   */
  readonly flipped: boolean;
  /** A force or moment column that holds readings of one way of travel only ("push" and "pull" side by side). */
  readonly travel: Travel | null;
}

/** One entry for each column of the table, in its order. */
export type ReadingsMapping = readonly ColumnMapping[];

export type Delimiter = (typeof BENCH_DELIMITERS)[number];
export type DecimalSign = '.' | ',';

/** What a person may say about a table that otherwise is found out. */
export interface ReadOptions {
  readonly delimiter?: Delimiter;
  readonly decimal?: DecimalSign;
}

/** One reading in SI units and the program's signs; null where the table has no such column or an empty cell. */
export interface Reading {
  /** Row of the table that it came from, from 1. */
  readonly row: number;
  /** Column of its force or moment, from 0: a row may hold several readings. */
  readonly column: number;
  readonly pitch: Radians | null;
  /** Metres, or plain divisions where the scale has no length unit. */
  readonly scale: number | null;
  /** Newtons, tension positive. */
  readonly force: number | null;
  /** Newton metres, raising the leading edge positive. */
  readonly moment: number | null;
  readonly travel: Travel | null;
  /** Radians per second. */
  readonly speed: number | null;
  /** Seconds: as given; of a clock time since midnight; of a date with time since 1970 as if that clock were UTC. */
  readonly time: number | null;
  readonly run: string;
  readonly note: string;
}

/** What is known of a run beside its rows. All numbers SI, all texts as written; null where nothing says. */
export interface RunMetadata {
  /** Radians per second. */
  readonly speed: number | null;
  /** What was fitted, in words. */
  readonly fitted: string;
  /** Arm at which the gauge pulled, metres. */
  readonly arm: number | null;
  readonly gauge: string;
  /** Step of the gauge's display, newtons. */
  readonly gaugeStep: number | null;
  readonly date: string;
  readonly note: string;
}

/**
 * A table as it was taken: the text is never altered, and text, options and mapping give the readings again. `metadata`
 * is what the person set or corrected.
 */
export interface StoredReadings {
  readonly name: string;
  readonly encoding: string;
  readonly text: string;
  readonly options: ReadOptions;
  readonly mapping: ReadingsMapping;
  readonly metadata: RunMetadata;
}
