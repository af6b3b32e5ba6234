import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import type { Measured } from '../../src/design/measured';
import { NO_MATERIALS, valuesOf } from '../../src/design/resolve';
import { weighPart } from '../../src/design/weighPart';
import { centralSecondMoment, centreOfMass } from '../../src/engine/mass/inertia';
import { createMoments, JYY, JZZ, M } from '../../src/engine/mass/moments';
import { designOf, fullHead } from './designs';

const blade = fullHead().find((part) => part.id === 'blade') as Part;

function weighed(measured: Measured | null, more: object = {}) {
  const part = { ...blade, ...more, ...(measured ? { measured } : {}) } as Part;
  const result = weighPart(part, valuesOf(part, NO_MATERIALS), createMoments());
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

/** Period of a two-string pendulum (hand formula, Newton): P = 2 pi sqrt(I L / (m g b^2)), b half the spacing. */
function period(inertia: number, mass: number, spacing: number, length: number): number {
  return 2 * Math.PI * Math.sqrt((inertia * length) / (mass * 9.80665 * (spacing / 2) ** 2));
}

describe('a part that was weighed', () => {
  test('weighs what the scale says, every moment in the same proportion', () => {
    const modelled = weighed(null);
    const scaled = weighed({ massGrams: 9.2, massStepGrams: 0.01 });
    expect(scaled[M]).toBe(9.2e-3);
    const factor = 9.2e-3 / modelled[M];
    for (let i = 1; i < modelled.length; i++) {
      expect(scaled[i]).toBeCloseTo(modelled[i] * factor, 18);
    }
  });

  test('is measured in its own axes, whichever way it lags', () => {
    const centre = { centreXMm: 50, centreYMm: -3 };
    for (const lagDeg of [0, 20, -35]) {
      const moments = weighed(centre, { lagDeg });
      const [x, y] = centreOfMass(moments) ?? [Number.NaN, Number.NaN, Number.NaN];
      // Lag is positive toward -y: the body's x points to (cos, -sin).
      const lag = (lagDeg * Math.PI) / 180;
      expect(x).toBeCloseTo(0.05 * Math.cos(lag) - 0.003 * Math.sin(lag), 15);
      expect(y).toBeCloseTo(-0.05 * Math.sin(lag) - 0.003 * Math.cos(lag), 15);
    }
  });

  test('gets the moments that its timings on the two-string pendulum say', () => {
    const mass = 9e-3;
    const about = { span: 6.2e-7, chord: 7.4e-6 };
    const swing = (name: 'span' | 'chord') => ({
      about: name,
      spacingMm: 60,
      stringLengthMm: 800,
      swings: 20,
      seconds: 20 * period(about[name], mass, 0.06, 0.8),
    });
    const moments = weighed({ massGrams: 9, swings: [swing('span'), swing('chord')] });
    const J = centralSecondMoment(moments);
    expect(moments[M]).toBe(mass);
    expect((J?.yy ?? 0) + (J?.zz ?? 0)).toBeCloseTo(about.span, 15);
    expect((J?.xx ?? 0) + (J?.zz ?? 0)).toBeCloseTo(about.chord, 15);
  });
});

describe('the head with a measured part', () => {
  const heavy = { ...blade, measured: { massGrams: 12 } } as Part;

  test('weighs the measured part and no other anew, and comes back when it is forgotten', () => {
    const model = new HeadModel();
    expect(model.load(designOf(fullHead())).ok).toBe(true);
    const spread = () => {
      const totals = model.totals(createMoments());
      return totals[JYY] - totals[JZZ];
    };
    const before = spread();
    const count = model.counters.weighed;
    expect(model.setPart(heavy).ok).toBe(true);
    expect(model.counters.weighed).toBe(count + 1);
    expect(model.placed('blade')?.moments_G[M]).toBe(12e-3);
    expect(spread()).toBeGreaterThan(before);
    expect(model.setPart(blade).ok).toBe(true);
    expect(spread()).toBe(before);
  });

  test('is left alone by what cannot be true', () => {
    const model = new HeadModel();
    expect(model.load(designOf(fullHead())).ok).toBe(true);
    const swing = (about: 'span' | 'chord' | 'thickness', seconds: number) => ({
      about,
      spacingMm: 60,
      stringLengthMm: 800,
      swings: 20,
      seconds,
    });
    const swings = [swing('span', 100), swing('chord', 5), swing('thickness', 5)];
    const outcome = model.setPart({ ...blade, measured: { swings } } as Part);
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) {
      expect(outcome.error.path).toMatch(/measured\.swings$/);
      expect(outcome.error.reason.code).toBe('measuredImpossible');
    }

    expect(model.placed('blade')?.part.measured).toBeUndefined();
  });

  test('keeps its measurements in a file to the last digit', () => {
    const measured: Measured = {
      massGrams: 8.93,
      massStepGrams: 0.01,
      centreXMm: 47.25,
      centreStepMm: 0.5,
      swings: [
        {
          about: 'span',
          spacingMm: 60.5,
          stringLengthMm: 812,
          swings: 30,
          seconds: 41.37,
          amplitudeDeg: 6,
          cradleGrams: 1.2,
          cradleMomentGMm2: 310,
        },
      ],
    };
    const design = designOf(
      fullHead().map((part) => (part.id === 'blade' ? ({ ...part, measured } as Part) : part)),
    );
    const again = parseDesign(serializeDesign(design));
    expect(again.ok && again.value).toEqual(design);
  });
});
