import { createContext, type ReactNode, useContext, useMemo } from 'react';
import { useStore } from 'zustand';
import { lazyRoom } from '../../ui/lazyRoom';
import { useSession } from '../../ui/session';
import { createMeshDesk, type MeshDesk } from './meshDesk';

const DeskContext = createContext<MeshDesk | null>(null);

const LazyDialog = lazyRoom(() => import('./MeshDialog').then(({ MeshDialog }) => MeshDialog));

/** Where bodies come in from files, for the page to put round everything; its dialog is fetched with the first file. */
export function ImportRoom(props: { readonly children: ReactNode }) {
  const session = useSession();
  // A lesson's head has a session of its own.
  const desk = useMemo(() => createMeshDesk(session), [session]);
  const job = useStore(desk.job);
  return (
    <DeskContext value={desk}>
      {props.children}
      {job && (
        <>
          <LazyDialog desk={desk} job={job} />
        </>
      )}
    </DeskContext>
  );
}

/** Throws outside `ImportRoom`: a programmer's fault. */
export function useMeshDesk(): MeshDesk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('useMeshDesk(): there is no ImportRoom above');
  return desk;
}
