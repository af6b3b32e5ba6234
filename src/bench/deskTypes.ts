import type { StoreApi } from 'zustand/vanilla';
import type { BenchPlanRecord } from '../design/sections/bench';
import type { JobWorker } from '../state/job';
import type { LocalNotes } from '../state/localNotes';
import type { GaugePlace } from './gaugeHead';
import type { StepSearch } from './namedSteps';
import type { Offered, RereadChange } from './offerReader';
import type { PracticeBench } from './practice';
import type { BenchRun } from './readings/benchSection';
import type { RememberedMappings } from './readings/remembered';
import type { Travel } from './readings/types';
import type { RungKey } from './rungs';
import type { PlanKey } from './safety';
import type { SharedChoice } from './sharedErrors';
import type { GridDraft } from './typedRows';

/** A file's bytes or a pasted text. */
export interface NamedSource {
  readonly name: string;
  readonly source: Uint8Array | string;
}

/** A scale reading (mm or divisions) and the pitch that an angle gauge showed there, as typed. */
export interface TypedPair {
  readonly scale: number;
  readonly pitchDeg: number;
}

/** What is fitted, and with what. */
export interface FitChoice extends SharedChoice {
  readonly friction: 'none' | 'force' | 'moment' | 'pull';
  readonly zeros: 'none' | 'free';
  /** The modelled air taken off as it is, fitted by a factor, or left in the readings. */
  readonly air: 'known' | 'fitted' | 'left';
  /** Standard deviation of a reading beside the gauge's step, N; null: learnt from the residuals. */
  readonly noiseN: number | null;
  /** Standard uncertainty of a pitch setting, degrees. */
  readonly pitchSigmaDeg: number;
}

/** How the runs are planned, as typed; what is left out is as the design makes it usual. */
export type PlanTyped = Omit<BenchPlanRecord, 'ticked' | 'tickedOn'>;

/** Steps found in a log, with the pitches that the person has given them so far. */
export interface StepsDraft {
  readonly run: string;
  readonly search: StepSearch;
  readonly steps: readonly {
    readonly from: number;
    readonly to: number;
    /** As typed; empty: not said. */
    readonly pitch: string;
    readonly travel: Travel | null;
    readonly counts: boolean;
  }[];
}

export interface BenchState {
  readonly runs: readonly BenchRun[];
  /** Id of the run that is looked at. */
  readonly chosen: string | null;
  /** The run taken off last, and where it was: it can be put back. */
  readonly removed: { readonly run: BenchRun; readonly at: number } | null;
  readonly offered: Offered | null;
  /** Files that are looked at after this one. */
  readonly waiting: readonly NamedSource[];
  readonly pairs: readonly TypedPair[];
  readonly scaleUnit: 'mm' | 'div';
  readonly calibration: 'line' | 'linkage';
  readonly fit: FitChoice;
  /** Step of the gauge where a run does not say, and the largest force that it reads, N. */
  readonly gaugeStepN: number;
  readonly gaugeLimitN: number | null;
  /** Where the gauge pulls; at an arm, each run says how long it is. */
  readonly place: GaugePlace['kind'];
  /** The way along Z that a pull of a gauge at the slider moves it. */
  readonly pullsAlong: 1 | -1;
  /** The step of the build ladder that is looked at; null: the last one measured. */
  readonly rung: RungKey | null;
  readonly plan: PlanTyped;
  /** Safety steps that are ticked, and the day (ISO 8601) on which the last was; empty: none. */
  readonly ticked: readonly PlanKey[];
  readonly tickedOn: string;
  /** Pitch steps that are being named, before they are taken. */
  readonly naming: StepsDraft | null;
  /** Readings that are being typed, before they are a run. */
  readonly draft: GridDraft | null;
  /** The virtual bench that is practised on; its truth is not shown before it is asked for. */
  readonly practice: { readonly bench: PracticeBench; readonly revealed: boolean } | null;
  readonly remembered: RememberedMappings;
}

export interface BenchPorts {
  /** Starts a worker for long tables; null: they too are read where the page runs. */
  readonly reader: (() => JobWorker) | null;
  readonly notes: Pick<LocalNotes, 'read' | 'write'>;
  readonly newId: () => string;
  /** Id of the try-out whose head is on the stage: that is what is measured. Left out, or nothing: there is one head. */
  readonly tryOut?: () => string | undefined;
}

export type TakeFault = 'tooManyRuns' | 'tooManyRows' | 'tooMuchText' | 'notReady';

/** What of a run is said otherwise; undefined: not known any more. */
export type RunChange = {
  readonly [Key in keyof Omit<BenchRun, 'id' | 'table'>]?: BenchRun[Key] | undefined;
};

/** The measuring bench of one page: its runs and what is done with them. Runs are kept as they came. */
export interface BenchDesk {
  readonly store: StoreApi<BenchState>;
  set(change: Partial<Omit<BenchState, 'runs' | 'offered'>>): void;
  /** Begins to look at tables, one after the other; those that wait already come after. */
  offer(...sources: readonly NamedSource[]): void;
  /**
   * Takes what is looked at and all that wait, up to the first that is long or has something refused: it is looked at next.
   */
  takeAll(): TakeFault | null;
  /** Reads what is looked at again, otherwise. */
  reread(change: RereadChange): void;
  dismiss(): void;
  /** Takes what is looked at as a run; null, or why not. The person's mapping is remembered for such headings. */
  take(): TakeFault | null;
  addRun(run: Omit<BenchRun, 'id'>): TakeFault | null;
  changeRun(id: string, change: RunChange): void;
  /** Leaves a whole run out, or counts it for the head on the stage. */
  countRun(id: string, counts: boolean): void;
  removeRun(id: string): void;
  putBack(): void;
  /** Sets a reading aside, or counts it again. Nothing is deleted. */
  setAside(id: string, reading: number, aside: boolean): void;
}
