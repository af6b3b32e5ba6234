import type { Rotor } from '../../design/design';
import type { HeadLoads, LimitInUse } from '../../design/forces/loadTypes';
import { speedRange } from '../../design/forces/speedSweep';
import { t } from '../../messages';
import { fixed } from '../quantities';
import type { HeadReading } from '../reading';
import { signedDegrees } from './pitchText';

/** What a limit is of: a bearing's rating, or one of the bolt's checks. */
export function limitName({ what }: LimitInUse): string {
  return what === 'bearing' ? t('loads.rating') : t(`loads.check.${what}`);
}

function passedText({ use }: LimitInUse, rpm: number): string {
  return t('loads.firstPassed', { use: fixed(100 * use, 0), rpm: fixed(rpm, 0) });
}

/** What gives way first within the pitch in use, and how much of the rest is not known. */
export function firstLimitText(
  limit: LimitInUse | null,
  loads: HeadLoads,
  nameOf: (id: string) => string,
): string {
  if (!limit) return t(loads.speedRpm > 0 ? 'loads.firstNone' : 'loads.still');
  const met = t('loads.first', {
    name: nameOf(limit.id),
    what: limitName(limit),
    rpm: fixed(limit.limitRpm, 0),
    pitch: signedDegrees(limit.pitchDeg, 0),
  });
  const first = limit.use > 1 ? `${met} ${passedText(limit, loads.speedRpm)}` : met;
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

/** That something carries more than it may within the pitch in use, at the speed that loads are judged at; else null. */
export function verdictOnLimits(reading: HeadReading, rotor: Rotor): string | null {
  const { overspeedRpm } = speedRange(rotor);
  const limit = reading.limitInUse(overspeedRpm);
  if (!limit || !(limit.use > 1)) return null;
  return t('verdict.beyondLimit', {
    name: reading.part(limit.id)?.part.name || limit.id,
    rpm: fixed(limit.limitRpm, 0),
    pitch: signedDegrees(limit.pitchDeg, 0),
    judged: fixed(overspeedRpm, 0),
  });
}

/** That a clamp force which is given does not hold a blade as it is drawn; else null. */
export function verdictOnClamp(reading: HeadReading, clampForceN: number): string | null {
  const slips = clampForceN > 0 ? reading.bladeSlipsDeg() : null;
  return slips === null ? null : t('verdict.bladeSlips', { pitch: signedDegrees(slips, 0) });
}
