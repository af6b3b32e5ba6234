/**
 * Outcomes that a person can reach by dragging, typing or opening a file are values, not exceptions.
 * A programmer's fault still throws (see `requireFinite`).
 */
export type Result<T, E> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly error: E };

export function succeed<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function fail<E>(error: E): { readonly ok: false; readonly error: E } {
  return { ok: false, error };
}

/** Closes a union: the compiler refuses a call that a new case can still reach. */
export function unreachable(value: never): never {
  throw new Error(`unreachable(): case is not handled: ${JSON.stringify(value)}`);
}

/** Throws when a programmer passes a number that is NaN or infinite. */
export function requireFinite(value: number, where: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`${where} is not finite: ${value}`);
  return value;
}
