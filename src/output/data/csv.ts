export type Cell = string | number | null;

/**
 * A table as text for other programs: lines that begin with "#" say what holds for it, then one header line and the rows
 * (RFC 4180 but for those lines: commas, CR LF, quotes where needed). Numbers have a decimal point and nine digits, more
 * than any scale or calliper, and sizes below 1e-12 are 0; what has no value is empty. A byte order mark in front, by which spreadsheets know UTF-8.
 */
export function csvFile(
  conditions: readonly string[],
  header: readonly string[],
  rows: readonly (readonly Cell[])[],
): string {
  const above = conditions.map((line) => `# ${line.replace(/[\r\n]+/g, ' ')}\r\n`);
  const below = [header, ...rows].map((row) => `${row.map(cellText).join(',')}\r\n`);
  return `\ufeff${above.join('')}${below.join('')}`;
}

/** Below this a number is rounding: no column has a unit of which that much could be told. */
const NOTHING = 1e-12;

function numberText(value: number): string {
  if (!Number.isFinite(value)) return '';
  return Math.abs(value) < NOTHING ? '0' : String(Number(value.toPrecision(9)));
}

/**
 * A text that a spreadsheet would take for a formula (it begins with = + - @, in narrow or wide letters, perhaps after
 * blanks) gets an apostrophe in front, which makes it text there.
 */
function cellText(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return numberText(cell);
  const safe = /^[\s\p{Cc}]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
