import { describe, expect, it } from 'vitest';
import { createBenchDesk } from '../../src/bench/desk';
import { keepBench } from '../../src/bench/keepBench';
import { type BenchPlan, benchPlan, type PlanChoices } from '../../src/bench/plan';
import { pitchLimits, speedLimits } from '../../src/bench/planLimits';
import { RUNG_KEYS } from '../../src/bench/rungs';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { BENCH_RUNGS } from '../../src/design/sections/bench';
import { radiansFromDegrees } from '../../src/engine/units';
import { createSession } from '../../src/state/createSession';
import { demo, gaugeHead } from './heads';

const DESIGN = demo('4-turned-nut');

function planOf(choices: PlanChoices): BenchPlan {
  const plan = benchPlan(DESIGN, choices);
  if (!plan.ok) throw new Error(plan.error.kind);
  return plan.value;
}

function open() {
  const session = createSession(DESIGN, () => undefined);
  const notes = { read: () => null, write: () => true };
  const desk = createBenchDesk({ reader: null, notes, newId: () => 'run-1' });
  keepBench(session, desk);
  return { session, desk };
}

describe('a plan that a person changed', () => {
  it('loads the gauge by the square of the speed where only mass moves it', () => {
    // Without friction and air the force goes with W^2 (physics: every inertial term does): a quarter at half speed.
    const still = { ...DESIGN, counted: {} };
    const of = (speedsRpm: number[]) => {
      const plan = benchPlan(still, { speedsRpm, leftOut: ['drag'], gaugeLimit: 50 });
      return plan.ok ? plan.value : null;
    };
    const [full, half] = [of([10_200]), of([5100])];
    expect(full?.highest).toBeGreaterThan(10);
    expect((half?.highest ?? 0) / (full?.highest ?? 1)).toBeCloseTo(0.25, 10);
    expect(half?.rangeShare).toBeCloseTo((half?.highest ?? 0) / 50, 12);
    expect(half?.rungs.at(-1)?.speedRpm).toBe(5100);
  });

  it('reads highest only in the ways and on the steps that are made', () => {
    const both = planOf({ pitchesDeg: [20], speedsRpm: [10_200] });
    const { pull, push } = both.rungs.find(({ key }) => key === 'ordinary')?.expected[0] ?? {
      pull: 0,
      push: 0,
    };
    const only = (sense: 'pull' | 'push' | 'held') =>
      planOf({
        pitchesDeg: [20],
        speedsRpm: [10_200],
        senses: [sense],
        leftOut: RUNG_KEYS.filter((key) => key !== 'ordinary'),
      }).highest;
    expect(only('pull')).toBe(Math.abs(pull));
    expect(only('push')).toBe(Math.abs(push));
    // Held, friction may hold it anywhere between the two.
    expect(only('held')).toBe(Math.max(Math.abs(pull), Math.abs(push)));
  });

  it('tells what is new on a step from the step that is made before it', () => {
    const { rungs, leftOut } = planOf({ leftOut: ['bolt', 'bare'] });
    expect(leftOut).toEqual(['bolt', 'bare']);
    const ordinary = rungs.find(({ key }) => key === 'ordinary');
    // Nothing was on before it: the drag is read with everything on, and says nothing of the ladder.
    expect(ordinary?.added).toEqual(ordinary?.on);
  });

  it('says which way pulling goes as the lever has it: a moment that raises the edge reads compression there', () => {
    const { pullRaises } = planOf({});
    const head = gaugeHead(DESIGN);
    expect(pullRaises).toBe(head.forcePerMoment(radiansFromDegrees(0)) < 0);
    // By virtual work force = -moment / (d travel / d pitch): a pull that raises the pitch draws the ball along.
    expect(planOf({ place: { kind: 'arm', arm: 0.02 } }).pullRaises).toBe(false);
    expect(planOf({ place: { kind: 'arm', arm: -0.02 } }).pullRaises).toBe(true);
  });

  it('allows pitches up to where the arm goes over centre and speeds up to the fastest of the design', () => {
    const { min, max } = pitchLimits(DESIGN, { kind: 'rod' });
    const head = gaugeHead(DESIGN);
    const sign = Math.sign(head.forcePerMoment(radiansFromDegrees(0)));
    const lever = (deg: number) => Math.sign(head.forcePerMoment(radiansFromDegrees(deg)));
    expect([lever(min), lever(max)]).toEqual([sign, sign]);
    expect(lever(min - 1)).not.toBe(sign);
    expect(lever(max + 1)).not.toBe(sign);
    expect(speedLimits(DESIGN).max).toBe(10_200);
    const faster = { ...DESIGN, rotor: { ...DESIGN.rotor, highestSpeedRpm: 12_000 } };
    expect(speedLimits(faster).max).toBe(12_000);
  });

  it('stays between the stops of the slider, in the limits of its pitches and in those it begins with', () => {
    const design = demo('6-full-size');
    const { lowestTravelMm, highestTravelMm } = design.control ?? {};
    const head = gaugeHead(design);
    const travelMm = (deg: number) => 1000 * head.travel(radiansFromDegrees(deg));
    const { min, max } = pitchLimits(design, { kind: 'rod' });
    const isInside = (deg: number) =>
      travelMm(deg) >= Number(lowestTravelMm) && travelMm(deg) <= Number(highestTravelMm);
    expect([min, max].map(isInside)).toEqual([true, true]);
    expect([min - 1, max + 1].map(isInside)).toEqual([false, false]);
    const plan = benchPlan(design);
    expect(plan.ok && plan.value.pitchesDeg.length).toBeGreaterThan(6);
    expect(plan.ok && plan.value.pitchesDeg.every(isInside)).toBe(true);
  });

  it('is kept in the design with its ticks, comes back from the file, and is undone', () => {
    const { session, desk } = open();
    desk.set({ ticked: ['bench.safety.guard'], tickedOn: '2026-03-01' });
    desk.set({ plan: { pitchesDeg: [-10, 0, 10], leftOut: ['drag'] } });
    const plan = {
      pitchesDeg: [-10, 0, 10],
      leftOut: ['drag'],
      ticked: ['bench.safety.guard'],
      tickedOn: '2026-03-01',
    };
    const { design } = session.store.getState();
    expect(design.bench?.plan).toEqual(plan);
    expect(parseDesign(serializeDesign(design))).toEqual({ ok: true, value: design });
    desk.set({ plan: {} });
    expect(session.store.getState().design.bench?.plan?.pitchesDeg).toBeUndefined();
    session.actions.undo();
    expect(desk.store.getState().plan).toEqual({ pitchesDeg: [-10, 0, 10], leftOut: ['drag'] });
    session.actions.undo();
    expect(desk.store.getState()).toMatchObject({ plan: {}, ticked: [], tickedOn: '' });
    expect(session.store.getState().design.bench).toBeUndefined();
  });

  it('leaves the design as it was where nothing was said', () => {
    const { session, desk } = open();
    desk.set({ plan: {} });
    expect(session.store.getState().design.bench).toBeUndefined();
  });

  it('has the steps of the ladder that the file may leave out', () => {
    expect(BENCH_RUNGS).toEqual(RUNG_KEYS);
  });
});
