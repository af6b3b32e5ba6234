import type { Balance, GripMass } from '../../design/forces/balanceTypes';
import { degreesFromRadians, gramsFromKilograms, mmFromMetres, radians } from '../../engine/units';
import { t } from '../../messages';
import { displayForce, displayMass, fixed, show, significant } from '../quantities';
import type { DisplayUnits } from '../settings';
import { displayPosition } from '../shownUnits';

/** The name of a grip: its own, or its number. */
export function gripName({ name, index }: Pick<GripMass, 'name' | 'index'>): string {
  if (index === 0) return t('balance.first');
  return name === '' ? t('balance.nth', { n: index + 1 }) : name;
}

/** An unbalance in gram millimetres, as the trade and ISO 21940-11 tell it. */
export function unbalanceText(unbalance: number): string {
  return `${significant(gramsFromKilograms(mmFromMetres(unbalance)))}\u00a0g\u00a0mm`;
}

/** What the balance comes to, in sentences. */
export function balanceLines(balance: Balance, units: DisplayUnits): string[] {
  const { unbalance, angle, shaftForce, grade, corrections, left, grips } = balance;
  if (unbalance === 0) {
    return [t('balance.none'), ...(balance.rotorMass === null ? [t('balance.noHub')] : [])];
  }
  const lines = [
    t('balance.unbalance', {
      unbalance: unbalanceText(unbalance),
      angle: fixed((degreesFromRadians(radians(angle)) + 360) % 360, 0),
    }),
    t('balance.force', { force: show(displayForce(shaftForce, units)) }),
  ];
  if (grade === null) lines.push(t('balance.noHub'));
  else {
    // Never rounded onto a grade that it does not keep.
    const value = significant(grade.value, 4);
    lines.push(
      grade.standard === null
        ? t('balance.noGrade', { value })
        : t('balance.grade', { value, standard: String(grade.standard) }),
    );
  }
  for (const { grip, mass, station } of corrections) {
    lines.push(
      t('balance.correct', {
        mass: mass < 1e-5 ? t('balance.tiny') : show(displayMass(mass, units)),
        station: `${displayPosition(station, units)}\u00a0${units.length}`,
        grip: gripName(grips[grip]),
      }),
    );
  }
  if (left > 1e-3 * unbalance) {
    const key = grips.length === 1 ? 'balance.leftOne' : 'balance.left';
    lines.push(t(key, { left: unbalanceText(left) }));
  }
  return lines;
}
