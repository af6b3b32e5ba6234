import { type AirTable, buildAirTable } from '../../engine/air/airTable';
import type { BladeGeometry, HoverConditions } from '../../engine/air/hover';
import type { AirSection } from '../../engine/air/section';

/** All that the air's table depends on. `source` stands for the section: equal sources give equal sections. */
export interface AirTask {
  readonly blade: BladeGeometry;
  readonly section: AirSection;
  readonly source: unknown;
  readonly conditions: HoverConditions;
  readonly rangeDeg: number;
  readonly stepDeg: number;
}

/** The stage, a compared head, the chart over speed and a search's trials, each with a few. */
const KEPT = 12;

/** The tables solved last, the newest first. A table is never written to. */
const memory: { readonly task: AirTask; readonly table: AirTable }[] = [];

/**
 * The table of a task: one of those solved last where everything it depends on is equal to the bit, whichever head asked
 * for it; else solved now. Several heads are kept of one design (stage, search, run), and most changes leave the air as
 * it is.
 */
export function rememberedAirTable(task: AirTask): { table: AirTable; solved: boolean } {
  const at = memory.findIndex((one) => sameTask(one.task, task));
  if (at >= 0) {
    const [found] = memory.splice(at, 1);
    memory.unshift(found);
    return { table: found.table, solved: false };
  }
  const { blade, section, conditions, rangeDeg, stepDeg } = task;
  const table = buildAirTable(blade, section, conditions, -rangeDeg, rangeDeg, stepDeg);
  memory.unshift({ task, table });
  memory.length = Math.min(memory.length, KEPT);
  return { table, solved: true };
}

/** For tests that count solves. */
export function forgetAirTables(): void {
  memory.length = 0;
}

function sameTask(a: AirTask, b: AirTask): boolean {
  return (
    a.source === b.source &&
    a.rangeDeg === b.rangeDeg &&
    a.stepDeg === b.stepDeg &&
    sameFields(a.conditions, b.conditions) &&
    sameFields(a.blade, b.blade)
  );
}

function sameFields<T extends object>(a: T, b: T): boolean {
  const names = Object.keys(a) as (keyof T)[];
  return names.every((name) => sameField(a[name], b[name]));
}

function sameField(a: unknown, b: unknown): boolean {
  if (!(a instanceof Float64Array && b instanceof Float64Array)) return a === b;
  return a.length === b.length && a.every((value, i) => value === b[i]);
}
