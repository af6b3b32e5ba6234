import { M } from '../engine/mass/moments';
import type { ParameterValue } from '../parts/contract';
import { METRES_PER_UNIT } from '../parts/meshBody/body';
import type { FileUnit, MeshImport } from './types';

/** What a person chose for a body that was read. */
export interface BodyChoice {
  readonly unit: FileUnit;
  readonly role: 'part' | 'grip';
}

/** The kind and parameters of the part that a mesh becomes, without its density; null where it is not weighable. */
export function bodyPart(
  read: MeshImport,
  choice: BodyChoice,
): ({ readonly kind: 'meshBody' } & Readonly<Record<string, ParameterValue>>) | null {
  if (!read.volumeMoments) return null;
  return {
    kind: 'meshBody',
    unit: choice.unit,
    role: choice.role,
    // GLB has y upward by its standard; the grip has z.
    ...(read.report.format === 'glb' ? { turnDeg: [90, 0, 0] as const } : {}),
    sourceName: read.name,
    triangleCount: [read.report.triangles],
    volumeMoments: read.volumeMoments,
    picture: read.picture,
  };
}

/** The body's volume in m^3 when its numbers are in `unit`; null where it is not weighable. */
export function bodyVolume(read: MeshImport, unit: FileUnit): number | null {
  return read.volumeMoments ? read.volumeMoments[M] * METRES_PER_UNIT[unit] ** 3 : null;
}
