import { MAX_BENCH_ROWS } from '../../../design/sections/bench';
import type { BenchDesk, TakeFault } from '../../deskTypes';
import type { BenchRow, BenchRun } from '../../readings/benchSection';
import { say } from '../../say';
import {
  type AboutChange,
  EMPTY_ROW,
  type GridDraft,
  type GridUnit,
  gridOfRows,
  type RunAbout,
} from '../../typedRows';

export const FIRST_ROWS = 8;

/** An empty grid. Gauge, step and arm are those of the last run: they seldom change within a session. */
export function newDraft(runs: readonly BenchRun[], unit: GridUnit, today: string): GridDraft {
  const { gauge, gaugeStepN, armMm } = runs[runs.length - 1] ?? {};
  return {
    run: null,
    place: 'pitch',
    unit,
    rows: Array.from({ length: FIRST_ROWS }, () => EMPTY_ROW),
    about: {
      name: '',
      ...(gauge === undefined ? {} : { gauge }),
      ...(gaugeStepN === undefined ? {} : { gaugeStepN }),
      ...(armMm === undefined ? {} : { armMm }),
      date: today,
    },
  };
}

/** A run that was typed by hand, back in the grid. */
export function draftOfRun(run: BenchRun, unit: GridUnit): GridDraft {
  const { name, speedRpm, fitted, armMm, gauge, gaugeStepN, date, note } = run;
  const about = changedAbout({ name }, { speedRpm, fitted, armMm, gauge, gaugeStepN, date, note });
  return { run: run.id, unit, about, ...gridOfRows(run.rows ?? [], unit) };
}

/** What is not known any more is left out. */
export function changedAbout(about: RunAbout, change: AboutChange): RunAbout {
  const all = Object.entries({ ...about, ...change }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(all) as unknown as RunAbout;
}

/** Makes the rows a run, or changes the run that they were; null, or why not. */
export function takeDraft(
  desk: BenchDesk,
  { run: id, about }: GridDraft,
  rows: readonly BenchRow[],
): TakeFault | null {
  if (rows.length > MAX_BENCH_ROWS) return 'tooManyRows';
  const run = desk.store.getState().runs.find((one) => one.id === id);
  const name = about.name.trim() === '' ? nameOf(about) : about.name;
  if (run) {
    // Places of readings that were set aside mean nothing where rows came or went.
    const stays = run.rows?.length === rows.length;
    const none = { speedRpm: undefined, fitted: undefined, armMm: undefined, gauge: undefined };
    const unknown = { ...none, gaugeStepN: undefined, date: undefined, note: undefined };
    const aside = stays ? {} : { setAside: undefined };
    desk.changeRun(run.id, { ...unknown, ...about, name, rows, ...aside });
  } else {
    const fault = desk.addRun({ ...about, name, rows });
    if (fault) return fault;
  }
  desk.set({ draft: null });
  return null;
}

function nameOf({ fitted, speedRpm }: GridDraft['about']): string {
  const speed = speedRpm === undefined ? [] : [`${speedRpm} rpm`];
  return [fitted?.trim() || say('benchRoom.typed'), ...speed].join(', ');
}
