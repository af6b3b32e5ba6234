import { plainWords } from './headings';
import { guessMapping } from './mapping';
import { readTable } from './readTable';

/** Text that is looked at: enough for the lines above a table and some of its rows. */
const LOOKED_AT = 16_384;

/**
 * How much a text looks like readings of a bench, from 0 to 1: above 0.5 it is rather that than a table of a blade
 * section (which has columns for lift and drag: 0) or the outline of one (two columns without a heading: at most 0.2).
 * Only the first 16 kB are read.
 */
export function looksLikeReadings(text: string): number {
  const head = headOf(text);
  // A design or a lesson (JSON) has sentences with pitch and force in them.
  if (/^\uFEFF?\s*\{\s*"/.test(head)) return 0;
  if (isSectionTable(head)) return 0;
  // Headings tell the same whatever the decimal sign is; told one, nothing is refused for want of it.
  const table = readTable(head, { decimal: '.' });
  if (!table.ok) return 0;
  const { mapping, confidence } = guessMapping(table.value);
  if (table.value.headingRows.length === 0) {
    const letters = mapping.some(({ role }) => role === 'sense' || role === 'travel');
    return letters ? 0.6 : 0.2;
  }
  const place = best(['pitch', 'scale', 'time']);
  const load = best(['force', 'moment']);
  return Math.min(place, load);

  function best(roles: readonly string[]): number {
    return Math.max(...mapping.map(({ role }, k) => (roles.includes(role) ? confidence[k] : 0)));
  }
}

/** Whole lines only; a text of one line as long as that has no table in it anyway. */
function headOf(text: string): string {
  if (text.length <= LOOKED_AT) return text;
  const cut = text.slice(0, LOOKED_AT);
  return cut.slice(0, Math.max(cut.lastIndexOf('\n'), cut.lastIndexOf('\r')));
}

/** A line of headings that has both lift and drag coefficients. */
function isSectionTable(text: string): boolean {
  return text
    .split(/[\r\n]+/)
    .slice(0, 60)
    .some((line) => {
      const words = line.split(/[\s,;|]/).map(plainWords);
      return has(words, /^(?:cl|lift|ca)$/) && has(words, /^(?:cd|drag|cw)$/);
    });
}

function has(words: readonly string[], pattern: RegExp): boolean {
  return words.some((word) => pattern.test(word));
}
