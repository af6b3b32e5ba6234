import { describe, expect, it } from 'vitest';
import type { GaugePlace } from '../../src/bench/gaugeHead';
import { modelBand } from '../../src/bench/modelBand';
import { benchPlan } from '../../src/bench/plan';
import type { Design } from '../../src/design/design';
import { radiansFromDegrees } from '../../src/engine/units';
import { designOf, partOf } from '../design/designs';
import { demo, gaugeHead } from './heads';

const DESIGN = demo('4-turned-nut');
const WITHOUT_AIR: Design = { ...DESIGN, counted: { ...DESIGN.counted, air: false } };
const PITCHES = [-20, 0, 10];
/** One tolerance and no other: the nut's height to 0.05 mm either way, uniform. */
const ONE: Design = {
  ...WITHOUT_AIR,
  tolerance: {
    generalClass: 'none',
    densityPercent: 0,
    own: [{ part: 'nut', field: 'heightMm', plusMinus: 0.05 }],
  },
};

function withHeight(design: Design, change: number): Design {
  const parts = design.parts.map((part) =>
    part.id === 'nut'
      ? { ...part, heightMm: (part as { heightMm: number }).heightMm + change }
      : part,
  );
  return { ...design, parts: parts as Design['parts'] };
}

describe('the band of an expected reading', () => {
  it.each<GaugePlace>([{ kind: 'rod' }, { kind: 'slider' }, { kind: 'arm', arm: 0.02 }])(
    'is that of two heads made at the limits, where the design has a tolerance: gauge at the $kind',
    (place) => {
      const head = gaugeHead(ONE, place);
      const band = modelBand(head, PITCHES);
      expect(band.from).toBe('tolerances');
      PITCHES.forEach((deg, i) => {
        const at = (change: number) =>
          gaugeHead(withHeight(ONE, change), place).force(
            radiansFromDegrees(deg),
            head.designSpeed,
          );
        // Uniform between the limits: half the width over sqrt 3 (GUM, JCGM 100:2008, 4.3.7). The bend over 0.1 mm is left out.
        const byHand = Math.abs(at(0.05) - at(-0.05)) / 2 / Math.sqrt(3);
        expect(Math.abs(band.sigma[i] - byHand)).toBeLessThan(0.002 * byHand + 1e-9);
      });
    },
  );

  it('is 2 % of every mass where the design says nothing, a weighed one its step, and it says which', () => {
    // 1 g at y = 10 mm: A = 1e-7 kg m^2; the moment at 10 degrees over an arm of 20 mm, 2 % of it.
    const lump = partOf('pointMass', 'lump', {
      massGrams: 1,
      pose: { positionMm: [30, 10, 0], rotationDeg: [0, 0, 0] },
    });
    const head = gaugeHead(designOf([lump]), { kind: 'arm', arm: 0.02 });
    const byHand = (head.designSpeed ** 2 * 1e-7 * Math.sin(Math.PI / 9)) / 2 / 0.02;
    const band = modelBand(head, [10]);
    expect(band.from).toBe('masses');
    expect(band.sigma[0] / byHand).toBeCloseTo(0.02, 10);
  });

  it('stands in the plan at each speed with the square of it, and none at rest', () => {
    const plan = benchPlan(ONE, { pitchesDeg: PITCHES, speedsRpm: [5100, 10_200] });
    if (!plan.ok) throw new Error(plan.error.kind);
    const rungs = plan.value.rungs;
    expect(rungs.map(({ bandFrom }) => bandFrom)).toEqual(rungs.map(() => 'tolerances'));
    const [slow, full] = rungs[rungs.length - 1].speeds;
    expect(full.expected[0].sigma / slow.expected[0].sigma).toBeCloseTo(4, 12);
    for (const { sigma } of rungs[0].expected) expect(sigma).toBe(0);
  });
});
