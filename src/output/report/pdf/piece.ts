import type { PdfText, TextStyle } from './pdfText';

/** Something that is not cut: a paragraph, a whole table, a row of pictures. Heights in mm, the gap below included. */
export interface Piece {
  readonly height: number;
  /** Must not stand last on a page. */
  readonly keepWithNext: boolean;
  draw(top: number): void;
}

/** Where pieces are set: the left edge and width of the text, and the scale of its type. */
export interface Frame {
  readonly pdf: PdfText;
  readonly left: number;
  readonly width: number;
  /** Height of a page between its margins. */
  readonly height: number;
  /** 1: body of 8.6 points. */
  readonly scale: number;
}

export const QUIET = '#59605c';
export const RULE = '#868d88';
export const HAIR = '#d0d4d0';
export const COLUMN_GAP = 5;

export function bodyStyle({ scale }: Frame): TextStyle {
  return { size: 8.6 * scale };
}

export function smallStyle({ scale }: Frame): TextStyle {
  return { size: 7.8 * scale };
}
