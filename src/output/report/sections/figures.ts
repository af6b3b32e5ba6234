import { variantOutlook } from '../../../design/variantOutlook';
import { displayForce, displayMoment, type Quantity, show } from '../../../state/quantities';
import type { HeadReading } from '../../../state/reading';
import type { DisplayUnits } from '../../../state/settings';
import { signedDegrees } from '../../../state/words/pitchText';
import { type ChartBefore, chartFigure } from '../figures/chartFigure';
import { SET_SHARES } from '../figures/chartNumbers';
import { dialFigure } from '../figures/dialFigure';
import type { ReportInputs } from '../inputs';
import { type Block, type FigureItem, type TableBlock, type TableColumn, words } from '../model';
import { t } from '../roomText';
import { comparedPair } from './comparedPair';

/** Where there is no value. */
const NONE = '\u2013';

/** The stage where there is a picture of it, the dial and the chart, and the numbers at the set pitches. */
export function figureBlocks(inputs: ReportInputs): Block[] {
  const { reading, units, pitchDeg, picture } = inputs;
  if (reading.order.length === 0) return [words(t('report.noParts'))];
  const dial: FigureItem = {
    kind: 'drawn',
    caption: t('report.dial', { pitch: signedDegrees(pitchDeg) }),
    figure: dialFigure(reading, pitchDeg),
  };
  const chart: FigureItem = {
    kind: 'drawn',
    caption: t(reading.linkage ? 'report.chart' : 'report.chartMoment'),
    figure: chartFigure(reading, units, beforeOf(inputs)),
  };
  const table = setPitchTable(reading, units);
  const gaps = table.rows.some((row) => row.includes(NONE));
  return [
    picture
      ? {
          kind: 'beside',
          figure: { kind: 'picture', caption: t('report.picture'), picture },
          table,
        }
      : table,
    ...(gaps ? [words(t('report.setGap'))] : []),
    { kind: 'figures', figures: [dial, chart] },
    words(`${t('report.dialKey')} ${t('report.signs')}`, 'quiet'),
  ];
}

/** The curve of the head as it was, where a try-out says what that was. */
function beforeOf({ design, reading }: ReportInputs): ChartBefore | null {
  const pair = comparedPair(design);
  if (!pair || pair.after.parts !== undefined) return null;
  const outlook = variantOutlook(design, pair.beforeParts, reading.curve.pitchDeg);
  return outlook.ok ? { name: pair.before.name, curve: outlook.value.curve } : null;
}

/** What a gauge would show, at flat pitch, half way and at the ends of the pitch in use. Every cell has its unit. */
export function setPitchTable(reading: HeadReading, units: DisplayUnits): TableBlock {
  const { linkage, friction, usedPitchDeg } = reading;
  // The pitch is short; a moment has the longest unit.
  const column = (title: string, at: number): TableColumn => ({
    title,
    align: 'right',
    share: at === 0 ? 0.6 : 1,
  });
  const cells: { readonly title: string; of(pitch: number): string }[] = [
    {
      title: t('report.setPitch'),
      of: (pitch) => signedDegrees(pitch, Number.isInteger(pitch) ? 0 : 1),
    },
    {
      title: t('report.setMoment'),
      of: (pitch) => signedText(displayMoment(reading.momentAt(pitch), units)),
    },
  ];
  const force = (value: number | null) =>
    value === null || Number.isNaN(value) ? NONE : signedText(displayForce(value, units));
  if (linkage) {
    cells.push({ title: t('report.setForce'), of: (pitch) => force(reading.forceAt(pitch)) });
  }
  if (friction.counted && friction.known) {
    cells.push({
      title: t('report.setFriction'),
      of: (pitch) => {
        const moment = friction.at(pitch);
        const held = reading.forceOf(moment, pitch);
        return held === null
          ? show(displayMoment(moment, units))
          : show(displayForce(Math.abs(held), units));
      },
    });
  }
  if (linkage) {
    cells.push({ title: t('report.setSlider'), of: (pitch) => force(reading.sliderAt(pitch)) });
  }
  if (linkage?.hasServo) {
    cells.push({
      title: t('report.setServo'),
      of: (pitch) => {
        const servo = reading.servoAt(pitch);
        return servo.kind === 'holds' ? signedText(displayMoment(servo.torque, units)) : NONE;
      },
    });
  }
  return {
    kind: 'table',
    caption: t('report.setTable'),
    columns: cells.map(({ title }, at) => column(title, at)),
    rows: SET_SHARES.map((share) => cells.map((cell) => cell.of(share * usedPitchDeg + 0))),
  };
}

function signedText(quantity: Quantity): string {
  return `${quantity.value > 0 ? '+' : ''}${show(quantity)}`;
}
