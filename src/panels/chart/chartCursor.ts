import { t } from '../../messages';
import { significant } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { DisplayUnits } from '../../state/settings';
import { shownLoad, signed, signedDegrees, spokenPitch } from '../../state/words/pitchText';
import { type PlottedQuantity, plottedFriction, plottedValue } from './quantity';

/** The pitch pointer, and what is said of it. */
export interface ChartCursor {
  readonly pitchDeg: number;
  /** In the plotted quantity; null: no force here. */
  readonly value: number | null;
  readonly text: string;
  readonly spoken: string;
}

export function chartCursor(
  reading: HeadReading,
  quantity: PlottedQuantity,
  pitchDeg: number,
  units: DisplayUnits,
): ChartCursor {
  const value = plottedValue(reading, quantity, pitchDeg);
  const load = loadText(reading, quantity, value, pitchDeg, units);
  const friction = plottedFriction(reading, quantity, pitchDeg);
  const said =
    friction === null || value === null
      ? load
      : t('chart.readFriction', { load, friction: significant(friction, 2) });
  return {
    pitchDeg,
    value,
    text: `${signedDegrees(pitchDeg)}  ${said}`,
    spoken: spokenPitch(reading, pitchDeg, units),
  };
}

function loadText(
  reading: HeadReading,
  quantity: PlottedQuantity,
  value: number | null,
  pitchDeg: number,
  units: DisplayUnits,
): string {
  if (quantity.kind === 'force') return shownLoad(reading, pitchDeg, units);
  if (value === null) return t('chart.unreachable');
  return `${signed(value)}\u00a0${quantity.unit}`;
}
