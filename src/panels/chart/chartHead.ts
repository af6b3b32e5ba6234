import { type ClosedSpan, closedSpans } from '../../state/closedSpans';
import type { HeadReading } from '../../state/reading';
import { type PitchMark, pitchMarks } from '../../state/words/pitchMarks';
import { type PlottedQuantity, plottedValue } from './quantity';

/**
 * What of the head stands in the chart beside the curves, as it was when the curves were worked out: in a drag they are drawn in
 * a later picture, and the head has gone on.
 */
export interface ChartHead {
  readonly usedPitchDeg: number;
  readonly closed: readonly ClosedSpan[];
  readonly overCentreDeg: readonly number[];
  /** Where friction holds the grip. */
  readonly heldDeg: HeadReading['bandsDeg'];
  readonly marks: readonly ChartMark[];
}

/** A rest or flee angle with its height in the plot, display units. */
export interface ChartMark extends PitchMark {
  readonly value: number;
}

export function chartHead(reading: HeadReading, quantity: PlottedQuantity): ChartHead {
  // Nothing acts there: only an energy is not zero.
  const heightOf = (pitchDeg: number) =>
    quantity.kind === 'energy' ? (plottedValue(reading, quantity, pitchDeg) ?? 0) : 0;
  return {
    usedPitchDeg: reading.usedPitchDeg,
    closed: closedSpans(reading.linkage),
    overCentreDeg: reading.overCentreDeg,
    heldDeg: reading.bandsDeg,
    marks: pitchMarks(reading).map((mark) => ({ ...mark, value: heightOf(mark.pitchDeg) })),
  };
}
