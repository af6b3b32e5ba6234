/** Nodes on (-1, 1) and weights of a Gauss-Legendre rule; n points integrate polynomials to degree 2 n - 1. */
export interface QuadratureRule {
  readonly nodes: Float64Array;
  readonly weights: Float64Array;
}

const rules = new Map<number, QuadratureRule>();

/**
 * The n-point rule, made once per n by Newton's method on the Legendre polynomial from the Chebyshev-like
 * guess cos(pi (i + 3/4) / (n + 1/2)) (Abramowitz and Stegun 25.4.29, 22.16.6). Good to rounding for n <= 100.
 */
export function gaussLegendre(n: number): QuadratureRule {
  const known = rules.get(n);
  if (known) return known;
  if (!Number.isInteger(n) || n < 1)
    throw new RangeError(`gaussLegendre(): n is not a positive integer: ${n}`);
  const nodes = new Float64Array(n);
  const weights = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let x = -Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 100; step++) {
      let previous = 1;
      let value = x;
      for (let k = 2; k <= n; k++) {
        const next = ((2 * k - 1) * x * value - (k - 1) * previous) / k;
        previous = value;
        value = next;
      }
      slope = (n * (x * value - previous)) / (x * x - 1);
      const change = value / slope;
      x -= change;
      if (Math.abs(change) < 1e-16) break;
    }
    nodes[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const rule = { nodes, weights };
  rules.set(n, rule);
  return rule;
}
