import { DRAG_ROW_LIMITS, type DragRow, MAX_DRAG_ROWS } from '../../design/sections/friction';
import { type Result, succeed } from '../../engine/result';
import { t } from '../../messages';
import { localNumber } from '../../messages/numbers';

/** "1,5": one and a half, or one and five. */
const EITHER_COMMA = /^\s*[-+\u2212]?\d+,\d+\s*$/;
/** A decimal point beside a comma: the comma sets numbers apart. */
const POINT_AND_COMMA = /\.\d.*,|,.*\.\d/;

/** Letters; a longer line is no pair of numbers and is not gone through. */
const LONGEST_LINE = 1000;

/** A table of drag as text, one reading a line: travel in mm, force in newtons. */
export function dragText(rows: readonly DragRow[]): string {
  return rows
    .map(({ travelMm, forceN }) =>
      [travelMm, forceN].map((value) => localNumber(String(value))).join('  '),
    )
    .join('\n');
}

/**
 * The readings in a text: a line each, two numbers set apart by blanks, a tab, a semicolon, or a comma that is no decimal
 * comma; a lone comma that may be either is refused, unless another line shows what commas are. Lines without a digit (a heading) are passed over. Sorted by travel. The reason with its line where one cannot be
 * read.
 */
export function parseDrag(text: string): Result<readonly DragRow[], string> {
  const rows: DragRow[] = [];
  const lines = text.split(/\r\n?|\n/);
  const long = lines.findIndex((line) => line.length > LONGEST_LINE);
  if (long >= 0) return { ok: false, error: t('conditions.dragUnread', { line: long + 1 }) };
  const commasSeparate = lines.some((line) => POINT_AND_COMMA.test(line));
  for (let i = 0; i < lines.length; i++) {
    if (!/\d/.test(lines[i])) continue;
    if (!commasSeparate && EITHER_COMMA.test(lines[i])) {
      return { ok: false, error: t('conditions.dragComma', { line: i + 1 }) };
    }
    const cells = cellsOf(lines[i]);
    const numbers = cells.map(numberOf);
    const line = i + 1;
    if (numbers.length !== 2 || numbers.some((number) => !Number.isFinite(number))) {
      return { ok: false, error: t('conditions.dragUnread', { line }) };
    }
    const [travelMm, forceN] = numbers;
    const { min, max } = DRAG_ROW_LIMITS.travelMm;
    if (travelMm < min || travelMm > max) {
      return { ok: false, error: t('conditions.dragTravel', { line, min, max }) };
    }
    if (forceN < 0 || forceN > DRAG_ROW_LIMITS.forceN.max) {
      return {
        ok: false,
        error: t('conditions.dragForce', { line, max: DRAG_ROW_LIMITS.forceN.max }),
      };
    }
    if (rows.some((row) => row.travelMm === travelMm)) {
      return { ok: false, error: t('conditions.dragTwice', { line, travel: travelMm }) };
    }
    rows.push({ travelMm, forceN });
    // Here and not at the end: each row is held against those before it.
    if (rows.length > MAX_DRAG_ROWS) {
      return { ok: false, error: t('conditions.dragMany', { limit: MAX_DRAG_ROWS }) };
    }
  }
  return succeed(rows.toSorted((a, b) => a.travelMm - b.travelMm));
}

function cellsOf(line: string): string[] {
  const trimmed = line.trim();
  const apart = /[;\t]/.test(trimmed)
    ? trimmed.split(/\s*[;\t]\s*/)
    : /\s/.test(trimmed)
      ? trimmed.split(/,?\s+/)
      : trimmed.split(',');
  return apart.map((cell) => cell.trim()).filter((cell) => cell !== '');
}

/** A plain decimal number; NaN for anything else, such as a number of another base. */
function numberOf(cell: string): number {
  const plain = cell.replace(',', '.').replace('\u2212', '-');
  return /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i.test(plain) ? Number(plain) : Number.NaN;
}
