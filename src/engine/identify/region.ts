import type { BenchFit } from './benchFitTypes';
import { fisherQuantile } from './distributions';

/** The joint region of some parameters at a confidence: an ellipsoid about the estimates. */
export interface Region {
  /** Places in the fit's estimates. */
  readonly parameters: readonly number[];
  readonly centre: readonly number[];
  /** Covariance of these parameters, row-major. */
  readonly covariance: Float64Array;
  /** A point lies inside where d^T C^-1 d is at most this: k F(confidence; k, freedom). */
  readonly limit: number;
}

/**
 * Joint confidence region of k parameters of a fit (Draper and Smith, Applied Regression Analysis, ch. 5): chi-square where
 * the uncertainties were given, F where the noise was learnt. Null where one of them is not determined or nothing is left to
 * learn the noise from.
 */
export function confidenceRegion(
  fit: BenchFit,
  parameters: readonly number[],
  confidence = 0.95,
): Region | null {
  if (!parameters.every((j) => fit.estimates[j]?.determined)) return null;
  if (!(fit.quantileFreedom > 0)) return null;
  const n = fit.estimates.length;
  const k = parameters.length;
  return {
    parameters,
    centre: parameters.map((j) => fit.estimates[j].value),
    covariance: Float64Array.from(
      parameters.flatMap((i) => parameters.map((j) => fit.covariance[i * n + j])),
    ),
    limit: k * fisherQuantile(confidence, k, fit.quantileFreedom),
  };
}

/** d^T C^-1 d of a point against a region: compare with its `limit`. By Cholesky; scaled by the diagonal first. */
export function regionDistance({ centre, covariance }: Region, point: readonly number[]): number {
  const k = centre.length;
  const root = centre.map((_, i) => Math.sqrt(covariance[i * k + i]));
  const lower = new Float64Array(k * k);
  const y = new Float64Array(k);
  let sum = 0;
  for (let i = 0; i < k; i++) {
    for (let j = 0; j <= i; j++) {
      let value = covariance[i * k + j] / (root[i] * root[j]);
      for (let m = 0; m < j; m++) value -= lower[i * k + m] * lower[j * k + m];
      lower[i * k + j] = i === j ? Math.sqrt(value) : value / lower[j * k + j];
    }
    y[i] = (point[i] - centre[i]) / root[i];
    for (let j = 0; j < i; j++) y[i] -= lower[i * k + j] * y[j];
    y[i] /= lower[i * k + i];
    sum += y[i] * y[i];
  }
  return sum;
}

/** Points on the edge of a region of two parameters, in their own units: the ellipse to draw. */
export function regionEllipse(
  { centre, covariance, limit }: Region,
  points: number,
): [number, number][] {
  if (centre.length !== 2) throw new RangeError(`regionEllipse(): ${centre.length} parameters`);
  const a = Math.sqrt(covariance[0]);
  const b = covariance[1] / a;
  const c = Math.sqrt(Math.max(0, covariance[3] - b * b));
  return Array.from({ length: points }, (_, i) => {
    const turn = (2 * Math.PI * i) / points;
    const [x, y] = [Math.sqrt(limit) * Math.cos(turn), Math.sqrt(limit) * Math.sin(turn)];
    return [centre[0] + a * x, centre[1] + b * x + c * y];
  });
}
