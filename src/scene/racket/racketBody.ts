import { centralSecondMoment, centreOfMass, inertiaTensor } from '../../engine/mass/inertia';
import { createMoments } from '../../engine/mass/moments';
import type { Solid } from '../../engine/mass/solid';
import { sumSolids } from '../../engine/mass/weigh';
import { compose, type Pose, rotationAboutY } from '../../engine/math/pose';
import { IDENTITY, type Vec3 } from '../../engine/math/vector';
import { metresFromMm, radiansFromDegrees } from '../../engine/units';
import { partType } from '../../parts/registry';

/** The body that is thrown: a hoop on a handle, of plain parts of this program, its numbers made up. */
export interface RacketBody {
  /** Solids in the body frame: origin at the hoop's middle, x along the handle and away from it, z across the hoop. */
  readonly solids: readonly Solid[];
  readonly centre: Vec3;
  /**
   * Principal moments about the centre of mass, kg m^2, in the order of the body's axes: about x (the handle) the least, about
   * y (in the hoop's plane) the middle, about z the greatest. By its three planes of symmetry the axes are principal.
   */
  readonly inertia: Vec3;
}

export const RACKET_AXES = ['least', 'middle', 'greatest'] as const;
export type RacketAxis = (typeof RACKET_AXES)[number];

interface Piece {
  readonly kind: string;
  readonly values: Readonly<Record<string, number | readonly [number, number, number]>>;
  readonly at: Pose;
}

const WOOD = 650;
const RUBBER = 1200;

function along(xMm: number): Pose {
  return {
    rotation: rotationAboutY(radiansFromDegrees(90)),
    translation: [metresFromMm(xMm), 0, 0],
  };
}

const PIECES: readonly Piece[] = [
  {
    kind: 'cylinder',
    values: { diameterMm: 105, boreMm: 89, lengthMm: 9, densityKgM3: WOOD },
    at: { rotation: IDENTITY, translation: [0, 0, 0] },
  },
  {
    kind: 'block',
    values: { sizeMm: [55, 15, 9], densityKgM3: WOOD },
    at: { rotation: IDENTITY, translation: [metresFromMm(-74), 0, 0] },
  },
  {
    kind: 'cylinder',
    values: { diameterMm: 15, boreMm: 0, lengthMm: 70, densityKgM3: RUBBER },
    at: along(-136.5),
  },
];

export function racketBody(): RacketBody {
  const solids = PIECES.flatMap(({ kind, values, at }) =>
    partType(kind)
      .solids(values)
      .map((solid): Solid => ({ ...solid, pose: solid.pose ? compose(at, solid.pose) : at })),
  );
  const moments = sumSolids(solids, createMoments());
  const centre = centreOfMass(moments);
  const J = centralSecondMoment(moments);
  if (!centre || !J) throw new Error('racketBody(): the body has no mass');
  const I = inertiaTensor(J);
  return { solids, centre, inertia: [I.xx, I.yy, I.zz] };
}
