/** A number beside its point, pixels; `words` is what stands there. */
export interface NumberAt {
  readonly x: number;
  readonly y: number;
  readonly words: string;
}

/** Where its text stands: the baseline, from its middle. */
export interface NumberPlace {
  readonly x: number;
  readonly y: number;
}

export interface NumberBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Of bold figures of 10 pixels, generously. */
const CHARACTER = 6.1;
const CAPITALS = 7.5;
/** From the point to the middle of the text: straight over and under, then beside, then farther off. */
const STEPS = [
  [0, -1],
  [0, 1],
  [1, -1],
  [-1, -1],
  [1, 1],
  [-1, 1],
  [0, -2],
  [0, 2],
  [1, -2],
  [-1, -2],
  [1, 2],
  [-1, 2],
] as const;
const RISE = 13;

/**
 * A place for each number near its point, inside the box, that covers as few as can be of the points in the way (of the
 * curve, of marks) and no number placed before it. The first of equally good places is taken.
 */
export function placeNumbers(
  numbers: readonly NumberAt[],
  inTheWay: readonly (readonly [number, number])[],
  box: NumberBox,
): NumberPlace[] {
  const taken: NumberBox[] = [];
  return numbers.map(({ x, y, words }) => {
    const half = (CHARACTER * words.length) / 2;
    const choices = STEPS.map(([across, down], rank) => {
      const place = { x: x + across * (half + 5), y: y + down * RISE + CAPITALS / 2 };
      const own = boxOf(place, half);
      const bad =
        1000 * taken.filter((other) => meet(own, other)).length +
        500 * (inside(own, box) ? 0 : 1) +
        3 * inTheWay.filter((point) => holds(own, point)).length;
      return { place, own, bad: bad + rank };
    });
    const best = choices.reduce((a, b) => (b.bad < a.bad ? b : a));
    taken.push(best.own);
    return best.place;
  });
}

function boxOf({ x, y }: NumberPlace, half: number): NumberBox {
  return { left: x - half - 1, right: x + half + 1, top: y - CAPITALS - 1, bottom: y + 1 };
}

function meet(a: NumberBox, b: NumberBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

function inside(a: NumberBox, b: NumberBox): boolean {
  return a.left >= b.left && a.right <= b.right && a.top >= b.top && a.bottom <= b.bottom;
}

function holds(box: NumberBox, [x, y]: readonly [number, number]): boolean {
  return x > box.left && x < box.right && y > box.top && y < box.bottom;
}
