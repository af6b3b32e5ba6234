import { t } from '../../messages';
import { closedSpans, flatOutOfReach } from '../../state/closedSpans';
import { displayForce, show } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { DisplayUnits } from '../../state/settings';
import { pitchMarks } from '../../state/words/pitchMarks';
import { signedDegrees } from '../../state/words/pitchText';

/** The chart in sentences, for who cannot see it. `laidOver`: names of the try-outs whose curves are laid over. */
export function chartSummary(
  reading: HeadReading,
  units: DisplayUnits,
  laidOver: readonly string[] = [],
): string {
  const parts: string[] = [];
  const used = reading.usedPitchDeg;
  const still = reading.rotor.angularSpeed === 0;
  if (still) parts.push(t('dial.standsStill'));
  for (const pitch of still ? [] : [-used, 0, used]) {
    const force = reading.forceAt(pitch);
    if (force === null) continue;
    const way = force > 0 ? 'chart.tension' : 'chart.compression';
    const size = show(displayForce(Math.abs(force), units));
    parts.push(t('chart.summaryForce', { angle: signedDegrees(pitch), force: size, way: t(way) }));
  }
  const marks = pitchMarks(reading);
  for (const mark of marks) {
    const key = `chart.summary.${mark.kind}` as const;
    parts.push(t(key, { angle: signedDegrees(mark.pitchDeg) }));
  }
  if (reading.equilibria.kind === 'neutral' && !still) parts.push(t('chart.summaryNeutral'));
  if (flatOutOfReach(reading.linkage)) parts.push(t('verdict.noReach'));
  else {
    for (const { why, edgeDeg } of closedSpans(reading.linkage)) {
      parts.push(t(`chart.summary.${why}`, { angle: signedDegrees(edgeDeg) }));
    }
  }
  for (const [from, to] of reading.bandsDeg) {
    parts.push(t('chart.summaryHeld', { from: signedDegrees(from), to: signedDegrees(to) }));
  }
  if (laidOver.length > 0) parts.push(t('tryOuts.summary', { names: laidOver.join(', ') }));
  return parts.join(' ');
}
