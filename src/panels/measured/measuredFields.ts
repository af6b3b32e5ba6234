import type { Part } from '../../design/design';
import { MEASURED_LIMITS, type Measured } from '../../design/measured';
import { type MessageKey, t } from '../../messages';
import { partType } from '../../parts/registry';
import { measuredRefusal } from '../../state/measuredRefusal';
import type { Session } from '../../state/session';
import type { OptionalField } from './useOptionalEntry';

export type MeasuredNumber = keyof typeof MEASURED_LIMITS;

const STEPS: Readonly<Record<MeasuredNumber, number>> = {
  massGrams: 0.01,
  massStepGrams: 0.01,
  centreXMm: 0.1,
  centreYMm: 0.1,
  centreZMm: 0.1,
  centreStepMm: 0.1,
};

const CENTRES: Partial<Record<MeasuredNumber, 'X' | 'Y' | 'Z'>> = {
  centreXMm: 'X',
  centreYMm: 'Y',
  centreZMm: 'Z',
};

/** One number of what was measured of a part, as a field. */
export function measuredField(session: Session, part: Part, key: MeasuredNumber): OptionalField {
  const axis = CENTRES[key];
  const [label, help] = axis ? centreTexts(part, axis) : OTHERS[key as keyof typeof OTHERS];
  return {
    key,
    label: t(label),
    help: t(help),
    limits: MEASURED_LIMITS[key],
    step: STEPS[key],
    commit: (value) =>
      measuredRefusal(
        session,
        part.id,
        session.actions.setMeasured(part.id, withMember(measuredNow(session, part.id), key, value)),
      ),
  };
}

const OTHERS = {
  massGrams: ['measured.mass', 'measured.massHelp'],
  massStepGrams: ['measured.massStep', 'measured.massStepHelp'],
  centreStepMm: ['measured.centreStep', 'measured.centreStepHelp'],
} as const satisfies Readonly<Record<string, readonly [MessageKey, MessageKey]>>;

/** A part that is plotted along a span has a bolt axis and a leading edge to measure from; others their own axes. */
function centreTexts(part: Part, axis: 'X' | 'Y' | 'Z'): readonly [MessageKey, MessageKey] {
  const whose = partType(part.kind).spanProfile ? 'Span' : 'Part';
  return [`measured.centre${axis}`, `measured.centre${axis}${whose}`];
}

const NOTHING: Measured = {};

export function measuredNow({ live }: Session, partId: string): Measured {
  return live.model.placed(partId)?.part.measured ?? NOTHING;
}

export function withMember<K extends keyof Measured>(
  measured: Measured,
  key: K,
  value: Measured[K] | undefined,
): Measured {
  const { [key]: _, ...rest } = measured;
  return (value === undefined ? rest : { ...rest, [key]: value }) as Measured;
}
