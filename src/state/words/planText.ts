import type { Design } from '../../design/design';
import { type MessageKey, partText, t } from '../../messages';
import { inSentence } from '../../messages/inSentence';
import { type KnobRef, knobPart, knobRange, MEASURED_MASS } from '../../neutralise/knobs';
import type { Offer } from '../../neutralise/offers';
import type { KnobSpec, RequestFault } from '../../neutralise/request';
import type { ParameterUnit } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { showDegrees } from '../quantities';
import { fieldLabel } from '../refusalText';
import type { DisplayUnits } from '../settings';
import { shownText, shownUnit } from '../shownUnits';

const AXES = ['x', 'y', 'z'] as const;

/** "Height", "Position y", "Weighed mass": a number of a part by itself. */
export function knobFieldText(design: Pick<Design, 'parts'>, ref: KnobRef): string {
  const part = knobPart(design, ref);
  if (ref.field === MEASURED_MASS) return t('measured.mass');
  const label = fieldLabel(part, ref.field);
  if (ref.component === undefined) return label;
  const parameter = part && partType(part.kind).parameters[ref.field];
  const axes = parameter?.type === 'vector' ? parameter.axes : AXES;
  return `${label} ${axes[ref.component]}`;
}

/** "Locking nut M3, height". */
export function knobText(design: Pick<Design, 'parts'>, ref: KnobRef): string {
  const name = knobPart(design, ref)?.name || ref.part;
  return `${name}, ${inSentence(knobFieldText(design, ref))}`;
}

/** A value of a knob with its unit as shown: "6.3 mm". */
export function knobValueText(value: number, unit: ParameterUnit, units: DisplayUnits): string {
  return shownText(Number(value.toPrecision(6)), shownUnit(unit, units));
}

export function offerText(offer: Offer, design: Design): string {
  const part = design.parts.find((one) => one.id === offer.part);
  const name = part?.name || offer.part;
  const { choice } = offer;
  switch (choice.kind) {
    case 'catalogue':
      return t('goal.offer.catalogue', { part: name, count: choice.rows.length });
    case 'count':
      return t('goal.offer.count', { part: name, count: Math.max(...choice.counts) });
    case 'material':
      return t('goal.offer.material', {
        part: name,
        what: inSentence(fieldLabel(part, choice.field)),
        count: choice.materials.length,
      });
    case 'option':
      return t('goal.offer.option', {
        part: name,
        what: inSentence(fieldLabel(part, choice.field)),
        count: choice.options.length,
      });
    default:
      return name;
  }
}

/** What an option of a part's choice is called. */
export function optionText(design: Pick<Design, 'parts'>, ref: KnobRef, option: string): string {
  const part = knobPart(design, ref);
  const parameter = part && partType(part.kind).parameters[ref.field];
  const own = parameter?.type === 'choice' ? parameter.optionLabels[option] : option;
  return partText(`part.${part?.kind}.${ref.field}.${option}`, own ?? option);
}

/** Why a search cannot be begun, in words. */
export function faultText(
  fault: RequestFault,
  design: Design,
  knobs: readonly KnobSpec[],
  units: DisplayUnits,
): string {
  const key = (code: string) => `goal.fault.${code}` as MessageKey;
  if ('knob' in fault) return knobFaultText(fault, design, knobs, units);
  switch (fault.code) {
    case 'pitchReversed':
      return t(key(fault.code), { from: showDegrees(fault.fromDeg), to: showDegrees(fault.toDeg) });
    case 'pitchOutside':
      return t(key(fault.code), {
        deg: showDegrees(fault.deg),
        limit: showDegrees(fault.limitDeg, 0),
      });
    case 'beyondTravel': {
      const why = t(`goal.fault.why.${fault.why}` as MessageKey);
      return t('goal.fault.beyondTravel', {
        deg: showDegrees(fault.deg),
        end: showDegrees(fault.endDeg),
        why,
      });
    }
    case 'weightLimits':
      return t(key(fault.code), { min: knobValueText(fault.min, 'mm', units) });
    case 'tooMany':
      return t(key(fault.code), { count: fault.count, limit: fault.limit });
    default:
      return t(key(fault.code));
  }
}

function knobFaultText(
  fault: Extract<RequestFault, { readonly knob: number }>,
  design: Design,
  knobs: readonly KnobSpec[],
  units: DisplayUnits,
): string {
  const { ref } = knobs[fault.knob];
  const name = knobText(design, ref);
  const unit = knobRange(design, ref)?.unit ?? 'mm';
  const text = (value: number) => knobValueText(value, unit, units);
  switch (fault.code) {
    case 'noSuchNumber':
      return t('goal.fault.noSuchNumber');
    case 'limitsReversed':
      return t('goal.fault.limitsReversed', { name, min: text(fault.min), max: text(fault.max) });
    case 'outsideRange':
      return t(fault.which === 'min' ? 'goal.fault.outsideMin' : 'goal.fault.outsideMax', {
        name,
        value: text(fault.value),
        limit: text(fault.range[fault.which]),
      });
    case 'badStep':
      return t('goal.fault.badStep', { name, step: text(fault.step) });
    case 'noBars':
      return t('goal.fault.noBars', { name, min: text(fault.min), max: text(fault.max) });
    default:
      return t('goal.fault.sameNumberTwice', { name });
  }
}
