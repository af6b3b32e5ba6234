import { Decimal } from 'decimal.js';
import { describe, expect, test } from 'vitest';
import { createMoments, JXX, JYY, JYZ, JZZ, M } from '../../../src/engine/mass/moments';
import type { Outline, Solid } from '../../../src/engine/mass/solid';
import { solidMoments } from '../../../src/engine/mass/weigh';
import { rotationFixedXyz } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';
import { momentsDeviation } from '../../support/closeness';
import {
  Exact,
  type ExactPiece,
  exact as exactly,
  exactMoments,
  pieceShape,
  rounded,
} from '../../support/precise';
import { randomVector, type Seeded, seeded } from '../../support/seeded';
import { volumeOf, weighed } from '../../support/shapes';

function randomPiece(random: Seeded): ExactPiece {
  const place = {
    density: random.between(900, 8000) * random.pick([1, 1, 1, -1]),
    angles: randomVector(random, Math.PI),
    centre: randomVector(random, 0.06),
  };
  const size = () => random.between(0.001, 0.04);
  const kind = random.pick(['box', 'cylinder', 'cone', 'ball'] as const);
  if (kind === 'box') return { ...place, kind, size: [size(), size(), size()] };
  if (kind === 'ball') return { ...place, kind, radius: size() / 2 };
  return { ...place, kind, radius: size() / 2, height: size() };
}

function pieceSolid(piece: ExactPiece): Solid {
  const [x, y, z] = piece.angles.map(radians);
  const pose = { rotation: rotationFixedXyz(x, y, z), translation: piece.centre };
  return { name: piece.kind, shape: pieceShape(piece), density: piece.density, pose };
}

describe('a whole head against fifty-digit arithmetic', () => {
  test('J_yy - J_zz and J_yz of 20 to 30 solids are good to 1e-12 of the largest part', () => {
    const random = seeded(404);
    for (let head = 0; head < 8; head++) {
      const pieces = Array.from({ length: random.whole(20, 30) }, () => randomPiece(random));
      const exact = pieces.map(exactMoments);
      const sum = (i: number) => exact.reduce((s, part) => s.add(part[i]), new Exact(0));
      const largest = Math.max(
        ...exact.map((part) => part[JYY].abs().add(part[JZZ].abs()).toNumber()),
      );
      const whole = weighed(...pieces.map(pieceSolid));
      const spread = sum(JYY).sub(sum(JZZ)).toNumber();
      expect(Math.abs(whole[JYY] - whole[JZZ] - spread) / largest).toBeLessThan(1e-12);
      expect(Math.abs(whole[JYZ] - sum(JYZ).toNumber()) / largest).toBeLessThan(1e-12);
    }
  });

  test('each solid alone has all ten numbers to rounding, holes included', () => {
    const random = seeded(405);
    for (let i = 0; i < 100; i++) {
      const piece = randomPiece(random);
      const alone = solidMoments(pieceSolid(piece), createMoments());
      // Some sixty operations from shape to rotor frame.
      expect(momentsDeviation(alone, rounded(exactMoments(piece)))).toBeLessThan(60 * 2.3e-16);
      expect(Math.sign(alone[M])).toBe(Math.sign(piece.density));
    }
  });
});

const Long = Decimal.clone({ precision: 80 });

/**
 * A circular segment on the chord from (-h, 0) to (h, 0), arc below it (the right-hand side of the chord), half sweep
 * a = 2 atan(bulge), radius h / sin a, about the circle's centre: area R^2 (a - sin a cos a), first moment
 * -(2/3) R^3 sin^3 a, along the axis R^4/4 (a - sin a cos a + 2 sin^3 a cos a), across it
 * R^4/12 (3 a - 3 sin a cos a - 2 sin^3 a cos a); then shifted to the chord. Derived; eighty digits, of which a flat arc cancels thirty.
 */
function exactSegment(
  h: number,
  bulge: number,
): { area: Decimal; y: Decimal; xx: Decimal; yy: Decimal } {
  const a = exactly(bulge, Long).atan().mul(2);
  const [s, c] = [a.sin(), a.cos()];
  const R = exactly(h, Long).div(s);
  const s3c = s.pow(3).mul(c);
  const area = R.pow(2).mul(a.sub(s.mul(c)));
  const first = R.pow(3).mul(s.pow(3)).mul(-2).div(3);
  const along = R.pow(4)
    .div(4)
    .mul(a.sub(s.mul(c)).add(s3c.mul(2)));
  const across = R.pow(4)
    .div(12)
    .mul(a.mul(3).sub(s.mul(c).mul(3)).sub(s3c.mul(2)));
  // The chord lies R cos a from the centre, the centre above it for an arc below.
  const up = R.mul(c);
  return {
    area,
    y: first.add(area.mul(up)),
    xx: across,
    yy: along.add(first.mul(up).mul(2)).add(area.mul(up).mul(up)),
  };
}

describe('arcs from a half circle to nearly straight', () => {
  test.each([1, 0.5, 0.1, 1e-2, 1e-4, 1e-6, 1e-9])(
    'bulge %d: a segment has its closed form',
    (bulge) => {
      const h = 0.3;
      const outer: Outline = [
        [-h, 0, bulge],
        [h, 0],
      ];
      const thickness = 0.01;
      const seen = volumeOf({ shape: 'prism', outer, holes: [], from: 0, to: thickness });
      const exact = exactSegment(h, bulge);
      const relative = (actual: number, expected: Decimal) =>
        Math.abs(actual / expected.mul(thickness).toNumber() - 1);
      expect(relative(seen[M], exact.area)).toBeLessThan(1e-13);
      expect(relative(seen[2], exact.y)).toBeLessThan(1e-13);
      expect(relative(seen[JXX], exact.xx)).toBeLessThan(1e-13);
      expect(relative(seen[JYY], exact.yy)).toBeLessThan(1e-13);
    },
  );

  test('a bulge to the other side takes away what a bulge to this side adds', () => {
    const plate = (bulge: number): Outline => [
      [0, 0, bulge],
      [0.1, 0],
      [0.1, 0.05],
      [0, 0.05],
    ];
    const area = (bulge: number) =>
      volumeOf({ shape: 'prism', outer: plate(bulge), holes: [], from: 0, to: 1 })[M];
    for (const bulge of [0.3, 1e-3, 1e-8]) {
      const segment = exactSegment(0.05, bulge).area.toNumber();
      expect(Math.abs(area(bulge) - area(0) - segment)).toBeLessThan(1e-17);
      expect(Math.abs(area(-bulge) - area(0) + segment)).toBeLessThan(1e-17);
    }
  });

  test('a tiny outline far away keeps the digits its coordinates have', () => {
    for (const size of [1e-3, 1e-6]) {
      // Steps that are exact in binary, so that the far copy has the same edges.
      const step = 2 ** Math.round(Math.log2(size));
      const near: Outline = [
        [0, 0],
        [2 * step, 0, 0.5],
        [2 * step, step],
        [0, step],
      ];
      const far = near.map(([x, y, bulge]): Outline[number] => [x + 1, y - 2, bulge ?? 0]);
      const shape = { shape: 'prism', holes: [], from: 0, to: 1 } as const;
      const [here, there] = [
        volumeOf({ ...shape, outer: near }),
        volumeOf({ ...shape, outer: far }),
      ];
      expect(there[M]).toBe(here[M]);
      expect(Math.abs(there[1] - (here[1] + here[M]))).toBeLessThan(1e-15 * here[M]);
      expect(Math.abs(there[JYY] - (here[JYY] - 4 * here[2] + 4 * here[M]))).toBeLessThan(
        5e-15 * here[M],
      );
    }
  });
});
