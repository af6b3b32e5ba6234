import type { Part } from '../../design/design';
import { MEASURED_LIMITS } from '../../design/measured';
import type { Result } from '../../engine/result';
import { measuredRefusal } from '../../state/measuredRefusal';
import type { Session } from '../../state/session';
import { type DisplayUnits, METRIC_UNITS } from '../../state/settings';
import { shownUnit } from '../../state/shownUnits';
import { outOfLimits, readTyped } from '../../state/typed/readTyped';
import { judgeWeighed, massProof, stepThatProves } from './massProof';
import { massText } from './massText';
import type { MassWindow } from './massWindow';
import { t } from './roomText';

/** What scale readings prove the part, in a sentence. */
export function proofText(window: MassWindow, step: number, units: DisplayUnits): string {
  const { readings } = massProof(window, step);
  const stepShown = t('drawing.stepGrams', { step });
  if (readings) {
    return t('drawing.proof', {
      least: massText(readings.least, step, units),
      most: massText(readings.most, step, units),
      step: stepShown,
    });
  }
  const finer = stepThatProves(window);
  return finer === null
    ? t('drawing.proofNone')
    : t('drawing.proofFiner', { step: stepShown, finer: t('drawing.stepGrams', { step: finer }) });
}

/** The window itself, from the tolerances: one place more than the scale shows. */
export function windowText({ least, most }: MassWindow, step: number, units: DisplayUnits): string {
  return t('drawing.windowEnds', {
    least: massText(least, step / 10, units),
    most: massText(most, step / 10, units),
  });
}

export interface Judgement {
  readonly kind: 'inside' | 'undecided' | 'light' | 'heavy';
  readonly text: string;
  /** Where no scale of this step shows such a reading. */
  readonly odd: string | null;
}

/** A reading against the window, in words. */
export function judgement(
  window: MassWindow,
  step: number,
  grams: number,
  units: DisplayUnits,
): Judgement {
  const verdict = judgeWeighed(window, step, grams);
  const by = 'by' in verdict ? massText(verdict.by, step / 10, units) : '';
  const steps = grams / step;
  const onStep = units.mass !== 'g' || Math.abs(steps - Math.round(steps)) < 0.01;
  return {
    kind: verdict.kind,
    text: t(`drawing.weighed.${verdict.kind}`, { by }),
    odd: onStep ? null : t('drawing.notOnStep', { step: t('drawing.stepGrams', { step }) }),
  };
}

/** A typed step of a scale, g; in words, why it is none. */
export function typedStep(text: string): Result<number, string> {
  const limits = MEASURED_LIMITS.massStepGrams;
  const unit = shownUnit('g', METRIC_UNITS);
  const label = t('drawing.step');
  const read = readTyped(text, { label, unit: 'g' }, unit, null);
  if (!read.ok) return { ok: false, error: read.reason };
  const outside = outOfLimits({ label, limits }, read.value, unit);
  if (outside !== null) return { ok: false, error: outside };
  return { ok: true, value: read.value as number };
}

/** Writes the reading into the design as the part's measured mass: one undo step. In words, why it was not taken. */
export function takeAsMass(
  session: Session,
  part: Part,
  grams: number,
  step: number,
): string | null {
  const measured = { ...part.measured, massGrams: grams, massStepGrams: step };
  return measuredRefusal(session, part.id, session.actions.setMeasured(part.id, measured));
}
