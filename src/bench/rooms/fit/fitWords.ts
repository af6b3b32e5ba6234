import type { BenchKey } from '../../../engine/identify/benchDesign';
import type { BenchFit } from '../../../engine/identify/benchFitTypes';
import { DOUBT } from '../../../engine/identify/distributions';
import type { OutlierReason } from '../../../engine/identify/outliers';
import {
  displayForce,
  displayMoment,
  fixed,
  type Quantity,
  show,
  significant,
} from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import { displaySecondMoment } from '../../../state/shownUnits';
import type { RungAnalysis } from '../../analysis';
import { say } from '../../say';

export function keyName(key: BenchKey): string {
  return say(`benchRoom.key.${key.kind}`, { number: 'index' in key ? key.index + 1 : '' });
}

/** A fitted number in the page's units. */
export function keyQuantity(
  key: BenchKey,
  value: number,
  friction: RungAnalysis['setup']['friction'],
  units: DisplayUnits,
): Quantity {
  if (key.kind === 'spread' || key.kind === 'product') return displaySecondMoment(value, units);
  if (key.kind === 'extra') return { value, unit: '\u00d7' };
  if (key.kind === 'friction' && friction !== 'force') return displayMoment(value, units);
  return displayForce(value, units);
}

/** "67.0 \u00b1 0.6 N": two digits of the half width at most, and the value to the same place. */
export function withHalf({ value, unit }: Quantity, half: number): string {
  if (!Number.isFinite(half) || half <= 0) return show({ value, unit });
  const decimals = decimalsOf(half);
  return `${fixed(value, decimals)} \u00b1 ${fixed(half, decimals)}\u00a0${unit}`;
}

/** Decimals that show a width to two significant digits. */
export function decimalsOf(half: number): number {
  return Math.max(0, Math.min(9, 1 - Math.floor(Math.log10(half))));
}

/** How good the fit is, and what it cannot tell: sentences. */
export function fitSentences(
  fit: BenchFit,
  { gauge, readings }: Pick<RungAnalysis, 'gauge' | 'readings'>,
  units: DisplayUnits,
): readonly string[] {
  const force = (value: number) => show(displayForce(value, units), 2);
  const lines = [goodness(fit, force)];
  const highest = readings.reduce((most, one) => Math.max(most, Math.abs(one.force)), 0);
  if (fit.noise > NOISY_STEPS * gauge.step && fit.noise > NOISY_SHARE * highest)
    lines.push(say('benchRoom.fit.noisy', { share: significant((100 * fit.noise) / highest, 2) }));
  if (fit.entangled.length + fit.blind.length === 0) lines.push(say('benchRoom.fit.apart'));
  for (const { first, second, correlation } of fit.entangled)
    lines.push(
      say('benchRoom.fit.entangled', {
        first: keyName(fit.estimates[first].key),
        second: keyName(fit.estimates[second].key),
        correlation: fixed(correlation, 2),
      }),
    );
  for (const { parts } of fit.blind)
    lines.push(
      say('benchRoom.fit.blind', {
        names: parts.map(({ parameter }) => keyName(fit.estimates[parameter].key)).join(', '),
      }),
    );
  if (fit.coarse)
    lines.push(say('benchRoom.fit.coarse', { steps: significant(fit.coarse.spanSteps, 2) }));
  if (fit.negativeFriction) lines.push(say('benchRoom.fit.negative'));
  return lines;
}

/** Noise past both, in steps of the gauge and as a share of the highest reading, is rather a mistake in the table. */
const [NOISY_STEPS, NOISY_SHARE] = [10, 0.1];

function goodness(fit: BenchFit, force: (value: number) => string): string {
  if (fit.freedom <= 0) return say('benchRoom.fit.noFreedom');
  const values = {
    chi: significant(fit.chiSquare),
    freedom: fit.freedom,
    noise: force(fit.noise),
    p: fit.pValue === null ? '' : significant(100 * fit.pValue, 2),
  };
  if (fit.pValue === null)
    return say(fit.noise > 0 ? 'benchRoom.fit.learnt' : 'benchRoom.fit.stepAlone', values);
  return say(fit.pValue < DOUBT ? 'benchRoom.fit.poor' : 'benchRoom.fit.good', values);
}

/** Why a reading is doubted. */
export function reasonText(reason: OutlierReason, units: DisplayUnits): string {
  const force = (value: number) => show(displayForce(value, units));
  if (reason.kind === 'farFromOthers')
    return say('benchRoom.flag.farFromOthers', {
      excess: significant(reason.excess, 2),
      limit: significant(reason.limit, 2),
    });
  if (reason.kind === 'overRange')
    return say('benchRoom.flag.overRange', { limit: force(reason.limit) });
  return say('benchRoom.flag.unlikeRepeats', {
    by: force(reason.by),
    allowed: force(reason.allowed),
  });
}
