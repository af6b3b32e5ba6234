import { describe, expect, it } from 'vitest';
import { placeReadout } from '../../../src/scene/handles/placeReadout';

const ROOM = { width: 640, height: 380 };
const LINE = { width: 170, height: 32 };
const WITH_REASON = { width: 238, height: 78 };

/** The sides of the read-out as it is drawn. */
function sides(at: { left: number; top: number; before: boolean }, own: typeof LINE) {
  const left = at.before ? at.left - own.width : at.left;
  return { left, top: at.top, right: left + own.width, bottom: at.top + own.height };
}

describe('the place of what is said beside the pointer', () => {
  it.each([LINE, WITH_REASON])('is within the picture wherever the pointer is: %o', (own) => {
    for (let x = 0; x <= ROOM.width; x += 40) {
      for (let y = 0; y <= ROOM.height; y += 20) {
        const { left, top, right, bottom } = sides(placeReadout({ x, y }, ROOM, own, []), own);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(top).toBeGreaterThanOrEqual(0);
        expect(right).toBeLessThanOrEqual(ROOM.width);
        expect(bottom).toBeLessThanOrEqual(ROOM.height);
      }
    }
  });

  it('is to the right of the pointer, to its left at the right edge, and never under it there', () => {
    const middle = sides(placeReadout({ x: 300, y: 200 }, ROOM, LINE, []), LINE);
    expect(middle.left).toBeGreaterThan(300);
    const edge = sides(placeReadout({ x: 600, y: 200 }, ROOM, LINE, []), LINE);
    expect(edge.right).toBeLessThan(600);
  });

  it('goes to the left where it would lie on a list, and below or above the lists where it would lie on one there too', () => {
    const list = { left: 310, top: 100, right: 500, bottom: 260 };
    const kept = sides(placeReadout({ x: 300, y: 200 }, ROOM, LINE, [list]), LINE);
    expect(kept.right).toBeLessThan(300);
    const other = { left: 100, top: 100, right: 200, bottom: 260 };
    const both = sides(placeReadout({ x: 300, y: 200 }, ROOM, LINE, [list, other]), LINE);
    expect(both.left).toBeGreaterThan(300);
    const lists = [list, other].map((one) => ({ ...one, top: 130, bottom: 210 }));
    const below = sides(placeReadout({ x: 300, y: 200 }, ROOM, LINE, lists), LINE);
    expect(below.top).toBeGreaterThanOrEqual(210);
    const low = lists.map((one) => ({ ...one, top: 165, bottom: 300 }));
    const above = sides(placeReadout({ x: 300, y: 200 }, ROOM, LINE, low), LINE);
    expect(above.bottom).toBeLessThanOrEqual(165);
  });

  it('keeps the lower lines of a reason off a list too', () => {
    const low = { left: 310, top: 210, right: 600, bottom: 300 };
    const kept = sides(placeReadout({ x: 300, y: 200 }, ROOM, WITH_REASON, [low]), WITH_REASON);
    expect(kept.right).toBeLessThan(300);
  });
});
