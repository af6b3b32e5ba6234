import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { jsPDF } from 'jspdf';
import type { Box, TextEntity } from '../../../src/output/drawing/sheetTypes';
import { CAPITAL } from '../../../src/output/drawing/textSize';

/** What jsPDF's own reader of TrueType files knows of a face; units of the em (head.unitsPerEm of them). */
interface Face {
  readonly head: { readonly unitsPerEm: number };
  readonly hmtx: { forGlyph(glyph: number): { readonly advance: number } };
  readonly glyf: {
    glyphFor(
      glyph: number,
    ): { readonly yMin: number; readonly yMax: number; readonly xMin: number } | null;
  };
  characterToGlyph(code: number): number;
}

const FACE_FILE = new URL('../../../src/output/fonts/LiberationSans-Regular.ttf', import.meta.url);

function readFace(): Face {
  const pdf = new jsPDF();
  pdf.addFileToVFS('face.ttf', readFileSync(fileURLToPath(FACE_FILE)).toString('base64'));
  pdf.addFont('face.ttf', 'face', 'normal');
  pdf.setFont('face', 'normal');
  return (pdf.getFont() as unknown as { metadata: Face }).metadata;
}

const FACE = readFace();

/**
 * Where a text's ink lies on the paper: advances and glyph boxes of the font file that the PDF embeds, not the widths that
 * the program lays out with. The font's size is the height of a capital over `CAPITAL`, as in every renderer.
 */
export function inkBox({ x, y, height, text, anchor, turned }: TextEntity): Box {
  const size = height / CAPITAL / FACE.head.unitsPerEm;
  let [advance, low, high] = [0, 0, 0];
  for (const sign of text) {
    const glyph = FACE.characterToGlyph(sign.codePointAt(0) ?? 0);
    advance += FACE.hmtx.forGlyph(glyph).advance * size;
    const outline = FACE.glyf.glyphFor(glyph);
    low = Math.min(low, (outline?.yMin ?? 0) * size);
    high = Math.max(high, (outline?.yMax ?? 0) * size);
  }
  const start = -{ start: 0, middle: 0.5, end: 1 }[anchor] * advance;
  return turned
    ? { x0: x - high, x1: x - low, y0: y + start, y1: y + start + advance }
    : { x0: x + start, x1: x + start + advance, y0: y + low, y1: y + high };
}
