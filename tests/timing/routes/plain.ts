import { createMoments } from '../../../src/engine/mass/moments';
import { sumSolids } from '../../../src/engine/mass/weigh';
import type { PlacedSolids } from '../pieces';

interface Point {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

interface Body {
  readonly mass: number;
  readonly centre: Point;
  /** About the centre. */
  readonly spread: readonly (readonly number[])[];
}

/**
 * The head with plain objects and arrays, as such sums are usually written: every part a body of mass, centre and a
 * matrix about it, turned by matrix products, shifted by Steiner's rule, added up by `reduce`. The formulas of the single
 * solids are the engine's own; all parts are done anew each time.
 */
export function plainSpread(parts: readonly PlacedSolids[]): number {
  const bodies = parts.map(({ solids, pose }) => {
    const body = bodyOf(Array.from(sumSolids(solids, createMoments())));
    const turn = [0, 1, 2].map((row) => pose.rotation.slice(3 * row, 3 * row + 3));
    const [x, y, z] = pose.translation;
    return moved(body, turn, { x, y, z });
  });
  const about = bodies.map(({ mass, centre, spread }) =>
    spread.map((row, i) => row.map((value, j) => value + mass * axis(centre, i) * axis(centre, j))),
  );
  const total = about.reduce((sum, one) =>
    sum.map((row, i) => row.map((value, j) => value + one[i][j])),
  );
  return total[1][1] - total[2][2];
}

function bodyOf([m, sx, sy, sz, xx, yy, zz, xy, xz, yz]: readonly number[]): Body {
  const centre = { x: sx / m, y: sy / m, z: sz / m };
  const second = [
    [xx, xy, xz],
    [xy, yy, yz],
    [xz, yz, zz],
  ];
  return {
    mass: m,
    centre,
    spread: second.map((row, i) =>
      row.map((value, j) => value - m * axis(centre, i) * axis(centre, j)),
    ),
  };
}

function moved({ mass, centre, spread }: Body, turn: number[][], by: Point): Body {
  const c = product(turn, [[centre.x], [centre.y], [centre.z]]);
  const transposed = turn.map((_, i) => turn.map((row) => row[i]));
  return {
    mass,
    centre: { x: c[0][0] + by.x, y: c[1][0] + by.y, z: c[2][0] + by.z },
    spread: product(product(turn, spread), transposed),
  };
}

function product(a: readonly (readonly number[])[], b: readonly (readonly number[])[]): number[][] {
  return a.map((row) =>
    b[0].map((_, j) => row.reduce((sum, value, k) => sum + value * b[k][j], 0)),
  );
}

function axis({ x, y, z }: Point, i: number): number {
  return [x, y, z][i];
}
