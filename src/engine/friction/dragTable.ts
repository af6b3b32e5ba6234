/**
 * Drag of the linkage measured at rest: force that just moves the slider (N, its size, all grips) against slider travel
 * (m from its place at flat pitch, ascending).
 */
export interface DragTable {
  readonly travel: readonly number[];
  readonly force: readonly number[];
}

/**
 * Drag at a travel: linear between the rows. Beyond them the end row is held, since nothing was measured there:
 * `beyondTable` tells. Zero for an empty table, NaN for a travel that is none.
 */
export function dragAt({ travel, force }: DragTable, at: number): number {
  const last = travel.length - 1;
  if (last < 0) return 0;
  if (Number.isNaN(at)) return Number.NaN;
  if (at <= travel[0]) return force[0];
  if (at >= travel[last]) return force[last];
  let k = 1;
  while (travel[k] < at) k++;
  const share = (at - travel[k - 1]) / (travel[k] - travel[k - 1]);
  return force[k - 1] + share * (force[k] - force[k - 1]);
}

/** Whether a travel lies outside a table of more than one row; one row stands for every travel. */
export function beyondTable({ travel }: DragTable, at: number): boolean {
  const last = travel.length - 1;
  return last > 0 && (at < travel[0] || at > travel[last]);
}
