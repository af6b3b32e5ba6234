import type { Part } from '../design/design';
import { HeadForces } from '../design/forces/headForces';
import { HeadModel } from '../design/headModel';
import { ROTOR_SECTION } from '../design/sections/rotor';
import type { Base, Candidate, Remains } from './candidates';
import type { Pick } from './choices';
import { type HeadReport, headReport, holdAt } from './headReport';
import { type KnobRef, knobPart, knobRange, knobValue } from './knobs';
import type { Obstacle } from './obstacles';
import type { SearchRequest } from './request';
import { TrialHead } from './trialHead';
import type { Way } from './ways';

/** A number as an answer sets it, in the knob's unit. */
export interface Setting {
  readonly ref: KnobRef;
  readonly also: readonly KnobRef[];
  readonly partName: string;
  /** What it is now; null for a new part. */
  readonly from: number | null;
  /** As the solver found it, and as it would be made. */
  readonly exact: number;
  readonly made: number;
  /** Change of the worst push-rod force within the pitch in use per unit of this number, N (or N m without an arm). */
  readonly perUnit: number | null;
}

/** One way to what is wanted. */
export interface Answer {
  readonly key: string;
  readonly parts: readonly Part[];
  readonly picks: readonly Pick[];
  readonly settings: readonly Setting[];
  /** Ids of parts that were not there. */
  readonly added: readonly string[];
  /** 'asIs': nothing is changed. 'bought': everything in it is off the shelf. */
  readonly make: 'asIs' | 'bought' | 'turned';
  /** The goal is met to rounding before it is rounded to what can be made. */
  readonly met: boolean;
  /** Share of what is wrong now that is left as made. */
  readonly left: number;
  readonly remains: Remains;
  readonly report: HeadReport;
  /** Added to the grip, kg. */
  readonly massAdded: number;
  readonly obstacle: Obstacle | null;
}

/** Share left under which a way counts as reaching the goal as well as it can be made. */
export const NEAR = 0.02;

/** A candidate worked out in full. */
export function answerOf(
  one: Candidate,
  request: SearchRequest,
  base: Base,
  index: number,
): Answer {
  const { way } = one;
  const knobs = way.knobs.map(({ ref, also }) => ({ ref, also }));
  const made = TrialHead.of(way.design, request.wanted, knobs);
  if (!made.ok) throw new Error(`answerOf(): design is not checked: ${made.error.path}`);
  const head = made.value;
  head.set(one.made);
  const parts = way.knobs.length === 0 ? way.design.parts : head.currentParts;
  const model = new HeadModel();
  model.load({ ...request.design, parts });
  const forces = new HeadForces(model);
  const report = headReport(forces, base.desk);
  return {
    key: `${index}`,
    parts,
    picks: way.picks,
    settings: [...barSettings(one, request), ...knobSettings(one, request, forces, parts)],
    added: way.added,
    make: makeOf(way),
    met: one.met,
    left: one.left,
    remains: one.remains,
    report,
    massAdded: report.mass - base.report.mass,
    obstacle: one.obstacle,
  };
}

export function makeOf({ picks, knobs, bars, added }: Way): Answer['make'] {
  if (knobs.length + bars.length + added.length > 0) return 'turned';
  if (picks.length === 0) return 'asIs';
  const sold = ({ kind }: Pick) => kind === 'catalogue' || kind === 'count' || kind === 'values';
  return picks.every(sold) ? 'bought' : 'turned';
}

function barSettings({ way }: Candidate, { design, knobs }: SearchRequest): readonly Setting[] {
  return way.bars.map(({ spec, value }) => {
    const { ref, also = [] } = knobs[spec];
    return {
      ref,
      also,
      partName: nameOf(knobPart(design, ref), ref),
      from: knobValue(design, ref) ?? null,
      exact: value,
      made: value,
      perUnit: null,
    };
  });
}

function knobSettings(
  { way, exact, made }: Candidate,
  { design }: SearchRequest,
  forces: HeadForces,
  parts: readonly Part[],
): readonly Setting[] {
  return way.knobs.map(({ ref, also }, i) => ({
    ref,
    also,
    partName: nameOf(knobPart({ parts }, ref), ref),
    from: knobValue(design, ref) ?? null,
    exact: exact[i],
    made: made[i],
    perUnit: sensitivity(way, made, i, forces),
  }));
}

function nameOf(part: Part | undefined, ref: KnobRef): string {
  return part?.name || ref.part;
}

/** Half a tenth of the usual step either way, in the knob's unit. */
const NUDGE = 0.05;

/** Change of the force per unit of one knob at both ends of the pitch in use, the larger; null where a side is refused. */
function sensitivity(
  way: Way,
  made: readonly number[],
  knob: number,
  forces: HeadForces,
): number | null {
  const { design } = way;
  const used = usedPitch(forces);
  const range = knobRange(design, way.knobs[knob].ref);
  const nudge = range?.unit === 'kg/m3' ? 50 : NUDGE;
  const trial = TrialHead.of(
    design,
    { goal: { kind: 'neutral' }, speedsRpm: [design.rotor.speedRpm] },
    way.knobs,
  );
  if (!trial.ok) return null;
  const at = (value: number) => {
    if (!trial.value.set(made.with(knob, value))) return null;
    return [-used, used].map((deg) => holdAt(trial.value.forces, deg));
  };
  const up = at(made[knob] + nudge);
  const down = at(made[knob] - nudge);
  if (!up || !down) return null;
  const slopes = up.map((value, i) => {
    const other = down[i];
    return value === null || other === null ? 0 : Math.abs(value - other) / (2 * nudge);
  });
  return Math.max(...slopes);
}

function usedPitch(forces: HeadForces): number {
  return forces.model.sections.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
}

/** Shares of what is wrong now, in bands: an answer of a better band comes before one of a worse. */
const BANDS = [0.1, 0.25, 0.5, 0.9] as const;

/** How much is in an answer's way: 2: it cannot be put together, or does not hold together; 1: a limit is used up, or it comes too near; 0: nothing. */
function hindrance({ report }: Answer): number {
  const { limit, gap, bottomsMm, shortMm } = report;
  if (bottomsMm !== null || shortMm !== null) return 2;
  return (limit?.use ?? 0) > 1 || gap?.tooNear === true ? 1 : 0;
}

/**
 * The head as it is stands last. Before it by bands of what is left, the first of them all that come as near as the nearest
 * (within a fiftieth); within a band those that nothing hinders, then the lightest in the first band, the nearest in others.
 */
export function rankAnswers(answers: readonly Answer[]): readonly Answer[] {
  const changed = answers.filter(({ make }) => make !== 'asIs');
  const least = Math.min(...changed.map(({ left }) => left));
  const near = least + NEAR;
  const band = ({ left }: Answer) =>
    left <= near ? 0 : 1 + BANDS.filter((one) => left > one).length;
  const ranked = changed.toSorted((a, b) => {
    const order = band(a) - band(b) || hindrance(a) - hindrance(b);
    if (order !== 0) return order;
    return band(a) === 0 ? a.massAdded - b.massAdded || a.left - b.left : a.left - b.left;
  });
  return [...ranked, ...answers.filter(({ make }) => make === 'asIs')];
}
