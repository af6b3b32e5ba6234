import { t } from '../../messages';
import type { Figure } from '../report/figures/figure';
import { paintFigure } from './figurePaint';

/** A drawing in pixels, in the page's own font. Throws with the reason where the browser draws no picture. */
export async function figurePng(
  figure: Figure,
  { width, height }: { readonly width: number; readonly height: number },
): Promise<Uint8Array> {
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const paper = canvas.getContext('2d');
  const none = () => new Error(t('files.noPicture', { width, height }));
  if (!paper) throw none();
  const font = getComputedStyle(document.body).fontFamily;
  await document.fonts.ready;
  // The last row of pixels may be a part of one: white as the ground.
  paper.fillStyle = '#ffffff';
  paper.fillRect(0, 0, width, height);
  paintFigure(paper, figure, width / figure.width, font);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!blob) throw none();
  return new Uint8Array(await blob.arrayBuffer());
}
