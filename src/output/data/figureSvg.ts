import { type Figure, pathData, type Shape } from '../report/figures/figure';
import { xmlText } from '../solids/xmlText';

/** A drawing as an SVG file of its own, so wide on paper. Nothing outside it is referred to; texts are text. */
export function figureSvg(figure: Figure, title: string, widthMm: number): string {
  const { width, height, alt, shapes } = figure;
  return [
    opening(widthMm, (widthMm * height) / width, `0 0 ${width} ${height}`),
    `<title>${xmlText(title)}</title>\n<desc>${xmlText(alt)}</desc>\n`,
    ...shapes.map(shapeSvg),
    '</svg>\n',
  ].join('');
}

/** A picture of pixels in an SVG file, at its size on paper. */
export function pictureSvg(
  picture: { readonly dataUrl: string; readonly width: number; readonly height: number },
  title: string,
  widthMm: number,
): string {
  const { dataUrl, width, height } = picture;
  return [
    opening(widthMm, (widthMm * height) / width, `0 0 ${width} ${height}`),
    `<title>${xmlText(title)}</title>\n`,
    `<image width="${width}" height="${height}" href="${xmlText(dataUrl)}"/>\n`,
    '</svg>\n',
  ].join('');
}

function opening(widthMm: number, heightMm: number, viewBox: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${round(widthMm)}mm" height="${round(heightMm)}mm" viewBox="${viewBox}" font-family="Inter, Arial, sans-serif" role="img">\n`;
}

function shapeSvg(shape: Shape): string {
  if (shape.kind === 'text') {
    const { x, y, size, anchor, colour, bold } = shape;
    const weight = bold ? ' font-weight="600"' : '';
    return `<text x="${round(x)}" y="${round(y)}" font-size="${size}" text-anchor="${anchor}" fill="${colour}"${weight}>${xmlText(shape.text)}</text>\n`;
  }
  const { stroke, fill, width = 1, dash } = shape;
  const dashes = dash ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  const line = stroke
    ? ` stroke="${stroke}" stroke-width="${width}" stroke-linejoin="round"${dashes}`
    : '';
  return `<path d="${pathData(shape.commands)}" fill="${fill ?? 'none'}"${line}/>\n`;
}

function round(value: number): number {
  return Math.round(value * 1000) / 1000;
}
