import type { Design } from '../../design/design';
import { mmFromMetres } from '../../engine/units';
import { t } from '../../messages';
import type { HeadReading, ShareReading } from '../../state/reading';
import { conditionLines } from './conditionLines';
import { type Cell, csvFile } from './csv';

interface Column {
  readonly title: string;
  /** At a pitch in degrees; null or NaN where there is none. */
  at(pitchDeg: number): number | null;
}

const SIGNS = ['csv.signsMoment', 'csv.signsSlider', 'csv.signsFriction'] as const;

/**
 * Everything that the chart can draw against pitch, from -90 to 90 degrees in steps of `stepDeg` (a divisor of 90), as
 * text: moment of one grip and each share of it, force, friction, slider, servo. Empty over centre and out of reach.
 */
export function curveCsv(reading: HeadReading, design: Design, stepDeg = 1): string {
  const columns = columnsOf(reading);
  const count = Math.round(90 / stepDeg);
  const rows = Array.from({ length: 2 * count + 1 }, (_, i): Cell[] => {
    const pitchDeg = (i - count) * stepDeg;
    return [pitchDeg, ...columns.map((column) => column.at(pitchDeg))];
  });
  const header = [t('csv.pitch'), ...columns.map(({ title }) => title)];
  return csvFile([...conditionLines(design), ...SIGNS.map((key) => t(key))], header, rows);
}

/** N m to N mm, J to mJ, m to mm: one factor. */
function milli(value: number | null): number | null {
  return value === null ? null : mmFromMetres(value);
}

function columnsOf(reading: HeadReading): Column[] {
  return [
    { title: t('csv.moment'), at: (pitch) => milli(reading.momentAt(pitch)) },
    ...sharesOf(reading).map(({ name, share }) => ({
      title: t('csv.share', { name }),
      at: (pitch: number) => milli(share.momentAt(pitch)),
    })),
    { title: t('csv.energy'), at: (pitch) => milli(reading.energyAt(pitch)) },
    { title: t('csv.force'), at: (pitch) => reading.forceAt(pitch) },
    { title: t('csv.friction'), at: (pitch) => milli(reading.friction.at(pitch)) },
    {
      title: t('csv.frictionForce'),
      at: (pitch) => {
        const force = reading.forceOf(reading.friction.at(pitch), pitch);
        return force === null ? null : Math.abs(force);
      },
    },
    { title: t('csv.travel'), at: (pitch) => milli(reading.linkage?.travelAt(pitch) ?? null) },
    { title: t('csv.slider'), at: (pitch) => reading.sliderAt(pitch) },
    {
      title: t('csv.servo'),
      at: (pitch) => {
        const servo = reading.servoAt(pitch);
        return servo.kind === 'holds' ? milli(servo.torque) : null;
      },
    },
  ];
}

/** Visible parts that turn or hang on the linkage, then air and lag where they are counted. */
function sharesOf(reading: HeadReading): { name: string; share: ShareReading }[] {
  const parts = reading.order.flatMap((id) => {
    const part = reading.part(id);
    const counts = part && !part.part.hidden && ['grip', 'rod'].includes(part.carriedBy);
    return counts ? [{ name: part.part.name, share: part }] : [];
  });
  const terms = reading.terms.map((term) => ({
    name: t(term.id === 'air' ? 'csv.shareAir' : 'csv.shareLag'),
    share: term,
  }));
  return [...parts, ...terms];
}
