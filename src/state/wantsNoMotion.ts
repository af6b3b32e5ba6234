/** The person has asked the system for still pictures: what would move is shown at its end. */
export function wantsNoMotion(): boolean {
  return matchMedia('(prefers-reduced-motion: reduce)').matches;
}
