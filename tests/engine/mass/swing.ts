/** A body on two strings: mass, moment of inertia about the upright axis, half the spacing, string length, gravity. */
export interface Pendulum {
  readonly mass: number;
  readonly moment: number;
  readonly half: number;
  readonly length: number;
  readonly gravity: number;
}

/**
 * Exact time of a full swing of the given amplitude (rad), by quadrature of the energy law. The strings' upper ends are at
 * (+-b, 0, 0), the lower at (+-b cos f, +-b sin f, -d): |difference| = L gives d^2 = L^2 - 2 b^2 (1 - cos f). From
 * (I + m d'^2) f'^2 / 2 = m g (d(f) - d(a)), with f = a sin s,
 *
 *     P = 4 int_0^(pi/2) sqrt((I + m d'(f)^2) / (2 m g (d(f) - d(a)))) a cos s ds.
 *
 * The integrand is smooth, even and of period pi in s, so that the midpoint rule converges faster than any power.
 */
export function exactPeriod({ mass, moment, half, length, gravity }: Pendulum, amplitude: number) {
  const depth = (f: number) => Math.sqrt(length ** 2 - 4 * half ** 2 * Math.sin(f / 2) ** 2);
  const count = 200;
  let sum = 0;
  for (let i = 0; i < count; i++) {
    const s = ((i + 0.5) * Math.PI) / (2 * count);
    const f = amplitude * Math.sin(s);
    const d = depth(f);
    const slope = (-(half ** 2) * Math.sin(f)) / d;
    // d(f)^2 - d(a)^2 = 4 b^2 sin((a + f)/2) sin((a - f)/2), a - f = 2 a sin^2(pi/4 - s/2): nothing cancels.
    const left = amplitude * Math.sin(Math.PI / 4 - s / 2) ** 2;
    const fall =
      (4 * half ** 2 * Math.sin((amplitude + f) / 2) * Math.sin(left)) / (d + depth(amplitude));
    const slowness = Math.sqrt((moment + mass * slope ** 2) / (2 * mass * gravity * fall));
    sum += slowness * amplitude * Math.cos(s);
  }
  return (4 * sum * Math.PI) / (2 * count);
}
