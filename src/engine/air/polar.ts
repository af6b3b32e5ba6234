import { type Result, succeed } from '../result';
import {
  checkPolar,
  mirrorPolar,
  type PolarBlock,
  type PolarFault,
  type PolarTable,
} from './polarTable';
import {
  ABOVE_REYNOLDS,
  type AirSection,
  BELOW_REYNOLDS,
  createCoefficients,
  OUTSIDE_ANGLE,
  type SectionCoefficients,
  smoothStep,
  symmetricSection,
  wrapAngle,
} from './section';

export type { PolarFault, PolarTable } from './polarTable';
export { parsePolarText, writePolarText } from './polarText';

/** The span of the data. An answer from outside it carries a flag in `SectionCoefficients.outside`. */
export interface PolarCoverage {
  /** The angles that every block covers, degrees. */
  readonly lowestDeg: number;
  readonly highestDeg: number;
  /** Null when the table names no Reynolds number. */
  readonly lowestReynolds: number | null;
  readonly highestReynolds: number | null;
  readonly rows: number;
}

export interface TableSection extends AirSection {
  readonly coverage: PolarCoverage;
}

export interface TableOptions {
  /** Between the angles: straight lines or (default) cubics that overshoot no row (Fritsch and Carlson 1980). */
  readonly interpolation?: 'linear' | 'monotone';
  /** Default no. Complete a table of angles from zero up by its mirror image. */
  readonly mirror?: boolean;
}

const DEGREE = Math.PI / 180;
/** Beyond the angles given the last row fades into the symmetric model over this, or over half the gap. */
const FADE = 15 * DEGREE;

/** One block with the slopes of its cubics (no slopes: linear). */
interface Curves {
  readonly angles: Float64Array;
  readonly lift: Float64Array;
  readonly drag: Float64Array;
  readonly moment: Float64Array;
  readonly liftSlope: Float64Array;
  readonly dragSlope: Float64Array;
  readonly momentSlope: Float64Array;
  readonly logReynolds: number;
}

/**
 * A section from a table. Between rows linear or monotone cubic in angle, linear in the logarithm of the Reynolds
 * number. Beyond the angles given: the symmetric model (`symmetricSection`, also for a cambered section), the last
 * row fading into it over 15 degrees, flagged OUTSIDE_ANGLE. Beyond the Reynolds numbers given: the nearest block,
 * flagged BELOW_REYNOLDS or ABOVE_REYNOLDS. Continuous, except at 180 degrees where a table's two ends differ.
 */
export function tableSection(
  table: PolarTable,
  options: TableOptions = {},
): Result<TableSection, PolarFault> {
  const checked = checkPolar(table);
  if (!checked.ok) return checked;
  const whole = options.mirror ? mirrorPolar(checked.value) : checked;
  if (!whole.ok) return whole;
  const { blocks } = whole.value;
  const curves = blocks.map((block) => curvesOf(block, options.interpolation !== 'linear'));
  const beyond = symmetricSection();
  const other = createCoefficients();
  const upper = createCoefficients();

  function coefficients(
    angle: number,
    reynolds: number,
    out: SectionCoefficients,
  ): SectionCoefficients {
    const a = wrapAngle(angle);
    const last = curves.length - 1;
    if (blocks[0].reynolds === null) return blockAt(curves[0], beyond, a, other, out);
    const x = Math.log(reynolds);
    if (!(x > curves[0].logReynolds)) {
      blockAt(curves[0], beyond, a, other, out);
      if (x < curves[0].logReynolds) out.outside |= BELOW_REYNOLDS;
      return out;
    }
    if (x >= curves[last].logReynolds) {
      blockAt(curves[last], beyond, a, other, out);
      if (x > curves[last].logReynolds) out.outside |= ABOVE_REYNOLDS;
      return out;
    }
    let k = 1;
    while (x >= curves[k].logReynolds) k++;
    const low = curves[k - 1].logReynolds;
    blockAt(curves[k - 1], beyond, a, other, out);
    blockAt(curves[k], beyond, a, other, upper);
    return mix(out, upper, (x - low) / (curves[k].logReynolds - low), out);
  }

  return succeed({ name: whole.value.name, coefficients, coverage: coverageOf(blocks) });
}

function coverageOf(blocks: readonly PolarBlock[]): PolarCoverage {
  return {
    lowestDeg: Math.max(...blocks.map(({ rows }) => rows[0].angleDeg)),
    highestDeg: Math.min(...blocks.map(({ rows }) => rows[rows.length - 1].angleDeg)),
    lowestReynolds: blocks[0].reynolds,
    highestReynolds: blocks[blocks.length - 1].reynolds,
    rows: blocks.reduce((sum, { rows }) => sum + rows.length, 0),
  };
}

function curvesOf(block: PolarBlock, cubic: boolean): Curves {
  const column = (key: 'angleDeg' | 'lift' | 'drag' | 'moment', factor = 1) =>
    Float64Array.from(block.rows, (row) => row[key] * factor);
  const angles = column('angleDeg', DEGREE);
  const slopes = (values: Float64Array) =>
    cubic ? monotoneSlopes(angles, values) : new Float64Array(0);
  const lift = column('lift');
  const drag = column('drag');
  const moment = column('moment');
  return {
    angles,
    lift,
    drag,
    moment,
    liftSlope: slopes(lift),
    dragSlope: slopes(drag),
    momentSlope: slopes(moment),
    logReynolds: Math.log(block.reynolds ?? 1),
  };
}

/** Slopes at the rows: weighted harmonic mean of the neighbours, 0 at a turn (Fritsch and Butland 1984). */
function monotoneSlopes(x: Float64Array, y: Float64Array): Float64Array {
  const n = x.length;
  const m = new Float64Array(n);
  const rise = (i: number) => (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
  m[0] = rise(0);
  m[n - 1] = rise(n - 2);
  for (let i = 1; i < n - 1; i++) {
    const before = rise(i - 1);
    const after = rise(i);
    if (before * after <= 0) continue;
    const h0 = x[i] - x[i - 1];
    const h1 = x[i + 1] - x[i];
    m[i] = (3 * (h0 + h1)) / ((2 * h1 + h0) / before + (h1 + 2 * h0) / after);
  }
  return m;
}

/** One block at the wrapped angle `a`; `other` is working memory. */
function blockAt(
  curves: Curves,
  beyond: AirSection,
  a: number,
  other: SectionCoefficients,
  out: SectionCoefficients,
): SectionCoefficients {
  const { angles } = curves;
  const low = angles[0];
  const high = angles[angles.length - 1];
  if (!(a < low || a > high)) return inside(curves, a, out);
  const gap = 2 * Math.PI - (high - low);
  // A full circle of rows has no outside but rounding.
  if (gap < 1e-9) return inside(curves, Math.min(high, Math.max(low, a)), out);
  const past = a > high ? a - high : a + 2 * Math.PI - high;
  const distance = Math.min(past, gap - past);
  inside(curves, past < gap / 2 ? high : low, out);
  beyond.coefficients(a, 0, other);
  mix(out, other, smoothStep(distance / Math.min(FADE, gap / 2)), out);
  out.outside = OUTSIDE_ANGLE;
  return out;
}

function inside(curves: Curves, a: number, out: SectionCoefficients): SectionCoefficients {
  const { angles } = curves;
  let i = 0;
  let j = angles.length - 1;
  while (j - i > 1) {
    const middle = (i + j) >> 1;
    if (angles[middle] <= a) i = middle;
    else j = middle;
  }
  const h = angles[j] - angles[i];
  const t = (a - angles[i]) / h;
  out.lift = between(curves.lift, curves.liftSlope, i, h, t);
  out.drag = between(curves.drag, curves.dragSlope, i, h, t);
  out.moment = between(curves.moment, curves.momentSlope, i, h, t);
  out.outside = 0;
  return out;
}

function between(y: Float64Array, m: Float64Array, i: number, h: number, t: number): number {
  if (m.length === 0) return y[i] * (1 - t) + y[i + 1] * t;
  const u = 1 - t;
  return (
    u * u * ((1 + 2 * t) * y[i] + t * h * m[i]) +
    t * t * ((1 + 2 * u) * y[i + 1] - u * h * m[i + 1])
  );
}

/** (1 - t) p + t q; the flags of both. */
function mix(
  p: SectionCoefficients,
  q: SectionCoefficients,
  t: number,
  out: SectionCoefficients,
): SectionCoefficients {
  out.lift = (1 - t) * p.lift + t * q.lift;
  out.drag = (1 - t) * p.drag + t * q.drag;
  out.moment = (1 - t) * p.moment + t * q.moment;
  out.outside = p.outside | q.outside;
  return out;
}
