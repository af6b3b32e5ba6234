import { createContext, type ReactNode, useContext, useRef, useSyncExternalStore } from 'react';
import { useStore } from 'zustand';
import type { Design } from '../design/design';
import type { Session } from '../state/session';
import type { AppState } from '../state/store';

const SessionContext = createContext<Session | null>(null);

export function SessionProvider(props: {
  readonly session: Session;
  readonly children: ReactNode;
}) {
  return <SessionContext.Provider value={props.session}>{props.children}</SessionContext.Provider>;
}

/** The page's session. Throws outside a provider: a programmer's fault. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('useSession(): there is no SessionProvider above');
  return session;
}

/** Re-renders when `select` gives another value. Never select what changes on every drag event: use `useLive`. */
export function useAppState<T>(select: (state: AppState) => T): T {
  return useStore(useSession().steady, select);
}

/** The design as it was when the last drag ended: whoever shows it is not drawn anew with every step of one. */
export function useRestingDesign(): Design {
  const { store, steady } = useSession();
  const rest = useRef(store.getState().design);
  return useSyncExternalStore(steady.subscribe, () => {
    const { gesture, design } = store.getState();
    if (!gesture) rest.current = design;
    return rest.current;
  });
}
