import { describe, expect, it } from 'vitest';
import { readMeshFile } from '../../src/meshes/readMeshFile';
import { createClosenessDesk } from '../../src/state/closeness';
import { createSession } from '../../src/state/createSession';
import { createJob } from '../../src/state/job';
import { WORKER_ENDED } from '../../src/worker/life';
import { DEMOS, demo } from '../output/solids/heads';
import { handWorker } from '../support/handWorker';

describe('a worker that is ended from outside', () => {
  it('is started anew with the same request, and nothing is said', () => {
    const hands = handWorker<number>();
    const job = createJob<string, number>(hands.start);
    job.start('question');
    hands.say(0, { kind: 'progress', progress: { done: 3, total: 9 } });
    hands.fail(0, WORKER_ENDED);
    expect(job.store.getState().job).toEqual({
      kind: 'running',
      request: 'question',
      progress: { done: 0, total: 0 },
    });
    expect(hands.made.map(({ posted, ended }) => [posted, ended])).toEqual([
      [['question'], true],
      [['question'], false],
    ]);
    // What the first still says is nobody's.
    hands.say(0, { kind: 'done', result: 1 });
    hands.fail(0, WORKER_ENDED);
    hands.say(1, { kind: 'done', result: 2 });
    expect(job.store.getState().job).toMatchObject({ kind: 'done', result: 2 });
    expect(hands.made).toHaveLength(2);
  });

  it('a second time is said in words, and the next start counts from nothing', () => {
    const hands = handWorker<number>();
    const job = createJob<string, number>(hands.start);
    job.start('question');
    hands.fail(0, WORKER_ENDED);
    hands.fail(1, WORKER_ENDED);
    expect(job.store.getState().job).toEqual({
      kind: 'failed',
      reason: expect.stringContaining('ended the worker'),
    });
    job.start('question');
    hands.fail(2, WORKER_ENDED);
    expect(hands.made).toHaveLength(4);
  });

  it('is not started anew where it failed by itself: that would fail again', () => {
    const hands = handWorker<number>();
    const job = createJob<string, number>(hands.start);
    job.start('question');
    hands.fail(0, 'RangeError: too deep');
    expect(job.store.getState().job).toEqual({ kind: 'failed', reason: 'RangeError: too deep' });
    job.start('question');
    hands.fail(1, '');
    expect(job.store.getState().job).toMatchObject({ reason: expect.stringMatching(/\w/) });
    expect(hands.made).toHaveLength(2);
  });

  it('while it differentiates is asked again about the head as it is then', () => {
    const hands = handWorker<never>();
    const { store, actions } = createSession(demo(DEMOS[2]), () => {});
    const desk = createClosenessDesk(store, { slopes: hands.start, tolerances: hands.start });
    desk.ask();
    actions.setSection('rotor', { speedRpm: 9000 });
    hands.fail(0, WORKER_ENDED);
    expect(hands.made).toHaveLength(2);
    expect(hands.made[1].posted).toEqual([
      expect.objectContaining({
        design: expect.objectContaining({ rotor: store.getState().design.rotor }),
      }),
    ]);
    expect(desk.store.getState().failed).toBeNull();
    hands.fail(1, WORKER_ENDED);
    expect(hands.made).toHaveLength(2);
    expect(desk.store.getState().failed).toContain('ended the worker');
  });

  it('while it reads a file begins again, and ends in a fault of its own the second time', async () => {
    const hands = handWorker<never>();
    const file = new File(['solid'], 'a.stl');
    const read = readMeshFile(file, {}, hands.start);
    const ended = { message: WORKER_ENDED, preventDefault() {} };
    hands.made[0].heard.get('error')?.(ended);
    expect(hands.made.map(({ posted }) => posted)).toEqual([[file], [file]]);
    hands.made[0].heard.get('error')?.(ended);
    expect(hands.made).toHaveLength(2);
    hands.made[1].heard.get('error')?.(ended);
    expect(await read).toEqual({ ok: false, error: { kind: 'readerEnded' } });
  });
});
