import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import {
  MEASURED_LIMITS,
  type Measured,
  SWING_LIMITS,
  type Swing,
} from '../../src/design/measured';
import { M, SX, SY } from '../../src/engine/mass/moments';
import { gramsFromKilograms, mmFromMetres } from '../../src/engine/units';
import { createSession } from '../../src/state/createSession';
import { designOf, partOf } from './designs';

const file = new URL('../../assets/designs/3-ordinary-bolt.json', import.meta.url);
const demo = (parseDesign(readFileSync(file, 'utf8')) as { value: Design }).value;
const SWING: Swing = { about: 'span', spacingMm: 40, stringLengthMm: 400, swings: 20, seconds: 9 };

function boxWith(measured: unknown): Part {
  return partOf('block', 'box', { sizeMm: [40, 20, 10], densityKgM3: 2500, measured });
}

function placedBox(more: object) {
  const model = new HeadModel();
  const part = partOf('blade', 'blade', more as Record<string, unknown>);
  expect(model.load(designOf([part]))).toMatchObject({ ok: true });
  const placed = model.placed('blade');
  if (!placed) throw new Error('placedBox(): the blade is not in the model');
  return placed;
}

describe('a weighed part in the head', () => {
  it('pulls in proportion to its mass, and undo puts the drawn mass back', () => {
    const session = createSession(demo, (callback) => callback());
    const blade = () => {
      const placed = session.live.model.placed('blade');
      if (!placed) throw new Error('blade(): it is gone');
      return placed;
    };
    const drawn = gramsFromKilograms(blade().moments_G[M]);
    // The head's moment is linear in J, so 25 % more of one part is 25 % more of its share. Rounding only.
    const whole = session.live.reading.forceAt(20);
    const share = (pitchDeg: number) => session.live.reading.part('blade')?.momentAt(pitchDeg) ?? 0;
    const pitches = [-50, -10, 20, 70];
    const before = pitches.map(share);
    expect(session.actions.setMeasured('blade', { massGrams: 1.25 * drawn }).ok).toBe(true);
    expect(gramsFromKilograms(blade().moments_G[M])).toBeCloseTo(1.25 * drawn, 12);
    const largest = Math.max(...before.map(Math.abs));
    expect(largest).toBeGreaterThan(0);
    pitches.forEach((pitch, i) => {
      expect(Math.abs(share(pitch) - 1.25 * before[i])).toBeLessThan(1e-12 * largest);
    });
    expect(session.live.reading.forceAt(20)).not.toBe(whole);
    session.actions.undo();
    expect(gramsFromKilograms(blade().moments_G[M])).toBe(drawn);
    expect(session.live.reading.forceAt(20)).toBeCloseTo(whole ?? Number.NaN, 12);
  });

  it('a blade with lag is measured in its own axes: its balance point turns with it', () => {
    const measured = { massGrams: 8, centreXMm: 50, centreYMm: -4 };
    for (const lagDeg of [0, 30, -12]) {
      const { moments_G } = placedBox({ lagDeg, measured });
      // Lag is positive toward the trailing edge: by a turn of -lag about z.
      const turn = (-lagDeg * Math.PI) / 180;
      const x = 50 * Math.cos(turn) + 4 * Math.sin(turn);
      const y = 50 * Math.sin(turn) - 4 * Math.cos(turn);
      expect(mmFromMetres(moments_G[SX] / moments_G[M])).toBeCloseTo(x, 10);
      expect(mmFromMetres(moments_G[SY] / moments_G[M])).toBeCloseTo(y, 10);
    }
  });
});

describe('measured values in a file', () => {
  it('come back as they were written', () => {
    const measured: Measured = {
      massGrams: 21.5,
      massStepGrams: 0.1,
      centreXMm: 0.2,
      centreYMm: -0.3,
      centreZMm: 0,
      centreStepMm: 0.25,
      swings: [{ ...SWING, seconds: 5.8, amplitudeDeg: 8, cradleGrams: 2, cradleMomentGMm2: 150 }],
    };
    const text = serializeDesign(designOf([boxWith(measured)]));
    const read = parseDesign(text);
    expect(read).toMatchObject({ ok: true, value: { parts: [{ measured }] } });
    if (read.ok) expect(serializeDesign(read.value)).toBe(text);
  });

  const single = Object.entries(MEASURED_LIMITS).flatMap(([name, { min, max }]) => [
    [name, min - Math.max(1, Math.abs(min)), 'tooSmall'] as const,
    [name, max * 2, 'tooLarge'] as const,
  ]);
  it.each(single)('%s of %d is refused with its path', (name, value, code) => {
    const outcome = new HeadModel().load(designOf([boxWith({ [name]: value })]));
    expect(outcome).toMatchObject({
      ok: false,
      error: { path: `parts[0].measured.${name}`, reason: { code } },
    });
  });

  const timed = Object.entries(SWING_LIMITS).flatMap(([name, { min, max }]) => [
    [name, min - 1, 'tooSmall'] as const,
    [name, max * 2, 'tooLarge'] as const,
  ]);
  it.each(timed)('%s of %d in a timing is refused with its path', (name, value, code) => {
    const swings = [{ ...SWING, [name]: value }];
    const outcome = new HeadModel().load(designOf([boxWith({ swings })]));
    expect(outcome).toMatchObject({
      ok: false,
      error: { path: `parts[0].measured.swings[0].${name}`, reason: { code } },
    });
  });
});

describe('timings that no body can have', () => {
  /** About the span a thousandth of what chord and thickness demand: the spread along it comes out negative. */
  const impossible: Measured = {
    massGrams: 20,
    swings: [
      { ...SWING, seconds: 60 },
      { ...SWING, about: 'chord', seconds: 3 },
      { ...SWING, about: 'thickness', seconds: 3 },
    ],
  };

  it('are refused with the moments they come to, and nothing changes', () => {
    const design = designOf([boxWith(undefined)]);
    const session = createSession(design, (callback) => callback());
    const before = session.store.getState().design;
    const moments = session.live.model.placed('box')?.moments_G.slice();
    const outcome = session.actions.setMeasured('box', impossible);
    expect(outcome).toMatchObject({
      ok: false,
      error: {
        fault: { path: 'parts[0].measured.swings', reason: { code: 'measuredImpossible' } },
      },
    });
    const detail = outcome.ok ? '' : JSON.stringify(outcome.error.fault);
    // By hand: I = m g s^2 P^2 / (16 pi^2 L), 20 g, 40 mm, 400 mm; P = 3 s: 44 713 g mm^2, P = 0.15 s: 111.8 g mm^2.
    expect(detail).toContain('4.471e+4 g mm2, 111.8 g mm2, 111.8 g mm2');
    expect(session.store.getState().design).toBe(before);
    expect(session.live.model.placed('box')?.moments_G).toEqual(moments);
    expect(session.store.temporal.getState().pastStates).toHaveLength(0);
  });
});
