import { bracketedRoot } from '../math/rootBracket';
import { incompleteBeta, upperGamma } from './specialFunctions';

/**
 * Chi-square, Student t and F: shares and quantiles, by the incomplete gamma and beta functions (Abramowitz and Stegun,
 * 26.4.19, 26.5.27, 26.6.2). `freedom` is the number of degrees of freedom, positive, not necessarily whole. Quantiles are
 * good to about 1e-9 of themselves for shares from 0.001 to 0.9999. Tested against the printed tables of NIST/SEMATECH.
 */

/** A p value below this is beyond doubt (common practice). */
export const DOUBT = 0.05;

/**
 * Chance that d^T C^-1 d of `count` numbers is above x when nothing is behind them: chi-square where C is known (`freedom`
 * infinite), F where it was learnt; NaN without freedom.
 */
export function squaresAbove(x: number, count: number, freedom: number): number {
  if (freedom === Infinity) return chiSquareAbove(x, count);
  return freedom > 0 ? 1 - fisherBelow(x / count, count, freedom) : Number.NaN;
}

/** Share of chi-square above x: the p value of a fit with this chi-square. */
export function chiSquareAbove(x: number, freedom: number): number {
  return upperGamma(freedom / 2, Math.max(0, x) / 2);
}

/** The chi-square that a share `p` lies below, 0 < p < 1. */
export function chiSquareQuantile(p: number, freedom: number): number {
  return positiveQuantile('chiSquareQuantile', p, freedom, (x) => 1 - chiSquareAbove(x, freedom));
}

/** Share of Student's t below x. */
export function studentBelow(x: number, freedom: number): number {
  const tail = incompleteBeta(freedom / 2, 0.5, freedom / (freedom + x * x)) / 2;
  return x > 0 ? 1 - tail : tail;
}

/** The t that a share `p` lies below, 0 < p < 1; for a two-sided 95 % band ask 0.975. */
export function studentQuantile(p: number, freedom: number): number {
  requireShare('studentQuantile', p);
  if (p === 0.5) return 0;
  const upper = Math.max(p, 1 - p);
  const t = positiveQuantile('studentQuantile', upper, 1, (x) => studentBelow(x, freedom));
  return p > 0.5 ? t : -t;
}

/** Share of F below x with (`above`, `below`) degrees of freedom of numerator and denominator. */
export function fisherBelow(x: number, above: number, below: number): number {
  return x <= 0 ? 0 : incompleteBeta(above / 2, below / 2, (above * x) / (above * x + below));
}

/** The F that a share `p` lies below; `below` infinite gives chi-square over its degrees of freedom. */
export function fisherQuantile(p: number, above: number, below: number): number {
  if (below === Infinity) return chiSquareQuantile(p, above) / above;
  return positiveQuantile('fisherQuantile', p, 1, (x) => fisherBelow(x, above, below));
}

/** A share of a variance, and the degrees of freedom that it rests on: infinite where it is known. */
export interface VariancePart {
  readonly variance: number;
  readonly freedom: number;
}

/** With as many Student's t is the normal distribution to 1e-6. */
const MANY = 1e6;

/** Degrees of freedom of a sum of variances (Welch and Satterthwaite; GUM, JCGM 100:2008, G.4.1). */
export function effectiveFreedom(parts: readonly VariancePart[]): number {
  let [sum, weighed] = [0, 0];
  for (const { variance, freedom } of parts) {
    if (!(variance > 0)) continue;
    sum += variance;
    weighed += variance ** 2 / freedom;
  }
  const freedom = sum ** 2 / weighed;
  return freedom < MANY ? freedom : Infinity;
}

/** Two-sided 95 % factor: Student's, or the normal one for infinite freedom; NaN without freedom. */
export function factor95(freedom: number): number {
  if (freedom === Infinity) return NORMAL_95;
  return freedom > 0 ? studentQuantile(0.975, freedom) : Number.NaN;
}
/** The standard normal deviate of 0.975 (Abramowitz and Stegun, table 26.1). */
const NORMAL_95 = 1.959963984540054;

/** Root of share(x) = p for x > 0: bracket by doubling, then solved in ln x so that small and large x are alike. */
function positiveQuantile(
  where: string,
  p: number,
  start: number,
  share: (x: number) => number,
): number {
  requireShare(where, p);
  let low = start;
  let high = start;
  for (let k = 0; k < 600 && share(low) > p; k++) low /= 2;
  for (let k = 0; k < 600 && share(high) < p; k++) high *= 2;
  if (low === high) return low;
  const root = bracketedRoot((u) => share(Math.exp(u)) - p, Math.log(low), Math.log(high), 1e-12);
  if (root === null) throw new RangeError(`${where}(): no quantile for ${p}`);
  return Math.exp(root.root);
}

function requireShare(where: string, p: number): void {
  if (!(p > 0 && p < 1)) throw new RangeError(`${where}(): p is not within (0, 1): ${p}`);
}
