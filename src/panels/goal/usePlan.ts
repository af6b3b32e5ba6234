import { useStore } from 'zustand';
import type { FamilyState, Plan, SearchState } from '../../state/plan';
import { useSession } from '../../ui/session';

/** The plan as it stands; drawn anew when it changes. */
export function usePlan(): Plan {
  return useStore(useSession().plan.store, (state) => state.plan);
}

export function useSearch(): SearchState {
  return useStore(useSession().plan.search.store, (state) => state.job);
}

export function useFamily(): FamilyState {
  return useStore(useSession().plan.family.store, (state) => state.job);
}
