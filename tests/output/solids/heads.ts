import { readdirSync, readFileSync } from 'node:fs';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { materialsOf } from '../../../src/design/resolve';
import {
  accumulate,
  createMoments,
  JXX,
  M,
  type Moments,
  transformMoments,
} from '../../../src/engine/mass/moments';
import { volumeMoments } from '../../../src/engine/mass/weigh';
import { POSE_IDENTITY } from '../../../src/engine/math/pose';
import { type FileBodies, type FileBody, headBodies } from '../../../src/output/solids/fileBodies';
import { partType } from '../../../src/parts/registry';
import { createSession } from '../../../src/state/createSession';
import type { PartReading } from '../../../src/state/reading';
import { defaults } from '../../parts/sample';

const FOLDER = new URL('../../../assets/designs/', import.meta.url);
export const DEMOS = readdirSync(FOLDER).filter((file) => /^\d.*\.json$/.test(file));

export function demo(file: string): Design {
  const read = parseDesign(readFileSync(new URL(file, FOLDER), 'utf8'));
  if (!read.ok) throw new Error(file);
  return read.value;
}

export function demoBodies(file: string, pitchDeg: number): FileBodies {
  const design = demo(file);
  const { live } = createSession(design, () => {});
  const { reading } = live;
  const parts = reading.order.map((id) => reading.part(id) as PartReading);
  const rodAxis = reading.linkage?.rodAxisAt(pitchDeg) ?? null;
  return headBodies(parts, { rotor: reading.rotor, pitchDeg, rodAxis }, materialsOf(design));
}

/** A part of default values, others laid over, alone and in its own frame. */
export function bodyOf(kind: string, more: Record<string, unknown> = {}): FileBody {
  const solids = partType(kind).solids({ ...defaults(kind), ...more } as never);
  return {
    id: kind,
    name: `A ${kind}`,
    kind,
    solids,
    pose: POSE_IDENTITY,
    material: 'Steel',
    finish: 'metal',
    isPicture: false,
  };
}

/**
 * Closed-form volume moments of bodies in the file's frame, m^3 to m^5. A hole counts against what is round it, as its
 * faces do in a file.
 */
export function exactMoments(bodies: readonly FileBody[]): Moments {
  const sum = createMoments();
  const one = createMoments();
  for (const { solids, pose } of bodies) {
    for (const solid of solids) {
      if (solid.shape.shape === 'point' || !('density' in solid)) throw new Error('a point');
      volumeMoments(solid.shape, one);
      if (solid.pose) transformMoments(one, solid.pose, one);
      transformMoments(one, pose, one);
      accumulate(sum, one, Math.sign(solid.density));
    }
  }
  return sum;
}

/** Volume moments in SI from those in a unit that is `metres` long. */
export function inMetres(moments: ArrayLike<number>, metres: number): number[] {
  return Array.from(moments, (value, k) => value * metres ** (k === M ? 3 : k < JXX ? 4 : 5));
}
