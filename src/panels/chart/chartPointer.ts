import type { Session } from '../../state/session';
import { attachPitchDrag } from '../marks/pitchDrag';
import { moved, type PitchWindow, WHOLE_WINDOW, zoomed } from './pitchWindow';
import { insideFrame, type PlotFrame } from './plotFrame';

/** What the pointer needs of the chart. */
export interface PointerTarget {
  frame(): PlotFrame | null;
  knobX(): number;
  window(): PitchWindow;
  /** Null: the usual one again. */
  setWindow(window: PitchWindow | null): void;
  readonly cursor: SVGElement;
}

const KNOB_REACH = 22;
const DOUBLE_CLICK_MS = 500;

/**
 * Pointer work on the plot: press or drag sets the pitch, Shift and drag moves the view, the wheel zooms about the
 * pointer, a double click shows the usual range again. Returns the way to detach.
 */
export function attachChartPointer(
  host: HTMLElement,
  session: Session,
  target: PointerTarget,
): () => void {
  const listeners = new AbortController();
  const options = { signal: listeners.signal };
  /** Where the pointer stood before the first press of a double click, which shall not move it. */
  let press = { at: 0, pitchDeg: 0 };
  let pan: { pointer: number; atDeg: number } | null = null;

  function placeOf(event: MouseEvent): { x: number; y: number } {
    const box = host.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  }
  function pitchAt(event: MouseEvent): number {
    return target.frame()?.pitchAt(placeOf(event).x) ?? 0;
  }
  function inside(event: MouseEvent): boolean {
    const frame = target.frame();
    const { x, y } = placeOf(event);
    return frame !== null && insideFrame(frame, x, y);
  }

  host.addEventListener(
    'pointerdown',
    (event) => {
      if (event.timeStamp - press.at < DOUBLE_CLICK_MS) return;
      press = { at: event.timeStamp, pitchDeg: session.store.getState().pitchDeg };
    },
    { ...options, capture: true },
  );
  const detachDrag = attachPitchDrag(host, session, {
    slider: target.cursor,
    // No further than what is in view, so that the view does not run away under the pointer.
    pitchAt(event) {
      const { from, to } = target.window();
      return Math.min(to, Math.max(from, pitchAt(event)));
    },
    takes(event) {
      const near = Math.abs(placeOf(event).x - target.knobX()) < KNOB_REACH;
      if (event.shiftKey || !(inside(event) || (near && onCursor(event)))) return null;
      return onCursor(event) ? 'carry' : 'jump';
    },
  });

  host.addEventListener(
    'pointerdown',
    (event) => {
      if (!event.shiftKey || event.button !== 0 || !inside(event)) return;
      pan = { pointer: event.pointerId, atDeg: pitchAt(event) };
      host.setPointerCapture(event.pointerId);
    },
    options,
  );
  host.addEventListener(
    'pointermove',
    (event) => {
      if (pan?.pointer !== event.pointerId) return;
      target.setWindow(moved(target.window(), pan.atDeg - pitchAt(event)));
    },
    options,
  );
  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture'] as const) {
    host.addEventListener(end, () => (pan = null), options);
  }
  host.addEventListener(
    'wheel',
    (event) => {
      const window = target.window();
      const outward = event.deltaY > 0;
      const whole = window.to - window.from >= WHOLE_WINDOW.to - WHOLE_WINDOW.from;
      // Nothing further out to see: the page may scroll.
      if (!inside(event) || (outward && whole)) return;
      event.preventDefault();
      target.setWindow(zoomed(window, Math.exp(event.deltaY * 0.0015), pitchAt(event)));
    },
    { ...options, passive: false },
  );
  host.addEventListener(
    'dblclick',
    (event) => {
      if (!inside(event)) return;
      session.actions.setPitch(press.pitchDeg);
      target.setWindow(null);
    },
    options,
  );
  return () => {
    detachDrag();
    listeners.abort();
  };
}

function onCursor(event: Event): boolean {
  return event.target instanceof Element && event.target.closest('.chart-cursor') !== null;
}
