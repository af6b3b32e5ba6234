import type { Part } from '../../design/design';
import type { Swing, SwingAxis } from '../../design/measured';
import { type MeasuredReport, measuredReport } from '../../design/measuredReport';
import type { Materials } from '../../design/resolve';
import { largestTerm, swingTerms } from '../../design/swingTerms';
import type { PartValues } from '../../design/values';
import { massUncertainty, swingMoment } from '../../design/weighPart';
import type { MeasuredQuantity } from '../../engine/mass/measured';
import { kilogramsFromGrams } from '../../engine/units';
import { t } from '../../messages';
import { displayMass, fixed, show, significant } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { uncertainText, verdictText } from './reportText';
import { withSwing } from './swingDraft';

export const INERTIA_ABOUT: Readonly<Record<SwingAxis, MeasuredQuantity>> = {
  span: 'inertiaX',
  chord: 'inertiaY',
  thickness: 'inertiaZ',
};

/** What a whole timing comes to, in sentences; null where the drawing gives no mass. */
export interface SwingResult {
  readonly moment: string;
  readonly verdict: string | null;
  readonly disagrees: boolean;
  readonly sentences: readonly string[];
}

export function swingResult(
  part: Part,
  values: PartValues,
  materials: Materials,
  swing: Swing,
  units: DisplayUnits,
): SwingResult | null {
  const measured = part.measured ?? {};
  const drawn = measuredReport(withoutSwings(part), values, materials);
  if (!drawn) return null;
  const { mass, uncertainty, weighed } = massOf(part, drawn);
  const { moment, uncertainty: spread } = swingMoment(swing, mass, uncertainty);
  const what = INERTIA_ABOUT[swing.about];
  const quantity = quantityOf(drawn, what);
  const taken = measuredReport(
    { ...part, measured: withSwing(measured, swing.about, swing) } as Part,
    values,
    materials,
  );
  const comparison = taken && quantityOf(taken, what).comparison;
  const text = uncertainText(what, moment, spread, units);
  const modelled = uncertainText(what, quantity.modelled, quantity.modelUncertainty, units);
  return {
    moment: text,
    verdict: comparison && verdictText(comparison, units),
    disagrees: comparison?.disagrees ?? false,
    sentences: [
      t('measured.resultMoment', { moment: text, modelled }),
      t('measured.period', { period: significant(swing.seconds / swing.swings) }),
      t(weighed ? 'measured.withWeighed' : 'measured.withModelled', {
        mass: show(displayMass(mass, units)),
      }),
      limitText(swing, mass, uncertainty, spread / moment),
      ...((swing.amplitudeDeg ?? 0) > 10 ? [t('measured.wide')] : []),
    ],
  };
}

/** The mass a timing is worked out with, kg: weighed, or drawn with what the drawing is uncertain by. */
function massOf(part: Part, drawn: MeasuredReport) {
  const { massGrams } = part.measured ?? {};
  if (massGrams === undefined) {
    const { modelled, modelUncertainty } = quantityOf(drawn, 'mass');
    return { mass: modelled, uncertainty: modelUncertainty, weighed: false };
  }
  const uncertainty = massUncertainty(part.measured ?? {});
  return { mass: kilogramsFromGrams(massGrams), uncertainty, weighed: true };
}

function quantityOf(report: MeasuredReport, what: MeasuredQuantity) {
  const found = report.quantities.find((one) => one.what === what);
  if (!found) throw new Error(`quantityOf(): ${what} is not in the report`);
  return found;
}

/** Timings that contradict one another must not hide the drawing. */
function withoutSwings(part: Part): Part {
  const { swings: _, ...rest } = part.measured ?? {};
  return { ...part, measured: rest } as Part;
}

function limitText(swing: Swing, mass: number, uncertainty: number, total: number): string {
  const terms = swingTerms(swing, mass, uncertainty);
  const source = largestTerm(terms);
  return t('measured.worst', {
    share: `${fixed(100 * terms[source], 1)}\u00a0%`,
    total: `${fixed(100 * Math.abs(total), 1)}\u00a0%`,
    source: t(`measured.worst.${source}`),
  });
}
