import type { Values } from '../../parts/sample';

/** Mass, first and second moment along the axis, second moment across it: m, Sz, Jzz, Jxx; SI, the part's own origin. */
export type AxialMoments = [number, number, number, number];

/** Area, and its second moment about any diameter (the sections here have six-fold symmetry, so about each the same). */
type Section = readonly [area: number, second: number];

const CORNER = 2 / Math.sqrt(3);
const MM = 1e-3;

function disc(r: number): Section {
  return [Math.PI * r ** 2, (Math.PI / 4) * r ** 4];
}

/** Regular hexagon across its flats: area (sqrt 3 / 2) s^2, second moment (5 sqrt 3 / 144) s^4 (handbook, from memory). */
function hexagon(s: number): Section {
  return [(Math.sqrt(3) / 2) * s ** 2, ((5 * Math.sqrt(3)) / 144) * s ** 4];
}

/** Hexagon and disc in common, by Simpson's rule over the sixth of a turn: half r^2, and an eighth of r^4 (half the polar one). */
function hexagonInDisc(s: number, r: number): Section {
  if (r >= (s / 2) * CORNER) return hexagon(s);
  if (r <= s / 2) return disc(r);
  // The flat ends where the disc begins; from there the radius is constant.
  const bend = Math.acos(s / 2 / r);
  const flat = (power: number) =>
    simpson((angle) => (s / 2 / Math.cos(angle)) ** power, 0, bend, 40);
  const rest = Math.PI / 6 - bend;
  return [6 * (flat(2) + rest * r ** 2), 1.5 * (flat(4) + rest * r ** 4)];
}

function simpson(f: (x: number) => number, from: number, to: number, steps: number): number {
  const h = (to - from) / steps;
  let sum = f(from) + f(to);
  for (let k = 1; k < steps; k++) sum += (k % 2 === 1 ? 4 : 2) * f(from + k * h);
  return (sum * h) / 3;
}

/** A stretch of the axis with its section, mm; `sign` -1 for a hole. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly density: number;
  readonly sign: 1 | -1;
  readonly section: (z: number) => Section;
  /** Where the section changes its law. */
  readonly kinks?: readonly number[];
}

/**
 * Integrals over z by Simpson's rule on each stretch. Exact where the radius is constant or goes as a straight line up to
 * the third power of z (m, Sz of frustums); the fourth powers and the hyperbolas of chamfers to about 1e-10 with 48 steps.
 */
function integrate(stretches: readonly Stretch[]): AxialMoments {
  const sum: AxialMoments = [0, 0, 0, 0];
  for (const { from, to, density, sign, section, kinks = [] } of stretches) {
    const ends = [from, ...kinks.filter((z) => z > from && z < to), to].toSorted((a, b) => a - b);
    ends.slice(1).forEach((b, i) => {
      const a = ends[i];
      if (!(b > a)) return;
      const steps = 48;
      const h = (b - a) / steps;
      for (let k = 0; k <= steps; k++) {
        const z = a + k * h;
        const share = ((k === 0 || k === steps ? 1 : k % 2 === 1 ? 4 : 2) * h) / 3;
        const [area, second] = section(z);
        const part = sign * density * share;
        sum[0] += part * area * MM ** 3;
        sum[1] += part * area * z * MM ** 4;
        sum[2] += part * area * z * z * MM ** 5;
        sum[3] += part * second * MM ** 5;
      }
    });
  }
  return sum;
}

/**
 * Mean radius of the ISO 68-1 basic profile, mm: the root of the mean of r^2 over one pitch, by Simpson's rule over crest
 * (P/8), flank and root (P/4); the triangle's height is (sqrt 3 / 2) P, the minor diameter 5/4 of that below the major.
 */
function threadMean(d: number, p: number): number {
  const minor = d / 2 - (5 / 8) * (Math.sqrt(3) / 2) * p;
  const flank = simpson((t) => (minor + t * (d / 2 - minor)) ** 2, 0, 1, 2);
  return Math.sqrt((d / 2) ** 2 / 8 + minor ** 2 / 4 + (5 / 8) * flank);
}

type Numbers = Readonly<Record<string, number>>;

/** Body of a hexagon with the corners turned off at 30 degrees over the heights given, or a round with 45 degree ones. */
function body(
  hex: boolean,
  across: number,
  [from, to]: readonly [number, number],
  lower: number,
  upper: number,
  density: number,
): Stretch {
  const slope = hex ? Math.sqrt(3) : 1;
  const outside = (across / 2) * (hex ? CORNER : 1);
  const radius = (z: number) => outside - slope * Math.max(0, lower - (z - from), upper - (to - z));
  const flats = hex ? (outside - across / 2) / slope : 0;
  return {
    from,
    to,
    density,
    sign: 1,
    section: (z) => (hex ? hexagonInDisc(across, radius(z)) : disc(radius(z))),
    kinks: [from + lower, to - upper, from + lower - flats, to - upper + flats],
  };
}

function round(r: number, from: number, to: number, density: number, sign: 1 | -1 = 1): Stretch {
  return { from, to, density, sign, section: () => disc(r) };
}

function cone(
  r0: number,
  r1: number,
  from: number,
  to: number,
  density: number,
  sign: 1 | -1 = 1,
): Stretch {
  const r = (z: number) => r0 + ((r1 - r0) * (z - from)) / (to - from);
  return { from, to, density, sign, section: (z) => disc(r(z)) };
}

function bolt(v: Numbers, words: Values): Stretch[] {
  const density = v.densityKgM3;
  const headed = words.headForm !== 'none';
  const head = headed ? v.headHeightMm : 0;
  const top = head + v.extensionLengthMm;
  const { shankDiameterMm: d, threadPitchMm: p, lengthMm: long } = v;
  // Rolled: the pitch cylinder, d2 = d - (3/4) (sqrt 3 / 2) P (ISO 724).
  const rolled = words.threadForm === 'rolled';
  const mean = rolled ? d / 2 - (3 / 16) * Math.sqrt(3) * p : threadMean(d, p);
  const point = v.pointDiameterMm / 2;
  const chamfer = point > 0 ? mean - point : 0;
  const threadTop = -long + v.threadLengthMm;
  const fade = threadTop + v.threadRunOutMm;
  const stretches = [
    round(mean, -long + chamfer, threadTop, density),
    cone(mean, d / 2, threadTop, fade, density),
    round(d / 2, fade, 0, density),
    cone(point, mean, -long, -long + chamfer, density),
    round(v.extensionDiameterMm / 2, head, top, density),
  ];
  if (words.headForm === 'button') stretches.push(...button(v));
  else if (headed) {
    const hex = words.headForm === 'hexagon';
    stretches.push(body(hex, v.headDiameterMm, [0, head], 0, v.headChamferMm, density));
  }
  const socket = (): Section => hexagon(v.socketAcrossMm);
  const hole = {
    from: top - v.socketDepthMm,
    to: top,
    density,
    sign: -1,
    section: socket,
  } as const;
  return [...stretches, hole];
}

/** Rim, and the zone of a sphere about the axis through the rim's edge and the flat's. */
function button(v: Numbers): Stretch[] {
  const { headDiameterMm, headTopDiameterMm, headRimHeightMm: rim, headHeightMm: top } = v;
  const [wide, flat] = [headDiameterMm / 2, headTopDiameterMm / 2];
  const centre = (wide ** 2 - flat ** 2 + rim ** 2 - top ** 2) / (2 * (rim - top));
  const sphere2 = wide ** 2 + (rim - centre) ** 2;
  const section = (z: number) => disc(Math.sqrt(Math.max(0, sphere2 - (z - centre) ** 2)));
  const dome = { from: rim, to: top, density: v.densityKgM3, sign: 1, section } as const;
  return [round(wide, 0, rim, v.densityKgM3), dome];
}

function nut(v: Numbers, words: Values): Stretch[] {
  const density = v.densityKgM3;
  const hex = words.form === 'hex';
  const thread = v.heightMm + v.collarHeightMm;
  const ring = thread - v.insertHeightMm;
  const mean = threadMean(v.threadDiameterMm, v.threadPitchMm);
  const collared = v.collarHeightMm > 0;
  const upper = v.closedEndMm > 0 && !collared ? 0 : v.chamferMm;
  const stretches = [body(hex, v.acrossMm, [0, v.heightMm], v.chamferMm, upper, density)];
  const end = thread + v.closedEndMm;
  if (collared) stretches.push(round(v.collarDiameterMm / 2, v.heightMm, end, density));
  else stretches.push(body(hex, v.acrossMm, [v.heightMm, end], 0, 0, density));
  stretches.push(round(mean, 0, ring, density, -1));
  const sink = v.countersinkDiameterMm / 2;
  if (sink > 0) {
    const deep = sink - mean;
    const hollow = (from: number, to: number, r0: number, r1: number) => [
      cone(r0, r1, from, to, density, -1),
      round(mean, from, to, density),
    ];
    stretches.push(...hollow(0, deep, sink, mean));
    const open = v.closedEndMm === 0 && v.insertHeightMm === 0;
    if (open) stretches.push(...hollow(ring - deep, ring, mean, sink));
  }
  if (v.insertHeightMm > 0) {
    const [outer, inner] = [v.insertOuterDiameterMm / 2, v.insertInnerDiameterMm / 2];
    stretches.push(
      round(outer, ring, thread, density, -1),
      round(outer, ring, thread, v.insertDensityKgM3),
      round(inner, ring, thread, v.insertDensityKgM3, -1),
    );
  }
  return stretches;
}

function weight(v: Numbers): Stretch[] {
  const density = v.densityKgM3;
  const end = v.stalkLengthMm + v.lengthMm;
  return [
    round(v.stalkDiameterMm / 2, 0, v.stalkLengthMm, density),
    round(v.diameterMm / 2, v.stalkLengthMm, end, density),
    round(v.boreMm / 2, 0, end, density, -1),
  ];
}

function washer(v: Numbers): Stretch[] {
  const { thicknessMm, densityKgM3 } = v;
  return [
    round(v.outerDiameterMm / 2, 0, thicknessMm, densityKgM3),
    round(v.innerDiameterMm / 2, 0, thicknessMm, densityKgM3, -1),
  ];
}

const STRETCHES: Readonly<Record<string, (v: Numbers, words: Values) => Stretch[]>> = {
  bolt,
  nut,
  weight,
  washer,
};

export function quadrature(kind: string, values: Values): AxialMoments {
  return integrate(STRETCHES[kind](values as unknown as Numbers, values));
}

/**
 * How far the steps may be off in which the program weighs a hexagon's chamfer. Their volumes are exact, so only the metal
 * that the cone takes from the corners may be misplaced: along the axis by at most the chamfer's height, and between the
 * chamfer's circle on the face and the corners.
 */
export function stepsRoom(kind: string, values: Values): AxialMoments {
  const v = values as unknown as Numbers;
  const nutChamfer = kind === 'nut' && values.form === 'hex' ? v.chamferMm : 0;
  const headChamfer = kind === 'bolt' && values.headForm === 'hexagon' ? v.headChamferMm : 0;
  const chamfer = nutChamfer + headChamfer;
  if (chamfer === 0) return [0, 0, 0, 0];
  const [across, height] =
    kind === 'nut' ? [v.acrossMm, v.heightMm] : [v.headDiameterMm, v.headHeightMm];
  const whole = body(true, across, [0, height], 0, 0, v.densityKgM3);
  const cut = body(true, across, [0, height], 0, chamfer, v.densityKgM3);
  const missing = integrate([whole])[0] - integrate([cut])[0];
  const corner = (across / 2) * CORNER;
  const face = Math.min(across / 2, corner - Math.sqrt(3) * chamfer);
  const both = 2 * missing;
  return [
    0,
    both * chamfer * MM,
    both * 2 * height * chamfer * MM ** 2,
    (both / 2) * (corner ** 2 - face ** 2) * MM ** 2,
  ];
}
