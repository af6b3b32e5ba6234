import type { HeadLoads, LimitInUse } from '../../design/forces/loadTypes';
import { t } from '../../messages';
import { fixed } from '../quantities';
import { signedDegrees } from './pitchText';

/** What a limit is of: a bearing's rating, or one of the bolt's checks. */
export function limitName({ what }: LimitInUse): string {
  return what === 'bearing' ? t('loads.rating') : t(`loads.check.${what}`);
}

/** What gives way first within the pitch in use, and how much of the rest is not known. */
export function firstLimitText(
  limit: LimitInUse | null,
  loads: HeadLoads,
  nameOf: (id: string) => string,
): string {
  if (!limit) return t(loads.speedRpm > 0 ? 'loads.firstNone' : 'loads.still');
  const first = t('loads.first', {
    name: nameOf(limit.id),
    what: limitName(limit),
    rpm: fixed(limit.limitRpm, 0),
    pitch: signedDegrees(limit.pitchDeg, 0),
  });
  const unknown = [
    ...loads.bearings.map(({ rating }) => rating),
    ...loads.bolts.flatMap(({ checks }) => checks.map(({ margin }) => margin)),
  ].filter(({ kind }) => kind === 'unknown').length;
  if (unknown === 0) return first;
  const count = t(unknown === 1 ? 'loads.firstUnknownOne' : 'loads.firstUnknown', {
    count: unknown,
  });
  return `${first} ${count}`;
}
