import { materialsOf } from '../../../design/resolve';
import type { SectionName } from '../../../design/sections';
import { knobPart, knobRange, knobValue, withKnob } from '../../../neutralise/knobs';
import { refusalOf } from '../../../state/refusal';
import { refusalText } from '../../../state/refusalText';
import type { Session } from '../../../state/session';
import type { FieldUnit } from '../../../state/shownUnits';
import type { LessonKnob } from '../lesson';
import { knobOf, quantityValue, sectionField } from '../quantity';

interface Limits {
  readonly unit: FieldUnit;
  readonly min: number;
  readonly max: number;
}

const PITCH_LIMITS: Limits = { unit: 'deg', min: -90, max: 90 };

/** The knob's value in the file's unit; null where its part is gone. */
export function knobNow({ store, live }: Session, knob: LessonKnob): number | null {
  const { design, pitchDeg } = store.getState();
  if ('pointer' in knob) return pitchDeg;
  if ('section' in knob) {
    return quantityValue(
      { design, pitchDeg, reading: live.reading },
      { quantity: 'setting', section: knob.section, field: knob.field },
    );
  }
  return knobValue(design, knobOf(knob)) ?? null;
}

export function knobLimits({ store }: Session, knob: LessonKnob): Limits {
  if ('pointer' in knob) return PITCH_LIMITS;
  if ('section' in knob) {
    const field = sectionField(knob);
    if (field?.type !== 'number') throw new Error(`knobLimits(): no number: ${knob.field}`);
    return field;
  }
  // A part that was removed has no limits; nothing can be set there either.
  return knobRange(store.getState().design, knobOf(knob)) ?? { unit: '1', min: 0, max: 0 };
}

/** Sets it; the reason where it is refused, null where it is done. */
export function setKnob(session: Session, knob: LessonKnob, value: number): string | null {
  const { store, actions, live } = session;
  if ('pointer' in knob) {
    actions.setPitch(value);
    return null;
  }
  const { design, settings } = store.getState();
  if ('section' in knob) {
    const change = { [knob.field]: value };
    const outcome = actions.setSection(knob.section as SectionName, change);
    return outcome.ok ? null : refusalText(outcome.error, design, null, settings.units);
  }
  const ref = knobOf(knob);
  const part = knobPart(design, ref);
  if (!part) return null;
  const outcome = live.commitPart(withKnob(part, ref, value, materialsOf(design)));
  if (outcome.ok) return null;
  const refusal = refusalOf(outcome.error, live.reading.order, part.id);
  return refusalText(refusal, design, part.id, settings.units);
}
