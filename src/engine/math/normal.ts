/**
 * The standard normal deviate that a share p of all lies below, 0 < p < 1: the rational approximations of Acklam (2003,
 * relative error below 1.15e-9), a thousand times finer than any dimension is known.
 */
const CENTRE = [
  -3.969683028665376e1, 2.209460984245205e2, -2.759285104469687e2, 1.38357751867269e2,
  -3.066479806614716e1, 2.506628277459239,
];
const CENTRE_UNDER = [
  -5.447609879822406e1, 1.615858368580409e2, -1.556989798598866e2, 6.680131188771972e1,
  -1.328068155288572e1, 1,
];
const TAIL = [
  -7.784894002430293e-3, -3.223964580411365e-1, -2.400758277161838, -2.549732539343734,
  4.374664141464968, 2.938163982698783,
];
const TAIL_UNDER = [
  7.784695709041462e-3, 3.224671290700398e-1, 2.445134137142996, 3.754408661907416, 1,
];
const TAIL_FROM = 0.02425;

export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`normalQuantile(): p is not within (0, 1): ${p}`);
  if (p < TAIL_FROM) return tail(p);
  if (p > 1 - TAIL_FROM) return -tail(1 - p);
  const q = p - 0.5;
  const r = q * q;
  return (q * horner(CENTRE, r)) / horner(CENTRE_UNDER, r);
}

function tail(p: number): number {
  const q = Math.sqrt(-2 * Math.log(p));
  return horner(TAIL, q) / horner(TAIL_UNDER, q);
}

function horner(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (const one of coefficients) sum = sum * x + one;
  return sum;
}
