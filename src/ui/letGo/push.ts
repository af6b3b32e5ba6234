import { radiansFromDegrees } from '../../engine/units';
import type { LetGoDesk } from '../../state/letGoTypes';

export interface PushSource {
  /** Pitch under the pointer, degrees. */
  pitchAt(event: PointerEvent): number;
  /** Whether a press is a push: only what has been let go can be pushed. */
  takes(): boolean;
}

/**
 * Pressing draws the released grip after the pointer by a soft spring until the button is up. Returns the way to detach.
 * Attach it before anything that drags: it keeps a press that it takes to itself.
 */
export function attachPush(element: Element, desk: LetGoDesk, source: PushSource): () => void {
  const listeners = new AbortController();
  const options = { signal: listeners.signal };
  let pointer: number | null = null;

  function draw(event: PointerEvent): void {
    desk.push({ kind: 'spring', target: radiansFromDegrees(source.pitchAt(event)) });
  }
  function press(event: PointerEvent): void {
    if (event.button !== 0 || pointer !== null || !source.takes()) return;
    event.stopImmediatePropagation();
    event.preventDefault();
    pointer = event.pointerId;
    element.setPointerCapture(event.pointerId);
    element.classList.add('letgo-pushing');
    draw(event);
  }
  function move(event: PointerEvent): void {
    if (event.pointerId === pointer) draw(event);
  }
  function release(event: PointerEvent): void {
    if (event.pointerId !== pointer) return;
    pointer = null;
    element.classList.remove('letgo-pushing');
    desk.push({ kind: 'off' });
  }

  element.addEventListener('pointerdown', press as EventListener, options);
  element.addEventListener('pointermove', move as EventListener, options);
  for (const end of ['pointerup', 'pointercancel', 'lostpointercapture']) {
    element.addEventListener(end, release as EventListener, options);
  }
  return () => {
    if (pointer !== null) desk.push({ kind: 'off' });
    listeners.abort();
  };
}

/** Of the head's greatest need: what an arrow key pushes with, alone, with Shift and with Alt. */
export const KEY_PUSH = 0.5;
const SHIFT_TIMES = 2;
const ALT_TIMES = 0.1;

/** Holding an arrow key pushes with a steady moment until it is up. Attach it before the keys that set the pitch. */
export function attachPushKeys(
  element: HTMLElement | SVGElement,
  desk: LetGoDesk,
  takes: () => boolean,
): () => void {
  const listeners = new AbortController();
  const options = { signal: listeners.signal };
  let held: string | null = null;

  function down(event: KeyboardEvent): void {
    const way = WAYS[event.key];
    const { run } = desk;
    if (way === undefined || event.ctrlKey || event.metaKey || !run) return;
    if (held === null && !takes()) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const times = event.shiftKey ? SHIFT_TIMES : event.altKey ? ALT_TIMES : 1;
    held = event.key;
    desk.push({ kind: 'moment', moment: way * times * KEY_PUSH * run.soft.need });
  }
  function up(event: KeyboardEvent): void {
    if (event.key === held) drop();
  }
  function drop(): void {
    if (held === null) return;
    held = null;
    desk.push({ kind: 'off' });
  }

  element.addEventListener('keydown', down as EventListener, { ...options, capture: true });
  element.addEventListener('keyup', up as EventListener, options);
  element.addEventListener('blur', drop, options);
  return () => {
    drop();
    listeners.abort();
  };
}

const WAYS: Readonly<Record<string, -1 | 1 | undefined>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
};
