import { Decimal } from 'decimal.js';
import { createMoments, type Moments } from '../../src/engine/mass/moments';
import type { Shape } from '../../src/engine/mass/solid';
import type { Vec3 } from '../../src/engine/math/vector';
import { ballShape, boxShape, cylinderShape, frustumShape } from './shapes';

/** Fifty digits: what is left is not rounding. */
export const Exact = Decimal.clone({ precision: 50 });
const PI = Exact.acos(-1);

/** The binary number itself: decimal.js would read its shortest decimal, up to half a unit of the last place off. */
export function exact(value: number, Kind = Exact): Decimal {
  let whole = value;
  let halvings = 0;
  for (; !Number.isInteger(whole); halvings++) whole *= 2;
  return new Kind(whole).div(new Kind(2).pow(halvings));
}

/** Closed forms from a table of solids, not the engine's boundary integrals. Full sizes, metres. */
export type ExactPiece = {
  readonly density: number;
  readonly angles: Vec3;
  readonly centre: Vec3;
} & (
  | { readonly kind: 'box'; readonly size: Vec3 }
  | { readonly kind: 'cylinder' | 'cone'; readonly radius: number; readonly height: number }
  | { readonly kind: 'ball'; readonly radius: number }
);

export function pieceShape(piece: ExactPiece): Shape {
  switch (piece.kind) {
    case 'box':
      return boxShape(...piece.size);
    case 'cylinder':
      return cylinderShape(piece.radius, piece.height);
    case 'cone':
      return frustumShape(piece.radius, 0, piece.height);
    default:
      return ballShape(piece.radius);
  }
}

/** Volume, height of the centroid, and J about the centroid (a diagonal) in the piece's own axes. */
function central(piece: ExactPiece): { volume: Decimal; middle: Decimal; diagonal: Decimal[] } {
  const zero = new Exact(0);
  if (piece.kind === 'box') {
    const [x, y, z] = piece.size.map((s) => exact(s));
    const volume = x.mul(y).mul(z);
    const diagonal = [x, y, z].map((s) => volume.mul(s).mul(s).div(12));
    return { volume, middle: zero, diagonal };
  }
  const r = exact(piece.radius);
  if (piece.kind === 'ball') {
    const volume = PI.mul(r.pow(3)).mul(4).div(3);
    const each = volume.mul(r).mul(r).div(5);
    return { volume, middle: zero, diagonal: [each, each, each] };
  }
  const h = exact(piece.height);
  const column = PI.mul(r).mul(r).mul(h);
  if (piece.kind === 'cylinder') {
    const across = column.mul(r).mul(r).div(4);
    return {
      volume: column,
      middle: zero,
      diagonal: [across, across, column.mul(h).mul(h).div(12)],
    };
  }
  // Cone: base at -h/2, centroid a quarter up; 3/20 r^2 across and 3/80 h^2 along.
  const volume = column.div(3);
  const across = volume.mul(r).mul(r).mul(3).div(20);
  const along = volume.mul(h).mul(h).mul(3).div(80);
  return { volume, middle: h.div(-4), diagonal: [across, across, along] };
}

/** R = Rz Ry Rx from the three angles, as their product written out. */
function turn([ax, ay, az]: Vec3): Decimal[][] {
  const [cx, cy, cz] = [ax, ay, az].map((a) => exact(a).cos());
  const [sx, sy, sz] = [ax, ay, az].map((a) => exact(a).sin());
  return [
    [cz.mul(cy), cz.mul(sy).mul(sx).sub(sz.mul(cx)), cz.mul(sy).mul(cx).add(sz.mul(sx))],
    [sz.mul(cy), sz.mul(sy).mul(sx).add(cz.mul(cx)), sz.mul(sy).mul(cx).sub(cz.mul(sx))],
    [sy.neg(), cy.mul(sx), cy.mul(cx)],
  ];
}

/** Mass, S and J (m, Sx, Sy, Sz, xx, yy, zz, xy, xz, yz) of one piece about the head's origin. */
export function exactMoments(piece: ExactPiece): Decimal[] {
  const { volume, middle, diagonal } = central(piece);
  const R = turn(piece.angles);
  const m = volume.mul(exact(piece.density));
  const c = [0, 1, 2].map((i) => R[i][2].mul(middle).add(exact(piece.centre[i])));
  const J = (i: number, j: number) =>
    [0, 1, 2]
      .reduce((sum, k) => sum.add(R[i][k].mul(R[j][k]).mul(diagonal[k])), new Exact(0))
      .mul(exact(piece.density))
      .add(m.mul(c[i]).mul(c[j]));
  return [m, ...c.map((v) => m.mul(v)), J(0, 0), J(1, 1), J(2, 2), J(0, 1), J(0, 2), J(1, 2)];
}

export function rounded(values: readonly Decimal[]): Moments {
  const out = createMoments();
  values.forEach((value, i) => {
    out[i] = value.toNumber();
  });
  return out;
}
