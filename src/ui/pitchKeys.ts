import type { Session } from '../state/session';
import { pitchMarks } from '../state/words/pitchMarks';
import { pitchAfterKey } from './pitchSteps';

/** Arrow, Page, Home and End keys on a focused pitch slider. Returns the way to detach. */
export function attachPitchKeys(slider: HTMLElement | SVGElement, session: Session): () => void {
  function press(event: KeyboardEvent): void {
    const { live, store, actions } = session;
    const stops = pitchMarks(live.reading).map((mark) => mark.pitchDeg);
    const next = pitchAfterKey(event, store.getState().pitchDeg, stops);
    if (next === null) return;
    event.preventDefault();
    event.stopPropagation();
    actions.setPitch(next);
  }
  slider.addEventListener('keydown', press as EventListener);
  return () => slider.removeEventListener('keydown', press as EventListener);
}
