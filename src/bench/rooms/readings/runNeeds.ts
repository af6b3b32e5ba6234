import type { BenchState } from '../../deskTypes';
import type { BenchRun } from '../../readings/benchSection';
import { countedReadings } from '../../runReadings';
import { rungNamed, saysFitted } from '../../runs';

export type RunNeed = 'speed' | 'fitted' | 'fittedUnknown' | 'arm';

/** What a run does not say and a fit has to know. */
export function runNeeds(run: BenchRun, place: BenchState['place']): readonly RunNeed[] {
  const key = rungNamed(run.fitted);
  const { readings } = countedReadings(run);
  const hasSpeed =
    run.speedRpm !== undefined ||
    key === 'drag' ||
    (readings.ok && readings.value.every(({ speed }) => speed !== null));
  const needs: RunNeed[] = [];
  if (!hasSpeed) needs.push('speed');
  if (!saysFitted(run)) needs.push('fitted');
  else if (key === null && run.parts === undefined) needs.push('fittedUnknown');
  if (place === 'arm' && run.armMm === undefined) needs.push('arm');
  return needs;
}
