import { describe, expect, it } from 'vitest';
import { createBenchDesk } from '../../../src/bench/desk';
import { keepBench } from '../../../src/bench/keepBench';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { createSession } from '../../../src/state/createSession';
import { demo } from '../heads';

const TABLE = 'pitch [deg];force [N];way\r\n-10;1,25;pull\r\n10;-1,5;push\r\n';

function open() {
  const session = createSession(demo('4-turned-nut'), () => undefined);
  let made = 0;
  const desk = createBenchDesk({
    reader: null,
    notes: { read: () => null, write: () => true },
    newId: () => `run-${++made}`,
  });
  keepBench(session, desk);
  return { session, desk };
}

describe('the bench in the design', () => {
  it('has a run as soon as it is taken, and gives it back from the file as it came', () => {
    const { session, desk } = open();
    desk.offer({ name: 'first', source: TABLE });
    desk.take();
    const { design } = session.store.getState();
    expect(design.bench?.runs?.[0].table?.text).toBe(TABLE);
    const again = parseDesign(serializeDesign(design));
    expect(again).toEqual({ ok: true, value: design });
  });

  it('follows undo and redo', () => {
    const { session, desk } = open();
    desk.offer({ name: 'first', source: TABLE });
    desk.take();
    session.actions.undo();
    expect(desk.store.getState().runs).toEqual([]);
    session.actions.redo();
    expect(desk.store.getState().runs.map(({ name }) => name)).toEqual(['first']);
  });

  it('does not carry the runs of one design over to the next', () => {
    const { session, desk } = open();
    desk.offer({ name: 'first', source: TABLE });
    desk.take();
    session.actions.openDesign(demo('3-ordinary-bolt'));
    expect(desk.store.getState().runs).toEqual([]);
    expect(session.store.getState().design.bench).toBeUndefined();
  });

  it('does not give a new run the id of one that came with the design', () => {
    const { session, desk } = open();
    const run = { id: 'run-1', name: 'from the file', rows: [{ pitchDeg: 0, forceN: 1 }] };
    session.actions.openDesign({ ...demo('4-turned-nut'), bench: { runs: [run] } });
    desk.addRun({ name: 'new', rows: [] });
    const ids = desk.store.getState().runs.map(({ id }) => id);
    expect(new Set(ids).size).toBe(2);
  });
});
