import type { HomogeneousSolid, Shape } from '../../src/engine/mass/solid';
import type { Pose } from '../../src/engine/math/pose';
import type { Vec3 } from '../../src/engine/math/vector';
import {
  type Quaternion,
  quaternionMatrix,
  randomQuaternion,
  randomVector,
  type Seeded,
} from './seeded';
import { ballShape, boxShape, capsuleShape, cylinderShape } from './shapes';

/** A piece that both the engine and the multibody engine can describe. Sizes are full sizes, metres. */
export type PieceShape =
  | { readonly kind: 'box'; readonly size: Vec3 }
  | { readonly kind: 'cylinder'; readonly radius: number; readonly height: number }
  | { readonly kind: 'capsule'; readonly radius: number; readonly height: number }
  | { readonly kind: 'sphere'; readonly radius: number };

export interface Piece {
  readonly shape: PieceShape;
  readonly density: number;
  readonly turn: Quaternion;
  readonly centre: Vec3;
}

function localShape(shape: PieceShape): Shape {
  switch (shape.kind) {
    case 'box':
      return boxShape(...shape.size);
    case 'cylinder':
      return cylinderShape(shape.radius, shape.height);
    case 'capsule':
      return capsuleShape(shape.radius, shape.height);
    default:
      return ballShape(shape.radius);
  }
}

export function pieceSolid(piece: Piece): HomogeneousSolid {
  const pose: Pose = { rotation: quaternionMatrix(piece.turn), translation: piece.centre };
  return { name: piece.shape.kind, shape: localShape(piece.shape), density: piece.density, pose };
}

function randomShape(random: Seeded): PieceShape {
  const size = () => random.between(0.002, 0.03);
  switch (random.pick(['box', 'cylinder', 'capsule', 'sphere'] as const)) {
    case 'box':
      return { kind: 'box', size: [size(), size(), size()] };
    case 'cylinder':
      return { kind: 'cylinder', radius: size() / 2, height: size() };
    case 'capsule':
      return { kind: 'capsule', radius: size() / 2, height: size() };
    default:
      return { kind: 'sphere', radius: size() / 2 };
  }
}

/** Three to eight pieces of the size of a model's blade grip, anywhere within 60 mm, turned any way. */
export function randomAssembly(random: Seeded): readonly Piece[] {
  return Array.from({ length: random.whole(3, 8) }, () => ({
    shape: randomShape(random),
    density: random.between(900, 8000),
    turn: randomQuaternion(random),
    centre: randomVector(random, 0.06),
  }));
}
