import { SWING_LIMITS } from '../../design/measured';
import { type MessageKey, t } from '../../messages';
import type { SwingNumber } from './swingDraft';
import type { OptionalField } from './useOptionalEntry';

const FIELDS: Readonly<Record<SwingNumber, readonly [MessageKey, MessageKey, number]>> = {
  spacingMm: ['measured.spacing', 'measured.spacingHelp', 1],
  stringLengthMm: ['measured.length', 'measured.lengthHelp', 1],
  swings: ['measured.swings', 'measured.swingsHelp', 1],
  seconds: ['measured.seconds', 'measured.secondsHelp', 0.1],
  spacingStepMm: ['measured.spacingStep', 'measured.spacingStepHelp', 0.1],
  timeStepSeconds: ['measured.timeStep', 'measured.timeStepHelp', 0.1],
  amplitudeDeg: ['measured.amplitude', 'measured.amplitudeHelp', 1],
  cradleGrams: ['measured.cradleMass', 'measured.cradleMassHelp', 0.01],
  cradleMomentGMm2: ['measured.cradleMoment', 'measured.cradleMomentHelp', 1],
};

export function swingLabel(name: SwingNumber): string {
  return t(FIELDS[name][0]);
}

/** One number of a timing, as a field. */
export function swingField(
  name: SwingNumber,
  commit: (value: number | undefined) => string | null,
): OptionalField {
  const [label, help, step] = FIELDS[name];
  return { key: name, label: t(label), help: t(help), limits: SWING_LIMITS[name], step, commit };
}
