import { type CardRow, type MassCard, massCard } from '../../../design/massCard';
import { type Materials, materialKeyOf, materialsOf } from '../../../design/resolve';
import { partText } from '../../../messages';
import { isUsed } from '../../../parts/contract';
import { partType } from '../../../parts/registry';
import { fixed } from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import { displayPosition, displayRailMass, secondMomentText } from '../../../state/shownUnits';
import { materialText } from '../../../state/words/materialText';
import type { ReportInputs } from '../inputs';
import { type Block, type TableColumn, words } from '../model';
import { t } from '../roomText';

/** More parts than this are told as one line: the report is to stay short. */
const MOST_ROWS = 24;
/** And so many that are not in the sum. */
const MOST_OTHERS = 8;

/** Who weighs what, where it sits, and which way it pulls. */
export function partBlocks(inputs: ReportInputs): Block[] {
  const card = cardOf(inputs);
  const { units } = inputs;
  if (card.rows.length + card.rods.length + card.hidden.length === 0) {
    return [words(t('report.noParts'))];
  }
  const told = [...tellable(card), ...[...card.rods, ...card.hidden].slice(0, MOST_OTHERS)];
  const rows = told.map((row) => partCells(row, nameOf(row, card), inputs));
  const rest = card.rows.length - tellable(card).length;
  return [
    {
      kind: 'table',
      caption: t('report.partsTable'),
      columns: COLUMNS(),
      rows: [...rows, ...(rest > 0 ? [restCells(card, units)] : []), sumCells(card, units)],
      sum: true,
    },
    words(t('report.partsNote', { product: secondMomentText(card.total.product, units) }), 'quiet'),
  ];
}

export function cardOf({ model, reading, design }: ReportInputs): MassCard {
  return massCard(model.parts, reading.totals, design.weighedTotal);
}

/** The parts of most share, in list order. */
function tellable({ rows }: MassCard): readonly CardRow[] {
  if (rows.length <= MOST_ROWS) return rows;
  const size = ({ difference }: CardRow) => Math.abs(difference);
  const kept = new Set(rows.toSorted((a, b) => size(b) - size(a)).slice(0, MOST_ROWS));
  return rows.filter((row) => kept.has(row));
}

function nameOf(row: CardRow, { rods, hidden }: MassCard): string {
  const name = row.name === '' ? row.id : row.name;
  if (rods.includes(row)) return t('report.rodName', { name });
  return hidden.includes(row) ? t('report.hiddenName', { name }) : name;
}

const COLUMNS = (): TableColumn[] => [
  { title: t('report.part'), align: 'left', share: 2.6 },
  { title: t('report.partKind'), align: 'left', share: 1.3 },
  { title: t('report.mass'), align: 'right', share: 1 },
  { title: t('report.material'), align: 'left', share: 2.3 },
  { title: t('report.station'), align: 'right', share: 1.1 },
  { title: t('report.difference'), align: 'right', share: 1.5 },
  { title: t('report.share'), align: 'right', share: 0.9 },
  { title: t('report.massFrom'), align: 'left', share: 1.6 },
];

function partCells(row: CardRow, name: string, { design, model, units }: ReportInputs): string[] {
  const placed = model.placed(row.id);
  return [
    name,
    partText(`part.${row.kind}.label`, partType(row.kind).label),
    displayRailMass(row.mass, units),
    placed ? materialNames(placed.part, placed.values, materialsOf(design)).join(', ') : '',
    stationText(row.centre, units),
    secondMomentText(row.difference, units),
    shareText(row.share),
    row.origins.map((origin) => t(`massCard.${origin}`)).join(', '),
  ];
}

/** Materials by name, each once, in the order of the part's numbers. */
export function materialNames(
  part: Parameters<typeof materialText>[0],
  values: Parameters<typeof isUsed>[1],
  materials: Materials,
): string[] {
  const { parameters } = partType(part.kind);
  const names = Object.entries(parameters)
    .filter(([, parameter]) => materialKeyOf(parameter) !== undefined && isUsed(parameter, values))
    .map(([key]) => materialText(part, key, materials));
  return [...new Set(names)];
}

function restCells({ rows, ...card }: MassCard, units: DisplayUnits): string[] {
  const kept = new Set(tellable({ rows, ...card }));
  const rest = rows.filter((row) => !kept.has(row));
  const mass = rest.reduce((sum, row) => sum + row.mass, 0);
  const difference = rest.reduce((sum, row) => sum + row.difference, 0);
  const share = rest.reduce((sum, row) => sum + (row.share ?? 0), 0);
  return [
    t('report.others', { count: rest.length }),
    '',
    displayRailMass(mass, units),
    '',
    '',
    secondMomentText(difference, units),
    shareText(share),
    '',
  ];
}

function sumCells({ total, absolute }: MassCard, units: DisplayUnits): string[] {
  return [
    t('report.sum'),
    '',
    displayRailMass(total.mass, units),
    '',
    stationText(total.centre, units),
    secondMomentText(total.difference, units),
    shareText(absolute > 0 ? (100 * total.difference) / absolute : null),
    '',
  ];
}

function stationText(centre: CardRow['centre'], units: DisplayUnits): string {
  return centre ? `${displayPosition(centre[0], units)}\u00a0${units.length}` : '\u2013';
}

function shareText(share: number | null): string {
  if (share === null) return '\u2013';
  return `${share > 0 ? '+' : ''}${fixed(share, 1)}\u00a0%`;
}
