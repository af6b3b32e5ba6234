import type { Part } from '../../src/design/design';
import { metresFromMm, radiansFromDegrees } from '../../src/engine/units';
import { designOf, partOf } from '../design/designs';
import { type ExactPiece, exactMoments } from '../support/precise';
import { seeded } from '../support/seeded';
import type { Dragged } from './heads';
import { OwnHead } from './routes/ours';

export interface Accuracy {
  /** |error| of J_yy - J_zz over its true value. */
  readonly fresh: number;
  readonly dragged: number;
  readonly drags: number;
}

const PARTS = 24;
const JYY = 5;
const JZZ = 6;

/**
 * Error of J_yy - J_zz of 24 blocks and cylinders in any attitude against the same sums in fifty decimal digits
 * (decimal.js), for a head just loaded and after so many drags of one of its parts.
 */
export function accuracyAfter(drags: number): Accuracy {
  const pieces = Array.from({ length: PARTS }, (_, i) => piece(i));
  const [first] = pieces;
  const longer = { ...first.part, lengthMm: 17.3 } as Part;
  const dragged: Dragged = {
    design: designOf(pieces.map(({ part }) => part)),
    states: [first.part, longer],
  };
  const head = new OwnHead(dragged);
  const truth = pieces
    .map(({ exact }) => exactMoments(exact))
    .reduce((sum, ten) => sum.map((value, i) => value.add(ten[i])));
  const spread = truth[JYY].sub(truth[JZZ]);
  const error = () => spread.sub(head.spread()).div(spread).abs().toNumber();
  const fresh = error();
  // An even count ends on the state that it began with.
  for (let i = 1; i <= drags; i++) head.change(i);
  return { fresh, dragged: error(), drags };
}

/** The first is a cylinder, which is dragged. Lying flat along the chord for the most part, so that the difference is not small. */
function piece(i: number): { part: Part; exact: ExactPiece } {
  const random = seeded(4100 + i);
  const positionMm = [random.between(0, 40), random.between(-25, 25), random.between(-8, 8)];
  const rotationDeg = [0, 1, 2].map(() => random.between(-180, 180));
  const densityKgM3 = random.between(1000, 8000);
  const pose = { positionMm, rotationDeg };
  const place = {
    density: densityKgM3,
    angles: rotationDeg.map((angle) =>
      radiansFromDegrees(angle),
    ) as unknown as ExactPiece['angles'],
    centre: positionMm.map((one) => metresFromMm(one)) as unknown as ExactPiece['centre'],
  };
  if (i % 2 === 0) {
    const [diameterMm, lengthMm] = [random.between(2, 8), random.between(4, 30)];
    return {
      part: partOf('cylinder', `part ${i}`, { diameterMm, boreMm: 0, lengthMm, densityKgM3, pose }),
      exact: {
        kind: 'cylinder',
        radius: metresFromMm(diameterMm) / 2,
        height: metresFromMm(lengthMm),
        ...place,
      },
    };
  }
  const sizeMm = [random.between(2, 20), random.between(2, 20), random.between(2, 20)];
  return {
    part: partOf('block', `part ${i}`, { sizeMm, densityKgM3, pose }),
    exact: {
      kind: 'box',
      size: sizeMm.map((one) => metresFromMm(one)) as unknown as ExactPiece['centre'],
      ...place,
    },
  };
}
