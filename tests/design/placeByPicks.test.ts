import { describe, expect, test } from 'vitest';
import { type PickedPlace, placeByPicks, type RimPicks } from '../../src/design/placeByPicks';
import {
  compose,
  inverse,
  type Pose,
  rotationFixedXyz,
  transformPoint,
} from '../../src/engine/math/pose';
import type { Vec3 } from '../../src/engine/math/vector';
import { radians } from '../../src/engine/units';
import { seeded } from '../support/seeded';

type Random = ReturnType<typeof seeded>;

/** Three points on a rim of the grip: about x at station `x` (the bore), or about z at station `x` (the bolt). */
function rim(axis: 'x' | 'z', x: number, radius: number): RimPicks {
  return [0.3, 2.2, 4.4].map((angle): Vec3 => {
    const [a, b] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return axis === 'x' ? [x, a, b] : [x + a, b, 0.006];
  }) as unknown as RimPicks;
}

function anyPose(random: Random): Pose {
  const turn = () => radians(random.between(-3, 3));
  const move = () => random.between(-0.3, 0.3);
  return {
    rotation: rotationFixedXyz(turn(), turn(), turn()),
    translation: [move(), move(), move()],
  };
}

function through(X: Pose, picks: RimPicks): RimPicks {
  return picks.map((p) => transformPoint(X, p)) as unknown as RimPicks;
}

function placed(result: ReturnType<typeof placeByPicks>): PickedPlace {
  if (!result.ok) throw new Error(result.error.kind);
  return result.value;
}

describe('a grip from a mesh, placed by its bore and its bolt hole', () => {
  test('comes to stand on the feathering axis with its bolt at the station, whatever frame its file had', () => {
    const random = seeded(5);
    for (let i = 0; i < 200; i++) {
      // X_PQ: from the true frame into that of the file.
      const X_PQ = anyPose(random);
      const bore = through(X_PQ, rim('x', 0.012, 0.004));
      const bolt = through(X_PQ, rim('z', 0.038, 0.0015));
      const place = placed(placeByPicks({ bore, bolt, stationMm: 41 }, anyPose(random)));
      const X_GQ = compose(place.pose, X_PQ);
      // The bolt was at 38 mm and shall be at 41: 3 mm along x, upright or turned over about x, nothing else.
      expect(X_GQ.translation[0]).toBeCloseTo(0.003, 12);
      expect(X_GQ.translation[1]).toBeCloseTo(0, 12);
      expect(X_GQ.translation[2]).toBeCloseTo(0, 12);
      expect(X_GQ.rotation[0]).toBeCloseTo(1, 12);
      expect(Math.abs(X_GQ.rotation[8])).toBeCloseTo(1, 12);
      expect(place.bore?.radius).toBeCloseTo(0.004, 12);
      expect(place.bolt?.radius).toBeCloseTo(0.0015, 12);
      expect(place.outOfSquareDeg).toBeCloseTo(0, 5);
      expect(place.beside).toBeCloseTo(0, 12);
    }
  });

  test('keeps the side up that is up now', () => {
    const bore = rim('x', 0.012, 0.004);
    const bolt = rim('z', 0.038, 0.0015);
    for (const roll of [0.4, 2.9, -0.4, -2.9]) {
      const present: Pose = {
        rotation: rotationFixedXyz(radians(roll), radians(0), radians(0)),
        translation: [0, 0, 0],
      };
      const place = placed(placeByPicks({ bore, bolt, stationMm: 38 }, present));
      expect(place.pose.rotation[8]).toBeCloseTo(Math.sign(Math.cos(roll)), 12);
    }
  });

  test('by its bore alone keeps its station, by its bolt alone points outboard as it does now', () => {
    const random = seeded(6);
    const present = anyPose(random);
    const bore = through(inverse(present), rim('x', 0.02, 0.004));
    const byBore = placed(placeByPicks({ bore, bolt: null, stationMm: 99 }, present));
    expect(compose(byBore.pose, inverse(present)).translation[0]).toBeCloseTo(0, 12);
    const bolt = through(inverse(present), rim('z', 0.038, 0.0015));
    const byBolt = placed(placeByPicks({ bore: null, bolt, stationMm: 38 }, present));
    const X = compose(byBolt.pose, inverse(present));
    expect(X.rotation[0]).toBeCloseTo(1, 12);
    // The rim that was picked lies at z = 6 mm: its middle comes into the chord plane.
    expect(X.translation[2]).toBeCloseTo(-0.006, 12);
  });
});

describe('picks that say nothing', () => {
  const present: Pose = { rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: [0, 0, 0] };
  const line: RimPicks = [
    [0, 0, 0],
    [1, 0, 0],
    [2, 0, 0],
  ];
  test.each([
    ['nothing', { bore: null, bolt: null }],
    ['onALine', { bore: line, bolt: null }],
    ['onALine', { bore: null, bolt: line }],
    ['parallel', { bore: rim('x', 0.01, 0.004), bolt: rim('x', 0.03, 0.001) }],
  ] as const)('are refused: %s', (kind, picks) => {
    const result = placeByPicks({ ...picks, stationMm: 38 }, present);
    expect(result.ok ? null : result.error.kind).toBe(kind);
  });
});
