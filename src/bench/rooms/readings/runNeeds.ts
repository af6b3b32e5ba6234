import { BENCH_PLAN } from '../../../messages/en/benchPlan';
import { RUNG_NAMES } from '../../analysis';
import type { BenchState } from '../../deskTypes';
import type { BenchRun } from '../../readings/benchSection';
import { RUNG_KEYS } from '../../rungs';
import { countedReadings } from '../../runReadings';

export type RunNeed = 'speed' | 'fitted' | 'fittedUnknown' | 'arm';

/** What a run does not say and a fit has to know. */
export function runNeeds(run: BenchRun, place: BenchState['place']): readonly RunNeed[] {
  const said = (run.fitted ?? '').trim().toLowerCase();
  const key = RUNG_KEYS.find((one) =>
    [one, BENCH_PLAN[`bench.rung.${one}`], RUNG_NAMES[one]].some(
      (name) => name.toLowerCase() === said,
    ),
  );
  const { readings } = countedReadings(run);
  const hasSpeed =
    run.speedRpm !== undefined ||
    key === 'drag' ||
    (readings.ok && readings.value.every(({ speed }) => speed !== null));
  const needs: RunNeed[] = [];
  if (!hasSpeed) needs.push('speed');
  if (said === '' && run.parts === undefined) needs.push('fitted');
  else if (said !== '' && key === undefined) needs.push('fittedUnknown');
  if (place === 'arm' && run.armMm === undefined) needs.push('arm');
  return needs;
}
