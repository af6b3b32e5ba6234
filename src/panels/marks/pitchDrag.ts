import type { Hold } from '../../state/gesture';
import type { Session } from '../../state/session';
import { snapPitch } from '../../ui/pitchSteps';

/** How one view turns pointer positions into pitch. */
export interface PitchGrip {
  /** Takes the keyboard's focus when a drag starts, so that arrow keys go on from there. */
  readonly slider: HTMLElement | SVGElement;
  /** Pitch under the pointer, degrees, neither snapped nor kept in range. */
  pitchAt(event: PointerEvent): number;
  /**
   * What a press does: 'jump' takes the pointer there at once, 'carry' keeps the distance between pointer and knob,
   * null leaves the press to others.
   */
  takes(event: PointerEvent): 'jump' | 'carry' | null;
}

/**
 * Drags the pitch pointer with mouse, pen or finger: captured pointer, snap to 0.1 degree (Shift 1, Alt 0.01), Escape
 * puts it back. The pitch pointer is no part of the design, so it leaves no undo step. Returns the way to detach.
 */
export function attachPitchDrag(element: Element, session: Session, grip: PitchGrip): () => void {
  const { actions, store } = session;
  const listeners = new AbortController();
  const options = { signal: listeners.signal };
  let drag: { pointer: number; before: number; offset: number; hold: Hold } | null = null;

  function move(event: PointerEvent): void {
    if (drag?.pointer !== event.pointerId) return;
    actions.setPitch(snapPitch(grip.pitchAt(event) + drag.offset, event));
  }

  function finish(): void {
    if (!drag) return;
    const { pointer, hold } = drag;
    drag = null;
    if (element.hasPointerCapture(pointer)) element.releasePointerCapture(pointer);
    element.classList.remove('pitch-dragging');
    hold.end();
  }

  function press(event: PointerEvent): void {
    if (event.button !== 0 || drag) return;
    const way = grip.takes(event);
    if (way === null) return;
    const before = store.getState().pitchDeg;
    const offset = way === 'carry' ? before - grip.pitchAt(event) : 0;
    drag = { pointer: event.pointerId, before, offset, hold: actions.gesture.begin() };
    element.setPointerCapture(event.pointerId);
    element.classList.add('pitch-dragging');
    grip.slider.focus({ preventScroll: true });
    if (way === 'jump') move(event);
  }

  function giveBack(): void {
    if (!drag) return;
    const { before } = drag;
    finish();
    actions.setPitch(before);
  }

  function escape(event: KeyboardEvent): void {
    if (!drag || event.key !== 'Escape') return;
    event.stopPropagation();
    giveBack();
  }

  element.addEventListener('pointerdown', press as EventListener, options);
  // A mouse press on what cannot have the focus would take it from the slider again.
  element.addEventListener('mousedown', (event) => event.preventDefault(), options);
  element.addEventListener('pointermove', move as EventListener, options);
  /** Another finger that is lifted meanwhile is none of the drag's business. */
  function atItsEnd(type: string, act: () => void): void {
    const heard = ({ pointerId }: PointerEvent) => drag?.pointer === pointerId && act();
    element.addEventListener(type, heard as EventListener, options);
  }
  atItsEnd('pointerup', finish);
  atItsEnd('lostpointercapture', finish);
  // The browser has taken the finger for scrolling: that was no wish for another pitch.
  atItsEnd('pointercancel', giveBack);
  window.addEventListener('keydown', escape, { ...options, capture: true });
  return () => {
    finish();
    listeners.abort();
  };
}
