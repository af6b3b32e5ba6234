import { t } from '../../messages';
import { displayForce, displayMoment, fixed, signedQuantity, significant } from '../quantities';
import type { HeadReading, LinkageReading } from '../reading';
import type { DisplayUnits } from '../settings';

/** A pitch with its sign, "+12.0\u00b0"; zero has none. */
export function signedDegrees(pitchDeg: number, decimals = 1): string {
  const text = fixed(pitchDeg, decimals);
  return `${Number(pitchDeg.toFixed(decimals)) > 0 ? '+' : ''}${text}\u00b0`;
}

/** A number with its sign in front, three significant digits; zero has none. */
export function signed(value: number, digits = 3): string {
  return `${value > 0 ? '+' : ''}${significant(value, digits)}`;
}

/** The push rod at a pitch: "+5.10 N tension"; without an arm the moment; over centre and out of reach the fact. */
export function shownLoad(reading: HeadReading, pitchDeg: number, units: DisplayUnits): string {
  if (!reading.linkage) {
    const moment = displayMoment(reading.momentAt(pitchDeg), units);
    return signedQuantity(moment);
  }
  const force = reading.forceAt(pitchDeg);
  if (force === null) return t(`chart.${whyNoForce(reading.linkage, pitchDeg)}`);
  return shownForce(force, units);
}

/** Why the push rod of an arm has no force at a pitch. */
function whyNoForce({ unreachableDeg }: LinkageReading, pitchDeg: number) {
  const beyond = unreachableDeg.some(([from, to]) => pitchDeg >= from && pitchDeg <= to);
  return beyond ? 'unreachable' : 'overCentre';
}

/** "+5.10 N tension", a push-rod force with its sign in words. */
export function shownForce(force: number, units: DisplayUnits): string {
  return t(forceKey(force), { force: signedQuantity(displayForce(force, units)) });
}

function forceKey(force: number) {
  if (force === 0) return 'chart.readNone' as const;
  return force > 0 ? ('chart.readTension' as const) : ('chart.readCompression' as const);
}

/** The same for the ear: "12.0 degrees, push-rod force 5.10 newtons, tension". */
export function spokenPitch(reading: HeadReading, pitchDeg: number, units: DisplayUnits): string {
  const degrees = fixed(pitchDeg, 1).replace('\u2212', '-');
  if (!reading.linkage) {
    const moment = displayMoment(reading.momentAt(pitchDeg), units).value;
    const unit = t(units.moment === 'N mm' ? 'chart.spokenNmm' : 'chart.spokenOzfIn');
    const way = t(
      moment > 0 ? 'chart.spokenUp' : moment < 0 ? 'chart.spokenDown' : 'chart.spokenStill',
    );
    return t('chart.spokenMoment', { degrees, size: significant(Math.abs(moment)), unit, way });
  }
  const force = reading.forceAt(pitchDeg);
  if (force === null) {
    const beyond = whyNoForce(reading.linkage, pitchDeg) === 'unreachable';
    return t(beyond ? 'chart.spokenUnreachable' : 'chart.spokenOverCentre', { degrees });
  }
  const unit = t(units.force === 'N' ? 'chart.spokenN' : 'chart.spokenOzf');
  const way = t(
    force > 0 ? 'chart.tension' : force < 0 ? 'chart.compression' : 'chart.spokenStill',
  );
  const size = significant(Math.abs(displayForce(force, units).value));
  return t('chart.spokenForce', { degrees, size, unit, way });
}
