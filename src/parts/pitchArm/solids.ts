import type { Outline, Solid } from '../../engine/mass/solid';
import { compose, type Pose, translation } from '../../engine/math/pose';
import type { Vec3 } from '../../engine/math/vector';
import { metresFromMm } from '../../engine/units';
import { ballStudProfile, facingDown, facingOutboard, prism, revolution } from '../shapes';
import type { PitchArmValues } from './parameters';

/** Centre of the ball in the arm's frame, metres. */
export function ballCentre(values: PitchArmValues): Vec3 {
  const y = metresFromMm(values.armReachMm) * (values.side === 'leading' ? 1 : -1);
  return [metresFromMm(values.ballStationMm), y, metresFromMm(values.ballHeightMm)];
}

/**
 * The arm as a flat piece, and stud with ball as one turned piece standing on it. Both are laid out in a frame (u, v, w):
 * v along the chord, w along the stud, u across; the arm lies about w = 0 and leans in u toward the ball, the stud
 * bridges w. Exact up to the seat: the arm begins square, so the lens between it and a round barrel of the same radius
 * is missing (for an 11 mm barrel and a 7 mm wide, 3 mm thick arm less than 10 mm^3).
 */
export function pitchArmSolids(values: PitchArmValues): Solid[] {
  const [x, y, z] = ballCentre(values);
  const spanwise = values.studAlong === 'span';
  const layout: Pose = spanwise ? facingOutboard(0, 0, 0) : translation(0, 0, 0);
  const across = spanwise ? -z : x;
  const out = spanwise ? x : z;
  const half = metresFromMm(values.armThicknessMm) / 2;
  const arm = { outer: armOutline(values, across, y), from: -half, to: half };
  const stud = ballStudProfile(
    metresFromMm(values.studDiameterMm) / 2,
    metresFromMm(values.ballDiameterMm) / 2,
    half,
    Math.abs(out),
  );
  const foot = out < 0 ? facingDown(across, y, 0) : translation(across, y, 0);
  return [
    prism('arm', values.armDensityKgM3, arm, layout),
    revolution('ball stud', values.studDensityKgM3, stud, compose(layout, foot)),
  ];
}

/** Tapered from a square root at |v| = armStart to a round end about the stud at (u, v). */
function armOutline(values: PitchArmValues, u: number, v: number): Outline {
  const start = Math.sign(v) * metresFromMm(values.armStartMm);
  const length = Math.hypot(u, v - start);
  const tipHalf = metresFromMm(values.armTipWidthMm) / 2;
  // To the right of the arm as it runs outward.
  const rightU = ((v - start) / length) * tipHalf;
  const rightV = (-u / length) * tipHalf;
  const rootHalf = (Math.sign(v) * metresFromMm(values.armRootWidthMm)) / 2;
  return [
    [-rootHalf, start],
    [rootHalf, start],
    [u + rightU, v + rightV, 1],
    [u - rightU, v - rightV],
  ];
}
