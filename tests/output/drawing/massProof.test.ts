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

/** A cap screw by hand: head less its socket, shank, thread as a cylinder of its mean section; g. */
function screw(v: {
  readonly head: readonly [diameter: number, height: number];
  readonly socket: readonly [across: number, depth: number];
  readonly shank: readonly [diameter: number, length: number];
  readonly thread: readonly [meanDiameter: number, length: number];
  readonly density: number;
}): number {
  const round = ([d, h]: readonly [number, number]) => (Math.PI / 4) * d * d * h;
  const hexagon = (Math.sqrt(3) / 2) * v.socket[0] ** 2 * v.socket[1];
  return ((round(v.head) - hexagon + round(v.shank) + round(v.thread)) * v.density) / 1e6;
}

describe('the mass that a turned screw may have', () => {
  const sizes = { headDiameterMm: 5.5, headHeightMm: 3, socketAcrossMm: 2.5, socketDepthMm: 1.3 };
  const shaft = { lengthMm: 22, threadLengthMm: 10, shankDiameterMm: 3, threadPitchMm: 0.5 };
  const other = { extensionLengthMm: 0, extensionDiameterMm: 5.5, densityKgM3: 7850 };
  const bolt = {
    id: 'b',
    kind: 'bolt',
    name: 'Screw',
    pose,
    ...sizes,
    ...shaft,
    ...other,
  } as unknown as Part;
  const written = { ...design({ generalClass: 'medium', densityPercent: 1 }), parts: [bolt] };
  const { nominal, least, most } = massWindow(written as Design, bolt);
  // ISO 68-1 basic profile of M3 (crest P/8, root P/4, 5/8 of the triangle deep), its mean section: by hand.
  const MEAN = 2.70324;

  it('has the shank of h13 that the sheet asks for, never above its size', () => {
    const drawn = {
      socket: [2.5, 1.3],
      shank: [3, 12],
      thread: [MEAN, 10],
      density: 7850,
    } as const;
    expect(nominal).toBeCloseTo(screw({ head: [5.5, 3], ...drawn }), 4);
    // ISO 2768-m; ISO 286 h13 of 3 mm: 0 to -0.14 (ISO 4762 has 2.86 as the least shank of M3).
    const heaviest = screw({
      head: [5.6, 3.1],
      socket: [2.4, 1.2],
      shank: [3, 12.4],
      thread: [MEAN, 9.8],
      density: 7850 * 1.01,
    });
    expect(most).toBeCloseTo(heaviest, 4);
  });

  it('holds every screw that the sheet lets pass: thread 6g, M3 pitch diameter 20 to 95 \u00b5m under size (ISO 965)', () => {
    const lightest = screw({
      head: [5.4, 2.9],
      socket: [2.6, 1.4],
      shank: [2.86, 11.6],
      thread: [MEAN - 0.095, 10.2],
      density: 7850 * 0.99,
    });
    expect(least).toBeLessThan(lightest);
    expect(least).toBeGreaterThan(0.98 * lightest);
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
