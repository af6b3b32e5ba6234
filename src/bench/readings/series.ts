import type { Reading } from './types';

/** Readings as columns, for what finds pitch steps in a time series. NaN where a reading has no such value. */
export interface ReadingColumns {
  readonly row: Int32Array;
  /** Seconds. */
  readonly time: Float64Array;
  /** Radians. */
  readonly pitch: Float64Array;
  /** Metres or divisions. */
  readonly scale: Float64Array;
  /** Newtons, tension positive. */
  readonly force: Float64Array;
  /** Newton metres. */
  readonly moment: Float64Array;
  /** Radians per second. */
  readonly speed: Float64Array;
}

export function columnsOf(readings: readonly Reading[]): ReadingColumns {
  function column(key: 'time' | 'pitch' | 'scale' | 'force' | 'moment' | 'speed'): Float64Array {
    return Float64Array.from(readings, (reading) => reading[key] ?? Number.NaN);
  }
  return {
    row: Int32Array.from(readings, ({ row }) => row),
    time: column('time'),
    pitch: column('pitch'),
    scale: column('scale'),
    force: column('force'),
    moment: column('moment'),
    speed: column('speed'),
  };
}

/** Whether readings are a log rather than a sheet filled by hand: all with a time that does not step back. */
export function isTimeSeries(readings: readonly Reading[]): boolean {
  return (
    readings.length >= 10 &&
    readings.every(({ time }, k) => {
      const before = readings[k - 1]?.time ?? Number.NEGATIVE_INFINITY;
      return time !== null && time >= before;
    })
  );
}
