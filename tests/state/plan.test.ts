import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { parseDesign } from '../../src/design/file';
import type { SearchRequest } from '../../src/neutralise/request';
import { runSearch, type SearchResult } from '../../src/neutralise/search';
import { createJob } from '../../src/state/job';
import { createPlanDesk, FIRST_PLAN, planKnobs } from '../../src/state/plan';
import { createAppStore } from '../../src/state/store';
import { keepPlan, readPlan } from '../../src/state/storedPlan';
import { handWorker } from '../support/handWorker';

function demo() {
  const path = new URL('../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const read = parseDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

describe('a job in a worker', () => {
  it('passes progress on, ends the worker when it is done, and keeps the request beside the result', () => {
    const hand = handWorker<string>();
    const job = createJob<number, string>(hand.start);
    job.start(7);
    hand.say(0, { kind: 'progress', progress: { done: 1, total: 3 } });
    expect(job.store.getState().job).toMatchObject({ kind: 'running', progress: { done: 1 } });
    hand.say(0, { kind: 'done', result: 'seven' });
    expect(job.store.getState().job).toEqual({ kind: 'done', request: 7, result: 'seven' });
    expect(hand.made[0].ended).toBe(true);
  });

  it('cancelled it ends the worker, and what comes late is not listened to', () => {
    const hand = handWorker<string>();
    const job = createJob<number, string>(hand.start);
    job.start(1);
    hand.say(0, { kind: 'progress', progress: { done: 2, total: 9 } });
    job.cancel();
    expect(hand.made[0].ended).toBe(true);
    hand.say(0, { kind: 'done', result: 'late' });
    expect(job.store.getState().job).toEqual({
      kind: 'cancelled',
      progress: { done: 2, total: 9 },
    });
  });

  it('starting another ends the one under way', () => {
    const hand = handWorker<string>();
    const job = createJob<number, string>(hand.start);
    job.start(1);
    job.start(2);
    expect(hand.made.map(({ ended }) => ended)).toEqual([true, false]);
    hand.say(0, { kind: 'done', result: 'first' });
    hand.say(1, { kind: 'done', result: 'second' });
    expect(job.store.getState().job).toMatchObject({ request: 2, result: 'second' });
  });

  it('a worker that breaks is said, with its reason', () => {
    const hand = handWorker<string>();
    const job = createJob<number, string>(hand.start);
    job.start(1);
    hand.fail(0, 'out of memory');
    expect(job.store.getState().job).toEqual({ kind: 'failed', reason: 'out of memory' });
  });
});

describe('the plan of the room Neutralise', () => {
  function desk() {
    const app = createAppStore(demo());
    const hand = handWorker<SearchResult>();
    const plan = createPlanDesk(app, { search: hand.start, family: vi.fn() });
    return { app, hand, plan };
  }

  it('begins with the lengths that carry mass out along the bolt', () => {
    const { app, plan } = desk();
    const knobs = planKnobs(plan.store.getState().plan, app.getState().design);
    expect(knobs.map(({ ref }) => `${ref.part} ${ref.field}`)).toEqual([
      'bolt extensionLengthMm',
      'nut heightMm',
    ]);
    expect(knobs.every(({ min, max }) => min < max)).toBe(true);
  });

  it('what the worker is asked is plain data that a search understands', () => {
    const { hand, plan } = desk();
    expect(plan.find()).toBeNull();
    const [posted] = hand.made[0].posted as SearchRequest[];
    const { answers } = runSearch(structuredClone(posted));
    expect(answers[0].left).toBeLessThan(0.05);
  });

  it('refuses before a worker is started, and keeps what was entered', () => {
    const { hand, plan } = desk();
    plan.set({
      knobs: [{ ref: { part: 'nut', field: 'heightMm' }, min: 9, max: 3, step: 0.1 }],
    });
    expect(plan.find()).toMatchObject({ code: 'limitsReversed', min: 9, max: 3 });
    expect(hand.made).toHaveLength(0);
    expect(plan.store.getState().plan.knobs?.[0].min).toBe(9);
  });

  it('knobs of parts that are gone are left out, and come back with them', () => {
    const { app, plan } = desk();
    const { design } = app.getState();
    plan.set({ knobs: [{ ref: { part: 'nut', field: 'heightMm' }, min: 2, max: 9, step: 0.1 }] });
    const without = { ...design, parts: design.parts.filter(({ id }) => !id.startsWith('nut')) };
    expect(planKnobs(plan.store.getState().plan, without)).toEqual([]);
    expect(planKnobs(plan.store.getState().plan, design)).toHaveLength(1);
  });

  it('another design opened ends the search and forgets its answers', () => {
    const { app, hand, plan } = desk();
    plan.find();
    app.setState({ design: demo(), opening: 1 });
    expect(hand.made[0].ended).toBe(true);
    expect(plan.search.store.getState().job.kind).toBe('idle');
  });
});

describe('the plan in the browser', () => {
  const notes = () => {
    const kept = new Map<string, string>();
    return {
      kept,
      read: (name: string) => kept.get(name) ?? null,
      write: (name: string, text: string) => Boolean(kept.set(name, text)),
      remove: (name: string) => void kept.delete(name),
    };
  };

  it('comes back as it was left', () => {
    const store = notes();
    const desk = createPlanDesk(createAppStore(demo()), { search: vi.fn(), family: vi.fn() });
    keepPlan(desk, store);
    desk.set({
      goal: 'centring',
      restDeg: 4,
      knobs: [{ ref: { part: 'nut', field: 'heightMm' }, min: 2, max: 9, step: 'bars' }],
      offers: ['nut catalogue'],
    });
    expect(readPlan(store)).toEqual(desk.store.getState().plan);
  });

  it('what is not understood in it is as it is at first', () => {
    const store = notes();
    for (const text of ['', 'null', '[]', '{"goal":"x","restDeg":"y","knobs":[{}],"offers":[1]}']) {
      store.write('plan', text);
      expect(readPlan(store)).toEqual(FIRST_PLAN);
    }
  });
});
