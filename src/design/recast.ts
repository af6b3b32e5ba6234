import { gripPose } from '../engine/feathering/gripPose';
import { compose, inverse } from '../engine/math/pose';
import { radians } from '../engine/units';
import { isKeepOut } from '../parts/contract';
import { partType } from '../parts/registry';
import type { Part, Rotor } from './design';
import { rotorConditions } from './headModel';
import { freePose, freePoseOf } from './placement';

/**
 * A body from a mesh as a keep-out of the case, where it stands at flat pitch, or such a keep-out as a body on the grip:
 * same id, name, mesh and place. What it is made of and what was measured of it is let go. Null for a part of which its
 * type knows no other cast, or that sits on a socket.
 */
export function recastPart(part: Part, rotor: Rotor): Part | null {
  const type = partType(part.kind);
  const cast = type.recast?.(part as unknown as Readonly<Record<string, unknown>>);
  if (!cast || !part.pose) return null;
  const { id, name, hidden } = part;
  const atFlat = gripPose(rotorConditions(rotor), radians(0));
  const frame = isKeepOut(type) ? inverse(atFlat) : atFlat;
  const pose = freePoseOf(compose(frame, freePose(part.pose)));
  return { id, name, ...(hidden ? { hidden } : {}), ...cast, pose } as unknown as Part;
}
