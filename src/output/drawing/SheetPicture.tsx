import { createElement, memo } from 'react';
import { SVG_FONT, type SvgElement, svgElements } from './sheetSvg';
import { type Layer, LINE_STYLES, type Sheet } from './sheetTypes';

/**
 * What lies on the sheet, for within an `svg` whose units are mm on paper. Styled by attributes: the page's policy on
 * content takes no style element, and the file has the same.
 */
export const SheetPicture = memo(function SheetPicture(props: { readonly sheet: Sheet }) {
  const { width, height } = props.sheet.format;
  return (
    <>
      <rect className="drawing-paper" width={width} height={height} fill="#fff" />
      <g fontFamily={SVG_FONT}>
        {svgElements(props.sheet).map(({ tag, attributes, text }, i) =>
          createElement(tag, { key: i, ...attributesOf(attributes) }, text),
        )}
      </g>
    </>
  );
});

/** As React names them, with the look of their layer. */
function attributesOf(written: SvgElement['attributes']): Record<string, string | number> {
  const { class: name, 'font-size': fontSize, 'text-anchor': textAnchor, ...rest } = written;
  if (fontSize !== undefined) return { ...rest, fontSize, textAnchor, fill: '#000' };
  const style = LINE_STYLES[name as Layer];
  if (!style) return { ...rest, fill: '#000' };
  return {
    ...rest,
    fill: 'none',
    stroke: '#000',
    strokeWidth: style.width,
    strokeLinecap: 'round',
    ...(style.dashes ? { strokeDasharray: style.dashes.join(' ') } : {}),
  };
}
