import { RowJudge } from './judge';
import type { Motion } from './motion';
import {
  BOUND,
  BY_PIECE,
  BY_PITCH,
  BY_TARGET,
  FROM,
  HIGH,
  halveTriangle,
  KEY,
  LEVEL,
  LOW,
  NODE,
  Rows,
  SPLIT,
  TARGET,
  TO,
  takeTriangle,
} from './rows';
import type { PlacedSurface } from './surface';
import type { Target } from './target';

/** What is searched: pitches from `low` to `high`, azimuths from 0 to `turn` (0: no turn of the shaft counts), rad. */
export interface Span {
  readonly low: number;
  readonly high: number;
  readonly turn: number;
}

/** The nearest point found, and what no point is nearer than. */
export interface Nearest {
  /**
   * Least distance found, m; of a convex keep-out negative where a point lies inside. Infinity where the budget ended before
   * any point was looked at: the point is then the surface's first corner at the middle pitch.
   */
  readonly distance: number;
  /** Proven: no point of the surface comes nearer at any pitch and azimuth of the span. */
  readonly bound: number;
  /** In the frame that carries the part. */
  readonly point: readonly [number, number, number];
  readonly pitch: number;
  readonly azimuth: number;
  readonly evaluations: number;
}

/**
 * The least distance between the surface of a moving part and a keep-out, by branch and bound over pieces of the surface,
 * pitch and azimuth (and the boxes and triangles of a mesh).
 *
 * The distance d from a convex set is convex: with the gradient g at one point q every other point p is at least
 * d(q) + g . (p - q) away. So for a piece, an interval of pitch and one of azimuth the bound is d at its middle plus the
 * least that g . p may change: along the piece (its corners), with pitch (exact for the grip) and with azimuth (slope and
 * curvature). It misses the truth by the square of the sizes, so halving them four times as well: pieces whose bound is
 * no nearer than the best point found, less `tolerance` (or a share of a wide gap or a deep overlap), are done with. The
 * piece with the least bound comes next, so if the `budget` (number of bounds worked out) ends first, `bound` is what is
 * proven all the same. Allocates nothing for a row.
 */
export class ClearanceSearch {
  private readonly rows = new Rows();
  private readonly judge = new RowJudge(this.rows);
  private surface!: PlacedSurface;
  private target!: Target;
  /** Least bound of what was done with. */
  private closed = Infinity;

  run(
    surface: PlacedSurface,
    motion: Motion,
    target: Target,
    span: Span,
    tolerance: number,
    budget: number,
  ): Nearest {
    this.surface = surface;
    this.target = target;
    this.closed = Infinity;
    const { judge } = this;
    judge.begin(surface, motion, target, tolerance, (span.low + span.high) / 2);
    const { rows } = this;
    rows.clear();
    const first = rows.room();
    const v = rows.values;
    v[first + LOW] = span.low;
    v[first + HIGH] = span.high;
    v[first + FROM] = 0;
    v[first + TO] = span.turn;
    v[first + BOUND] = -Infinity;
    v[first + LEVEL] = 0;
    v[first + NODE] = 0;
    v[first + TARGET] = target.tree ? 0 : -1;
    judge.judge(first);
    rows.put(first);
    // The least key comes first and no bound lies below its key, so once it is settled all are.
    let bound = Infinity;
    while (rows.count > 0) {
      const row = rows.take();
      bound = rows.values[row + KEY];
      if (bound >= judge.best - judge.allowed || judge.evaluations >= budget) break;
      this.divide(row);
      bound = Infinity;
    }
    const p = judge.bestPoint;
    return {
      distance: judge.best,
      bound: Math.min(bound, this.closed, judge.best),
      point: [p[0], p[1], p[2]],
      pitch: judge.bestPitch,
      azimuth: judge.bestAzimuth,
      evaluations: judge.evaluations,
    };
  }

  /** Opens what a row falls into; its own place is taken over by the first part. */
  private divide(row: number): void {
    const { rows } = this;
    const split = rows.values[row + SPLIT];
    let other = -1;
    if (split === BY_PIECE) other = this.dividePiece(row);
    else if (split === BY_TARGET) other = this.divideTarget(row);
    else other = this.halveInterval(row, split === BY_PITCH ? LOW : FROM);
    this.judge.judge(row);
    if (other >= 0) this.judge.judge(other);
    this.open(row);
    if (other >= 0) this.open(other);
  }

  /** What is settled already need not wait. */
  private open(row: number): void {
    const { rows, judge } = this;
    const bound = rows.values[row + BOUND];
    if (bound < judge.best - judge.allowed) {
      rows.put(row);
      return;
    }
    if (bound < this.closed) this.closed = bound;
    rows.drop(row);
  }

  private halveInterval(row: number, low: number): number {
    const { rows } = this;
    const other = rows.room(row);
    const v = rows.values;
    const middle = (v[row + low] + v[row + low + 1]) / 2;
    v[row + low + 1] = middle;
    v[other + low] = middle;
    return other;
  }

  private dividePiece(row: number): number {
    const { rows, surface } = this;
    const node = rows.values[row + NODE];
    const { second, first, count } = surface.tree;
    if (node >= 0 && second[node] === 0 && count[node] === 1) {
      takeTriangle(rows.values, row, surface, first[node]);
      return -1;
    }
    const other = rows.room(row);
    const v = rows.values;
    if (node < 0) {
      halveTriangle(v, row, other);
    } else if (second[node] > 0) {
      v[row + NODE] = node + 1;
      v[other + NODE] = second[node];
    } else {
      takeTriangle(v, row, surface, first[node]);
      takeTriangle(v, other, surface, first[node] + 1);
    }
    return other;
  }

  private divideTarget(row: number): number {
    const { rows } = this;
    const { tree } = this.target;
    const node = rows.values[row + TARGET];
    if (!tree || node < 0) throw new Error(`divideTarget(): target has no parts: ${node}`);
    const leaf = tree.second[node] === 0;
    const alone = leaf && tree.count[node] === 1;
    const other = alone ? -1 : rows.room(row);
    const v = rows.values;
    v[row + TARGET] = leaf ? -2 - tree.first[node] : node + 1;
    if (!alone) v[other + TARGET] = leaf ? -3 - tree.first[node] : tree.second[node];
    return other;
  }
}
