import { describe, expect, it } from 'vitest';
import { createBenchDesk } from '../../../src/bench/desk';
import type { BenchDesk } from '../../../src/bench/deskTypes';
import type { OfferResult } from '../../../src/bench/offer';
import { headerSignature } from '../../../src/bench/readings/remembered';
import { newDraft, takeDraft } from '../../../src/bench/rooms/readings/gridDraft';
import { runReadings } from '../../../src/bench/runReadings';
import { gridFromPaste, rowsOfGrid } from '../../../src/bench/typedRows';
import { checkDesign } from '../../../src/design/checkDesign';
import { MAX_BENCH_ROWS } from '../../../src/design/sections/bench';
import { EMPTY_DESIGN } from '../../../src/state/store';
import { handWorker } from '../../support/handWorker';

const TABLE = 'pitch [deg];force [N];way\r\n-10;1,25;pull\r\n0;0,5;pull\r\n10;-1,5;pull\r\n';
const ONE_BAD = TABLE.replace('0,5', 'x');
const BARE = 'a,b\n-10,1.25\n0,0.5\n10,-1.5\n';

function newDesk(notes = new Map<string, string>()) {
  const workers = handWorker<OfferResult>();
  let made = 0;
  const desk = createBenchDesk({
    reader: workers.start,
    notes: {
      read: (name) => notes.get(name) ?? null,
      write: (name, text) => Boolean(notes.set(name, text)),
    },
    newId: () => `run-${++made}`,
  });
  return { desk, workers, notes };
}

const state = (desk: BenchDesk) => desk.store.getState();

function setBareColumns(desk: BenchDesk): void {
  desk.reread({
    mapping: [
      { role: 'pitch', unit: 'deg', flipped: false, travel: null },
      { role: 'force', unit: 'N', flipped: false, travel: null },
    ],
  });
}

describe('the desk of the measuring bench', () => {
  it('takes nothing before it was looked at, and keeps the text as it came', () => {
    const { desk } = newDesk();
    desk.offer({ name: 'first', source: TABLE });
    expect(state(desk).runs).toEqual([]);
    expect(state(desk).offered?.kind).toBe('ready');
    expect(desk.take()).toBeNull();
    const [run] = state(desk).runs;
    expect(run.table?.text).toBe(TABLE);
    expect(state(desk).chosen).toBe(run.id);
    expect(state(desk).offered).toBeNull();
    const read = runReadings(run);
    expect(read.ok && read.value.map(({ force }) => force)).toEqual([1.25, 0.5, -1.5]);
  });

  it('takes as many pasted rows as a design may keep and not one more; what stands in the grid stays', () => {
    const pasted = (count: number) => {
      const lines = Array.from({ length: count }, (_, k) => `${k % 20}\t${k / 1000}`);
      const rows = rowsOfGrid(gridFromPaste(lines.join('\n')), 'N');
      return rows.ok ? rows.value : [];
    };
    const { desk } = newDesk();
    const draft = newDraft([], 'N', '2026-03-01');
    desk.set({ draft });
    expect(takeDraft(desk, draft, pasted(MAX_BENCH_ROWS + 1))).toBe('tooManyRows');
    expect(state(desk)).toMatchObject({ runs: [], draft });
    expect(takeDraft(desk, draft, pasted(MAX_BENCH_ROWS))).toBeNull();
    const [run] = state(desk).runs;
    const kept = (rows: typeof run.rows) =>
      checkDesign({ ...EMPTY_DESIGN, bench: { runs: [{ id: 'a', name: 'a', rows: rows ?? [] }] } });
    expect(kept(run.rows)).toBeNull();
    // The limit of the grid is the one at which a file would be refused.
    expect(kept(pasted(MAX_BENCH_ROWS + 1))).toMatchObject({ path: 'bench.runs[0].rows' });
  });

  it('does not take a table whose columns are not clear', () => {
    const { desk } = newDesk();
    expect(desk.take()).toBe('notReady');
    desk.offer({ name: 'bare', source: 'a,b\nx,y\n1,2\n' });
    expect(desk.take()).toBe('notReady');
    expect(state(desk).runs).toEqual([]);
  });

  it('takes all tables that wait but for the first in which something is refused', () => {
    const { desk } = newDesk();
    desk.offer(
      { name: 'one', source: TABLE },
      { name: 'two', source: TABLE },
      { name: 'bad', source: ONE_BAD },
      { name: 'four', source: TABLE },
    );
    expect(desk.takeAll()).toBeNull();
    expect(state(desk).runs.map(({ name }) => name)).toEqual(['one', 'two']);
    expect(state(desk).offered).toMatchObject({ kind: 'ready', name: 'bad' });
    expect(state(desk).waiting.map(({ name }) => name)).toEqual(['four']);
    desk.dismiss();
    expect(state(desk).offered).toMatchObject({ name: 'four' });
    desk.dismiss();
    expect(state(desk).offered).toBeNull();
  });

  it('remembers the columns that a person set, for the same headings, on the next visit too', () => {
    const { desk, notes } = newDesk();
    desk.offer({ name: 'bare', source: BARE });
    setBareColumns(desk);
    expect(desk.take()).toBeNull();
    const later = newDesk(notes).desk;
    later.offer({ name: 'bare again', source: BARE });
    const { offered } = state(later);
    expect(offered?.kind === 'ready' && offered.preview.mappingFrom).toBe('remembered');
    expect(later.take()).toBeNull();
  });

  it('forgets what it cannot understand in its notes', () => {
    for (const text of ['{', 'null', '7', '[]']) {
      const { desk } = newDesk(new Map([['bench.columns', text]]));
      desk.offer({ name: 'first', source: TABLE });
      expect(desk.take(), text).toBeNull();
    }
  });

  it('forgets a remembered column of a role or unit that there is none of, and keeps the sound ones', () => {
    const key = headerSignature(['pitch [deg]', 'force [N]', 'way']);
    const sound = { role: 'ignore', unit: null, flipped: false, travel: null };
    const from = (second: unknown) => {
      const memory = { [key]: [sound, second, sound] };
      const { desk } = newDesk(new Map([['bench.columns', JSON.stringify(memory)]]));
      desk.offer({ name: 'first', source: TABLE });
      const { offered } = state(desk);
      return offered?.kind === 'ready' && offered.preview.mappingFrom;
    };
    expect(from({ ...sound, role: 'force', unit: 'N' })).toBe('remembered');
    for (const wrong of [
      { ...sound, role: 'heat' },
      { ...sound, unit: 'stone' },
      { ...sound, flipped: 1 },
      { ...sound, travel: 'sideways' },
      null,
    ]) {
      expect(from(wrong), JSON.stringify(wrong)).not.toBe('remembered');
    }
  });

  it('takes up readings that were being typed, and none that another version left half', () => {
    const row = { pitch: '10', force: '1.5', travel: 'pull', note: '' };
    const draft = { run: 'gone', place: 'pitch', unit: 'N', rows: [row], about: { name: 'x' } };
    const from = (kept: unknown) =>
      state(newDesk(new Map([['bench.draft', JSON.stringify(kept)]])).desk).draft;
    expect(from(draft)).toEqual({ ...draft, run: null });
    for (const wrong of [
      { ...draft, about: null },
      { ...draft, about: { name: 'x', speedRpm: '9000' } },
      { ...draft, rows: [null] },
      { ...draft, rows: [{ ...row, travel: 'sideways' }] },
      { ...draft, unit: 'stone' },
    ]) {
      expect(from(wrong), JSON.stringify(wrong)).toBeNull();
    }
  });

  it('reads a long table in a worker, and ends it when the person thinks better of it', () => {
    const { desk, workers } = newDesk();
    const source = TABLE + '20;1,0;pull\r\n'.repeat(20_000);
    desk.offer({ name: 'log', source });
    expect(state(desk).offered).toEqual({ kind: 'reading', name: 'log', done: 0 });
    expect(workers.made).toHaveLength(1);
    desk.dismiss();
    expect(workers.made[0].ended).toBe(true);
    expect(state(desk).offered).toBeNull();
  });

  it('puts a run that was taken off back to its place', () => {
    const { desk } = newDesk();
    for (const name of ['one', 'two', 'three']) desk.addRun({ name, rows: [] });
    const second = state(desk).runs[1];
    desk.set({ chosen: second.id });
    desk.removeRun(second.id);
    expect(state(desk).runs.map(({ name }) => name)).toEqual(['one', 'three']);
    expect(state(desk).chosen).toBe(state(desk).runs[1].id);
    desk.putBack();
    expect(state(desk).runs.map(({ name }) => name)).toEqual(['one', 'two', 'three']);
    expect(state(desk).removed).toBeNull();
  });

  it('sets a reading aside and counts it again without touching the run’s text', () => {
    const { desk } = newDesk();
    desk.offer({ name: 'first', source: TABLE });
    desk.take();
    const { id, table } = state(desk).runs[0];
    desk.setAside(id, 2, true);
    desk.setAside(id, 0, true);
    desk.setAside(id, 2, true);
    expect(state(desk).runs[0].setAside).toEqual([0, 2]);
    desk.setAside(id, 0, false);
    expect(state(desk).runs[0].setAside).toEqual([2]);
    expect(state(desk).runs[0].table).toBe(table);
  });

  it('refuses a run beyond the two hundredth', () => {
    const { desk } = newDesk();
    for (let k = 0; k < 200; k++) expect(desk.addRun({ name: `${k}`, rows: [] })).toBeNull();
    expect(desk.addRun({ name: 'one more', rows: [] })).toBe('tooManyRuns');
    expect(state(desk).runs).toHaveLength(200);
  });
});
