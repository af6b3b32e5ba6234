import type { BladeGeometry, HoverSolution } from '../../engine/air/hover';

import { t } from '../../messages';
import { displayForce, displayMoment, fixed } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { displayPosition } from '../../state/shownUnits';

export const AIR_COLUMNS = ['thrust', 'torque', 'moment', 'angle', 'inflow'] as const;
export type AirColumn = (typeof AIR_COLUMNS)[number];
/** What can be plotted: a column along the span, or the section itself. */
export type AirView = AirColumn | 'section';

/** One column along the span in display units; NaN where a station has no solution. Forces and moments a millimetre of span. */
export function airColumn(
  column: AirColumn,
  solution: HoverSolution,
  units: DisplayUnits,
): { readonly values: Float64Array; readonly unit: string } {
  const force = displayForce(1, units);
  const moment = displayMoment(1, units);
  const known = (values: Float64Array, factor: number) =>
    values.map((value, i) => (solution.status[i] === 0 ? value * factor : Number.NaN));
  switch (column) {
    case 'thrust':
      return {
        values: known(solution.thrustPerLength, force.value / 1000),
        unit: `${force.unit}/mm`,
      };
    case 'torque':
      return {
        values: known(solution.torquePerLength, moment.value / 1000),
        unit: `${moment.unit}/mm`,
      };
    case 'moment':
      return {
        values: known(solution.momentPerLength, moment.value / 1000),
        unit: `${moment.unit}/mm`,
      };
    case 'angle':
      return { values: known(solution.angleOfAttack, 180 / Math.PI), unit: '\u00b0' };
    default:
      return { values: known(solution.inflowAngle, 180 / Math.PI), unit: '\u00b0' };
  }
}

/** Where the feathering axis lies on the chord at root and tip, in per cent from the leading edge. */
export function axisPlace({ chords, quarterChordY, twist }: BladeGeometry): string {
  // Along the chord, which the twist has turned out of y.
  const ahead = (i: number) => quarterChordY[i] / Math.cos(twist[i]);
  const share = (i: number) => fixed((100 * (chords[i] / 4 + ahead(i))) / chords[i], 0);
  return t('air.axisPlace', { root: share(0), tip: share(chords.length - 1) });
}

/** Stations without a solution and those outside a table's data, named; empty where there are none. */
export function unsolvedText(
  solution: HoverSolution,
  { stations }: BladeGeometry,
  units: DisplayUnits,
): string[] {
  const lines: string[] = [];
  const where = (flags: Uint8Array) =>
    [...stations]
      .filter((_, i) => flags[i] !== 0)
      .slice(0, 6)
      .map((station) => displayPosition(station, units))
      .join(', ');
  if (solution.unsolved > 0) {
    lines.push(
      t('air.unsolved', {
        count: solution.unsolved,
        at: where(solution.status),
        unit: units.length,
      }),
    );
  }
  if (solution.outsideStations > 0) {
    lines.push(
      t('air.outside', {
        count: solution.outsideStations,
        at: where(solution.outside),
        unit: units.length,
      }),
    );
  }
  return lines;
}
