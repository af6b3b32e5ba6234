import {
  type Measured,
  SWING_AXES,
  SWING_LIMITS,
  SWING_REQUIRED,
  type Swing,
  type SwingAxis,
} from '../../design/measured';

/** A timing as far as it has been filled in. */
export type SwingDraft = { readonly [K in SwingNumber]?: number | undefined };
export type SwingNumber = keyof typeof SWING_LIMITS;

export const SWING_NUMBERS = Object.keys(SWING_LIMITS) as readonly SwingNumber[];

/** The numbers of a timing without its axis. */
export function draftOf(swing: Swing): SwingDraft {
  const { about: _, ...numbers } = swing;
  return numbers;
}

/** What a timing still needs. */
export function missingOf(draft: SwingDraft): readonly (typeof SWING_REQUIRED)[number][] {
  return SWING_REQUIRED.filter((name) => draft[name] === undefined);
}

/** A whole timing, or null while a required number is missing. */
export function completed(about: SwingAxis, draft: SwingDraft): Swing | null {
  if (missingOf(draft).length > 0) return null;
  const given = SWING_NUMBERS.filter((name) => draft[name] !== undefined);
  const numbers = Object.fromEntries(given.map((name) => [name, draft[name]]));
  return { about, ...numbers } as unknown as Swing;
}

/** What was measured, with the timing about one axis replaced or, for null, let go; axes in their usual order. */
export function withSwing(measured: Measured, about: SwingAxis, swing: Swing | null): Measured {
  const { swings: old = [], ...rest } = measured;
  const others = old.filter((one) => one.about !== about);
  const swings = [...others, ...(swing ? [swing] : [])].toSorted(
    (a, b) => SWING_AXES.indexOf(a.about) - SWING_AXES.indexOf(b.about),
  );
  return swings.length > 0 ? { ...rest, swings } : rest;
}

export function swingAbout(measured: Measured | undefined, about: SwingAxis): Swing | undefined {
  return measured?.swings?.find((one) => one.about === about);
}
