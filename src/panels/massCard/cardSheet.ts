import type { Design } from '../../design/design';
import { type CardFigures, type CardRow, type MassCard } from '../../design/massCard';
import { ROTOR_SECTION } from '../../design/sections/rotor';
import { gramSquareMmFromSi, gramsFromKilograms, mmFromMetres } from '../../engine/units';
import { partText, t } from '../../messages';
import { localNumber } from '../../messages/numbers';
import { partType } from '../../parts/registry';

export type Cell = string | number | null;

/**
 * The card as a table for other programs, in g, mm and g mm2 whatever is on screen. The header is the first line and
 * every line has as many cells, so that a spreadsheet takes it as it stands; the conditions come below the parts,
 * since lines above the header (or comment lines, which RFC 4180 does not know) would spoil that.
 */
export interface CardSheet {
  readonly header: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** Name and value. */
  readonly conditions: readonly (readonly [string, Cell])[];
}

export function cardSheet(card: MassCard, design: Design): CardSheet {
  const rows = [
    ...card.rows.map((row) => partCells(row, t('massCard.counts'))),
    ...card.rods.map((row) => partCells(row, t('massCard.countsRod'))),
    ...card.hidden.map((row) => partCells(row, t('massCard.countsNot'))),
    sumCells(card),
  ];
  return { header: headers(), rows, conditions: conditions(card, design) };
}

function headers(): string[] {
  return [
    t('massCard.part'),
    t('massCard.kind'),
    t('massCard.colMass'),
    t('massCard.colX'),
    t('massCard.colY'),
    t('massCard.colZ'),
    t('massCard.colInertia'),
    t('massCard.colDifference'),
    t('massCard.colProduct'),
    t('massCard.colShare'),
    t('massCard.from'),
    t('massCard.colCounts'),
  ];
}

function partCells(row: CardRow, counts: string): Cell[] {
  const origins = row.origins.map((origin) => t(`massCard.${origin}`)).join(', ');
  return [row.name, kindLabel(row.kind), ...figureCells(row), tidy(row.share), origins, counts];
}

function sumCells({ total, absolute }: MassCard): Cell[] {
  const share = absolute > 0 ? (100 * total.difference) / absolute : null;
  return [t('massCard.sum'), '', ...figureCells(total), tidy(share), '', ''];
}

function figureCells({ mass, centre, inertia, difference, product }: CardFigures): Cell[] {
  const [x, y, z] = centre?.map(mmFromMetres) ?? [null, null, null];
  return [
    gramsFromKilograms(mass),
    x,
    y,
    z,
    ...[inertia, difference, product].map(gramSquareMmFromSi),
  ].map(tidy);
}

/** Nine digits: more than any scale or calliper, and none of the noise of binary fractions. */
function tidy(value: number | null): number | null {
  return value === null ? null : Number(value.toPrecision(9)) + 0;
}

function conditions(card: MassCard, { name, rotor }: Design): [string, Cell][] {
  const { weighed } = card;
  const scale: [string, Cell][] = weighed
    ? [
        [t('massCard.wholeWeighed'), tidy(gramsFromKilograms(weighed.mass))],
        [t('massCard.wholeStep'), tidy(gramsFromKilograms(weighed.step))],
        [t('massCard.wholeDifference'), tidy(gramsFromKilograms(weighed.difference))],
        [t('massCard.wholePercent'), tidy(weighed.percent)],
      ]
    : [];
  return [
    [t('massCard.design'), name],
    [t('massCard.frame'), t('massCard.frameText')],
    [t('massCard.speed'), rotor.speedRpm],
    [t('massCard.torqueOffset'), rotor.torqueOffsetMm],
    [t('massCard.precone'), rotor.preconeDeg],
    [t('massCard.usedPitch'), rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default],
    ...scale,
  ];
}

export function kindLabel(kind: string): string {
  return partText(`part.${kind}.label`, partType(kind).label);
}

/**
 * RFC 4180: commas, CR LF after every line, quotes where needed; numbers with a decimal point. In front a byte order
 * mark, by which spreadsheets know UTF-8; readers of Unicode text pass over it.
 */
export function csvText(sheet: CardSheet): string {
  const lines = allLines(sheet).map((line) => `${line.map(csvCell).join(',')}\r\n`);
  return `\ufeff${lines.join('')}`;
}

/** For pasting into a spreadsheet, which reads numbers with the decimal sign of its language. */
export function tabText(sheet: CardSheet): string {
  return allLines(sheet)
    .map((line) => line.map((cell) => localCell(cell).replace(/[\t\r\n]+/g, ' ')).join('\t'))
    .join('\n');
}

/** For pasting into a letter: the same as a table. */
export function htmlText(sheet: CardSheet): string {
  const [header, ...lines] = allLines(sheet);
  const row = (line: readonly Cell[], tag: 'th' | 'td') =>
    `<tr>${line.map((cell) => `<${tag}>${escaped(localCell(cell))}</${tag}>`).join('')}</tr>`;
  const body = lines.map((line) => row(line, 'td')).join('');
  return `<meta charset="utf-8"><table><thead>${row(header, 'th')}</thead><tbody>${body}</tbody></table>`;
}

/** Header, parts, sum, an empty line, the conditions; every line as wide as the header. */
function allLines({ header, rows, conditions: below }: CardSheet): (readonly Cell[])[] {
  const wide = (line: readonly Cell[]) => header.map((_, i) => line[i] ?? null);
  return [header, ...rows, wide([]), wide([t('massCard.conditions')]), ...below.map(wide)];
}

function csvCell(cell: Cell): string {
  const text = cellText(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * A text that a spreadsheet would take for a formula (it begins with = + - @, in narrow or wide letters, perhaps after
 * blanks or control characters) gets an apostrophe in front, which makes it text there.
 */
function cellText(cell: Cell): string {
  if (typeof cell !== 'string') return cell === null ? '' : String(cell);
  return /^[\s\p{Cc}]*[=+\-@\uff1d\uff0b\uff0d\uff20]/u.test(cell) ? `'${cell}` : cell;
}

/** As a person reads it, and a spreadsheet of their language takes it from the clipboard. */
function localCell(cell: Cell): string {
  return typeof cell === 'number' ? localNumber(String(cell)) : cellText(cell);
}

function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
