import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { readChoice } from '../../../src/output/drawing/choice';
import { drawSheet } from '../../../src/output/drawing/drawSheet';
import {
  asScaleShows,
  judgeWeighed,
  massProof,
  stepThatProves,
  usualStep,
} from '../../../src/output/drawing/massProof';
import { massWindow } from '../../../src/output/drawing/massWindow';
import { EMPTY_DESIGN } from '../../../src/state/store';

const pose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
const SIZES = { outerDiameterMm: 20, innerDiameterMm: 8, thicknessMm: 4, densityKgM3: 7850 };
const washer = { id: 'w', kind: 'washer', name: 'Ring', pose, ...SIZES } as unknown as Part;

function design(tolerance: Design['tolerance']): Design {
  return { ...EMPTY_DESIGN, parts: [washer], tolerance } as Design;
}

/** Grams of a ring, mm and kg/m3. */
function ring(outer: number, inner: number, thickness: number, density: number): number {
  return ((Math.PI / 4) * (outer ** 2 - inner ** 2) * thickness * density) / 1e6;
}

describe('the mass that a part may have', () => {
  it('is that of the ring with every size at the end of its tolerance: ISO 2768-m and a share of the density', () => {
    const { nominal, least, most } = massWindow(
      design({ generalClass: 'medium', densityPercent: 1 }),
      washer,
    );
    expect(nominal).toBeCloseTo(ring(20, 8, 4, 7850), 9);
    // ISO 2768-1, table 1, class m (from memory): over 3 to 6 mm 0.1, over 6 to 30 mm 0.2.
    expect(least).toBeCloseTo(ring(19.8, 8.2, 3.9, 7850 * 0.99), 9);
    expect(most).toBeCloseTo(ring(20.2, 7.8, 4.1, 7850 * 1.01), 9);
  });

  it('is one mass where nothing has a tolerance', () => {
    const { nominal, least, most } = massWindow(
      design({ generalClass: 'none', densityPercent: 0 }),
      washer,
    );
    expect([least, most]).toEqual([nominal, nominal]);
  });
});

describe('the readings that prove a part', () => {
  const window = { nominal: 3.48, least: 3.4021, most: 3.5579 };

  // Ends just above and just below a reading of every step: a mass of 3.4079 g is shown as 3.41 g, and so is 3.4051 g.
  it('leave out the reading that a mass outside could be shown as, at both ends', () => {
    expect(massProof({ nominal: 3.48, least: 3.4079, most: 3.5521 }, 0.01).readings).toEqual({
      least: expect.closeTo(3.42, 9),
      most: expect.closeTo(3.54, 9),
    });
    expect(massProof({ nominal: 3.48, least: 3.4049, most: 3.5551 }, 0.01).readings).toEqual({
      least: expect.closeTo(3.41, 9),
      most: expect.closeTo(3.55, 9),
    });
  });

  it('are those of which every mass that the scale shows so lies in the window', () => {
    for (const step of [0.1, 0.05, 0.02, 0.01, 0.005, 0.001]) {
      // Brute force: every reading near the window, by both ends of what it stands for.
      const proving: number[] = [];
      for (let k = Math.floor(3.2 / step); k * step < 3.8; k++) {
        const [low, high] = [(k - 0.5) * step, (k + 0.5) * step];
        if (low >= window.least - 1e-9 && high <= window.most + 1e-9) proving.push(k * step);
      }
      const { readings } = massProof(window, step);
      expect(readings === null, `${step} g`).toBe(proving.length === 0);
      if (!readings) continue;
      expect(readings.least).toBeCloseTo(proving[0], 9);
      expect(readings.most).toBeCloseTo(proving[proving.length - 1], 9);
    }
  });

  it('are none on a scale too coarse for the window, and the coarsest scale that would do is named', () => {
    const narrow = { nominal: 0.5, least: 0.498, most: 0.502 };
    expect(massProof(narrow, 0.01).readings).toBeNull();
    expect(stepThatProves(narrow)).toBe(0.001);
    // 3.5 g on a scale in tenths: 3.45 to 3.55 g, within the window.
    expect(stepThatProves(window)).toBe(0.1);
    expect(stepThatProves({ nominal: 1, least: 1, most: 1 })).toBeNull();
  });

  it('are looked for on a scale whose step goes ten times into the window, where there is one', () => {
    const wide = (most: number) => ({ nominal: 10, least: 10, most });
    expect(usualStep(wide(80))).toBe(1);
    expect(usualStep(wide(11.5))).toBe(0.1);
    expect(usualStep(wide(10.3))).toBe(0.01);
    expect(usualStep(wide(10.003))).toBe(0.001);
    expect(usualStep(wide(10))).toBe(0.001);
  });

  it('judge a weighed part as inside, beyond by so much, or too near to the end to tell', () => {
    const { readings } = massProof(window, 0.01);
    for (const grams of [readings?.least ?? 0, 3.48, readings?.most ?? 0]) {
      expect(judgeWeighed(window, 0.01, grams)).toEqual({ kind: 'inside' });
    }
    expect(judgeWeighed(window, 0.01, 3.4)).toEqual({ kind: 'undecided' });
    expect(judgeWeighed(window, 0.01, 3.3)).toEqual({ kind: 'light', by: expect.closeTo(0.1021) });
    expect(judgeWeighed(window, 0.01, 3.6)).toEqual({ kind: 'heavy', by: expect.closeTo(0.0421) });
  });

  it('are written with the decimals that the scale has', () => {
    expect(asScaleShows(3.4, 0.01)).toBe('3.40');
    expect(asScaleShows(3.4, 0.1)).toBe('3.4');
    expect(asScaleShows(3.25, 0.05)).toBe('3.25');
    expect(asScaleShows(3.25, 0.25)).toBe('3.25');
    expect(asScaleShows(120, 1)).toBe('120');
  });

  it('stand on the drawing, for the scale that was chosen', () => {
    const own = design({ generalClass: 'medium', densityPercent: 1 });
    // By the hand formula above, inwards by half a step and on to a whole one.
    const [low, high] = [ring(19.8, 8.2, 3.9, 7850 * 0.99), ring(20.2, 7.8, 4.1, 7850 * 1.01)];
    const want = `(0.1 g) shows ${(Math.ceil((low + 0.05) * 10) / 10).toFixed(1)} \u2026 ${(Math.floor((high - 0.05) * 10) / 10).toFixed(1)} g; beyond it`;
    const drawn = drawSheet(own, washer, {
      format: 'auto',
      projection: 'first',
      unit: 'mm',
      date: '2026-01-01',
      scaleStep: 0.1,
    });
    const texts = drawn.ok
      ? drawn.value.entities.flatMap((one) => (one.shape === 'text' ? [one.text] : []))
      : [];
    expect(texts.join(' ')).toContain(want);
  });
});

describe('what was chosen for the drawings', () => {
  it('comes back as it was kept, and what is unknown or impossible of it is left out', () => {
    const kept = {
      format: 'A4 portrait',
      projection: 'third',
      unit: 'in',
      step: 0.05,
      carries: false,
    };
    expect(readChoice(JSON.stringify(kept))).toEqual(kept);
    const first = { format: 'auto', projection: 'first', unit: null, step: null, carries: true };
    for (const text of [
      null,
      'no json',
      '[]',
      '7',
      'null',
      '{"format":"A0","step":-1,"unit":"m"}',
    ]) {
      expect(readChoice(text), String(text)).toEqual(first);
    }
  });
});
