import type { Design } from '../../design/design';
import { serializeDesign } from '../../design/file';
import type { NumberLimits } from '../../design/limits';
import { INCH_MM, mmFromMetres } from '../../engine/units';
import { t } from '../../messages';
import { pngWithDesign } from '../../state/carried/pngDesign';
import { svgWithDesign } from '../../state/carried/svgWithDesign';
import { fixed } from '../../state/quantities';
import type { Session } from '../../state/session';
import type { DisplayUnits } from '../../state/settings';
import { shownText, shownUnit } from '../../state/shownUnits';
import { signedDegrees } from '../../state/words/pitchText';
import { figurePng } from '../data/figurePng';
import { figureSheet, type SheetWords } from '../data/figureSheet';
import { figureSvg, pictureSvg } from '../data/figureSvg';
import { withDensity } from '../data/pngSize';
import { chartFigure } from '../report/figures/chartFigure';
import { dialFigure } from '../report/figures/dialFigure';
import type { Figure } from '../report/figures/figure';
import { type Head, headNow } from './useRestingHead';

export const PICTURES = ['stage', 'dial', 'chart'] as const;
/** Width by height of pictures of the stage. */
export const SHAPES = { '16:10': 1.6, '4:3': 4 / 3, '1:1': 1, '3:4': 3 / 4 } as const;
export const DENSITIES = [96, 150, 300, 600] as const;
/** Of a picture's longer side, pixels: what browsers draw without fail. */
export const PIXELS = { low: 64, high: 4096 } as const;
/** Of the width of a drawing in SVG, mm. */
export const MILLIMETRES = { low: 10, high: 2000 } as const;

/** What can be typed for the width at all: finer than any density here draws, and wider. */
export const TYPED = {
  mm: { min: 1, max: 10_000, unit: 'mm' },
  '1': { min: 1, max: 100_000, unit: '1', whole: true },
} as const satisfies Record<string, NumberLimits>;

export interface PictureChoice {
  readonly which: (typeof PICTURES)[number];
  readonly format: 'png' | 'svg';
  readonly widthMm: number;
  /** Pixels an inch on paper. */
  readonly density: number;
  readonly shape: keyof typeof SHAPES;
  readonly words: boolean;
  /** Whether the design rides in the file, so that it opens here again. */
  readonly carries: boolean;
}

export const FIRST_PICTURE: PictureChoice = {
  which: 'stage',
  format: 'png',
  widthMm: 160,
  density: 300,
  shape: '16:10',
  words: true,
  carries: true,
};

export interface PictureSize {
  readonly width: number;
  readonly height: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export function pictureSize(choice: PictureChoice, figure: Figure | null): PictureSize {
  const { widthMm, density, shape } = choice;
  const aspect = figure ? figure.width / figure.height : SHAPES[shape];
  const width = pixelsOf(widthMm, density);
  return { width, height: Math.round(width / aspect), widthMm, heightMm: widthMm / aspect };
}

export function mmOf(pixels: number, density: number): number {
  return (pixels / density) * INCH_MM;
}

export function pixelsOf(lengthMm: number, density: number): number {
  return Math.round((lengthMm / INCH_MM) * density);
}

/** Whether its pixels count: drawings in SVG have none. */
export function hasPixels({ which, format }: PictureChoice): boolean {
  return which === 'stage' || format === 'png';
}

/** What is wrong with the size; null where it can be drawn. */
export function sizeFault(
  choice: PictureChoice,
  { width, height }: PictureSize,
  units: DisplayUnits,
): string | null {
  const { widthMm } = choice;
  if (!hasPixels(choice)) {
    const fits = widthMm >= MILLIMETRES.low && widthMm <= MILLIMETRES.high;
    return fits ? null : widthFault(widthMm, units);
  }
  const { low, high } = PIXELS;
  if (width >= low && Math.max(width, height) <= high) return null;
  // Of a tall picture the height ends it first.
  const highest = Math.floor(high * Math.min(1, width / height));
  return t('files.widthFault', { low, high: highest, value: width });
}

function widthFault(widthMm: number, units: DisplayUnits): string {
  const unit = shownUnit('mm', units);
  const [low, high] = [shownText(MILLIMETRES.low, unit), shownText(MILLIMETRES.high, unit)];
  return t('files.widthLengthFault', { low, high, value: shownText(widthMm, unit) });
}

/** "101.6 \u00d7 63.5 mm", or in inches. */
export function onPaperText({ widthMm, heightMm }: PictureSize, { length }: DisplayUnits): string {
  const text = (mm: number) => (length === 'mm' ? fixed(mm, 1) : fixed(mm / INCH_MM, 2));
  return `${text(widthMm)} \u00d7 ${text(heightMm)}\u00a0${length}`;
}

/** The drawn picture on its sheet; null for the stage, which is taken. */
export function sheetOf(head: Head, units: DisplayUnits, choice: PictureChoice): Figure | null {
  const { which, words } = choice;
  if (which === 'stage') return null;
  const { reading, pitchDeg } = head;
  const figure =
    which === 'dial' ? dialFigure(reading, pitchDeg) : chartFigure(reading, units, null);
  return figureSheet(figure, words ? wordsOf(head, which) : null);
}

function wordsOf({ design, pitchDeg, reading }: Head, which: 'dial' | 'chart'): SheetWords {
  // The chart says itself what it shows.
  const what = which === 'dial' ? [t('files.dialTitle', { pitch: signedDegrees(pitchDeg) })] : [];
  const conditions = t('files.rotorLine', {
    rpm: fixed(design.rotor.speedRpm, 0),
    used: fixed(reading.usedPitchDeg, 0),
  });
  return { title: design.name, lines: [...what, conditions] };
}

/** The file's content. Throws with the reason where the browser draws no picture. */
export async function pictureFile(session: Session, choice: PictureChoice): Promise<BlobPart> {
  const head = headNow(session);
  const { units } = session.store.getState().settings;
  const sheet = sheetOf(head, units, choice);
  const { name } = head.design;
  const size = pictureSize(choice, sheet);
  const fault = sizeFault(choice, size, units);
  if (fault) throw new Error(fault);
  if (choice.format === 'svg') {
    const svg = sheet ? figureSvg(sheet, name, size.widthMm) : stageSvg(session, name, size);
    return choice.carries ? svgWithDesign(svg, serializeDesign(head.design)) : svg;
  }
  const png = sheet ? await figurePng(sheet, size) : stagePng(session, size);
  return finishedPng(png, choice, head.design);
}

function stageSvg({ stageCamera }: Session, title: string, size: PictureSize): string {
  return pictureSvg(taken(stageCamera, size), title, size.widthMm);
}

function stagePng({ stageCamera }: Session, size: PictureSize): Uint8Array {
  const { dataUrl } = taken(stageCamera, size);
  return Uint8Array.from(atob(dataUrl.split(',')[1]), (letter) => letter.charCodeAt(0));
}

function taken(stageCamera: Session['stageCamera'], { width, height }: PictureSize) {
  if (!stageCamera.ready()) throw new Error(t('files.noStage'));
  const picture = stageCamera.take(width, height);
  if (!picture) throw new Error(t('files.noPicture', { width, height }));
  return picture;
}

/** With its size on paper and, where that is wanted, the design. */
function finishedPng(png: Uint8Array, choice: PictureChoice, design: Design): BlobPart {
  const sized = withDensity(png, (choice.density / INCH_MM) * mmFromMetres(1));
  const whole = choice.carries ? pngWithDesign(sized, serializeDesign(design)) : sized;
  return whole as Uint8Array<ArrayBuffer>;
}
