/**
 * Derivatives from values at equal steps (Fornberg, "Generation of finite difference formulas on arbitrarily spaced
 * grids", Math. Comp. 51, 1988, tables 1 and 3). Order 8 is exact for polynomials up to degree 8; order 6 on the same
 * values is there for the difference of the two, which is an estimate on the safe side of what is left out.
 */
export interface Stencil {
  /** Where values are asked, in steps from the place of the derivative; the place itself is not among them. */
  readonly offsets: readonly number[];
  /** Weights of those values by order, and of the value at the place itself, for a step of 1. */
  readonly order8: readonly number[];
  readonly order8Centre: number;
  readonly order6: readonly number[];
  readonly order6Centre: number;
}

/** Four values on each side. */
export const CENTRAL: Stencil = {
  offsets: [-4, -3, -2, -1, 1, 2, 3, 4],
  order8: [1 / 280, -4 / 105, 1 / 5, -4 / 5, 4 / 5, -1 / 5, 4 / 105, -1 / 280],
  order8Centre: 0,
  order6: [0, -1 / 60, 3 / 20, -3 / 4, 3 / 4, -3 / 20, 1 / 60, 0],
  order6Centre: 0,
};

/** All eight values above the place. */
export const UPWARD: Stencil = {
  offsets: [1, 2, 3, 4, 5, 6, 7, 8],
  order8: [8, -14, 56 / 3, -35 / 2, 56 / 5, -14 / 3, 8 / 7, -1 / 8],
  order8Centre: -761 / 280,
  order6: [6, -15 / 2, 20 / 3, -15 / 4, 6 / 5, -1 / 6, 0, 0],
  order6Centre: -49 / 20,
};

/** All eight values below the place: UPWARD with the step turned round. */
export const DOWNWARD: Stencil = {
  offsets: UPWARD.offsets.map((one) => -one),
  order8: UPWARD.order8.map((one) => -one),
  order8Centre: -UPWARD.order8Centre,
  order6: UPWARD.order6.map((one) => -one),
  order6Centre: -UPWARD.order6Centre,
};
