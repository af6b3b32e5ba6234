import type { Session } from '../../state/session';
import { attachPush, attachPushKeys } from '../../ui/letGo/push';
import { attachPitchKeys } from '../../ui/pitchKeys';
import { snapPitch } from '../../ui/pitchSteps';
import type { HillsView } from './hillsView';

/**
 * Pointer and keys on the plot of the hills: what has been let go is pushed, at rest too; what is held is moved, as
 * on the dial. Returns the way to detach.
 */
export function attachBall(host: HTMLElement, session: Session, view: HillsView): () => void {
  const { letGo, actions } = session;
  const listeners = new AbortController();
  const options = { signal: listeners.signal };
  const loose = () => ['running', 'resting'].includes(letGo.store.getState().status);
  const pitchAt = (event: PointerEvent) => {
    return view.pitchAt(event.clientX - host.getBoundingClientRect().left);
  };
  let carried: number | null = null;

  const detachPush = attachPush(host, letGo, { pitchAt, takes: loose });
  const detachPushKeys = attachPushKeys(host, letGo, loose);
  const detachPitchKeys = attachPitchKeys(host, session);

  function move(event: PointerEvent): void {
    if (event.pointerId !== carried) return;
    actions.setPitch(snapPitch(pitchAt(event), event));
  }
  host.addEventListener(
    'pointerdown',
    (event) => {
      if (event.button !== 0) return;
      carried = event.pointerId;
      host.setPointerCapture(event.pointerId);
      move(event);
    },
    options,
  );
  host.addEventListener('pointermove', move, options);
  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture'] as const) {
    host.addEventListener(end, () => (carried = null), options);
  }
  return () => {
    detachPush();
    detachPushKeys();
    detachPitchKeys();
    listeners.abort();
  };
}
