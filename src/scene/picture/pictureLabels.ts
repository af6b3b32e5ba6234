import type { PlacedLabel } from '../drawing/labels';
import type { Palette } from '../drawing/palette';

/** Letters and marks in CSS pixels; the words' sizes are those of `.stage-label` in stage.css. */
const PADDING = 4;
const RIM = 1.5;

/** Words and marks of the stage on a picture of it, in a context whose unit is the CSS pixel. */
export function paintLabels(
  context: CanvasRenderingContext2D,
  labels: readonly PlacedLabel[],
  palette: Palette,
  font: string,
): void {
  for (const label of labels) {
    const { classList } = label.element;
    if (classList.contains('stage-label')) paintWords(context, label, palette, font);
    else if (classList.contains('stage-mark')) paintMark(context, label, palette);
    else if (classList.contains('stage-centre')) paintCentre(context, label, palette);
  }
}

function paintWords(
  context: CanvasRenderingContext2D,
  { element, left, top, width, height }: PlacedLabel,
  palette: Palette,
  font: string,
): void {
  const { classList, textContent } = element;
  const [accent, warning] = [
    classList.contains('stage-label-accent'),
    classList.contains('stage-label-warning'),
  ];
  const quiet = classList.contains('stage-label-quiet');
  context.globalAlpha = 0.78;
  context.fillStyle = palette.surface;
  context.fillRect(left, top, width, height);
  context.globalAlpha = 1;
  context.font = `${accent || warning ? 600 : 400} ${accent ? 12 : 11}px ${font}`;
  context.textBaseline = 'middle';
  context.textAlign = 'left';
  context.fillStyle = warning ? palette.warning : quiet ? palette.inkQuiet : palette.ink;
  context.fillText(textContent ?? '', left + PADDING, top + height / 2 + 0.5, width - 2 * PADDING);
}

/** Filled at rest, hollow at flee, half filled where the two meet. */
function paintMark(
  context: CanvasRenderingContext2D,
  { element, left, top, width, height }: PlacedLabel,
  palette: Palette,
): void {
  const [x, y, r] = [left + width / 2, top + height / 2, width / 2];
  disc(context, x, y, r + RIM, palette.surface);
  disc(context, x, y, r, palette.ink);
  if (element.classList.contains('stage-mark-rest')) return;
  if (element.classList.contains('stage-mark-flee')) {
    disc(context, x, y, r - 2, palette.surface);
    return;
  }
  context.beginPath();
  context.arc(x, y, r - 2, -Math.PI / 2, Math.PI / 2);
  context.fillStyle = palette.surface;
  context.fill();
}

/** The centre of mass: two quarters filled. */
function paintCentre(
  context: CanvasRenderingContext2D,
  { left, top, width, height }: PlacedLabel,
  palette: Palette,
): void {
  const [x, y, r] = [left + width / 2, top + height / 2, width / 2];
  disc(context, x, y, r + RIM, palette.surface);
  disc(context, x, y, r, palette.ink);
  disc(context, x, y, r - RIM, palette.surface);
  context.fillStyle = palette.ink;
  for (const from of [-Math.PI / 2, Math.PI / 2]) {
    context.beginPath();
    context.moveTo(x, y);
    context.arc(x, y, r - RIM, from, from + Math.PI / 2);
    context.fill();
  }
}

function disc(
  context: CanvasRenderingContext2D,
  x: number,
  y: number,
  r: number,
  colour: string,
): void {
  context.beginPath();
  context.arc(x, y, r, 0, 2 * Math.PI);
  context.fillStyle = colour;
  context.fill();
}
