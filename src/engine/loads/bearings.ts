/** A load across the feathering axis in one plane: force N, and its moment about station zero, N m (x F). */
export interface PlaneLoad {
  readonly force: number;
  readonly moment: number;
}

/**
 * What radial bearings at `stations` (m) take of a load in one plane, N each, in the load's direction: they balance force
 * and moment. Two bearings are statically determinate; more share it as springs of equal stiffness on a rigid grip would
 * (least squares); one carries the force alone, and the moment is left over. Empty for none.
 */
export function bearingReactions(stations: readonly number[], load: PlaneLoad): readonly number[] {
  const reaction = bearingReaction(stations);
  return stations.map((_, i) => reaction(i, load.force, load.moment));
}

/** The same for one bearing of the list at a time, made once for many loads. */
export function bearingReaction(
  stations: readonly number[],
): (i: number, force: number, moment: number) => number {
  const count = stations.length;
  const middle = stations.reduce((sum, x) => sum + x, 0) / count;
  const spread = stations.reduce((sum, x) => sum + (x - middle) ** 2, 0);
  return (i, force, moment) => {
    const about = moment - middle * force;
    return force / count + (spread > 0 ? ((stations[i] - middle) / spread) * about : 0);
  };
}

/**
 * Equivalent static load of a radial deep groove ball bearing, N: the larger of F_r and 0.6 F_r + 0.5 F_a (ISO 76); of a
 * thrust ball bearing, F_a.
 */
export function staticEquivalentLoad(
  carries: 'radial' | 'thrust',
  radial: number,
  axial: number,
): number {
  if (carries === 'thrust') return Math.abs(axial);
  return Math.max(Math.abs(radial), 0.6 * Math.abs(radial) + 0.5 * Math.abs(axial));
}
