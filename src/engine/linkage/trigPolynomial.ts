/** a_0 + sum a_k cos kt + b_k sin kt, with bounds of its first two derivatives. */
export interface TrigPolynomial {
  readonly cosines: readonly number[];
  readonly sines: readonly number[];
  readonly slopeBound: number;
  readonly curvatureBound: number;
  /** Sum of the sizes of its coefficients: no value is larger. */
  readonly scale: number;
}

/**
 * The trigonometric polynomial of a degree that a function is, from its values at 2 degree + 2 evenly spaced angles
 * (discrete Fourier sums, exact to rounding). Coefficients below 1e-15 of the largest value are rounding and dropped.
 */
export function trigPolynomialOf(f: (angle: number) => number, degree: number): TrigPolynomial {
  const count = 2 * degree + 2;
  const values = Array.from({ length: count }, (_, i) => f((2 * Math.PI * i) / count));
  const largest = Math.max(...values.map(Math.abs));
  const cosines: number[] = [];
  const sines: number[] = [];
  for (let k = 0; k <= degree; k++) {
    const weight = (k === 0 ? 1 : 2) / count;
    let even = 0;
    let odd = 0;
    for (let i = 0; i < count; i++) {
      const angle = (2 * Math.PI * ((k * i) % count)) / count;
      even += values[i] * Math.cos(angle);
      odd += values[i] * Math.sin(angle);
    }
    cosines.push(settled(weight * even, largest));
    sines.push(settled(weight * odd, largest));
  }
  const sizes = cosines.map((a, k) => Math.hypot(a, sines[k]));
  return {
    cosines,
    sines,
    slopeBound: sizes.reduce((sum, size, k) => sum + k * size, 0),
    curvatureBound: sizes.reduce((sum, size, k) => sum + k * k * size, 0),
    scale: sizes.reduce((sum, size) => sum + size, 0),
  };
}

function settled(value: number, largest: number): number {
  return Math.abs(value) <= 1e-15 * largest ? 0 : value;
}

export function trigValue({ cosines, sines }: TrigPolynomial, angle: number): number {
  let sum = 0;
  for (let k = 0; k < cosines.length; k++) {
    sum += cosines[k] * Math.cos(k * angle) + sines[k] * Math.sin(k * angle);
  }
  return sum;
}

export function trigSlope({ cosines, sines }: TrigPolynomial, angle: number): number {
  let sum = 0;
  for (let k = 1; k < cosines.length; k++) {
    sum += k * (sines[k] * Math.cos(k * angle) - cosines[k] * Math.sin(k * angle));
  }
  return sum;
}
