/**
 * Sizes of the ISO 68-1 basic profile (ISO metric thread, 60 degree flanks): the profile that bolt and nut share.
 * Sharp triangle height H = (sqrt(3) / 2) P; the crest is cut flat P / 8 wide at the major diameter d, the root flat
 * P / 4 wide at the minor diameter d1 = d - (5/4) H = d - 1.082532 P (ISO 724: D1). The two flanks between them take
 * the rest of the pitch, 2 x (5/16) P. Lengths in metres, or any one unit throughout.
 */
export function threadMinorDiameter(diameter: number, pitch: number): number {
  return diameter - (5 / 8) * Math.sqrt(3) * pitch;
}

/** Diameter where ridge and groove are equally wide, d2 = d - (3/4) H = d - 0.649519 P (ISO 724). */
export function threadPitchDiameter(diameter: number, pitch: number): number {
  return diameter - (3 / 8) * Math.sqrt(3) * pitch;
}

/**
 * Diameter at the bottom of the rounded root of an external thread, d3 = d - (17/12) H = d - 1.226869 P (ISO 724 and
 * ISO 898-1, root radius H / 6).
 */
export function threadRootDiameter(diameter: number, pitch: number): number {
  return diameter - (17 / 24) * Math.sqrt(3) * pitch;
}

/**
 * Section that a metric screw is counted on in tension, A_s = (pi / 4) ((d2 + d3) / 2)^2 = (pi / 4) (d - 0.9382 P)^2
 * (ISO 898-1). Square of the unit of the lengths; valid while d3 > 0.
 */
export function threadStressArea(diameter: number, pitch: number): number {
  const mean = (threadPitchDiameter(diameter, pitch) + threadRootDiameter(diameter, pitch)) / 2;
  return (Math.PI / 4) * mean * mean;
}

/**
 * The same of a Unified (inch) screw, A_s = (pi / 4) (D - (9/16) sqrt(3) P)^2 = (pi / 4) (D - 0.9743 / n)^2 (ASME B1.1):
 * a rule of its own, 1 to 2 % below that of ISO 898-1 for the same diameter and pitch.
 */
export function unifiedStressArea(diameter: number, pitch: number): number {
  return (Math.PI / 4) * (diameter - (9 / 16) * Math.sqrt(3) * pitch) ** 2;
}

/**
 * Radius of the plain cylinder that has the same volume per pitch as the ISO 68-1 basic profile: the root of the mean
 * of r^2 over one pitch. With R = d / 2 and r = d1 / 2, and the mean of r^2 over a straight flank (R^2 + R r + r^2) / 3:
 *
 *   <r^2> = R^2 / 8 + r^2 / 4 + (5/8) (R^2 + R r + r^2) / 3
 *
 * Valid for pitch >= 0 while d1 > 0, that is P < 0.9238 d; throws outside it. It serves a bolt (outside of the metal)
 * and a nut (inside of the metal) alike, since the basic profile bounds both.
 *
 * Approximations. Volume, mass and every moment linear in r^2 are exact over whole pitches (part of a pitch is off by
 * at most the mass of one groove). The thread's own second moments about its axis go with r^4, and the square of the
 * mean is less than the mean of the square: by 2.2 % for M3 x 0.5, 5.5 % for M1 x 0.25, and by less than (P / d)^2 up
 * to P = 0.4 d; in the feathering moment of a thread that share is small, as radius over distance squared. A rolled
 * thread of tolerance class 6g, rounded in the root below d1, weighs up to about 5 % less than its basic profile.
 * Tested against quadrature of the sharp triangle cut at d and d1, and the diameters of ISO 724.
 */
export function threadMeanRadius(diameter: number, pitch: number): number {
  const crest = diameter / 2;
  const root = threadMinorDiameter(diameter, pitch) / 2;
  if (!(root > 0 && pitch >= 0)) {
    throw new RangeError(
      `threadMeanRadius(): pitch does not fit the diameter: ${pitch}, ${diameter}`,
    );
  }
  const flank = (crest * crest + crest * root + root * root) / 3;
  return Math.sqrt((crest * crest) / 8 + (root * root) / 4 + (5 / 8) * flank);
}
