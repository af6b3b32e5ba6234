import { describe, expect, it } from 'vitest';
import { guessNewParts } from '../../src/bench/ordinaryHead';
import { type BenchPlan, benchPlan, type PlanChoices } from '../../src/bench/plan';
import { buildRungs } from '../../src/bench/rungs';
import { SAFETY_STEPS } from '../../src/bench/safety';
import type { Design } from '../../src/design/design';
import { HeadModel } from '../../src/design/headModel';
import { angularSpeedFromRpm, radiansFromDegrees } from '../../src/engine/units';
import { BENCH_PLAN } from '../../src/messages/en/benchPlan';
import { createReading } from '../../src/state/createReading';
import { designOf, partOf } from '../design/designs';
import { demo, gaugeHead } from './heads';

function planOf(design: Design, choices: PlanChoices = {}): BenchPlan {
  const plan = benchPlan(design, choices);
  if (!plan.ok) throw new Error(plan.error.kind);
  return plan.value;
}

/** The numbers that the page shows, from the page's own reading. */
function pageOf(design: Design) {
  const model = new HeadModel();
  if (!model.load(design).ok) throw new Error('refused');
  const reading = createReading(model);
  reading.refresh(design);
  return reading;
}

describe('the plan', () => {
  it("expects at every rung the very force of the page's chart, friction on either side", () => {
    const plan = planOf(demo('4-turned-nut'));
    for (const rung of plan.rungs.filter(({ key }) => key !== 'drag')) {
      const page = pageOf(rung.design);
      for (const { pitchDeg, force, friction, pull, push } of rung.expected) {
        const shown = page.forceAt(pitchDeg) ?? Number.NaN;
        // The same sums in another order: a few roundings of numbers up to 40 N.
        expect(Math.abs(force - shown)).toBeLessThan(1e-12 * 40);
        const k = page.curve.pitchDeg.indexOf(pitchDeg);
        const band = Math.abs(page.curve.forcePerMoment[k]) * page.curve.friction[k];
        expect(Math.abs(friction - band)).toBeLessThan(1e-12 * 40);
        expect((pull + push) / 2).toBeCloseTo(force, 12);
        expect(pull).toBeGreaterThan(push);
      }
    }
  });

  it("expects the chart's slider force where the gauge is at the slider, and its negative from the other side", () => {
    const design = demo('4-turned-nut');
    const page = pageOf(design);
    const above = planOf(design, { place: { kind: 'slider' } }).rungs.at(-1)?.expected ?? [];
    const below = planOf(design, { place: { kind: 'slider', pullsAlong: -1 } });
    expect(above.length).toBeGreaterThan(5);
    above.forEach(({ pitchDeg, force }, k) => {
      expect(Math.abs(force - (page.sliderAt(pitchDeg) ?? Number.NaN))).toBeLessThan(1e-12 * 40);
      expect(below.rungs.at(-1)?.expected[k].force).toBe(-force);
    });
  });

  it('goes up the ladder as the trade does (common practice): bare centres, bolt flees, blade centres hard', () => {
    const plan = planOf(demo('4-turned-nut'), { gaugeLimit: 50, gaugeStep: 0.1 });
    const spread = Object.fromEntries(plan.rungs.map(({ key, model }) => [key, model.spread]));
    expect(plan.rungs.map(({ key }) => key)).toEqual([
      'drag',
      'bare',
      'bolt',
      'ordinary',
      'asDesigned',
    ]);
    expect(spread.bare).toBeGreaterThan(0);
    expect(spread.bolt).toBeLessThan(0);
    expect(spread.ordinary).toBeGreaterThan(2 * spread.bare);
    expect(Math.abs(spread.asDesigned)).toBeLessThan(spread.ordinary / 5);
    // Tens of ounce-force (0.278 N each) at the push rod at 20 degrees with blade and ordinary bolt.
    const ordinary = plan.rungs[3].expected.find(({ pitchDeg }) => pitchDeg === 20);
    expect(Math.abs(ordinary?.force ?? 0) / 0.278).toBeGreaterThan(20);
    expect(plan.rangeShare).toBeCloseTo(plan.highest / 50, 12);
    expect(plan.highest).toBe(Math.max(...plan.rungs.map(({ highest }) => highest)));
  });

  it('hides what is not on yet and puts a bought nut of the same thread in the new one\u2019s place', () => {
    const { rungs, newParts } = buildRungs(demo('4-turned-nut'));
    expect(newParts).toEqual(['nut']);
    const [, bare, bolt, ordinary, last] = rungs;
    expect(bare.on).not.toContain('bolt');
    expect(bare.on).toContain('bearing-thrust');
    expect(bolt.added.toSorted()).toEqual(['bolt', 'nut', 'washer-bottom', 'washer-top']);
    expect(ordinary.added).toEqual(['blade']);
    expect(last.added).toEqual(['nut']);
    expect(ordinary.design.parts.find(({ id }) => id === 'nut')?.catalogue?.size).toBe('M3');
  });

  it('has no rung for what is not there, and says so', () => {
    const ordinary = buildRungs(demo('3-ordinary-bolt'));
    expect(guessNewParts(demo('3-ordinary-bolt'))).toEqual([]);
    expect(ordinary.missing).toEqual([{ key: 'ordinary', why: 'nothingNew' }]);
    const bare = buildRungs(demo('1-bare-grip'));
    expect(bare.missing.map(({ key }) => key)).toEqual(['bare', 'bolt', 'ordinary']);
    expect(bare.rungs.map(({ key }) => key)).toEqual(['drag', 'asDesigned']);
    const noPart = buildRungs(demo('4-turned-nut'), { ordinary: { nut: null } });
    expect(noPart.rungs.find(({ key }) => key === 'ordinary')?.on).not.toContain('nut');
  });

  it('refuses a head that does not turn or has nothing to pull at', () => {
    const still = demo('4-turned-nut');
    expect(benchPlan({ ...still, rotor: { ...still.rotor, speedRpm: 0 } })).toEqual({
      ok: false,
      error: { kind: 'notTurning' },
    });
    const lump = designOf([partOf('pointMass', 'lump')]);
    expect(benchPlan(lump)).toEqual({ ok: false, error: { kind: 'noLinkage' } });
  });

  it('reads at an arm what a hand calculation gives', () => {
    // 1 g at y = 10 mm, z = 0: A = 1e-3 x 1e-4 = 1e-7 kg m^2; M(10 deg) = -W^2 A/2 sin 20 deg, over an arm of 20 mm.
    const lump = partOf('pointMass', 'lump', {
      massGrams: 1,
      pose: { positionMm: [30, 10, 0], rotationDeg: [0, 0, 0] },
    });
    const head = gaugeHead(designOf([lump]), { kind: 'arm', arm: 0.02 });
    const speed = angularSpeedFromRpm(6000);
    const byHand = (-((200 * Math.PI) ** 2) * 1e-7 * Math.sin(Math.PI / 9)) / 2 / 0.02;
    expect(head.force(radiansFromDegrees(10), speed)).toBeCloseTo(byHand, 12);
    expect(byHand).toBeCloseTo(-0.33756, 5);
  });

  it('has words for every rung and every safety step', () => {
    const texts = BENCH_PLAN as Readonly<Record<string, string>>;
    for (const key of SAFETY_STEPS) expect(texts[key]).toMatch(/\.$/);
    // Cautions of the trade (common practice): guard, eyes, plane of the disc, slow, bent bolts, used nuts.
    const all = SAFETY_STEPS.map((key) => texts[key]).join(' ');
    for (const word of ['guard', 'Eye', 'plane of the disc', 'slow', 'bent', 'locking nut'])
      expect(all).toContain(word);
  });
});
