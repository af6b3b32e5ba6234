/**
 * How far a drag may go. `write` tries a value and says why it is refused, or null when it is taken. A drag that runs
 * past a limit stops at the limit: first the limit that the refusal names, else the farthest value on the snap grid
 * that is taken. The reason stays with the result, so that the person is told why the part stands still.
 */
export interface Reached<Reason> {
  readonly value: number;
  readonly refused: Reason | null;
}

export function reach<Reason>(
  last: number,
  wanted: number,
  step: number,
  write: (value: number) => Reason | null,
  limitOf: (reason: Reason) => number | null,
): Reached<Reason> {
  const refused = write(wanted);
  if (refused === null) return { value: wanted, refused: null };
  const limit = limitOf(refused);
  if (limit !== null && isBetween(limit, last, wanted) && limit !== last && write(limit) === null) {
    return { value: limit, refused };
  }
  return farthest(last, wanted, step, refused, write);
}

function isBetween(value: number, a: number, b: number): boolean {
  return value >= Math.min(a, b) && value <= Math.max(a, b);
}

/**
 * Halves the span of whole steps between a value that is taken and one that is not; ends on one that is taken, with
 * the reason why the next one is not.
 */
function farthest<Reason>(
  last: number,
  wanted: number,
  step: number,
  refusal: Reason,
  write: (value: number) => Reason | null,
): Reached<Reason> {
  const way = Math.sign(wanted - last);
  const at = (steps: number) => Number((last + way * steps * step).toFixed(6));
  let taken = 0;
  let beyond = Math.ceil(Math.abs(wanted - last) / step);
  let refused = refusal;
  while (beyond - taken > 1) {
    const middle = Math.floor((taken + beyond) / 2);
    const reason = write(at(middle));
    if (reason === null) {
      taken = middle;
    } else {
      beyond = middle;
      refused = reason;
    }
  }
  return { value: at(taken), refused };
}
