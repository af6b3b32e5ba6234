import type { HeadRun } from '../../design/release/headRun';
import { degreesFromRadians } from '../../engine/units';
import { t } from '../../messages';
import { displayForce, signedQuantity } from '../quantities';
import type { HeadReading } from '../reading';
import type { DisplayUnits } from '../settings';

/** "1/200 of real speed". */
export function slownessText(slowness: number): string {
  return slowness === 1 ? t('letGo.realSpeed') : t('letGo.slowness', { times: slowness });
}

/**
 * The hand's push as the control would put it on the push rod, tension positive as everywhere; null without an arm and over
 * centre. The rod holds a moment M with the force that `forceOf` gives, so a push h is that of -h.
 */
export function pushForce(run: HeadRun, reading: HeadReading, units: DisplayUnits): string | null {
  const { hand, pitch } = run.release;
  const force = reading.forceOf(-hand, degreesFromRadians(pitch));
  return force === null ? null : signedQuantity(displayForce(force, units));
}
