import type { PlotData } from './plotLayout';

/** A plot's numbers, column by column; the first is x. A title names the unit. */
export interface PlotColumn {
  readonly title: string;
  readonly values: ArrayLike<number>;
}

export function plotColumns(data: PlotData): readonly PlotColumn[] {
  const { x, lines, band, bandEdges, xTitle, yTitle } = data;
  const columns: PlotColumn[] = [
    { title: xTitle, values: x },
    ...lines.map(({ name, values }) => ({
      title: lines.length > 1 ? `${name}, ${yTitle}` : yTitle,
      values,
    })),
  ];
  if (band) columns.push({ title: `\u00b1, ${yTitle}`, values: band });
  if (bandEdges) {
    columns.push({ title: `\u2265, ${yTitle}`, values: bandEdges.low });
    columns.push({ title: `\u2264, ${yTitle}`, values: bandEdges.high });
  }
  return columns;
}
