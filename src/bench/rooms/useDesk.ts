import { useStore } from 'zustand';
import { useSession } from '../../ui/session';
import { benchDeskOf } from '../deskOf';
import type { BenchDesk, BenchState } from '../deskTypes';

export function useDesk(): BenchDesk {
  return benchDeskOf(useSession());
}

export function useBench<T>(select: (state: BenchState) => T): T {
  return useStore(useDesk().store, select);
}
