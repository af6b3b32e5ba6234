/**
 * Keys of the stage while it has the focus, by the name that the browser gives them: what the stage does and what the list of
 * keys shows come from here. Turns are steps about the shaft and upward, zooms steps nearer.
 */
export const STAGE_KEYS = {
  turn: {
    ArrowLeft: [-1, 0],
    ArrowRight: [1, 0],
    ArrowUp: [0, 1],
    ArrowDown: [0, -1],
  },
  /** "=" is where "+" is, without Shift. */
  zoom: { '+': 1, '=': 1, '-': -1 },
  whole: { Home: 1 },
} as const satisfies Readonly<Record<string, Readonly<Record<string, number | readonly number[]>>>>;
