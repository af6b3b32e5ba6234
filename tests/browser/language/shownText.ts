import type { Page } from '@playwright/test';

/** A text of the page and where it is: shown, or told as a name, a hint or a value. */
interface ShownText {
  readonly text: string;
  readonly place: string;
}

/** Everything that the page shows or tells at the moment, closed menus and dialogs left out. */
export function shownTexts(page: Page): Promise<readonly ShownText[]> {
  return page.evaluate(() => {
    const found = new Map<string, string>();
    const add = (text: string | null | undefined, place: string) => {
      const tidy = (text ?? '').replace(/\s+/g, ' ').trim();
      if (/[\p{L}\d]/u.test(tidy) && !found.has(tidy)) found.set(tidy, place);
    };
    const TOLD = ['aria-label', 'title', 'placeholder', 'alt', 'aria-valuetext', 'data-help'];
    /** Whether what stands before it in its element has begun a text that is not ended. */
    const isWithin = (node: Node) => {
      let before = '';
      for (let one = node.previousSibling; one; one = one.previousSibling) {
        before = (one.textContent ?? '') + before;
      }
      return before.lastIndexOf('⟦') > before.lastIndexOf('⟧');
    };
    const isOpen = (text: string | null) => /⟦[^⟧]*$/.test(text ?? '');
    const sheets = new Map<Element, boolean>();
    const isSheet = (svg: Element | null) => {
      if (!svg) return false;
      const known = sheets.get(svg);
      const is =
        known ??
        [...svg.querySelectorAll('text')].some(
          (one) => isOpen(one.textContent) && !one.textContent?.endsWith('…'),
        );
      sheets.set(svg, is);
      return is;
    };
    const placeOf = (element: Element) =>
      element.closest('[data-testid]')?.getAttribute('data-testid') ?? element.tagName;
    add(document.title, 'title of the page');
    for (const element of document.body.querySelectorAll('*')) {
      // The small low word of a symbol is no text of its own.
      if (element.closest('script, style, noscript, sub, dialog:not([open])')) continue;
      if (element instanceof HTMLElement && !element.checkVisibility()) continue;
      for (const name of TOLD) add(element.getAttribute(name), `${name} in ${placeOf(element)}`);
      if (element instanceof HTMLInputElement && element.type === 'text') {
        add(element.value, `value of ${placeOf(element)}`);
      }
      // Lines of a drawing are one text after the other: a sentence goes on in the next.
      if (element instanceof SVGTextElement && isSheet(element.ownerSVGElement)) continue;
      if (element instanceof SVGSVGElement && isSheet(element)) {
        const lines = [...element.querySelectorAll('text')].map((line) => line.textContent);
        add(lines.join(' '), `drawing in ${placeOf(element)}`);
      }
      const own = [...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE);
      // A sentence with letters set as symbols is one text.
      const isBroken = own.some(({ textContent }) => isOpen(textContent));
      if (isBroken) add(element.textContent, placeOf(element));
      else for (const node of own) if (!isWithin(node)) add(node.textContent, placeOf(element));
    }
    return [...found].map(([text, place]) => ({ text, place }));
  });
}

/**
 * What is the same in every language: units and symbols, names of standards, of file formats and of threads, formulas. Each
 * a whole word.
 */
const SAME = new RegExp(
  `(?<![\\p{L}])(?:${[
    // First, since letters of them are symbols: addresses, names of files, and the fingerprint of what is shown.
    'https?://[^\\s⟦]+|[\\w-]+\\.json|[\\da-f]{7,8}(?!\\w)',
    // Units.
    'mm|cm|km|[µμ]m|[µμ]in|in|ft|kg|g|oz|lb|kN|N|ozf|lbf|gf|kgf|rpm|min|deg|rad|s|ms|Hz|MPa|GPa|Pa|mJ|J|W|kB|MB|dpi|px',
    // Symbols of quantities and axes, classes of standards and threads.
    '[A-Za-zΑ-ω]|J_?[a-z]{2}|A_[a-z]|[xyzXYZ]{2}|atan2|cos|sin|tan|tr|M\\d+|UNC|UNF|A[24]-\\d+',
    // Standards and file formats.
    'ISO|DIN|ASME|EN|NACA|ASTM|STL|OBJ|3MF|GLB|STEP|PDF|SVG|PNG|DXF|CSV|TSV|JSON',
    // The page's own name, languages in themselves, the names of the invented heads.
    'Stillgrip|English|Deutsch|Dunlin|Heron',
    // Of a drawing: its language and its number.
    'de|[A-Z]{2,}-DUNLIN[\\w-]*',
  ].join('|')})(?![\\p{L}])`,
  'gu',
);

/** What of a text is not marked as said by the language, and is not the same in every one; empty where all is. */
export function unmarked(text: string): string {
  let left = text;
  for (let before = ''; before !== left; ) {
    before = left;
    // A name that is cut off for want of room has no end.
    left = left.replace(/⟦[^⟦⟧]*(?:⟧|…$)/gu, ' ');
  }
  const words = left.replace(SAME, ' ');
  return /\p{L}{2,}/u.test(words) ? left.replace(/\s+/g, ' ').trim() : '';
}

/** Numbers with a decimal point, which a language with a comma has none of but in names: standards, bolts' classes, links. */
export function pointed(text: string): string {
  const left = text
    .replace(/⟦[^⟦⟧]*⟧/gu, ' ')
    .replace(/https?:\S+|\bB\d+\.\d+\b|(?<![\d.,])(?:8\.8|10\.9|12\.9)(?![\d.,])/g, ' ');
  return /\d\.\d/.test(left) ? left.replace(/\s+/g, ' ').trim() : '';
}
