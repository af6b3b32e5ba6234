import type { PlotData } from './plotLayout';

/**
 * A plot's numbers, column by column; the first is x, or the name of its place. A title names the unit; `name` is it without
 * where there is one.
 */
export interface PlotColumn {
  readonly title: string;
  readonly name: string;
  readonly values: ArrayLike<number | string>;
}

/** One row of a plot's table: a place of x, or points at the same x, at most one of a set. */
interface PlotRow {
  readonly x: number;
  /** Which point of each set; left out: none. */
  readonly points: readonly (number | undefined)[];
}

/**
 * A row for every place of x and for every point, in the order of x; points of different sets at the same x share one. Lines
 * and bands have a value in each row (straight between their places), points in their own alone.
 */
export function plotColumns(data: PlotData): readonly PlotColumn[] {
  const rows = rowsOf(data);
  const { xTitle, xNames } = data;
  const values = rows.map(({ x }) => xNames?.[x - 1] ?? x);
  return [{ title: xTitle, name: xTitle, values }, ...ownColumns(data, rows)];
}

/** Rows that a reader is shown: those of points where there are any, else so many of all, evenly, with both ends. */
export function plotRowsToShow(data: PlotData, most: number): readonly number[] {
  const rows = rowsOf(data);
  const all = Array.from(rows.keys());
  if (data.points?.length) return all.filter((i) => rows[i].points.length > 0);
  const step = Math.max(1, Math.ceil((all.length - 1) / (most - 1)));
  return all.filter((i) => i % step === 0 || i === all.length - 1);
}

function rowsOf(data: PlotData): readonly PlotRow[] {
  const { x, lines, bands = [], points = [] } = data;
  const along = lines.length + bands.length > 0;
  const places = along ? Array.from(x, (one): PlotRow => ({ x: one, points: [] })) : [];
  const read: { readonly x: number; readonly points: (number | undefined)[] }[] = [];
  points.forEach((own, set) => {
    own.x.forEach((one, index) => {
      const shared = read.find((row) => row.x === one && row.points[set] === undefined);
      if (shared) shared.points[set] = index;
      else {
        const row: (number | undefined)[] = [];
        row[set] = index;
        read.push({ x: one, points: row });
      }
    });
  });
  return read.length === 0 ? places : [...places, ...read].toSorted((a, b) => a.x - b.x);
}

function ownColumns(data: PlotData, rows: readonly PlotRow[]): PlotColumn[] {
  const { lines, band, bands = [], points = [], yTitle } = data;
  const along = (values: ArrayLike<number>) =>
    rows.map(({ x }, i) => (data.points ? between(data.x, values, x) : values[i]));
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
      rows.map((row) => {
        const index = row.points[set];
        return index === undefined ? Number.NaN : values[index];
      });
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
