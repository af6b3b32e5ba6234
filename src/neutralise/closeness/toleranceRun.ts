import type { Design } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { ROTOR_SECTION } from '../../design/sections/rotor';
import { MOMENT_COUNT } from '../../engine/mass/moments';
import { fail, type Result, succeed } from '../../engine/result';
import { chanceOf } from './chance';
import { drawDeviations, spreadOf } from './draws';
import { HeadProbe } from './headProbe';
import { type LinearModel, linearModelSteps } from './linearModel';
import { makeParts } from './madeParts';
import { MatchingTally } from './matching';
import { Tally } from './tally';
import { type Toleranced, type ToleranceValues, tolerancesOf, toleranceValues } from './tolerances';
import type { ForceBand, ToleranceFault, ToleranceResult, ToleranceShare } from './toleranceTypes';

/** Steps of the grid from flat to the end of the pitch in use, and beyond it. */
const STEPS_IN_USE = 20;
const STEPS_BEYOND = 10;
/** How many tolerances are tried at half their width. */
const TIGHTENED = 5;

/**
 * Heads made up at random within the tolerances of a design, one after the other: each is built by the exact model, and its
 * push-rod force is taken on a grid of pitches. What the deviations change in the air and in the swing of a blade is added by
 * first order (a table of the air for each head would take a hundred times as long); friction is no part of this force. The
 * same draws go through the first-order model beside it.
 *
 * Between the grid's pitches, a twentieth of the pitch in use apart, the largest force may lie a little higher than
 * at them: by the curvature there, below 0.2 % of it for a moment that goes with sin 2t.
 */
export class ToleranceRun {
  readonly values: ToleranceValues;
  readonly pitchDeg: Float64Array;
  readonly used: readonly [number, number];
  private readonly make: ReturnType<typeof makeParts>;
  private readonly deviations: Float64Array;
  private readonly row: Float64Array;
  private readonly linearForce: Float64Array;
  private readonly exactTallies: readonly Tally[];
  private readonly linearTallies: readonly Tally[];
  private readonly worst: number;
  private readonly order: readonly number[];
  private readonly halvedKept: Float64Array;
  private readonly matching: MatchingTally;
  private drawn = 0;
  private accepted = 0;
  private kept = 0;
  private linearKept = 0;
  private withoutForce = 0;
  private refused = 0;
  private firstRefusal: DesignFault | null = null;

  private constructor(
    private readonly design: Design,
    private readonly probe: HeadProbe,
    private readonly list: readonly Toleranced[],
    private readonly model: LinearModel,
    { pitchDeg, used }: ReturnType<typeof pitchGrid>,
  ) {
    this.values = toleranceValues(design.tolerance);
    this.pitchDeg = pitchDeg;
    this.used = used;
    const count = pitchDeg.length;
    const { nominal, sigma } = this.model;
    this.make = makeParts(design, list);
    this.deviations = new Float64Array(list.length);
    this.row = new Float64Array(probe.layout.count);
    this.linearForce = new Float64Array(count);
    this.exactTallies = Array.from(nominal, (one, i) => new Tally(one, sigma[i]));
    this.linearTallies = Array.from(nominal, (one, i) => new Tally(one, sigma[i]));
    this.worst = worstPlace(this.model, used);
    this.order = rankAt(this.model, list, this.worst);
    this.halvedKept = new Float64Array(Math.min(TIGHTENED, list.length));
    this.matching = new MatchingTally(design, this.values.balanceGrade);
  }

  /** A run over a design as its section `tolerance` says. */
  static of(design: Design): Result<ToleranceRun, ToleranceFault> {
    const steps = ToleranceRun.making(design);
    for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
  }

  /** The same in steps of some milliseconds: the first-order model takes a second or more. */
  static *making(design: Design): Generator<void, Result<ToleranceRun, ToleranceFault>, void> {
    const usedDeg = design.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
    const grid = pitchGrid(usedDeg);
    const { pitchDeg } = grid;
    const probe = HeadProbe.of(design, pitchDeg, 'nominal');
    if (!probe.ok) return fail({ kind: 'design', fault: probe.error });
    const list = tolerancesOf(design);
    if (list.length === 0) return fail({ kind: 'noTolerance' });
    const values = toleranceValues(design.tolerance);
    const model = yield* linearModelSteps(design, probe.value, list, pitchDeg, values);
    const run = new ToleranceRun(design, probe.value, list, model, grid);
    return Number.isNaN(run.model.nominal[run.worst]) ? fail({ kind: 'noForce' }) : succeed(run);
  }

  get done(): number {
    return this.drawn;
  }
  get total(): number {
    return this.values.samples;
  }

  /** Draws up to `count` more heads. */
  step(count: number): void {
    const end = Math.min(this.total, this.drawn + count);
    for (; this.drawn < end; this.drawn++) this.drawOne(this.drawn);
  }

  private drawOne(sample: number): void {
    drawDeviations(this.list, this.values, sample, this.deviations);
    const fault = this.probe.setParts(this.make(this.deviations));
    if (fault) {
      this.refused++;
      this.firstRefusal ??= fault;
      return;
    }
    this.accepted++;
    const { row, probe } = this;
    probe.read(row);
    const first = probe.layout.forceAt(0);
    this.addTerms(first);
    let largest = 0;
    let gap = false;
    for (let i = 0; i < this.pitchDeg.length; i++) {
      const force = row[first + i];
      if (!Number.isNaN(force)) this.exactTallies[i].add(force);
      if (i < this.used[0] || i > this.used[1]) continue;
      if (Number.isNaN(force)) gap = true;
      else largest = Math.max(largest, Math.abs(force));
    }
    if (gap) this.withoutForce++;
    else if (largest <= this.values.targetForceN) this.kept++;
    this.matching.add(row.subarray(0, MOMENT_COUNT), row[first + this.worst]);
    this.drawLinear();
  }

  /** What the deviations change in the air and in the swing of a blade, by first order. */
  private addTerms(first: number): void {
    const { termSlopes } = this.model;
    for (let j = 0; j < termSlopes.length; j++) {
      const own = termSlopes[j];
      if (!own) continue;
      const deviation = this.deviations[j];
      for (let i = 0; i < own.length; i++) this.row[first + i] += own[i] * deviation;
    }
  }

  /** The same head by first order, and again with each of the largest tolerances halved. */
  private drawLinear(): void {
    const { linearForce, deviations, values, used } = this;
    const { nominal, slopes } = this.model;
    linearForce.set(nominal);
    for (let j = 0; j < slopes.length; j++) {
      const own = slopes[j];
      const deviation = deviations[j];
      for (let i = 0; i < own.length; i++) linearForce[i] += own[i] * deviation;
    }
    for (let i = 0; i < linearForce.length; i++) {
      if (!Number.isNaN(linearForce[i])) this.linearTallies[i].add(linearForce[i]);
    }
    if (largestOf(linearForce, used, null, 0) <= values.targetForceN) this.linearKept++;
    for (let k = 0; k < this.halvedKept.length; k++) {
      const j = this.order[k];
      const largest = largestOf(linearForce, used, slopes[j], -deviations[j] / 2);
      if (largest <= values.targetForceN) this.halvedKept[k]++;
    }
  }

  /** What the heads drawn so far show. */
  result(): ToleranceResult {
    const { list, model, accepted, worst, order } = this;
    const linearChance = chanceOf(this.linearKept, accepted);
    const unit = spreadOf(this.values);
    const variance = model.sigma[worst] ** 2;
    const shares = order.map((j): ToleranceShare => {
      const one = list[j];
      const slope = model.varied[j] ? model.slopes[j][worst] : null;
      const own = ((slope ?? 0) * one.plusMinus * unit) ** 2;
      return { ...one, slope, share: variance > 0 ? own / variance : 0 };
    });
    return {
      pitchDeg: this.pitchDeg,
      used: this.used,
      nominal: model.nominal,
      exact: bandOf(this.exactTallies),
      linear: bandOf(this.linearTallies),
      rssSigma: model.sigma,
      targetForce: this.values.targetForceN,
      chance: chanceOf(this.kept, accepted),
      linearChance,
      samples: accepted,
      refused: this.refused,
      firstRefusal: this.firstRefusal,
      withoutForce: this.withoutForce,
      worst,
      shares,
      tighten: [...this.halvedKept].map((kept, k) => ({
        ref: list[order[k]].ref,
        plusMinus: list[order[k]].plusMinus,
        from: linearChance.share,
        to: kept / accepted,
      })),
      matching: this.matching.result(),
    };
  }
}

/** From half as far again as the pitch in use, both ways, or a quarter turn. */
function pitchGrid(usedDeg: number) {
  const step = usedDeg / STEPS_IN_USE;
  const beyond = Math.min(STEPS_BEYOND, Math.floor((90 - usedDeg) / step + 1e-9));
  const most = STEPS_IN_USE + beyond;
  const pitchDeg = Float64Array.from({ length: 2 * most + 1 }, (_, i) => (i - most) * step);
  return { pitchDeg, used: [beyond, beyond + 2 * STEPS_IN_USE] as const };
}

/** Where |F| + 2 sigma is largest within the pitch in use. */
function worstPlace({ nominal, sigma }: LinearModel, [from, to]: readonly [number, number]) {
  let worst = from;
  let largest = -Infinity;
  for (let i = from; i <= to; i++) {
    const size = Math.abs(nominal[i]) + 2 * sigma[i];
    if (size > largest) {
      largest = size;
      worst = i;
    }
  }
  return worst;
}

/** Places of the tolerances, the largest effect first. */
function rankAt({ slopes }: LinearModel, list: readonly Toleranced[], worst: number) {
  const effect = (j: number) => Math.abs(slopes[j][worst] * list[j].plusMinus) || 0;
  return list.map((_, j) => j).toSorted((a, b) => effect(b) - effect(a) || a - b);
}

/** Largest |force| within a range, after `factor` times `slope` is added; NaN where there is a gap. */
function largestOf(
  force: Float64Array,
  [from, to]: readonly [number, number],
  slope: Float64Array | null,
  factor: number,
): number {
  let largest = 0;
  for (let i = from; i <= to; i++) {
    const value = slope ? force[i] + factor * slope[i] : force[i];
    if (Number.isNaN(value)) return Number.NaN;
    largest = Math.max(largest, Math.abs(value));
  }
  return largest;
}

function bandOf(tallies: readonly Tally[]): ForceBand {
  const column = (read: (tally: Tally) => number) => Float64Array.from(tallies, read);
  return {
    mean: column((one) => one.average),
    sigma: column((one) => one.deviation),
    low: column((one) => one.quantile(0.025)),
    median: column((one) => one.quantile(0.5)),
    high: column((one) => one.quantile(0.975)),
  };
}
