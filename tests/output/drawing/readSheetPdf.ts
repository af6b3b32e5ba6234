import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A drawing as an independent reader finds it in a PDF: mm from the lower left corner of the sheet, y up. */
export interface FoundSheet {
  readonly pages: readonly { readonly widthMm: number; readonly heightMm: number }[];
  readonly lines: readonly {
    readonly x1: number;
    readonly y1: number;
    readonly x2: number;
    readonly y2: number;
    readonly length: number;
  }[];
  /** Paths with curves in them: the ends of their pieces. */
  readonly curves: readonly (readonly (readonly [x: number, y: number])[])[];
  readonly texts: readonly {
    readonly text: string;
    /** Left end of its base line, and length along it. */
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly turnDeg: number;
  }[];
  readonly fonts: readonly string[];
}

const MM = 25.4 / 72;
/** What pdf.js writes before the numbers of each piece of a path. */
const [MOVE, LINE, CURVE] = [0, 1, 2];

/** Reads the first page with pdf.js. */
export async function readSheetPdf(bytes: ArrayBuffer): Promise<FoundSheet> {
  const doc = await getDocument({ data: new Uint8Array(bytes.slice(0)), verbosity: 0 }).promise;
  const page = await doc.getPage(1);
  const { width, height } = page.getViewport({ scale: 1 });
  const { items } = await page.getTextContent();
  const texts = items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [a, b, , , x, y] = item.transform as number[];
    const turnDeg = (Math.atan2(b, a) * 180) / Math.PI;
    return [{ text: item.str, x: x * MM, y: y * MM, width: item.width * MM, turnDeg }];
  });
  const { fnArray, argsArray } = await page.getOperatorList();
  const lines: FoundSheet['lines'][number][] = [];
  const curves: FoundSheet['curves'][number][] = [];
  const fonts = new Set<string>();
  fnArray.forEach((op, i) => {
    if (op === OPS.setFont) fonts.add(page.commonObjs.get(argsArray[i][0]).name);
    if (op !== OPS.constructPath) return;
    const [data] = argsArray[i][1] as readonly (Float32Array | null)[];
    const points = data ? pointsOf(data) : null;
    if (!points) return;
    if (points.curved) curves.push(points.points);
    else if (points.points.length === 2) {
      const [[x1, y1], [x2, y2]] = points.points;
      lines.push({ x1, y1, x2, y2, length: Math.hypot(x2 - x1, y2 - y1) });
    }
  });
  return {
    pages: Array.from({ length: doc.numPages }, () => ({
      widthMm: width * MM,
      heightMm: height * MM,
    })),
    lines,
    curves,
    texts,
    fonts: [...fonts],
  };
}

/** Ends of the pieces of a path, of curves only their ends; null for a path of other pieces. */
function pointsOf(data: Float32Array) {
  const points: [number, number][] = [];
  let curved = false;
  for (let i = 0; i < data.length; ) {
    const kind = data[i];
    if (kind === MOVE || kind === LINE) {
      points.push([data[i + 1] * MM, data[i + 2] * MM]);
      i += 3;
    } else if (kind === CURVE) {
      curved = true;
      points.push([data[i + 5] * MM, data[i + 6] * MM]);
      i += 7;
    } else i += 1;
  }
  return points.length > 0 ? { points, curved } : null;
}
