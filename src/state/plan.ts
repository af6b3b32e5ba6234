import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Design, Part } from '../design/design';
import { speedRange } from '../design/forces/speedSweep';
import { materialsOf, valuesOf } from '../design/resolve';
import { ROTOR_SECTION } from '../design/sections/rotor';
import { mmFromMetres } from '../engine/units';
import { t } from '../messages';
import { BAR_DIAMETERS_MM } from '../neutralise/choices';
import type { Family, FamilyRequest } from '../neutralise/family';
import type { Goal, GoalKind } from '../neutralise/goal';
import { knobValue } from '../neutralise/knobs';
import { boltsOf, offersOf, suggestedKnobs } from '../neutralise/offers';
import {
  type KnobSpec,
  type RequestFault,
  requestFault,
  type SearchRequest,
} from '../neutralise/request';
import type { SearchResult } from '../neutralise/search';
import type { FastenerFacts } from '../parts/facts';
import { partType } from '../parts/registry';
import { createJob, type Job, type JobState, type JobWorker } from './job';
import type { AppStore } from './store';

/** What is wanted and what may change, as it stands in the room Neutralise. Not part of the design. */
export interface Plan {
  readonly goal: GoalKind;
  /** Pitch range of a least value; null: the pitch in use, both ways. */
  readonly fromDeg: number | null;
  readonly toDeg: number | null;
  readonly restDeg: number;
  readonly awayDeg: number;
  readonly forceN: number;
  readonly speeds: 'design' | 'range';
  /** Null: those that the head suggests. */
  readonly knobs: readonly KnobSpec[] | null;
  readonly together: boolean;
  /** Keys of the offers that are ticked. */
  readonly offers: readonly string[];
  readonly weightSide: 'none' | 'headTop' | 'boltEnd' | 'both';
  readonly weightMaterials: readonly string[];
  /** Null: by the size of the bolt. */
  readonly weightFromMm: number | null;
  readonly weightToMm: number | null;
  readonly weightLongestMm: number | null;
  /** Which length and diameter the family is of: part, slash, length; null: the first that the head has. */
  readonly trim: string | null;
  readonly familyMaterials: readonly string[];
  /** Null: by the size of the part. */
  readonly largestBarMm: number | null;
}

export const FIRST_PLAN: Plan = {
  goal: 'neutral',
  fromDeg: null,
  toDeg: null,
  restDeg: 0,
  awayDeg: 10,
  forceN: 1,
  speeds: 'design',
  knobs: null,
  together: false,
  offers: [],
  weightSide: 'none',
  weightMaterials: ['steel', 'brass'],
  weightFromMm: null,
  weightToMm: null,
  weightLongestMm: null,
  trim: null,
  familyMaterials: ['steel', 'brass', 'tungsten-alloy-1'],
  largestBarMm: null,
};

export type SearchState = JobState<SearchRequest, SearchResult>;
export type FamilyState = JobState<FamilyRequest, Family>;

/** The room Neutralise: its plan, the search under way, and the family of solutions. */
export interface PlanDesk {
  readonly store: StoreApi<{ readonly plan: Plan }>;
  readonly search: Job<SearchRequest, SearchResult>;
  readonly family: Job<FamilyRequest, Family>;
  set(change: Partial<Plan>): void;
  /** Begins a search of the open design, ending one that is under way; the fault where it cannot be begun. */
  find(): RequestFault | null;
}

export interface PlanWorkers {
  readonly search: () => JobWorker;
  readonly family: () => JobWorker;
}

export function createPlanDesk(app: AppStore, workers: PlanWorkers): PlanDesk {
  const store = createStore<{ readonly plan: Plan }>(() => ({ plan: FIRST_PLAN }));
  const search = createJob<SearchRequest, SearchResult>(workers.search);
  const family = createJob<FamilyRequest, Family>(workers.family);

  // Answers to another design are no answers.
  app.subscribe((state, before) => {
    if (state.opening === before.opening) return;
    const { job } = search.store.getState();
    if (job.kind === 'running')
      app.setState({ notice: { tone: 'warning', text: t('goal.otherDesign') } });
    search.clear();
    family.clear();
    const { plan } = store.getState();
    const { weightSide, weightFromMm, weightToMm, weightLongestMm, largestBarMm } = FIRST_PLAN;
    const sizes = { weightSide, weightFromMm, weightToMm, weightLongestMm, largestBarMm };
    store.setState({ plan: { ...plan, ...sizes, knobs: null, offers: [], trim: null } });
  });

  return {
    store,
    search,
    family,
    set(change) {
      store.setState({ plan: { ...store.getState().plan, ...change } });
    },
    find() {
      const request = requestOf(store.getState().plan, app.getState().design);
      const fault = requestFault(request);
      if (!fault) search.start(request);
      return fault;
    },
  };
}

/** The knobs of a plan that the design still has. */
export function planKnobs(plan: Plan, design: Design): readonly KnobSpec[] {
  if (plan.knobs === null) return suggestedKnobs(design);
  return plan.knobs.filter(({ ref }) => knobValue(design, ref) !== undefined);
}

/** The range of pitch of a plan: the pitch in use where it is not given. */
export function planRange(plan: Plan, design: Design): readonly [number, number] {
  const used = design.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  return [plan.fromDeg ?? -used, plan.toDeg ?? used];
}

export function requestOf(plan: Plan, design: Design): SearchRequest {
  const offers = offersOf(design).filter(({ key }) => plan.offers.includes(key));
  return {
    design,
    wanted: { goal: goalOf(plan, design), speedsRpm: speedsOf(plan, design) },
    knobs: planKnobs(plan, design),
    together: plan.together,
    choices: offers.map(({ choice }) => choice),
    weight: weightOf(plan, design),
  };
}

/** Bars and lengths of a new weight that fit the bolt, mm: from one and a half diameters to three and a half, seven long. */
export function usualWeight(design: Design): {
  readonly fromMm: number;
  readonly toMm: number;
  readonly longestMm: number;
} {
  const [bolt] = boltsOf(design);
  const { nominalDiameter } = bolt ? boltFacts(bolt, design) : { nominalDiameter: 0.003 };
  const across = mmFromMetres(nominalDiameter);
  return {
    fromMm: Math.ceil(1.5 * across),
    toMm: Math.ceil(3.5 * across),
    longestMm: Math.ceil(7 * across),
  };
}

/** Turns of thread that a weight must at least have to hold. */
const TURNS = 4;

function weightOf(plan: Plan, design: Design): SearchRequest['weight'] {
  const [bolt] = boltsOf(design);
  if (plan.weightSide === 'none' || !bolt) return null;
  const usual = usualWeight(design);
  const from = plan.weightFromMm ?? usual.fromMm;
  const to = plan.weightToMm ?? usual.toMm;
  return {
    bolt: bolt.id,
    side: plan.weightSide,
    diametersMm: BAR_DIAMETERS_MM.filter((one) => one >= from && one <= to),
    materials: plan.weightMaterials,
    minMm: Number((TURNS * mmFromMetres(boltFacts(bolt, design).threadPitch)).toFixed(3)),
    maxMm: plan.weightLongestMm ?? usual.longestMm,
    stepMm: 0.1,
  };
}

function boltFacts(
  bolt: Part,
  design: Design,
): Pick<FastenerFacts, 'nominalDiameter' | 'threadPitch'> {
  const facts = partType(bolt.kind).fastener?.(valuesOf(bolt, materialsOf(design)));
  return facts ?? { nominalDiameter: 0.003, threadPitch: 0.0005 };
}

function goalOf(plan: Plan, design: Design): Goal {
  const [fromDeg, toDeg] = planRange(plan, design);
  switch (plan.goal) {
    case 'neutral':
      return { kind: 'neutral' };
    case 'centring': {
      const { restDeg, awayDeg, forceN } = plan;
      return { kind: 'centring', restDeg, awayDeg, forceN };
    }
    default:
      return { kind: plan.goal, fromDeg, toDeg };
  }
}

/**
 * The design's speed, or lowest, middle, design's and highest of the range, ascending: a pull that is wanted is wanted at
 * the first of them. A standing rotor has no force to lessen.
 */
function speedsOf(plan: Plan, { rotor }: Design): readonly number[] {
  if (plan.speeds === 'design') return [rotor.speedRpm];
  const { lowestRpm, highestRpm } = speedRange(rotor);
  const low = Math.min(lowestRpm, highestRpm);
  return [...new Set([rotor.speedRpm, low, (low + highestRpm) / 2, highestRpm])]
    .filter((rpm) => rpm > 0)
    .toSorted((a, b) => a - b);
}
