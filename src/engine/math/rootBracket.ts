/** A root with how it was reached. */
export interface BracketedRoot {
  readonly root: number;
  readonly residual: number;
  readonly iterations: number;
  /** Width of the last bracket. */
  readonly uncertainty: number;
}

/**
 * Brent's method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4) on a bracket
 * [low, high] whose ends differ in sign (or touch zero). Null when they do not. Converges always; the root is good
 * to `tolerance` plus rounding.
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-14,
): BracketedRoot | null {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return { root: a, residual: 0, iterations: 0, uncertainty: 0 };
  if (fb === 0) return { root: b, residual: 0, iterations: 0, uncertainty: 0 };
  if (!(fa > 0 !== fb > 0)) return null;
  let c = a;
  let fc = fa;
  let d = b - a;
  let e = d;
  for (let iterations = 1; iterations <= 200; iterations++) {
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      d = b - a;
      e = d;
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= near || fb === 0) {
      return { root: b, residual: fb, iterations, uncertainty: fb === 0 ? 0 : Math.abs(c - b) };
    }
    const step = interpolatedStep(a, b, c, fa, fb, fc, half);
    if (Math.abs(e) >= near && Math.abs(fa) > Math.abs(fb) && step !== null) {
      const limit = Math.min(3 * Math.abs(half) - near, Math.abs(e));
      if (2 * Math.abs(step) < limit) {
        e = d;
        d = step;
      } else {
        d = half;
        e = half;
      }
    } else {
      d = half;
      e = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(d) > near ? d : Math.sign(half) * near;
    fb = f(b);
  }
  return { root: b, residual: fb, iterations: 200, uncertainty: Math.abs(c - b) };
}

/** Secant or inverse quadratic step from b, or null when it would leave the bracket's side. */
function interpolatedStep(
  a: number,
  b: number,
  c: number,
  fa: number,
  fb: number,
  fc: number,
  half: number,
): number | null {
  const s = fb / fa;
  let p: number;
  let q: number;
  if (a === c) {
    p = 2 * half * s;
    q = 1 - s;
  } else {
    const r = fb / fc;
    const t = fa / fc;
    p = s * (2 * half * t * (t - r) - (b - a) * (r - 1));
    q = (t - 1) * (r - 1) * (s - 1);
  }
  if (q === 0) return null;
  const step = -p / q;
  return step * half > 0 || step === 0 ? step : null;
}
