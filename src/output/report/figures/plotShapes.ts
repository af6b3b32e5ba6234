import type { AxisTick, PlotEdges } from '../../../ui/drawn/axes';
import { INK, line, polygon, type Shape, text } from './figure';

/** Grid, and the numbers under and left of a plot, in letters of a size; over it the line at zero where it is in view. */
export function axisShapes(
  { left, right, top, bottom }: PlotEdges,
  ticks: { readonly x: readonly AxisTick[]; readonly y: readonly AxisTick[] },
  zeroY: number | null,
  size: number,
): Shape[] {
  const thin = { stroke: INK.grid, width: 0.6 };
  const small = { size, colour: INK.quiet } as const;
  return [
    ...ticks.x.flatMap(({ at, text: number }) => [
      line(at, top, at, bottom, thin),
      text(at, bottom + size + 3.5, number, { ...small, anchor: 'middle' }),
    ]),
    ...ticks.y.flatMap(({ at, text: number }) => [
      line(left, at, right, at, thin),
      text(left + 4.5 - size, at + (size - 2.5) / 2, number, { ...small, anchor: 'end' }),
    ]),
    ...(zeroY === null ? [] : [line(left, zeroY, right, zeroY, { stroke: INK.line, width: 0.9 })]),
  ];
}

/** A box by its edges. */
export function box(
  left: number,
  top: number,
  right: number,
  bottom: number,
  look: Parameters<typeof polygon>[1],
): Shape {
  return polygon(
    [
      [left, top],
      [right, top],
      [right, bottom],
      [left, bottom],
    ],
    look,
  );
}
