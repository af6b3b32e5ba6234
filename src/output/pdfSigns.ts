import type { jsPDF } from 'jspdf';

/** Signs that the embedded face lacks, by their nearest. */
const NEAREST: Readonly<Record<string, string>> = { '\u202f': '\u00a0', '\u2300': '\u00d8' };

/** A line of text with signs that the face which is set has: a blank for a control character, a question mark for any other. */
export function printableSigns(doc: jsPDF, text: string): string {
  const known = glyphsOf(doc);
  return Array.from(text.normalize('NFC').replace(/\p{Cc}+/gu, ' '), (sign) => {
    const near = NEAREST[sign] ?? sign;
    return known[near.codePointAt(0) ?? 0] === undefined ? '?' : near;
  }).join('');
}

/** The glyph of each code point. */
function glyphsOf(doc: jsPDF): Readonly<Record<number, number | undefined>> {
  const font = doc.getFont() as unknown as {
    readonly metadata: { readonly cmap: { readonly unicode: { readonly codeMap: object } } };
  };
  return font.metadata.cmap.unicode.codeMap as Readonly<Record<number, number | undefined>>;
}
