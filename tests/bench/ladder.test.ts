import { describe, expect, it } from 'vitest';
import { scaleMass } from '../../src/bench/correction';
import { EXAMPLE_ERRORS, exampleBench } from '../../src/bench/examples';
import { agreementOf, ladderSteps } from '../../src/bench/ladder';
import { neutralBy } from '../../src/bench/neutralBy';
import { practiceBench } from '../../src/bench/practice';
import type { HiddenErrors } from '../../src/bench/practiceErrors';
import { designDrag } from '../../src/bench/setup';
import type { Design } from '../../src/design/design';
import {
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
} from '../../src/engine/feathering/harmonics';
import { restDragAt } from '../../src/engine/identify/benchReading';
import { createMoments } from '../../src/engine/mass/moments';
import { radiansFromDegrees } from '../../src/engine/units';
import { demo, fitBench, gaugeHead } from './heads';

const DESIGN = demo('4-turned-nut');
const STEP_N = 0.1;

function benchWith(errors: Partial<HiddenErrors>, seed: number) {
  const made = practiceBench(DESIGN, {
    seed,
    gaugeStep: STEP_N,
    errors: { ...EXAMPLE_ERRORS, ...errors },
  });
  if (!made.ok) throw new Error(made.error.kind);
  return made.value;
}

/** Push-rod force of the mass alone at a pitch, N. */
function massForce(design: Design, pitchDeg: number): number {
  const head = gaugeHead(design);
  const { model } = head.forces;
  const harmonics = featheringHarmonics(
    model.totals(createMoments()),
    model.rotor,
    createHarmonics(),
  );
  const pitch = radiansFromDegrees(pitchDeg);
  return head.forcePerMoment(pitch) * featheringMoment(harmonics, pitch);
}

describe('the build ladder', () => {
  it('finds the part that is wrong, and only that: a blade a tenth too heavy', () => {
    const steps = ladderSteps(fitBench(exampleBench(DESIGN)).rungs);
    expect(steps.map(({ to, agreement }) => [to, agreement.agrees])).toEqual([
      ['bare', true],
      ['bolt', true],
      ['ordinary', false],
      ['asDesigned', true],
    ]);
    const blade = steps[2];
    expect(blade.added).toEqual(['blade']);
    expect(blade.measured.spread / blade.model.spread).toBeCloseTo(1.1, 2);
  });

  it('adds covariances: a step is as uncertain as both its rungs together', () => {
    const { rungs } = fitBench(benchWith({}, 12));
    const [bare, bolt] = rungs.map(({ measured }) => measured.covariance[0]);
    expect(ladderSteps(rungs)[1].measured.covariance[0]).toBeCloseTo(bare + bolt, 25);
  });

  it('doubts a true model in 5 % of benches, and holds friction within its uncertainty', () => {
    // 25 benches of 4 steps: at 5 % 5 doubted, binomial standard deviation 2.2 (steps share rungs, so a little more).
    let doubted = 0;
    let inside = 0;
    const seeds = 25;
    for (let seed = 100; seed < 100 + seeds; seed++) {
      const bench = benchWith({ massShares: {} }, seed);
      const { rungs } = fitBench(bench);
      doubted += ladderSteps(rungs).filter(({ agreement }) => !agreement.agrees).length;
      const last = rungs[rungs.length - 1];
      const found = last.fitted.fit.estimates.find(({ key }) => key.kind === 'friction');
      const head = gaugeHead(bench.trueDesign);
      const truth =
        EXAMPLE_ERRORS.frictionFactor * head.bearingMoment(radiansFromDegrees(0), head.designSpeed);
      if (Math.abs((found?.value ?? 0) - truth) < (found?.half95 ?? 0)) inside++;
    }
    expect(doubted).toBeLessThan(5 + 4 * 2.2);
    // 95 % of 25 is 23.75; four standard deviations (1.1) below.
    expect(inside).toBeGreaterThan(23.75 - 4 * 1.1);
  });

  it('gives back the drag at rest and the zero of the gauge that were hidden', () => {
    const bench = exampleBench(DESIGN);
    const { rest } = fitBench(bench);
    // Hidden: 1.1 times the drag that the design has, which is 0.34 N at flat pitch for two grips, along a rod that leans
    // by asin(4 / 16) there, and 0.13 N of zero. Thirteen travels: none beyond four of its standard uncertainties.
    const atFlat = (1.1 * 0.34) / 2 / Math.cos(Math.asin(4 / 16));
    const flat = rest.drag.find(({ travel }) => Math.abs(travel) < 1e-9);
    expect(Math.abs((flat?.force ?? 9) - atFlat)).toBeLessThan(4 * (flat?.sigma ?? 0));
    expect(rest.drag).toHaveLength(bench.plan.pitchesDeg.length);
    const drag = designDrag(gaugeHead(DESIGN));
    for (const { travel, force, sigma } of rest.drag) {
      expect(Math.abs(force - 1.1 * restDragAt(drag, travel).force)).toBeLessThan(4 * sigma);
    }
    const zero = rest.zero ?? { force: 9, sigma: 0 };
    expect(Math.abs(zero.force - 0.13)).toBeLessThan(4 * zero.sigma);
  });

  it('judges two numbers by their covariance (a chi-square of 5.99 is 5 %, Abramowitz and Stegun table 26.8)', () => {
    const one = {
      spread: Math.sqrt(5.99146),
      product: 0,
      covariance: [1, 0, 0, 1],
      freedom: Infinity,
    } as const;
    expect(agreementOf(one).pValue).toBeCloseTo(0.05, 5);
    // Fully worked by hand: d = (1, 1), C = [[2, 1], [1, 2]]; C^-1 = [[2, -1], [-1, 2]] / 3; d^T C^-1 d = 2/3.
    const two = { spread: 1, product: 1, covariance: [2, 1, 1, 2], freedom: Infinity } as const;
    expect(agreementOf(two).chiSquare).toBeCloseTo(2 / 3, 12);
  });
});

describe('the loop', () => {
  it('closes: a head with a blade a tenth too heavy ends within the gauge step after one correction', () => {
    for (const seed of [21, 22, 23, 24, 25]) {
      const bench = benchWith({}, seed);
      const step = ladderSteps(fitBench(bench).rungs)[2];
      const scaled = scaleMass(DESIGN, 'blade', step.deficit);
      if (!scaled.ok) throw new Error(scaled.error.kind);
      expect(scaled.value.explains).toBe(true);
      // The corrected model tells the true head's force.
      for (const pitchDeg of [-20, -10, 0, 10, 20]) {
        const gap =
          massForce(scaled.value.design, pitchDeg) - massForce(bench.trueDesign, pitchDeg);
        expect(Math.abs(gap)).toBeLessThan(STEP_N);
      }
      // One nut turned by the corrected model makes the true head as neutral as one nut can: what J_yz leaves is its own.
      const nut = neutralBy(
        scaled.value.design,
        { part: 'nut', field: 'heightMm' },
        scaled.value.left,
      );
      if (!nut.ok) throw new Error(nut.error.kind);
      const parts = bench.trueDesign.parts.map((part) =>
        part.id === 'nut' ? (nut.value.design.parts.find(({ id }) => id === 'nut') ?? part) : part,
      );
      const turned = { ...bench.trueDesign, parts };
      const product = massForce(turned, 0);
      for (const pitchDeg of [-20, -10, 10, 20]) {
        const share = gaugeHead(turned).forcePerMoment(radiansFromDegrees(pitchDeg));
        const flat = gaugeHead(turned).forcePerMoment(radiansFromDegrees(0));
        const ofProduct = (product / flat) * share * Math.cos(radiansFromDegrees(2 * pitchDeg));
        expect(Math.abs(massForce(turned, pitchDeg) - ofProduct)).toBeLessThan(STEP_N);
        // Before the correction it was far beyond.
        const before = massForce(bench.trueDesign, pitchDeg) - ofProduct;
        expect(Math.abs(before)).toBeGreaterThan(2 * STEP_N);
      }
    }
  });
});
