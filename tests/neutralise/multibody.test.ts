import { beforeAll, describe, expect, it } from 'vitest';
import type { Part } from '../../src/design/design';
import { HeadModel } from '../../src/design/headModel';
import { createMoments, JYY, JYZ, JZZ } from '../../src/engine/mass/moments';
import { solveKnobs } from '../../src/neutralise/solveKnobs';
import { TrialHead } from '../../src/neutralise/trialHead';
import { designOf, partOf } from '../design/designs';
import type { Piece } from '../support/assembly';
import { type MultibodyEngine, startMultibodyEngine } from '../support/multibody';
import { seeded } from '../support/seeded';

const SPEED_RPM = 10_000;
const W = (SPEED_RPM * Math.PI) / 30;
const ROTOR = { speedRpm: SPEED_RPM, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 };
const UPRIGHT = [1, 0, 0, 0] as const;

let engine: MultibodyEngine;
beforeAll(async () => {
  engine = await startMultibodyEngine();
});

/** Blade, arm and pin of random size, chord-heavy; the pin stands along z at the bolt's place and is to be lengthened. */
function randomHead(seed: number): readonly Part[] {
  const random = seeded(seed);
  const box = (id: string, sizeMm: readonly number[], at: readonly number[]) =>
    partOf('block', id, {
      sizeMm,
      densityKgM3: random.between(1000, 3000),
      pose: { positionMm: at, rotationDeg: [0, 0, 0] },
    });
  return [
    box(
      'blade',
      [random.between(60, 120), random.between(20, 32), random.between(2, 5)],
      [80, 0, 0],
    ),
    box(
      'arm',
      [6, random.between(8, 14), 4],
      [random.between(5, 15), random.between(6, 12), random.between(-3, 3)],
    ),
    partOf('cylinder', 'pin', {
      diameterMm: random.between(3, 6),
      boreMm: 0,
      lengthMm: 20,
      densityKgM3: 7850,
      pose: { positionMm: [38, 0, 0], rotationDeg: [0, 0, 0] },
    }),
    partOf('block', 'lump', {
      sizeMm: [4, 4, 4],
      densityKgM3: 11_300,
      pose: { positionMm: [38, 2, random.between(8, 14)], rotationDeg: [0, 0, 0] },
    }),
  ];
}

/** The same head told to the other engine. */
function piecesOf(parts: readonly Part[]): readonly Piece[] {
  return parts.map((part): Piece => {
    const values = part as unknown as {
      readonly sizeMm?: readonly [number, number, number];
      readonly diameterMm: number;
      readonly lengthMm: number;
      readonly densityKgM3: number;
    };
    const [x, y, z] = part.pose?.positionMm ?? [0, 0, 0];
    const along = values.sizeMm === undefined;
    return {
      shape: along
        ? { kind: 'cylinder', radius: values.diameterMm / 2000, height: values.lengthMm / 1000 }
        : {
            kind: 'box',
            size: (values.sizeMm as readonly number[]).map(
              (mm) => mm / 1000,
            ) as unknown as readonly [number, number, number],
          },
      density: values.densityKgM3,
      turn: UPRIGHT,
      centre: [x / 1000, y / 1000, z / 1000],
    };
  });
}

/** W^2 / 2 times the largest |J_yy - J_zz| of any part: the size that what is left is held against, N m. */
function largestPart(parts: readonly Part[]): number {
  const model = new HeadModel();
  const outcome = model.load(designOf([...parts], ROTOR));
  if (!outcome.ok) throw new Error(outcome.error.path);
  return Math.max(
    ...model.parts.map(({ moments_G }) => (W * W * Math.abs(moments_G[JYY] - moments_G[JZZ])) / 2),
  );
}

describe('solved heads, rebuilt in the multibody engine', () => {
  it.each(Array.from({ length: 40 }, (_, i) => i + 1))(
    'one length: no moment at 45 degrees, within 1e-9 of the largest part (seed %i)',
    (seed) => {
      const parts = randomHead(seed);
      const made = TrialHead.of(
        designOf([...parts], ROTOR),
        { goal: { kind: 'neutral' }, speedsRpm: [SPEED_RPM] },
        [{ ref: { part: 'pin', field: 'lengthMm' } }],
      );
      if (!made.ok) throw new Error(made.error.path);
      const { solutions } = solveKnobs(made.value, [{ min: 2, max: 120 }]);
      expect(solutions[0]?.leads).toBe(true);
      made.value.set(solutions[0].values);
      const solved = made.value.currentParts;
      const hub = { angularSpeed: W, torqueOffset: 0, precone: 0 };
      // sin 2t = 1 at 45 degrees and -1 at -45: half the difference is the even term alone.
      const [up, down] = engine.moments(piecesOf(solved), hub, [Math.PI / 4, -Math.PI / 4]);
      expect(Math.abs(up - down) / 2).toBeLessThan(1e-9 * largestPart(solved));
    },
  );

  it.each(Array.from({ length: 20 }, (_, i) => i + 1))(
    'a length and where a lump sits: no moment at any pitch (seed %i)',
    (seed) => {
      const parts = randomHead(seed);
      const made = TrialHead.of(
        designOf([...parts], ROTOR),
        { goal: { kind: 'neutral' }, speedsRpm: [SPEED_RPM] },
        [
          { ref: { part: 'pin', field: 'lengthMm' } },
          { ref: { part: 'lump', field: 'positionMm', component: 1 } },
        ],
      );
      if (!made.ok) throw new Error(made.error.path);
      const { solutions } = solveKnobs(made.value, [
        { min: 2, max: 120 },
        { min: -20, max: 20 },
      ]);
      expect(solutions[0]?.met).toBe(true);
      made.value.set(solutions[0].values);
      const solved = made.value.currentParts;
      const totals = made.value.forces.model.totals(createMoments());
      expect(Math.abs(totals[JYZ])).toBeLessThan(1e-9 * totals[JZZ]);
      const hub = { angularSpeed: W, torqueOffset: 0, precone: 0 };
      const pitches = [-60, -20, 0, 20, 60].map((deg) => (deg * Math.PI) / 180);
      const limit = 1e-9 * largestPart(solved);
      for (const moment of engine.moments(piecesOf(solved), hub, pitches)) {
        expect(Math.abs(moment)).toBeLessThan(limit);
      }
    },
  );
});
