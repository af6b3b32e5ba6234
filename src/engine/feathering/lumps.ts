import { centralSecondMoment, centreOfMass } from '../mass/inertia';
import { M, type Moments } from '../mass/moments';
import { eigenSymmetric, type Symmetric3 } from '../math/eigenSymmetric';
import { type Pose, transformPoint } from '../math/pose';
import { add, cross, dot, scale, subtract, type Vec3 } from '../math/vector';
import type { RotorConditions } from './rotor';

/** A point mass that stands for a piece of a part: kg, metres, grip frame. */
export interface Lump {
  readonly mass: number;
  readonly p_G: Vec3;
}

/** What the shaft's turning does to one lump, seen by who turns with it. Rotor frame, SI. */
export interface LumpPull {
  readonly lump: Lump;
  /** Where the lump is. */
  readonly at: Vec3;
  /** Foot of its lever: the nearest point of the feathering axis. */
  readonly foot: Vec3;
  /** W^2 m (X, Y, 0): away from the shaft, in the plane of rotation, N. */
  readonly force: Vec3;
  /** Its component along the lump's way round the feathering axis: only this has a moment about it. */
  readonly turning: Vec3;
  /** The rest: along the axis and through it, borne by the bearings. */
  readonly still: Vec3;
  /** Distance from the feathering axis, m. */
  readonly lever: number;
  /** About the feathering axis, N m, positive toward raising the leading edge. */
  readonly moment: number;
}

/** Spreads smaller than this share of the whole are rounding: the part is one lump. */
const NOTHING = 1e-12;

/**
 * The fewest lumps that make exactly a part's feathering moment at every pitch (`moments_G` about the grip origin, grip
 * frame): their mass, centre of mass and every second moment that the moment depends on are the part's.
 *
 * - One, where the mass is spread evenly about a line along the span: only the centre counts.
 * - Two halves at c +- d e, c the centre of mass, e the direction in the y-z plane in which the mass is spread widest and
 *   m d^2 the difference of its two principal second moments there: J_yy - J_zz and J_yz are the part's.
 * - With precone the moment has J_xy and J_xz in it too: where the part has them about its own centre, four quarters at the
 *   corners of a tetrahedron, c + sqrt(1/m) (+-sqrt(j1) e1 +- sqrt(j2) e2 +- sqrt(j3) e3) with an even number of
 *   minus signs, j and e the eigenvalues and vectors of J about c. They have all ten moments. (Sum of s = 0, sum of
 *   s s^T = 4 over the corners.)
 *
 * None for a part without mass. Exact to rounding.
 */
export function partLumps(moments_G: Moments, rotor: RotorConditions): readonly Lump[] {
  const m = moments_G[M];
  const centre = centreOfMass(moments_G);
  const J = centralSecondMoment(moments_G);
  if (!centre || !J) return [];
  const whole = J.xx + J.yy + J.zz + m * dot(centre, centre);
  const slanted = Math.hypot(J.xy, J.xz) > NOTHING * whole;
  if (rotor.precone !== 0 && slanted) return quarters(m, centre, J);
  return halves(m, centre, J, Math.sqrt((NOTHING * whole) / m));
}

/** Two halves as in `partLumps`; one lump where they would lie no farther than `least` m from the centre. */
export function halves(mass: number, centre: Vec3, J: Symmetric3, least: number): readonly Lump[] {
  const half = Math.sqrt((2 * Math.hypot((J.yy - J.zz) / 2, J.yz)) / mass);
  if (half <= least) return [{ mass, p_G: centre }];
  const angle = Math.atan2(J.yz, (J.yy - J.zz) / 2) / 2;
  const reach: Vec3 = [0, half * Math.cos(angle), half * Math.sin(angle)];
  return [
    { mass: mass / 2, p_G: add(centre, reach) },
    { mass: mass / 2, p_G: subtract(centre, reach) },
  ];
}

/** An even number of minus signs: a regular tetrahedron. */
const CORNERS: readonly Vec3[] = [
  [1, 1, 1],
  [1, -1, -1],
  [-1, 1, -1],
  [-1, -1, 1],
];

function quarters(mass: number, centre: Vec3, J: Symmetric3): readonly Lump[] {
  const { values, vectors: e } = eigenSymmetric(J);
  // A flat or thin body has eigenvalues of zero, which rounding may have put below it.
  const reach = values.map((value) => Math.sqrt(Math.max(0, value) / mass));
  return CORNERS.map((corner) => {
    const [a, b, c] = corner.map((sign, k) => sign * reach[k]);
    const away: Vec3 = [
      a * e[0] + b * e[1] + c * e[2],
      a * e[3] + b * e[4] + c * e[5],
      a * e[6] + b * e[7] + c * e[8],
    ];
    return { mass: mass / 4, p_G: add(centre, away) };
  });
}

/** The pull on a lump where the grip stands as `X_RG` (from `gripPose`) says. */
export function lumpPull(lump: Lump, rotor: RotorConditions, X_RG: Pose): LumpPull {
  const { mass, p_G } = lump;
  const at = transformPoint(X_RG, p_G);
  const factor = rotor.angularSpeed * rotor.angularSpeed * mass;
  const force: Vec3 = [factor * at[0], factor * at[1], 0];
  const foot = transformPoint(X_RG, [p_G[0], 0, 0]);
  const arm = subtract(at, foot);
  const square = dot(arm, arm);
  // Way round the axis, times the lever's length; the moment is its product with the force.
  const round = cross(axisDirection(X_RG), arm);
  const moment = dot(force, round);
  const turning: Vec3 = square > 0 ? scale(round, moment / square) : [0, 0, 0];
  return {
    lump,
    at,
    foot,
    force,
    turning,
    still: subtract(force, turning),
    lever: Math.sqrt(square),
    moment,
  };
}

/** u, the feathering axis outboard, in the rotor frame. */
export function axisDirection(X_RG: Pose): Vec3 {
  return [X_RG.rotation[0], X_RG.rotation[3], X_RG.rotation[6]];
}
