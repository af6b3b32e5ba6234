import type { AreaMoments } from '../../src/engine/mass/outline';
import { sectionMoments } from '../../src/engine/mass/sectionLoft';

/** Area moments of a section's polygon, made positive. */
export function sectionArea(corners: Float64Array): AreaMoments {
  const end = { x: 0, corners };
  const out: AreaMoments = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  sectionMoments({ shape: 'sectionLoft', root: end, tip: end }, 0, out);
  const sense = Math.sign(out.area);
  return {
    area: sense * out.area,
    x: sense * out.x,
    y: sense * out.y,
    xx: sense * out.xx,
    yy: sense * out.yy,
    xy: sense * out.xy,
  };
}
