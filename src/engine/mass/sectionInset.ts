import { equalise, outlineClearance, type SectionOutline, uprightCut } from './sectionOutline';

/** One side of a section as heights over ascending chordwise places; equal places are an upright edge. */
interface Side {
  readonly along: Float64Array;
  readonly height: Float64Array;
}

/**
 * A section moved inward by `thickness` everywhere: what a skin of that thickness leaves hollow. Its points lie on the
 * inner parallel curve of the outline, which ends where the two halves of the skin meet, toward the trailing edge and in
 * a sharp nose: at each chordwise place the upper bound is the least of z(a + d) - sqrt(thickness^2 - d^2) over the
 * upper side, |d| <= thickness, and the lower one alike. Upper and lower point stand at the same places, in `panels`
 * steps of the cosine between the hollow's own ends; 2 `panels` + 2 points, so hollows of one `panels` correspond. Where
 * a hollow ends sharply its two last points coincide. Of a hollow in several pieces only the highest is kept.
 *
 * Null where nothing is left, and where a side of the outline turns back along the chord, so that it is no function.
 */
export function insetSection(
  outline: SectionOutline,
  thickness: number,
  panels: number,
): SectionOutline | null {
  const sides = splitSides(outline);
  if (!sides) return null;
  const { upper, lower } = sides;
  const top = (a: number) => innerHeight(upper, a, thickness, 1);
  const gap = (a: number) => top(a) - innerHeight(lower, a, thickness, -1);
  const reach = hollowReach(gap, upper.along[0], upper.along[upper.along.length - 1]);
  if (!reach) return null;
  const [front, back] = reach;
  const points = new Float64Array(4 * panels + 4);
  for (let k = 0; k <= panels; k++) {
    // The share from the front; computed from the nearer end, so that the ends come out exactly.
    const aft = (Math.PI * (panels - k)) / panels;
    const a = k === 0 ? back : front + ((back - front) * (1 - Math.cos(aft))) / 2;
    const bottom = innerHeight(lower, a, thickness, -1);
    const below = 4 * panels + 2 - 2 * k;
    points[2 * k] = a;
    points[2 * k + 1] = Math.max(top(a), bottom);
    points[below] = a;
    points[below + 1] = bottom;
  }
  equalise(points, 0, panels);
  return equalise(points, panels + 1, 2 * panels + 1);
}

/** The thickest skin that leaves a hollow, seen from the section's own middle line: the greatest clearance on it. */
export function insetLimit(outline: SectionOutline): number {
  const STEPS = 64;
  let front = Infinity;
  let back = -Infinity;
  for (let i = 0; i < outline.length; i += 2) {
    front = Math.min(front, outline[i]);
    back = Math.max(back, outline[i]);
  }
  let limit = 0;
  for (let k = 1; k < STEPS; k++) {
    const a = front + ((back - front) * k) / STEPS;
    const cut = uprightCut(outline, a);
    if (cut) limit = Math.max(limit, outlineClearance(outline, a, (cut.low + cut.high) / 2));
  }
  return limit;
}

/** Upper and lower side, split at the foremost point; the trailing edge's flat goes to the side that it lengthens. */
export function splitSides(outline: SectionOutline): { upper: Side; lower: Side } | null {
  const count = outline.length / 2;
  let nose = 0;
  for (let i = 1; i < count; i++) if (outline[2 * i] < outline[2 * nose]) nose = i;
  const upper: number[] = [];
  const lower: number[] = [];
  for (let i = nose; i >= 0; i--) upper.push(i);
  for (let i = nose; i < count; i++) lower.push(i);
  if (outline[0] < outline[2 * (count - 1)]) upper.push(count - 1);
  else lower.push(0);
  const sides = { upper: pick(outline, upper), lower: pick(outline, lower) };
  return ascends(sides.upper.along) && ascends(sides.lower.along) ? sides : null;
}

function pick(outline: SectionOutline, indices: readonly number[]): Side {
  return {
    along: Float64Array.from(indices, (i) => outline[2 * i]),
    height: Float64Array.from(indices, (i) => outline[2 * i + 1]),
  };
}

function ascends(along: Float64Array): boolean {
  for (let i = 1; i < along.length; i++) if (along[i] < along[i - 1]) return false;
  return true;
}

/**
 * Height of the inner parallel curve of one side at `a`; `up` is 1 for the upper side, -1 for the lower. Along a
 * straight piece of slope m, line minus circle is convex: least at d = -m t / sqrt(1 + m^2), or at the nearer end.
 */
function innerHeight(side: Side, a: number, thickness: number, up: 1 | -1): number {
  const { along, height } = side;
  const t = thickness;
  let best = Infinity;
  for (let i = firstReaching(along, a - t); i + 1 < along.length; i++) {
    const p = along[i] - a;
    const q = along[i + 1] - a;
    if (p > t) break;
    const hp = up * height[i];
    const hq = up * height[i + 1];
    if (q === p) {
      best = Math.min(best, Math.min(hp, hq) - Math.sqrt(Math.max(0, t * t - p * p)));
      continue;
    }
    const m = (hq - hp) / (q - p);
    const foot = (-m * t) / Math.hypot(1, m);
    const d = Math.min(Math.min(q, t), Math.max(Math.max(p, -t), foot));
    best = Math.min(best, hp + m * (d - p) - Math.sqrt(Math.max(0, t * t - d * d)));
  }
  return up * best;
}

/** The first piece that ends at or beyond `a`. */
function firstReaching(along: Float64Array, a: number): number {
  let low = 0;
  let high = along.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (along[middle] < a) low = middle;
    else high = middle;
  }
  return low;
}

const SEARCH_STEPS = 64;

/** The stretch round the highest place over which the gap is positive, its ends by bisection from inside. */
function hollowReach(
  gap: (a: number) => number,
  from: number,
  to: number,
): readonly [number, number] | null {
  const place = (k: number) =>
    from + ((to - from) * (1 - Math.cos((Math.PI * k) / SEARCH_STEPS))) / 2;
  const gaps = Array.from({ length: SEARCH_STEPS + 1 }, (_, k) => gap(place(k)));
  let highest = 0;
  for (let k = 1; k < SEARCH_STEPS; k++) if (gaps[k] > gaps[highest]) highest = k;
  if (!(gaps[highest] > 0)) return null;
  let front = highest;
  while (front > 0 && gaps[front] > 0) front--;
  let back = highest;
  while (back < SEARCH_STEPS && gaps[back] > 0) back++;
  return [edge(gap, place(front), place(front + 1)), edge(gap, place(back), place(back - 1))];
}

function edge(gap: (a: number) => number, outside: number, inside: number): number {
  let [low, high] = [outside, inside];
  for (let step = 0; step < 48; step++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (gap(middle) > 0) high = middle;
    else low = middle;
  }
  return high;
}
