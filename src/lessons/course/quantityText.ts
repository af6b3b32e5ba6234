import type { Design } from '../../design/design';
import { kilogramsFromGrams, metresFromMm, siFromGramSquareMm } from '../../engine/units';
import {
  displayForce,
  displayMass,
  displayMoment,
  fixed,
  show,
  showDegrees,
} from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { type FieldUnit, secondMomentText, shownText, shownUnit } from '../../state/shownUnits';
import { type LessonHead, type QuantityRef, quantityUnit, quantityValue } from './quantity';
import { say } from './say';

/** A quantity of a head as it is shown, with its unit; a word where the head has no such number. */
export function quantityText(head: LessonHead, ref: QuantityRef, units: DisplayUnits): string {
  const value = quantityValue(head, ref);
  return value === null
    ? say('lessonRoom.none')
    : valueText(value, quantityUnit(head.design, ref), units);
}

/** A value in a lesson file's unit as it is shown in the chosen ones. */
export function valueText(value: number, unit: FieldUnit, units: DisplayUnits): string {
  switch (unit) {
    case 'deg':
      return showDegrees(value, 2);
    case 'N':
      return show(displayForce(value, units));
    case 'N mm':
      return show(displayMoment(metresFromMm(value), units));
    case 'g mm2':
      return secondMomentText(siFromGramSquareMm(value), units);
    case 'g':
      return show(displayMass(kilogramsFromGrams(value), units));
    case '%':
      return `${fixed(value, 0)}\u00a0%`;
    case '1':
      return fixed(value, 3);
    default:
      return shownText(value, shownUnit(unit, units));
  }
}

/** What was typed for a number: in the shown unit, with it. */
export function typedText(value: number, design: Design, ref: QuantityRef, units: DisplayUnits) {
  return shownText(Number(value.toPrecision(6)), shownUnit(quantityUnit(design, ref), units));
}
