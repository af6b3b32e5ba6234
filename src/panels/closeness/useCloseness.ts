import { useStore } from 'zustand';
import type { Design } from '../../design/design';
import type { ToleranceAnswer } from '../../neutralise/closeness/runTolerances';
import type { ClosenessState } from '../../state/closeness';
import type { JobState } from '../../state/job';
import { useSession } from '../../ui/session';

export function useCloseness(): ClosenessState {
  return useStore(useSession().closeness.store);
}

export function useToleranceRun(): JobState<Design, ToleranceAnswer> {
  return useStore(useSession().closeness.run.store, (state) => state.job);
}
