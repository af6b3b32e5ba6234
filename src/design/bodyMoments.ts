import { centralSecondMoment } from '../engine/mass/inertia';
import type { MeasuredQuantity } from '../engine/mass/measured';
import {
  createMoments,
  M,
  type Moments,
  SX,
  SY,
  SZ,
  transformMoments,
} from '../engine/mass/moments';
import { sumSolids } from '../engine/mass/weigh';
import { inverse } from '../engine/math/pose';
import { partType } from '../parts/registry';
import type { Part } from './design';
import type { PartValues } from './values';
import { bodyPoseOf, weighPart } from './weighPart';

/** What can be measured of a body, in the order in which it is told. */
export const MEASURED_QUANTITIES = [
  'mass',
  'centreX',
  'centreY',
  'centreZ',
  'inertiaX',
  'inertiaY',
  'inertiaZ',
] as const satisfies readonly MeasuredQuantity[];

/** Moments of a part as they apply, in its body frame; null where its measurements are refused. */
export function bodyMoments(part: Part, values: PartValues): Moments | null {
  const out = createMoments();
  return weighPart(part, values, out).ok ? intoBody(part, values, out) : null;
}

/** As drawn, in the body frame. */
export function drawnMoments(part: Part, values: PartValues): Moments {
  const out = createMoments();
  sumSolids(partType(part.kind).solids(values), out);
  return intoBody(part, values, out);
}

function intoBody(part: Part, values: PartValues, moments: Moments): Moments {
  const pose = bodyPoseOf(part, values);
  return pose ? transformMoments(moments, inverse(pose), moments) : moments;
}

export type Quantities = Readonly<Record<MeasuredQuantity, number>>;

/** Mass, centre from the frame's origin and moments of inertia about the centre; null without mass. */
export function quantitiesOf(moments: Moments): Quantities | null {
  const J = centralSecondMoment(moments);
  if (!J) return null;
  const m = moments[M];
  return {
    mass: m,
    centreX: moments[SX] / m,
    centreY: moments[SY] / m,
    centreZ: moments[SZ] / m,
    inertiaX: J.yy + J.zz,
    inertiaY: J.xx + J.zz,
    inertiaZ: J.xx + J.yy,
  };
}
