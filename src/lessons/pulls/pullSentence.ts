import { length } from '../../engine/math/vector';
import { t } from '../../messages';
import { type PullEntry, pullTally, runningSums } from '../../state/pullTally';
import { displayForce, show } from '../../state/quantities';
import type { Session } from '../../state/session';
import type { DisplayUnits } from '../../state/settings';
import { displayPosition } from '../../state/shownUnits';
import { shownForce } from '../../state/words/pitchText';
import { entryMoment, entryName, turnWords } from '../../state/words/pullText';

/** Nearer to the feathering axis than this a lump is on it, m. */
const ON_AXIS = 1e-8;

/** The newest step in words, and what all that stand come to. */
export function pullSentence({ live, store, pullsShow }: Session): string {
  const { grain, progress, speedRpm } = pullsShow.shown;
  const { pitchDeg, settings } = store.getState();
  const { entries, total } = pullTally(live.reading, pitchDeg, grain, speedRpm);
  const added = Math.min(entries.length, Math.ceil(progress));
  if (entries.length === 0) return t('pulls.empty');
  if (added === 0) return t('pulls.say.none');
  const { units } = settings;
  const newest = entryWords(entries[added - 1], pitchDeg, units);
  if (added < entries.length) {
    const sum = runningSums(entries)[added];
    const values = { sum: entryMoment(sum, units), way: turnWords(sum, pitchDeg) };
    return `${newest} ${t('pulls.say.sum', values)}`;
  }
  const force = live.reading.forceOf(total, pitchDeg);
  const rod = force === null ? '' : t('pulls.say.endRod', { force: shownForce(force, units) });
  const values = { sum: entryMoment(total, units), way: turnWords(total, pitchDeg), rod };
  return `${newest} ${t('pulls.say.end', values)}`;
}

function entryWords(entry: PullEntry, pitchDeg: number, units: DisplayUnits): string {
  const name = entryName(entry);
  const moment = entryMoment(entry.moment, units);
  const way = turnWords(entry.moment, pitchDeg);
  if (entry.pulls.length === 0) return t('pulls.say.noArrow', { name, moment, way });
  const pull = show(displayForce(length(entry.force), units));
  if (entry.pulls.length > 1) {
    return t('pulls.say.halves', { name, pull, count: entry.pulls.length, moment, way });
  }
  const [only] = entry.pulls;
  if (only.lever < ON_AXIS) return t('pulls.say.onAxis', { name, pull });
  return t('pulls.say.pull', {
    name,
    pull,
    turning: show(displayForce(length(only.turning), units)),
    lever: `${displayPosition(only.lever, units)}\u00a0${units.length}`,
    moment,
    way,
  });
}
