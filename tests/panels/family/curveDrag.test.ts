import { beforeEach, expect, it } from 'vitest';
import { CurveDrag } from '../../../src/panels/family/curveDrag';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';

let session: Session;
let drag: CurveDrag;

beforeEach(() => {
  session = createSession(undefined, () => {});
  drag = new CurveDrag(session.actions.gesture);
});

const speed = () => session.store.getState().design.rotor.speedRpm;
const dragged = () => session.store.getState().gesture;

/** What a pointer's move writes, if it is heard. */
function move(pointer: number, speedRpm: number): void {
  if (drag.isMoving(pointer)) session.actions.setSection('rotor', { speedRpm });
}

it('goes on with the finger that began, whatever another does', () => {
  expect(drag.press(1)).toBe(true);
  move(1, 9000);
  expect(drag.press(2)).toBe(false);
  move(2, 5000);
  expect(speed()).toBe(9000);
  drag.lift(2);
  drag.takeBack(2);
  expect(dragged()).toBe(true);
  move(1, 8000);
  drag.lift(1);
  move(1, 7000);
  expect([speed(), dragged()]).toEqual([8000, false]);
  session.actions.undo();
  expect(speed()).toBe(10000);
});

it('puts the head back where the browser takes the finger, and on Escape', () => {
  for (const giveBack of [() => drag.takeBack(1), () => drag.cancel()]) {
    drag.press(1);
    move(1, 9000);
    giveBack();
    // What comes after every end of a pointer.
    drag.lift(1);
    expect([speed(), dragged()]).toEqual([10000, false]);
  }
  expect(drag.cancel()).toBe(false);
});

it('leaves no drag behind when the room goes', () => {
  drag.press(1);
  move(1, 9000);
  drag.end();
  expect([speed(), dragged()]).toEqual([9000, false]);
});

it('lets a finger begin anew after an undo in the middle', () => {
  drag.press(1);
  move(1, 9000);
  session.actions.undo();
  move(1, 8000);
  expect(speed()).toBe(10000);
  expect(drag.press(2)).toBe(true);
  move(2, 7000);
  expect(speed()).toBe(7000);
  drag.lift(2);
});
