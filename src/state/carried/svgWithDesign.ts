import { DESIGN_NAMESPACE } from './carried';

/**
 * An SVG of ours with a design's text in its metadata (SVG 2, 5.5: an element of another namespace, which nobody draws).
 * All but plain letters are written as JSON writes them (`\u00e9`), so that every name survives what XML cannot hold.
 */
export function svgWithDesign(svg: string, design: string): string {
  const plain = design
    .replace(/[^\n -~]/g, (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');
  const metadata = `<metadata><design xmlns="${DESIGN_NAMESPACE}">${plain}</design></metadata>`;
  return svg.replace(/<svg\s[^>]*>/, (opening) => `${opening}\n${metadata}`);
}
