import { t } from '../../messages';
import { displayEnergy } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { DisplayUnits } from '../../state/settings';
import { pitchMarks } from '../../state/words/pitchMarks';
import { signedDegrees } from '../../state/words/pitchText';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { drivenSpan } from './hillsScale';

/** Energy against pitch over what can be driven, and where friction holds the grip. */
export function hillsData(reading: HeadReading, units: DisplayUnits): PlotData {
  const [low, high] = drivenSpan(reading);
  const { pitchDeg, energy } = reading.curve;
  const inside = Array.from(pitchDeg.keys()).filter(
    (i) => pitchDeg[i] >= low && pitchDeg[i] <= high,
  );
  const x = inside.map((i) => pitchDeg[i]);
  const values = inside.map((i) => displayEnergy(energy[i], units).value);
  const holds = (deg: number) => reading.bandsDeg.some(([from, to]) => from <= deg && deg <= to);
  const held = values.map((value, k) => (holds(x[k]) ? value : Number.NaN));
  return {
    x,
    lines: [
      { name: t('letGo.energy'), look: 'total', values },
      ...(held.every(Number.isNaN)
        ? []
        : [{ name: t('letGo.key.holds'), look: '3', values: held }]),
    ],
    xTitle: t('letGo.pitchAxis'),
    yTitle: t('letGo.hills', { unit: displayEnergy(1, units).unit }),
    marks: pitchMarks(reading)
      .filter((mark) => mark.pitchDeg >= low && mark.pitchDeg <= high)
      .map((mark) => ({
        x: mark.pitchDeg,
        text: `${t(mark.kind === 'stable' ? 'letGo.key.rests' : 'letGo.key.flees')} ${signedDegrees(mark.pitchDeg)}`,
      })),
  };
}
