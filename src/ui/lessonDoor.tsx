import { createContext, type ReactNode, useContext } from 'react';
import { useStore } from 'zustand';
import { type LessonDoor, shownSession } from '../state/lessonDoor';
import { SessionProvider, useSession } from './session';

const DoorContext = createContext<LessonDoor | null>(null);

/** Puts the session under the page that is to be shown: the own, or that of the open lesson. */
export function LessonDoorProvider(props: {
  readonly door: LessonDoor;
  readonly children: ReactNode;
}) {
  const { door } = props;
  const state = useStore(door.store);
  const room = useStore(door.own.store, ({ settings }) => settings.room);
  return (
    <DoorContext value={door}>
      <SessionProvider session={shownSession(door.own, state, room)}>
        {props.children}
      </SessionProvider>
    </DoorContext>
  );
}

/** Throws outside `LessonDoorProvider`: a programmer's fault. */
export function useLessonDoor(): LessonDoor {
  const door = useContext(DoorContext);
  if (!door) throw new Error('useLessonDoor(): there is no LessonDoorProvider above');
  return door;
}

/** 'lesson' while a lesson's head is on the stage: a key for rooms that are made anew for another session. */
export function useShownPage(): 'own' | 'lesson' {
  const door = useLessonDoor();
  return useSession() === door.own ? 'own' : 'lesson';
}
