import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A piece of text in a PDF as an independent reader finds it: mm from the upper left of its page. */
export interface FoundText {
  readonly page: number;
  readonly text: string;
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  readonly width: number;
  readonly size: number;
}

export interface FoundPdf {
  readonly pages: readonly { readonly widthMm: number; readonly heightMm: number }[];
  readonly texts: readonly FoundText[];
  /** Straight two-point lines, mm. */
  readonly lines: readonly { readonly page: number; readonly length: number; readonly y: number }[];
  readonly images: number;
  /** Addresses that places on the pages open. */
  readonly links: readonly string[];
}

const MM = 25.4 / 72;

/** Reads a PDF with pdf.js. */
export async function readPdf(bytes: ArrayBuffer): Promise<FoundPdf> {
  const doc = await getDocument({ data: new Uint8Array(bytes.slice(0)), verbosity: 0 }).promise;
  const pages: { widthMm: number; heightMm: number }[] = [];
  const texts: FoundText[] = [];
  const lines: { page: number; length: number; y: number }[] = [];
  const links: string[] = [];
  let images = 0;
  for (let page = 1; page <= doc.numPages; page++) {
    const sheet = await doc.getPage(page);
    const { width, height } = sheet.getViewport({ scale: 1 });
    pages.push({ widthMm: width * MM, heightMm: height * MM });
    const { items } = await sheet.getTextContent();
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue;
      const [a, , , , x, y] = item.transform as number[];
      texts.push({
        page,
        text: item.str,
        x: x * MM,
        y: (height - y) * MM,
        width: item.width * MM,
        size: Math.abs(a) * MM,
      });
    }
    for (const note of await sheet.getAnnotations()) if (note.url) links.push(note.url);
    const { fnArray, argsArray } = await sheet.getOperatorList();
    fnArray.forEach((op, i) => {
      if (op === OPS.paintImageXObject) images++;
      if (op !== OPS.constructPath) return;
      const line = straightLine(argsArray[i]);
      if (line) lines.push({ page, length: line.length * MM, y: (height - line.y) * MM });
    });
  }
  return { pages, texts, lines, images, links };
}

/** Of a path that moves once and draws once: pdf.js gives 0 for a move and 1 for a line, each with its x and y. */
function straightLine(args: readonly unknown[]): { length: number; y: number } | null {
  const [data] = args[1] as readonly (Float32Array | null)[];
  if (!data || data.length !== 6 || data[0] !== 0 || data[3] !== 1) return null;
  return { length: Math.hypot(data[4] - data[1], data[5] - data[2]), y: data[2] };
}
