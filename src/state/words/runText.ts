import type { Design } from '../../design/design';
import { describeFault } from '../../design/faultText';
import type {
  Chance,
  Matching,
  ToleranceFault,
  ToleranceResult,
} from '../../neutralise/closeness/toleranceTypes';
import { displayForce, fixed, show, significant } from '../quantities';
import type { DisplayUnits } from '../settings';
import { unbalanceText } from './balanceText';
import { t } from './closenessText';
import { signedDegrees } from './pitchText';

/** "97.3 %"; never rounded up to all of them, nor down to none. */
export function percentText(share: number): string {
  if (share > 0.9995 && share < 1) return '> 99.9\u00a0%';
  if (share > 0 && share < 0.0005) return '< 0.1\u00a0%';
  return `${fixed(100 * share, share === 0 || share === 1 ? 0 : 1)}\u00a0%`;
}

/**
 * Of none or of all the formula gives no error, which would be too good: then 3 / n, the bound of 95 % (the rule of three,
 * Hanley and Lippman-Hand, JAMA 249, 1983).
 */
function errorText({ share, standardError }: Chance, count: number): string {
  const error = share === 0 || share === 1 ? 3 / count : standardError;
  return `${significant(100 * error, 2)}\u00a0%`;
}

/** A force without its unit, which stands above the table; a dash where there is none. */
export function bareForce(force: number, units: DisplayUnits): string {
  return Number.isNaN(force) ? '\u2013' : significant(displayForce(force, units).value);
}

function forceText(force: number, units: DisplayUnits): string {
  return Number.isNaN(force) ? t('closely.unknown') : show(displayForce(force, units));
}

export function faultText(fault: ToleranceFault): string {
  if (fault.kind !== 'design') return t(`closely.fault.${fault.kind}`);
  return t('closely.fault.design', { reason: describeFault(fault.fault) });
}

/** How many keep the target, and the band at the worst pitch. */
export function chanceLines(result: ToleranceResult, units: DisplayUnits): readonly string[] {
  const { chance, linearChance, pitchDeg, used, samples, refused, withoutForce } = result;
  const lines = [
    t('closely.chance', {
      share: percentText(chance.share),
      target: show(displayForce(result.targetForce, units)),
      from: signedDegrees(pitchDeg[used[0]]),
      to: signedDegrees(pitchDeg[used[1]]),
      error: errorText(chance, samples),
      linear: percentText(linearChance.share),
    }),
    bandLine(result, units),
  ];
  if (refused > 0) {
    const reason = result.firstRefusal ? describeFault(result.firstRefusal) : '';
    lines.push(t('closely.refusedHeads', { count: refused, reason }));
  }
  if (withoutForce > 0) lines.push(t('closely.withoutForce', { count: withoutForce }));
  return lines;
}

export function bandLine(result: ToleranceResult, units: DisplayUnits): string {
  const { worst, exact, rssSigma, pitchDeg } = result;
  const force = (value: number) => forceText(value, units);
  return t('closely.band', {
    pitch: signedDegrees(pitchDeg[worst]),
    low: force(exact.low[worst]),
    high: force(exact.high[worst]),
    sigma: force(exact.sigma[worst]),
    rss: force(rssSigma[worst]),
  });
}

/** How alike the grips of one rotor are. */
export function matchingLines(
  { matching, pitchDeg, worst }: ToleranceResult,
  design: Design,
  units: DisplayUnits,
): readonly string[] {
  if (!matching) return [t('closely.oneBlade')];
  const force = (value: number) => show(displayForce(value, units));
  return [
    t('closely.forceDifference', {
      pitch: signedDegrees(pitchDeg[worst]),
      within: force(matching.forceWithin),
      sigma: force(matching.forceSigma),
    }),
    t('closely.unbalance', {
      median: unbalanceText(matching.unbalanceMedian),
      within: unbalanceText(matching.unbalanceWithin),
    }),
    ...gradeLine(matching, design),
  ];
}

function gradeLine({ grade, rotors }: Matching, { tolerance }: Design): readonly string[] {
  const wanted = tolerance?.balanceGrade;
  if (wanted === undefined) return [];
  if (!grade) return [t('closely.gradeNoHub', { grade: String(wanted) })];
  return [
    t('closely.grade', {
      share: percentText(grade.share),
      grade: String(wanted),
      error: errorText(grade, rotors),
    }),
  ];
}
