import type { Session } from '../../state/session';
import { attachPush, attachPushKeys } from '../../ui/letGo/push';
import type { HillsView } from './hillsView';

const PLAIN_STEP = 1;
const SHIFT_STEP = 5;
const ALT_STEP = 0.1;
const PAGE_STEP = 10;

/**
 * Pointer and keys on the plot of the hills: what has been let go is pushed, at rest too; what is held is moved, in steps
 * of a tenth of a degree. Returns the way to detach.
 */
export function attachBall(host: HTMLElement, session: Session, view: HillsView): () => void {
  const { letGo, actions, store } = session;
  const listeners = new AbortController();
  const options = { signal: listeners.signal };
  const loose = () => ['running', 'resting'].includes(letGo.store.getState().status);
  const pitchAt = (event: PointerEvent) => {
    return view.pitchAt(event.clientX - host.getBoundingClientRect().left);
  };
  let carried: number | null = null;

  const detachPush = attachPush(host, letGo, { pitchAt, takes: loose });
  const detachKeys = attachPushKeys(host, letGo, loose);

  function move(event: PointerEvent): void {
    if (event.pointerId !== carried) return;
    setPitch(Math.round(pitchAt(event) * 10) / 10);
  }
  function setPitch(deg: number): void {
    actions.setPitch(Math.min(90, Math.max(-90, deg)));
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
  host.addEventListener(
    'keydown',
    (event) => {
      const by = stepOf(event);
      if (by === null || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      setPitch(Math.round((store.getState().pitchDeg + by) * 1e6) / 1e6);
    },
    options,
  );
  return () => {
    detachPush();
    detachKeys();
    listeners.abort();
  };
}

function stepOf({ key, shiftKey, altKey }: KeyboardEvent): number | null {
  const step = shiftKey ? SHIFT_STEP : altKey ? ALT_STEP : PLAIN_STEP;
  if (key === 'ArrowRight' || key === 'ArrowUp') return step;
  if (key === 'ArrowLeft' || key === 'ArrowDown') return -step;
  if (key === 'PageUp') return PAGE_STEP;
  return key === 'PageDown' ? -PAGE_STEP : null;
}
