import { type Figure, pathData, type Shape } from './figures/figure';

/** A figure of the report on the page: the same shapes as in the PDF, texts as text. */
export function FigureSvg({ figure }: { readonly figure: Figure }) {
  const { width, height, alt, shapes } = figure;
  return (
    <svg
      className="report-svg"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label={alt}
    >
      {shapes.map((shape, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the list is drawn whole and never reordered
        <ShapeElement key={at} shape={shape} />
      ))}
    </svg>
  );
}

function ShapeElement({ shape }: { readonly shape: Shape }) {
  if (shape.kind === 'path') {
    const { commands, stroke, fill, width, dash } = shape;
    return (
      <path
        d={pathData(commands)}
        fill={fill ?? 'none'}
        stroke={stroke ?? 'none'}
        strokeWidth={width ?? 1}
        strokeDasharray={dash?.join(' ')}
      />
    );
  }
  const { x, y, text, size, anchor, colour, bold } = shape;
  return (
    <text
      x={x}
      y={y}
      fontSize={size}
      fontWeight={bold ? 600 : 400}
      textAnchor={anchor}
      fill={colour}
    >
      {text}
    </text>
  );
}
