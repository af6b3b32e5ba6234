/** A sampled curve at a pitch, straight between its evenly spaced samples; NaN beyond them and beside a gap. */
export function curveAt(pitchDeg: Float64Array, values: Float64Array, at: number): number {
  const place = placeOf(pitchDeg, at);
  const k = Math.floor(place);
  if (!(k >= 0 && k < pitchDeg.length)) return Number.NaN;
  if (place === k) return values[k];
  return values[k] + (place - k) * (values[k + 1] - values[k]);
}

/** Where a pitch lies among the samples: 2.5 is halfway from the third to the fourth. */
export function placeOf(pitchDeg: Float64Array, at: number): number {
  return (at - pitchDeg[0]) / (pitchDeg[1] - pitchDeg[0]);
}
