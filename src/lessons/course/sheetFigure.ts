import { gripPose } from '../../engine/feathering/gripPose';
import { compose } from '../../engine/math/pose';
import { mmFromMetres, radiansFromDegrees } from '../../engine/units';
import { partType } from '../../parts/registry';
import { silhouettes } from '../../parts/silhouette';
import { turningParts } from '../../state/turningParts';
import type { LessonHead } from './quantity';

/** Lines of a drawing in mm, y up, for an SVG whose y runs down. */
export interface SheetFigure {
  readonly paths: readonly string[];
  /** Half width and half height of what is drawn, from the feathering axis, mm. */
  readonly half: readonly [number, number];
}

/**
 * The head as it is seen along the feathering axis from the tip, at its pitch: the outline of every part that turns with the
 * grip, the plane of rotation level. Outlines are convex hulls (see `silhouettes`). Push rods are left out.
 */
export function sheetFigure({ reading, pitchDeg }: LessonHead): SheetFigure {
  const X_RG = gripPose(reading.rotor, radiansFromDegrees(pitchDeg));
  const paths: string[] = [];
  let [across, up] = [0, 0];
  for (const { part, values, pose_G } of turningParts(reading)) {
    const solids = partType(part.kind).solids(values);
    const whole = solids.filter((solid) => !('density' in solid) || solid.density > 0);
    for (const { outline } of silhouettes(whole, compose(X_RG, pose_G))) {
      const points = outline.map(([y, z]) => [mmFromMetres(y), -mmFromMetres(z)] as const);
      for (const [y, z] of points) {
        across = Math.max(across, Math.abs(y));
        up = Math.max(up, Math.abs(z));
      }
      paths.push(`M${points.map(([y, z]) => `${y.toFixed(2)} ${z.toFixed(2)}`).join('L')}Z`);
    }
  }
  return { paths, half: [across, up] };
}
