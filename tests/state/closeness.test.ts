import { describe, expect, it } from 'vitest';
import type { Design } from '../../src/design/design';
import type { ToleranceAnswer } from '../../src/neutralise/closeness/runTolerances';
import type { SlopeQuestion, SlopeReply } from '../../src/neutralise/closeness/slopeMessages';
import {
  createClosenessDesk,
  type SlopeWorker,
  sameForces,
  sameHeadAndTolerances,
} from '../../src/state/closeness';
import { createAppStore } from '../../src/state/store';
import { designOf, fullHead } from '../design/designs';
import { handWorker } from '../support/handWorker';

/** A worker that answers when the test says so. */
class FakeSlopes {
  readonly questions: SlopeQuestion[] = [];
  isEnded = false;
  private readonly listeners = new Map<string, (event: unknown) => void>();

  asWorker(): SlopeWorker {
    return {
      postMessage: (question: SlopeQuestion) => {
        this.questions.push(question);
      },
      addEventListener: (name: string, listener: (event: unknown) => void) => {
        this.listeners.set(name, listener);
      },
      terminate: () => {
        this.isEnded = true;
      },
    } as unknown as SlopeWorker;
  }
  reply(id: number, terms: SlopeReply['terms'] = 'anew'): void {
    this.listeners.get('message')?.({ data: { id, terms, derivatives: [] } });
  }
  fail(message: string): void {
    this.listeners.get('error')?.({ message });
  }
}

function desk() {
  const app = createAppStore({ ...designOf(fullHead()), tryOuts: [] });
  const slopes: FakeSlopes[] = [];
  const hand = handWorker<ToleranceAnswer>();
  const made = createClosenessDesk(app, {
    slopes: () => {
      const own = new FakeSlopes();
      slopes.push(own);
      return own.asWorker();
    },
    tolerances: hand.start,
  });
  const put = (change: Partial<Design>) =>
    app.setState({ design: { ...app.getState().design, ...change } });
  const { made: jobs, say: answer } = hand;
  return { app, desk: made, slopes, jobs, put, answer };
}

describe('the desk of how closely', () => {
  it('asks once for a head, again when it has changed, and not for another tolerance or try-out', () => {
    const { desk: own, slopes, put } = desk();
    own.ask();
    own.ask();
    put({ tolerance: { seed: 3 }, name: 'Other' });
    own.ask();
    expect(slopes[0].questions).toHaveLength(1);
    expect(slopes[0].questions[0].design.tryOuts).toBeUndefined();
    expect(slopes[0].questions[0].pitchesDeg).toEqual([-20, -10, 0, 10, 20]);
    put({ parts: fullHead() });
    own.ask();
    expect(slopes).toHaveLength(1);
    expect(slopes[0].questions).toHaveLength(2);
  });

  it('takes no answer to an older question for one to the last', () => {
    const { desk: own, slopes, put } = desk();
    own.ask();
    put({ parts: fullHead() });
    own.ask();
    slopes[0].reply(1);
    expect(own.store.getState().slopes).toBeNull();
    slopes[0].reply(2, 'nominal');
    expect(own.store.getState().slopes).toMatchObject({ terms: 'nominal' });
    expect(own.store.getState().slopes?.design.parts).toBe(slopes[0].questions[1].design.parts);
  });

  it('says that its worker stopped, and starts another when asked again', () => {
    const { desk: own, slopes } = desk();
    own.ask();
    slopes[0].fail('out of memory');
    expect(own.store.getState().failed).toBe('out of memory');
    expect(slopes[0].isEnded).toBe(true);
    own.ask();
    expect(slopes).toHaveLength(2);
    slopes[1].reply(2);
    expect(own.store.getState().failed).toBeNull();
  });

  it('keeps a run when the head changes, which then no longer holds, and forgets it with the design', () => {
    const { app, desk: own, jobs, put, answer } = desk();
    own.start();
    const asked = jobs[0].posted[0] as Design;
    expect(asked.tryOuts).toBeUndefined();
    answer(0, { kind: 'progress', progress: { done: 5, total: 10 } });
    expect(own.run.store.getState().job).toMatchObject({ kind: 'running', progress: { done: 5 } });
    const result: ToleranceAnswer = {
      outcome: { ok: false, error: { kind: 'noForce' } },
      seconds: 1,
    };
    answer(0, { kind: 'done', result });
    expect(sameHeadAndTolerances(app.getState().design, asked)).toBe(true);
    put({ tolerance: { seed: 4 } });
    expect(sameForces(app.getState().design, asked)).toBe(true);
    expect(sameHeadAndTolerances(app.getState().design, asked)).toBe(false);
    expect(own.run.store.getState().job.kind).toBe('done');
    app.setState({ opening: 1 });
    expect(own.run.store.getState().job.kind).toBe('idle');
  });

  it('ends a run that is cancelled', () => {
    const { desk: own, jobs } = desk();
    own.start();
    own.run.cancel();
    expect(jobs[0].ended).toBe(true);
    expect(own.run.store.getState().job.kind).toBe('cancelled');
  });
});
