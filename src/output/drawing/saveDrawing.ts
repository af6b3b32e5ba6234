import type { Design } from '../../design/design';
import { serializeDesign } from '../../design/file';
import { svgWithDesign } from '../../state/carried/svgWithDesign';
import { fileStem } from '../../ui/fileStem';
import { type FileKind, KINDS, saveFile } from '../files/saveFile';
import { fetchFont } from '../pdfFonts';
import { sheetSvg } from './sheetSvg';
import type { Sheet } from './sheetTypes';

export const DRAWING_FILES = ['pdf', 'dxf', 'svg'] as const;
export type DrawingFile = (typeof DRAWING_FILES)[number];

/** The writers of PDF and DXF, and the face that a PDF carries, are fetched only now. */
const WRITERS: Readonly<
  Record<DrawingFile, readonly [FileKind, (sheet: Sheet) => BlobPart | Promise<BlobPart>]>
> = {
  svg: [KINDS.svg, sheetSvg],
  dxf: [
    { extension: '.dxf', mimeType: 'image/vnd.dxf', description: 'DXF' },
    async (sheet) => {
      const { sheetDxf } = await import('./sheetDxf');
      return sheetDxf(sheet);
    },
  ],
  pdf: [
    { extension: '.pdf', mimeType: 'application/pdf', description: 'PDF' },
    async (sheet) => {
      const [{ sheetPdf }, font] = await Promise.all([import('./sheetPdf'), fetchFont('regular')]);
      return sheetPdf(sheet, font, new Date());
    },
  ],
};

/** Saves the sheet as a file named by design and part, the design in it if it `carries` one, and says what came of it. */
export function saveDrawing(
  design: Design,
  sheet: Sheet,
  file: DrawingFile,
  carries: boolean,
): Promise<string> {
  const [kind, make] = WRITERS[file];
  const stem = `${fileStem(design.name, 'head')}-${fileStem(sheet.title, 'part')}`;
  if (file === 'svg' && carries) {
    return saveFile(stem, kind, () => svgWithDesign(sheetSvg(sheet), serializeDesign(design)));
  }
  return saveFile(stem, kind, () => make(sheet));
}
