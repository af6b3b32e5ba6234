import type { PlotData } from './plotLayout';

/** A plot's numbers, column by column; the first is x. A title names the unit; `name` is it without where there is one. */
export interface PlotColumn {
  readonly title: string;
  readonly name: string;
  readonly values: ArrayLike<number>;
}

/** One row of a plot's table: a place of x, or a point, between the places of x where it belongs. */
interface PlotRow {
  readonly x: number;
  /** Which point of which set. */
  readonly point: { readonly set: number; readonly index: number } | null;
}

/**
 * A row for every place of x and for every point, in the order of x. Lines and bands have a value in each (straight between
 * their places), points in their own alone.
 */
export function plotColumns(data: PlotData): readonly PlotColumn[] {
  const rows = rowsOf(data);
  const x = { title: data.xTitle, name: data.xTitle, values: rows.map((row) => row.x) };
  return [x, ...ownColumns(data, rows)];
}

/** Rows that a reader is shown: those of points where there are any, else so many of all, evenly, with both ends. */
export function plotRowsToShow(data: PlotData, most: number): readonly number[] {
  const rows = rowsOf(data);
  const all = Array.from(rows.keys());
  if (data.points) return all.filter((i) => rows[i].point !== null);
  const step = Math.max(1, Math.ceil((all.length - 1) / (most - 1)));
  return all.filter((i) => i % step === 0 || i === all.length - 1);
}

function rowsOf({ x, points = [] }: PlotData): readonly PlotRow[] {
  const places = Array.from(x, (one): PlotRow => ({ x: one, point: null }));
  const read = points.flatMap((own, set) =>
    own.x.map((one, index): PlotRow => ({ x: one, point: { set, index } })),
  );
  return read.length === 0 ? places : [...places, ...read].toSorted((a, b) => a.x - b.x);
}

function ownColumns(data: PlotData, rows: readonly PlotRow[]): PlotColumn[] {
  const { lines, band, bands = [], points = [], yTitle } = data;
  const along = (values: ArrayLike<number>) =>
    rows.map(({ x, point }, i) => (point || data.points ? between(data.x, values, x) : values[i]));
  const named = (name: string, values: ArrayLike<number>): PlotColumn => ({
    title: name === '' ? yTitle : `${name}, ${yTitle}`,
    name: name === '' ? yTitle : name,
    values,
  });
  const isAlone = lines.length + points.length < 2;
  const columns = lines.map(({ name, values }) => named(isAlone ? '' : name, along(values)));
  if (band) columns.push(named('\u00b1', along(band)));
  for (const { name, low, high } of bands) {
    columns.push(named(`\u2265 ${name}`.trim(), along(low)));
    columns.push(named(`\u2264 ${name}`.trim(), along(high)));
  }
  points.forEach(({ name, y, half }, set) => {
    const own = (values: readonly number[]) =>
      rows.map(({ point }) => (point?.set === set ? values[point.index] : Number.NaN));
    columns.push(named(name, own(y)));
    if (half) columns.push(named(`\u00b1 ${name}`.trim(), own(half)));
  });
  return data.below ? [...columns, ...ownColumns(data.below, rows)] : columns;
}

/** Straight between neighbours; NaN beyond the ends, and beside a gap. */
function between(xs: ArrayLike<number>, values: ArrayLike<number>, x: number): number {
  let [low, high] = [0, xs.length - 1];
  if (!(xs[low] <= x && x <= xs[high])) return Number.NaN;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (xs[middle] <= x) low = middle;
    else high = middle;
  }
  if (xs[low] === x) return values[low];
  if (xs[high] === x) return values[high];
  return values[low] + ((values[high] - values[low]) * (x - xs[low])) / (xs[high] - xs[low]);
}
