import type { Design, Part } from '../../design/design';
import { MEASURED_LIMITS } from '../../design/measured';
import { materialNamed, materialsOf, valuesOf } from '../../design/resolve';
import { fail, type Result, succeed } from '../../engine/result';
import { INCH_MM } from '../../engine/units';
import { localNumber } from '../../messages/numbers';
import { phrase } from '../../messages/phrases';
import { type GeneralClass, lengthRows } from '../../neutralise/closeness/iso2768';
import { toleranceValues } from '../../neutralise/closeness/tolerances';
import { isUsed, parameterUnit } from '../../parts/contract';
import { findMaterial } from '../../parts/materials';
import { partType } from '../../parts/registry';
import { fixed, significant } from '../../state/quantities';
import { materialName } from '../../state/words/materialText';
import { line, moved } from './arcs';
import { proofNote } from './massProof';
import { massWindow } from './massWindow';
import { FORMATS, frameOf, SCALES } from './paper';
import type { Piece } from './piece';
import { pieceOf } from './pieces/drawnKinds';
import { drawingNumber, revisionOf } from './revision';
import { t } from './roomText';
import type { Box, Entity, LengthUnit, Projection, Scale, Sheet, SheetFormat } from './sheetTypes';
import { sizeWriter } from './sizeWriter';
import { notesStrip, titleBlock } from './titleBlock';
import { endBlock, mainBlock, type ViewBlock } from './viewBlocks';

export interface SheetChoice {
  /** Name of a format; 'auto' takes the smallest on which the part is shown well. */
  readonly format: string;
  readonly projection: Projection;
  readonly unit: LengthUnit;
  /** Date of issue, as it is to be printed (ISO 8601). */
  readonly date: string;
  /** Smallest division of the scale that the part will be proved on, g; as a small scale has where none is given. */
  readonly scaleStep?: number;
}

/** Between the views' outermost lines, and round them. */
const GAP = 10;
const AIR = 4;

/**
 * The workshop drawing of a part that `canDraw`: half section and end view at the largest scale of ISO 5455 that fits,
 * dimensions, notes and title block. Fails where the sheet is too small at any scale.
 */
export function drawSheet(
  design: Design,
  part: Part,
  choice: SheetChoice,
): Result<Sheet, 'tooBig'> {
  const values = valuesOf(part, materialsOf(design));
  const piece = pieceOf(part.kind, values, sizeWriter(design, part, choice.unit));
  const notes = notesOf(design, part, piece, choice);
  const fits = FORMATS.flatMap((format) => {
    if (choice.format !== 'auto' && choice.format !== format.name) return [];
    const fit = fitOn(format, piece, notes, choice.projection);
    return fit ? [fit] : [];
  });
  const chosen = bestOf(fits, piece);
  if (!chosen) return fail('tooBig');
  const { format, frame, scale, strip, origin } = chosen;
  const title = titleBlock(frame, {
    part: part.name,
    design: design.name,
    number: drawingNumber(design, part),
    revision: revisionOf(design, part),
    date: choice.date,
    format: format.name,
    scale: scale.name,
    material: materialText(design, part),
    mass: massText(design, part),
    projection: choice.projection,
  });
  return succeed({
    format,
    scale,
    unit: choice.unit,
    projection: choice.projection,
    title: part.name,
    origin,
    frame,
    entities: [...frameLines(frame), ...chosen.views, ...strip, ...title],
    dimensions: piece.sizes.map(({ feature, text }) => ({ feature, text })),
  });
}

interface Fit {
  readonly format: SheetFormat;
  readonly frame: Box;
  readonly scale: Scale;
  readonly views: readonly Entity[];
  readonly strip: readonly Entity[];
  readonly origin: readonly [number, number];
}

/** The largest scale at which both views with all that stands round them fit above the notes. */
function fitOn(
  format: SheetFormat,
  piece: Piece,
  notes: readonly string[],
  projection: Projection,
): Fit | null {
  const frame = frameOf(format);
  const { entities: strip, height } = notesStrip(frame, notes);
  const area = {
    x0: frame.x0 + AIR,
    y0: frame.y0 + height + AIR,
    x1: frame.x1 - AIR,
    y1: frame.y1 - AIR,
  };
  for (const scale of SCALES) {
    const main = mainBlock(piece, scale.factor);
    const end = endBlock(piece, scale.factor);
    const placed = sideBySide(main, end, projection, area);
    if (placed) return { format, frame, scale, strip, ...placed };
  }
  return null;
}

/** Seen from the left: drawn at the right in first-angle, at the left in third-angle projection (ISO 5456-2). */
function sideBySide(main: ViewBlock, end: ViewBlock, projection: Projection, area: Box) {
  const [left, right] = projection === 'first' ? [main, end] : [end, main];
  const width = left.box.x1 - left.box.x0 + GAP + right.box.x1 - right.box.x0;
  const low = Math.min(main.box.y0, end.box.y0);
  const high = Math.max(main.box.y1, end.box.y1);
  const spare = [area.x1 - area.x0 - width, area.y1 - area.y0 - (high - low)];
  if (spare[0] < 0 || spare[1] < 0) return null;
  const leftX = area.x0 + spare[0] / 2 - left.box.x0;
  const rightX = leftX + left.box.x1 + GAP - right.box.x0;
  const y = area.y0 + spare[1] / 2 - low;
  const [mainX, endX] = projection === 'first' ? [leftX, rightX] : [rightX, leftX];
  return {
    views: [...moved(main.entities, mainX, y), ...moved(end.entities, endX, y)],
    origin: [mainX, y] as const,
  };
}

/** Shown well: its larger side this long on paper, and its thinnest stretch this thick. */
const SHOWN_WELL = 35;
const THIN_WELL = 5;

function bestOf(fits: readonly Fit[], { outer }: Piece): Fit | undefined {
  const largest = Math.max(...outer.map(([u, r]) => Math.max(u, 2 * r)));
  const thinnest = Math.min(...outer.filter(([, r]) => r > 0).map(([, r]) => 2 * r));
  const well = fits.find(
    ({ scale }) => largest * scale.factor >= SHOWN_WELL && thinnest * scale.factor >= THIN_WELL,
  );
  return well ?? fits.toSorted((a, b) => b.scale.factor - a.scale.factor)[0];
}

function frameLines({ x0, y0, x1, y1 }: Box): Entity[] {
  return [
    line('frame', x0, y0, x1, y0),
    line('frame', x1, y0, x1, y1),
    line('frame', x1, y1, x0, y1),
    line('frame', x0, y1, x0, y0),
  ];
}

const CLASS_LETTERS = { fine: 'f', medium: 'm', coarse: 'c' } as const;

function notesOf(
  design: Design,
  part: Part,
  piece: Piece,
  { unit, scaleStep }: SheetChoice,
): string[] {
  const { generalClass, densityPercent } = toleranceValues(design.tolerance);
  const general = part.catalogue ? 'none' : generalClass;
  return [
    generalNote(general, unit, largestOf(design, part)),
    ...piece.remarks,
    ...madeNotes(design, part, piece, unit),
    ...(part.catalogue
      ? [t('drawing.noteTapers', { standard: catalogueText(part.catalogue) })]
      : []),
    ...(part.catalogue
      ? []
      : [
          proofNote(massWindow(design, part), scaleStep ?? MEASURED_LIMITS.massStepGrams.standard),
          t('drawing.noteDensity', { percent: densityPercent }),
        ]),
    t('drawing.noteCaution'),
    ...(design.note ? [design.note] : []),
  ];
}

/**
 * The general class; in inches with its numbers, since there the count of decimals is read as a tolerance (common practice of
 * inch shops) and the standard's table is in mm. A deviation is rounded down.
 */
function generalNote(general: GeneralClass, unit: LengthUnit, largestMm: number): string {
  const words = t(unit === 'mm' ? 'drawing.mm' : 'drawing.in');
  if (general === 'none') return t('drawing.noteNoGeneral', { unit: words });
  const letter = CLASS_LETTERS[general];
  if (unit === 'mm') return t('drawing.noteGeneral', { unit: words, letter });
  const rows = lengthRows(largestMm, general).map(({ to, deviation }) =>
    t('drawing.generalRow', {
      deviation: fixed(Math.floor((deviation / INCH_MM) * 1e4) / 1e4, 4),
      size: fixed(to / INCH_MM, 3),
    }),
  );
  return t('drawing.noteGeneralInch', { letter, rows: rows.join(', ') });
}

/** What the largest dimension on a part's sheet is below: its two greatest lengths end to end, mm. */
function largestOf(design: Design, part: Part): number {
  const values = valuesOf(part, materialsOf(design));
  const { parameters } = partType(part.kind);
  const lengths = Object.keys(parameters).map((name) =>
    parameterUnit(parameters[name]) === 'mm' && isUsed(parameters[name], values)
      ? Number(values[name]) || 0
      : 0,
  );
  const [most, next = 0] = lengths.toSorted((a, b) => b - a);
  return most + next;
}

/** What the maker must know beside the sizes; a bought part has its own standard's. */
function madeNotes(design: Design, part: Part, piece: Piece, unit: LengthUnit): string[] {
  if (part.catalogue) return [t('drawing.noteBought')];
  const mm = unit === 'mm';
  return [
    t('drawing.noteSurface', { rough: mm ? localNumber('3.2 \u00b5m') : '125 \u00b5in' }),
    t('drawing.noteEdges', { edge: localNumber(mm ? '0.1 mm' : '0.004 in') }),
    ...(piece.threads.length > 0
      ? [t('drawing.noteTrue', { true: localNumber(mm ? '0.05 mm' : '0.002 in') })]
      : []),
    ...((design.tolerance?.own ?? []).some((row) => row.part === part.id)
      ? []
      : [t('drawing.noteWide')]),
    t('drawing.noteMatch'),
  ];
}

function catalogueText({ standard, size, lengthMm }: NonNullable<Part['catalogue']>): string {
  return (
    localNumber(`${phrase(standard)} ${size}`) +
    (lengthMm === undefined ? '' : localNumber(` \u00d7 ${lengthMm}`))
  );
}

function materialText(design: Design, part: Part): string {
  const materials = materialsOf(design);
  const density = localNumber(`${valuesOf(part, materials).densityKgM3} kg/m\u00b3`);
  const id = materialNamed(part, partType(part.kind).parameters.densityKgM3);
  const material = id === undefined ? undefined : findMaterial(id, materials);
  return material ? `${materialName(material.id, materials)}, ${density}` : density;
}

function massText(design: Design, part: Part): string {
  return `${significant(massWindow(design, part).nominal)} g`;
}
