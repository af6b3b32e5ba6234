import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { attachPitchDrag } from '../../../src/panels/marks/pitchDrag';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';
import { EMPTY_DESIGN } from '../../../src/state/store';

describe('a drag of the pitch pointer on dial and chart', () => {
  let session: Session;
  let element: EventTarget;
  let detach: () => void;

  function pointer(type: string, pointerId: number, pitchDeg = 0): void {
    element.dispatchEvent(Object.assign(new Event(type), { button: 0, pointerId, pitchDeg }));
  }

  beforeEach(() => {
    vi.stubGlobal('window', new EventTarget());
    session = createSession(EMPTY_DESIGN, (callback) => callback());
    element = Object.assign(new EventTarget(), {
      classList: { add() {}, remove() {} },
      setPointerCapture() {},
      hasPointerCapture: () => false,
    });
    detach = attachPitchDrag(element as Element, session, {
      slider: { focus() {} } as unknown as HTMLElement,
      pitchAt: (event) => (event as PointerEvent & { pitchDeg: number }).pitchDeg,
      takes: () => 'jump',
    });
  });

  afterEach(() => {
    detach();
    vi.unstubAllGlobals();
  });

  it.each(['pointerup', 'lostpointercapture', 'pointercancel'])(
    'goes on when another finger is put down and ends with %s',
    (end) => {
      pointer('pointerdown', 1, 5);
      pointer('pointerdown', 2, -40);
      pointer(end, 2, -40);
      pointer('pointermove', 1, 12);
      expect(session.store.getState()).toMatchObject({ pitchDeg: 12, gesture: true });
      pointer('pointerup', 1, 12);
      expect(session.store.getState()).toMatchObject({ pitchDeg: 12, gesture: false });
    },
  );

  it('gives the pitch back when the browser takes the finger that drags', () => {
    pointer('pointerdown', 1, 5);
    pointer('pointercancel', 1, 5);
    expect(session.store.getState()).toMatchObject({ pitchDeg: 0, gesture: false });
  });
});
