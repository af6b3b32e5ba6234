/** A curve of cubics through nodes, continuous with its slope; a node whose value is NaN is a gap. */
export interface SmoothCurve {
  /** Ascending. */
  readonly nodes: Float64Array;
  readonly values: Float64Array;
  /** At the nodes. */
  readonly slopes: Float64Array;
}

/** Five nodes count as evenly spaced when their widths differ by less than this share. */
const EVEN = 1e-9;

/**
 * The curve through the values. Slope at a node: central difference over five even nodes (fourth order), of the
 * parabola through three otherwise, a one-sided parabola at an end or beside a gap.
 */
export function curveThrough(nodes: Float64Array, values: Float64Array): SmoothCurve {
  const slopes = new Float64Array(nodes.length);
  for (let k = 0; k < nodes.length; k++) slopes[k] = slopeOf(nodes, values, k);
  return { nodes, values, slopes };
}

function slopeOf(x: Float64Array, y: Float64Array, k: number): number {
  const known = (j: number) => j >= 0 && j < x.length && Number.isFinite(y[j]);
  const left = known(k - 1);
  const right = known(k + 1);
  if (!left && !right) return 0;
  if (left && right) {
    const before = x[k] - x[k - 1];
    const after = x[k + 1] - x[k];
    const five =
      known(k - 2) &&
      known(k + 2) &&
      isEven(x[k - 1] - x[k - 2], before, after, x[k + 2] - x[k + 1]);
    if (five) return (8 * (y[k + 1] - y[k - 1]) - (y[k + 2] - y[k - 2])) / (12 * before);
    const riseBefore = (y[k] - y[k - 1]) / before;
    const riseAfter = (y[k + 1] - y[k]) / after;
    return (riseBefore * after + riseAfter * before) / (before + after);
  }
  const d = right ? 1 : -1;
  const h0 = x[k + d] - x[k];
  const near = (y[k + d] - y[k]) / h0;
  if (!known(k + 2 * d)) return near;
  const h1 = x[k + 2 * d] - x[k + d];
  const far = (y[k + 2 * d] - y[k + d]) / h1;
  return near + ((near - far) * h0) / (h0 + h1);
}

function isEven(a: number, b: number, c: number, d: number): boolean {
  return Math.max(a, b, c, d) - Math.min(a, b, c, d) < EVEN * b;
}

/**
 * The interval that holds x; -1 outside the nodes. An end is taken with the rounding that a change of unit leaves.
 */
export function intervalOf(nodes: Float64Array, x: number): number {
  const last = nodes.length - 1;
  const slack = 1e-12 * (nodes[last] - nodes[0]);
  if (!(x >= nodes[0] - slack && x <= nodes[last] + slack)) return -1;
  let i = 0;
  let j = last;
  while (j - i > 1) {
    const middle = (i + j) >> 1;
    if (nodes[middle] <= x) i = middle;
    else j = middle;
  }
  return i;
}

/** NaN outside the nodes and beside a gap. */
export function valueAt({ nodes, values, slopes }: SmoothCurve, x: number): number {
  const k = intervalOf(nodes, x);
  if (k < 0) return Number.NaN;
  // On a node beside a gap the curve still has its value.
  if (x === nodes[k]) return values[k];
  if (x === nodes[k + 1]) return values[k + 1];
  const h = nodes[k + 1] - nodes[k];
  const t = (x - nodes[k]) / h;
  const u = 1 - t;
  return (
    u * u * ((1 + 2 * t) * values[k] + t * h * slopes[k]) +
    t * t * ((1 + 2 * u) * values[k + 1] - u * h * slopes[k + 1])
  );
}

/** Derivative of the same cubic. */
export function slopeAt({ nodes, values, slopes }: SmoothCurve, x: number): number {
  const k = intervalOf(nodes, x);
  if (k < 0) return Number.NaN;
  const h = nodes[k + 1] - nodes[k];
  const t = (x - nodes[k]) / h;
  const u = 1 - t;
  return (
    (6 * t * u * (values[k + 1] - values[k])) / h +
    u * (1 - 3 * t) * slopes[k] +
    t * (3 * t - 2) * slopes[k + 1]
  );
}

/** Exact integral of the cubic from node k to x within its interval. */
export function integralFromNode(
  { nodes, values, slopes }: SmoothCurve,
  k: number,
  x: number,
): number {
  const h = nodes[k + 1] - nodes[k];
  const t = (x - nodes[k]) / h;
  const change = values[k + 1] - values[k];
  const cubic = h * (slopes[k] + slopes[k + 1]) - 2 * change;
  const square = 3 * change - h * (2 * slopes[k] + slopes[k + 1]);
  return h * t * (values[k] + t * ((h * slopes[k]) / 2 + t * (square / 3 + (t * cubic) / 4)));
}

/** V at the nodes with curve = -dV/dx: zero at x = 0, or at the end nearest to it. NaN beyond a gap. */
export function potentialOf(curve: SmoothCurve): Float64Array {
  const { nodes } = curve;
  const last = nodes.length - 1;
  const potential = new Float64Array(nodes.length);
  const origin = Math.min(nodes[last], Math.max(nodes[0], 0));
  const start = intervalOf(nodes, origin);
  potential[start] = origin === nodes[start] ? 0 : integralFromNode(curve, start, origin);
  for (let k = start; k < last; k++)
    potential[k + 1] = potential[k] - integralFromNode(curve, k, nodes[k + 1]);
  for (let k = start; k > 0; k--)
    potential[k - 1] = potential[k] + integralFromNode(curve, k - 1, nodes[k]);
  return potential;
}

/** V between the nodes, the exact integral of the cubics; `potential` from `potentialOf`. */
export function potentialAt(curve: SmoothCurve, potential: Float64Array, x: number): number {
  const { nodes } = curve;
  const k = intervalOf(nodes, x);
  if (k < 0) return Number.NaN;
  if (x === nodes[k]) return potential[k];
  if (x === nodes[k + 1]) return potential[k + 1];
  return potential[k] - integralFromNode(curve, k, x);
}
