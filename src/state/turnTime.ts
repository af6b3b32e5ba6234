/** One turn of the rotor at the design's speed takes so long on the stage, s. */
const SHOWN = 6;

/** How long one turn is shown at a speed, s: slowed as much as at the design's speed. Infinite for a rotor that stands. */
export function secondsPerTurn(speedRpm: number, designRpm: number): number {
  if (!(speedRpm > 0)) return Infinity;
  return designRpm > 0 ? (SHOWN * designRpm) / speedRpm : SHOWN;
}

/** How many times slower than it is. */
export function slowness(speedRpm: number, designRpm: number): number {
  return (secondsPerTurn(speedRpm, designRpm) * speedRpm) / 60;
}
