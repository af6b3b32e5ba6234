import fc from 'fast-check';
import type { KeepOutShape } from '../../../src/engine/clearance/keepOut';
import type { RotorConditions } from '../../../src/engine/feathering/rotor';
import type { TriangleMesh } from '../../../src/engine/mass/solid';
import { type Pose, rotationFixedXyz } from '../../../src/engine/math/pose';
import { radians } from '../../../src/engine/units';
import { partType } from '../../../src/parts/registry';
import { prism, rectangle, revolution, tubeProfile } from '../../../src/parts/shapes';
import { weldedMeshes } from '../../../src/parts/tessellate';
import { validValues } from '../../parts/sample';

/** A part somewhere on a grip, a keep-out somewhere near, a range of pitch. Lengths m. */
export interface RandomCase {
  readonly kind: string;
  readonly meshes: readonly TriangleMesh[];
  readonly pose: Pose;
  readonly rotor: RotorConditions;
  readonly shape: KeepOutShape;
  readonly keepOutPose: Pose;
  readonly fixedTo: 'hub' | 'case';
  readonly low: number;
  readonly high: number;
}

/** Coarse: what is compared is the distance of these triangles, so they may be few. */
const SEGMENTS = 12;

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

function poseNear(reach: number, tall: number): fc.Arbitrary<Pose> {
  const angle = number(-Math.PI, Math.PI).map(radians);
  // Turned about all axes, about none, or by quarters: flat faces then lie parallel.
  const turns = fc.oneof(
    fc.tuple(angle, angle, angle),
    fc.constant([radians(0), radians(0), radians(0)] as const),
    fc.tuple(fc.constant(radians(Math.PI / 2)), angle, fc.constant(radians(0))),
  );
  return fc
    .tuple(turns, number(-0.2 * reach, reach), number(-reach / 2, reach / 2), number(-tall, tall))
    .map(([[a, b, c], x, y, z]) => ({
      rotation: rotationFixedXyz(a, b, c),
      translation: [x, y, z],
    }));
}

const shapes: fc.Arbitrary<KeepOutShape> = fc.oneof(
  fc.constant({ shape: 'plane' } as const),
  fc
    .tuple(number(0.001, 0.02), number(0.001, 0.02), number(0.001, 0.02))
    .map((half) => ({ shape: 'box', half }) as const),
  fc
    .tuple(number(0.001, 0.02), number(0.001, 0.02))
    .map(([radius, half]) => ({ shape: 'cylinder', radius, half }) as const),
  fc
    .tuple(number(0.002, 0.02), number(0.002, 0.02), number(0, 0.9))
    .map(
      ([radius, half, bore]) => ({ shape: 'mesh', mesh: ringMesh(radius, half, bore) }) as const,
    ),
);

function ringMesh(radius: number, half: number, bore: number): TriangleMesh {
  const profile = tubeProfile(bore < 0.2 ? 0 : bore * radius, radius, -half, half);
  return weldedMeshes([revolution('ring', 1, profile)], { segmentsPerTurn: SEGMENTS })[0];
}

/** The keep-out as a mesh for the other hand; a plane as a plate of two metres, its cylinder with this many flats. */
export const FLATS = 96;
export function meshOf(shape: KeepOutShape): TriangleMesh {
  switch (shape.shape) {
    case 'plane':
      return weldedMeshes([
        prism('plate', 1, { outer: rectangle(-1, 1, -1, 1), from: -1, to: 0 }),
      ])[0];
    case 'box': {
      const [x, y, z] = shape.half;
      return weldedMeshes([
        prism('box', 1, { outer: rectangle(-x, x, -y, y), from: -z, to: z }),
      ])[0];
    }
    case 'cylinder':
      return weldedMeshes(
        [revolution('cylinder', 1, tubeProfile(0, shape.radius, -shape.half, shape.half))],
        { segmentsPerTurn: FLATS },
      )[0];
    default:
      return shape.mesh;
  }
}

const KINDS = ['bolt', 'nut', 'washer', 'block', 'cylinder', 'weight', 'grip', 'pitchArm', 'blade'];

export const randomCases: fc.Arbitrary<RandomCase> = fc
  .constantFrom(...KINDS)
  .chain((kind) =>
    fc.record({
      kind: fc.constant(kind),
      values: validValues(kind),
      pose: poseNear(0.06, 0.02),
      offset: fc.oneof(fc.constant(0), number(-0.01, 0.01)),
      precone: fc.oneof(fc.constant(0), number(-0.1, 0.1)),
      shape: shapes,
      keepOutPose: poseNear(0.08, 0.06),
      fixedTo: fc.constantFrom('hub' as const, 'case' as const),
      low: number(-1.5, 0),
      high: number(0, 1.5),
    }),
  )
  .map(({ values, offset, precone, ...rest }) => ({
    ...rest,
    meshes: weldedMeshes(
      partType(rest.kind)
        .solids(values as never)
        .filter((solid) => !('density' in solid) || solid.density > 0),
      { segmentsPerTurn: SEGMENTS },
    ),
    rotor: { angularSpeed: 0, torqueOffset: offset, precone: radians(precone) },
  }));
