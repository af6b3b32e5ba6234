import { INCH_MM } from '../../engine/units';
import { t } from '../../messages';
import { localNumber } from '../../messages/numbers';
import { phrase } from '../../messages/phrases';
import type { CatalogueReference } from '../../parts/catalogue';

/** How a row is written: metric sizes with lengths in mm, inch sizes with lengths in inches, whatever the page shows. */

/** Inch sizes are written with a number sign, a fraction or threads per inch: "#4-40", "1/4-20". */
export function isInchSize(size: string): boolean {
  return /[#/"]|^\d+-\d/.test(size);
}

export function lengthUnitOf(size: string): 'mm' | 'in' {
  return isInchSize(size) ? 'in' : 'mm';
}

/** "22 mm", "1/2 in": with its unit. */
export function lengthText(size: string, lengthMm: number): string {
  const unit = lengthUnitOf(size);
  return `${lengthNumber(size, lengthMm)}\u00a0${unit}`;
}

/** The same without the unit, as it can be typed. */
export function lengthNumber(size: string, lengthMm: number): string {
  return isInchSize(size)
    ? inches(lengthMm / INCH_MM)
    : localNumber(String(Number(lengthMm.toPrecision(10))));
}

/** "M2.5", with the language's decimal sign; inch sizes as they are. */
export function sizeName(size: string): string {
  return isInchSize(size) ? size : localNumber(size);
}

/** "ISO 4762 M3 x 22"; inches are said, millimetres are understood, as the standards write it. */
export function referenceText({ standard, size, lengthMm }: CatalogueReference): string {
  const shown = sizeName(size);
  if (lengthMm === undefined)
    return t('catalogue.reference', { standard: phrase(standard), size: shown });
  const length = isInchSize(size) ? lengthText(size, lengthMm) : lengthNumber(size, lengthMm);
  return t('catalogue.referenceLength', { standard: phrase(standard), size: shown, length });
}

/** Whole inches and a fraction down to sixty-fourths where it is one, else decimals. */
function inches(value: number): string {
  for (const parts of [1, 2, 4, 8, 16, 32, 64]) {
    const count = Math.round(value * parts);
    if (count === 0 || Math.abs(value * parts - count) > 1e-6) continue;
    const whole = Math.floor(count / parts);
    const rest = count - whole * parts;
    const fraction = rest === 0 ? '' : `${rest}/${parts}`;
    return [whole > 0 ? String(whole) : '', fraction].filter((piece) => piece !== '').join(' ');
  }
  return localNumber(String(Number(value.toFixed(4))));
}
