import { MOST_PAGES, PAPERS, type PaperName } from './pdf/reportPdf';

/** Scales of the type, largest first. In print Inter's letters are larger than the PDF's at the same size. */
export const TYPE_SCALES = [0.92, 0.86, 0.8, 0.75] as const;

/** What the print sheet leaves free above and below (report.css), and the foot that every sheet has, mm. */
const MARGINS = 20;
const FOOT = 7;
const PIXELS_A_MM = 96 / 25.4;

/** A block down a long strip, any unit. Cut: it may go on over a page's end. */
export interface StripBlock {
  readonly top: number;
  readonly bottom: number;
  readonly cut: boolean;
  /** A heading: goes over with what follows it. */
  readonly heading: boolean;
}

/** How many pages of a height the blocks need when none but those that may be cut is; their tops ascend. */
export function pagesNeeded(blocks: readonly StripBlock[], height: number): number {
  let pages = 1;
  let start = blocks[0]?.top ?? 0;
  blocks.forEach(({ bottom, cut, heading }, i) => {
    if (heading || bottom - start <= height) return;
    if (cut) {
      while (bottom - start > height) {
        start += height;
        pages++;
      }
      return;
    }
    let first = i;
    while (first > 0 && blocks[first - 1].heading) first--;
    start = blocks[first].top;
    pages++;
  });
  return pages;
}

/**
 * Sets the largest type with which the report comes to three pages in print, else the smallest, and returns it. Measured
 * on the preview, which is as wide as the text in print; a browser may still break a page otherwise.
 */
export function fitType(paper: HTMLElement, name: PaperName, zoom: number): number {
  const height = (PAPERS[name].heightMm - MARGINS - FOOT) * PIXELS_A_MM * zoom;
  for (const scale of TYPE_SCALES) {
    paper.style.setProperty('--k', String(scale));
    if (pagesNeeded(blocksOf(paper), height) <= MOST_PAGES) return scale;
  }
  return TYPE_SCALES[TYPE_SCALES.length - 1];
}

function blocksOf(paper: HTMLElement): StripBlock[] {
  return Array.from(
    paper.querySelectorAll('.report-title, .report-section > *, .report-section > ul > li'),
  )
    .filter((element) => element.tagName !== 'UL')
    .map((element) => {
      const { top, bottom } = element.getBoundingClientRect();
      return {
        top,
        bottom,
        cut: element.matches('.report-facts, .report-link'),
        heading: element.matches('h2, p:has(+ .report-table)'),
      };
    });
}
