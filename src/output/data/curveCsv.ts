import type { Design } from '../../design/design';
import { mmFromMetres } from '../../engine/units';
import type { HeadReading, ShareReading } from '../../state/reading';
import { conditionLines } from './conditionLines';
import { type Cell, csvFile } from './csv';

interface Column {
  readonly title: string;
  /** At a pitch in degrees; null or NaN where there is none. */
  at(pitchDeg: number): number | null;
}

const SIGNS = [
  'Moments are those of one grip, positive raising the leading edge; push-rod force positive in tension.',
  'Slider force is what the control puts on the slider along the shaft, all grips; servo torque what it holds.',
  'Friction is the half band: between moment - friction and moment + friction nothing moves.',
];

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
  const header = ['Pitch (deg)', ...columns.map(({ title }) => title)];
  return csvFile([...conditionLines(design), ...SIGNS], header, rows);
}

/** N m to N mm, J to mJ, m to mm: one factor. */
function milli(value: number | null): number | null {
  return value === null ? null : mmFromMetres(value);
}

function columnsOf(reading: HeadReading): Column[] {
  return [
    { title: 'Moment (N mm)', at: (pitch) => milli(reading.momentAt(pitch)) },
    ...sharesOf(reading).map(({ name, share }) => ({
      title: `Share of ${name} (N mm)`,
      at: (pitch: number) => milli(share.momentAt(pitch)),
    })),
    { title: 'Energy (mJ)', at: (pitch) => milli(reading.energyAt(pitch)) },
    { title: 'Push-rod force (N)', at: (pitch) => reading.forceAt(pitch) },
    { title: 'Friction (N mm)', at: (pitch) => milli(reading.friction.at(pitch)) },
    {
      title: 'Friction at the push rod (N)',
      at: (pitch) => {
        const force = reading.forceOf(reading.friction.at(pitch), pitch);
        return force === null ? null : Math.abs(force);
      },
    },
    { title: 'Slider travel (mm)', at: (pitch) => milli(reading.linkage?.travelAt(pitch) ?? null) },
    { title: 'Slider force (N)', at: (pitch) => reading.sliderAt(pitch) },
    {
      title: 'Servo torque (N mm)',
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
    name: term.id === 'air' ? 'the air' : 'the blade on its bolt',
    share: term,
  }));
  return [...parts, ...terms];
}
