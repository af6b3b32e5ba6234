import type { Actions } from './actions';
import type { BenchPoints } from './benchPoints';
import type { ClosenessDesk } from './closeness';
import type { Happenings } from './happenings';
import type { LetGoDesk } from './letGoTypes';
import type { Live } from './live';
import type { PlanDesk } from './plan';
import type { PullsShow } from './pullsShow';
import type { Shelf } from './shelf';
import type { StageCamera } from './stageCamera';
import type { SteadyStore } from './steadyStore';
import type { AppStore } from './store';
import type { TryOutOutlooks } from './tryOutOutlooks';

/** One open page: the store, what is derived from it, and the only hands that write to it. */
export interface Session {
  readonly store: AppStore;
  /** The same store, for whoever need not hear of every step of a drag: React. */
  readonly steady: SteadyStore;
  readonly live: Live;
  readonly actions: Actions;
  /** What the try-outs that are not on the stage would do. */
  readonly outlooks: TryOutOutlooks;
  /** What is to be neutralised, and the search for it. */
  readonly plan: PlanDesk;
  /** How closely the parts must be made. */
  readonly closeness: ClosenessDesk;
  /** Parts kept in this browser for any design; not part of the open one. */
  readonly shelf: Shelf;
  /** Pictures of the stage for the report and the files. */
  readonly stageCamera: StageCamera;
  /** What the bench read, to be laid over what is predicted. */
  readonly benchPoints: BenchPoints;
  /** What a person made happen that the design does not tell. */
  readonly happenings: Happenings;
  /** Lets the grip go in slowed time. */
  readonly letGo: LetGoDesk;
  /** What the room Pulls shows on stage and dial. */
  readonly pullsShow: PullsShow;
}
