import { type MessageKey } from '../../messages';
import { spokenLanguage } from '../../messages/languages';
import { line } from './arcs';
import { formatText } from './formatText';
import { BLOCK_WIDTH } from './paper';
import { t } from './roomText';
import type { Box, Entity, Projection } from './sheetTypes';
import { fittedText, wrapText } from './textSize';

export interface TitleTexts {
  readonly part: string;
  readonly design: string;
  readonly number: string;
  readonly revision: string;
  readonly date: string;
  readonly format: string;
  readonly scale: string;
  readonly material: string;
  readonly mass: string;
  readonly projection: Projection;
}

interface Cell {
  readonly label: MessageKey;
  /** Share of the row. */
  readonly width: number;
  readonly text: string;
  readonly height?: number;
  readonly symbol?: Projection;
}

const ROWS = [7.5, 10, 7.5] as const;
export const BLOCK_HEIGHT = ROWS[0] + ROWS[1] + ROWS[2];
const LABEL = 1.6;
const VALUE = 2.5;
const TITLE = 3.5;
const LEAST = 1.4;
const PAD = 1;

/** The data fields of ISO 7200 in the lower right corner of the frame; names to be filled in by hand are left empty. */
export function titleBlock(frame: Box, texts: TitleTexts): Entity[] {
  const width = Math.min(BLOCK_WIDTH, frame.x1 - frame.x0);
  const x0 = frame.x1 - width;
  const entities: Entity[] = [];
  let top = frame.y0 + BLOCK_HEIGHT;
  rowsOf(texts).forEach((cells, i) => {
    const height = ROWS[i];
    entities.push(line('frame', x0, top, frame.x1, top));
    const whole = cells.reduce((sum, cell) => sum + cell.width, 0);
    let x = x0;
    for (const cell of cells) {
      const wide = (cell.width / whole) * width;
      if (x > x0 || x0 > frame.x0 + 1e-6) entities.push(line('frame', x, top, x, top - height));
      entities.push(...cellEntities(cell, x, top, wide, height));
      x += wide;
    }
    top -= height;
  });
  return entities;
}

function rowsOf(texts: TitleTexts): readonly (readonly Cell[])[] {
  return [
    [
      { label: 'drawing.cellOwner', width: 46, text: '' },
      { label: 'drawing.cellDrawn', width: 36, text: '' },
      { label: 'drawing.cellApproved', width: 36, text: '' },
      { label: 'drawing.cellType', width: 32, text: t('drawing.cellTypeText') },
      { label: 'drawing.cellSheet', width: 14, text: '1/1' },
      { label: 'drawing.cellLanguage', width: 16, text: spokenLanguage() },
    ],
    [
      { label: 'drawing.cellTitle', width: 66, text: texts.part, height: TITLE },
      { label: 'drawing.cellMaterial', width: 64, text: texts.material },
      { label: 'drawing.cellMass', width: 26, text: texts.mass },
      { label: 'drawing.cellProjection', width: 24, text: '', symbol: texts.projection },
    ],
    [
      { label: 'drawing.cellDesign', width: 52, text: texts.design },
      { label: 'drawing.cellNumber', width: 42, text: texts.number },
      { label: 'drawing.cellRevision', width: 22, text: texts.revision },
      { label: 'drawing.cellDate', width: 24, text: texts.date },
      { label: 'drawing.cellScale', width: 14, text: texts.scale },
      { label: 'drawing.cellFormat', width: 26, text: formatText(texts.format) },
    ],
  ];
}

function cellEntities(cell: Cell, x: number, top: number, width: number, height: number): Entity[] {
  const label = fittedText(t(cell.label), LABEL, width - 2 * PAD, 1);
  const base = { shape: 'text', layer: 'text', x: x + PAD, anchor: 'start' } as const;
  const entities: Entity[] = [{ ...base, ...label, y: top - 0.7 - LABEL }];
  if (cell.symbol) {
    entities.push(...projectionSymbol(cell.symbol, x + width / 2, top - height / 2 - 1.3));
  }
  if (cell.text !== '') {
    const text = fittedText(cell.text, cell.height ?? VALUE, width - 2 * PAD, LEAST);
    entities.push({ ...base, ...text, y: top - height + 0.3 + 0.35 * text.height });
  }
  return entities;
}

/**
 * A truncated cone, its small end to the left, and the view on that end: at the right in first-angle, at the left in
 * third-angle projection (ISO 5456-2).
 */
function projectionSymbol(projection: Projection, x: number, y: number): Entity[] {
  const [small, large, long] = [1.2, 2.4, 4.4];
  const sign = projection === 'first' ? 1 : -1;
  const cone = x - sign * 3.4;
  const circles = x + sign * 3.4;
  const [left, right] = [cone - long / 2, cone + long / 2];
  const edge = (x1: number, y1: number, x2: number, y2: number) =>
    line('text', x1, y + y1, x2, y + y2);
  return [
    edge(left, -small, left, small),
    edge(right, -large, right, large),
    edge(left, small, right, large),
    edge(left, -small, right, -large),
    line('centre', left - 0.8, y, right + 0.8, y),
    { shape: 'circle', layer: 'text', x: circles, y, r: small },
    { shape: 'circle', layer: 'text', x: circles, y, r: large },
    line('centre', circles - large - 0.8, y, circles + large + 0.8, y),
    line('centre', circles, y - large - 0.8, circles, y + large + 0.8),
  ];
}

const NOTE = 2.1;
const NOTE_LEVEL = 3.7;
const COLUMN_GAP = 6;
/** Length of the bar that shows whether the sheet was printed in its own size, mm. */
export const CHECK_BAR = 50;
const BAR_ROOM = 7;
/** Longest note, in lines of its column. */
const MOST_LINES = 3;

/** Notes in two columns above the title block with the check bar under them; `height` is what they take up. */
export function notesStrip(
  frame: Box,
  notes: readonly string[],
): { readonly entities: Entity[]; readonly height: number } {
  const width = Math.min(BLOCK_WIDTH, frame.x1 - frame.x0);
  const x0 = frame.x1 - width + 2;
  const column = (width - 4 - COLUMN_GAP) / 2;
  const blocks = notes.map((note) => shortened(wrapText(note, NOTE, column), column));
  const columns = balanced(blocks);
  const lines = Math.max(...columns.map((one) => one.length));
  const bottom = frame.y0 + BLOCK_HEIGHT;
  const top = bottom + BAR_ROOM + lines * NOTE_LEVEL + 1;
  const texts = columns.flatMap((one, k) =>
    one.map(
      (text, i): Entity => ({
        shape: 'text',
        layer: 'text',
        x: x0 + k * (column + COLUMN_GAP),
        y: top - NOTE_LEVEL * (i + 1),
        height: NOTE,
        text,
        anchor: 'start',
      }),
    ),
  );
  return {
    entities: [...texts, ...checkBar(x0, bottom + 2)],
    height: top - frame.y0,
  };
}

function shortened(lines: string[], column: number): string[] {
  if (lines.length <= MOST_LINES) return lines;
  const last = fittedText(`${lines[MOST_LINES - 1]} \u2026`, NOTE, column, NOTE);
  return [...lines.slice(0, MOST_LINES - 1), last.text];
}

/** Whole notes in order, the first column as long as the second or longer. */
function balanced(blocks: readonly (readonly string[])[]): [string[], string[]] {
  const whole = blocks.flat().length;
  let count = 0;
  const first: string[] = [];
  const second: string[] = [];
  for (const block of blocks) {
    (count < whole / 2 ? first : second).push(...block);
    count += block.length;
  }
  return [first, second];
}

function checkBar(x: number, y: number): Entity[] {
  const ticks = Array.from({ length: 4 }, (_, k) => {
    const at = x + ((k + 1) * CHECK_BAR) / 5;
    return line('check', at, y, at, y + 1.5);
  });
  return [
    line('check', x, y, x + CHECK_BAR, y),
    line('check', x, y, x, y + 3),
    line('check', x + CHECK_BAR, y, x + CHECK_BAR, y + 3),
    ...ticks,
    {
      shape: 'text',
      layer: 'check',
      x: x + CHECK_BAR + 2,
      y,
      height: NOTE,
      text: t('drawing.check'),
      anchor: 'start',
    },
  ];
}
