import { describe, expect, it } from 'vitest';
import { dot, subtract, type Vec3 } from '../../../src/engine/math/vector';
import { cameraAxes, centreTarget, VIEW_NAMES, VIEWS } from '../../../src/scene/maths/fitView';

const corners: Vec3[] = [];
for (const x of [0, 130])
  for (const y of [-18, 24]) for (const z of [-12, 30]) corners.push([x, y, z]);

describe('named views', () => {
  it('show thrust up from the side, the leading edge up from above, and leading to the right from the tip', () => {
    expect(cameraAxes(VIEWS.leading).up[2]).toBeCloseTo(1, 12);
    expect(cameraAxes(VIEWS.above).up[1]).toBeCloseTo(1, 12);
    expect(cameraAxes(VIEWS.above).right[0]).toBeCloseTo(1, 12);
    expect(cameraAxes(VIEWS.tip).right[1]).toBeCloseTo(1, 12);
  });
  it('hold the whole head inside the picture, whatever its shape', () => {
    const tangent = Math.tan((13 * Math.PI) / 180);
    for (const view of VIEW_NAMES) {
      for (const aspect of [0.5, 1, 2.4]) {
        const { right, up, back } = cameraAxes(VIEWS[view]);
        const fit = centreTarget(corners, [65, 0, 0], VIEWS[view], tangent, aspect, 0.1);
        let fullest = 0;
        for (const point of corners) {
          const arm = subtract(point, fit.target);
          const depth = fit.distance - dot(arm, back);
          expect(depth).toBeGreaterThan(0);
          const across = Math.abs(dot(arm, right)) / (depth * tangent * aspect);
          const along = Math.abs(dot(arm, up)) / (depth * tangent);
          fullest = Math.max(fullest, across, along);
        }
        expect(fullest).toBeLessThanOrEqual(0.9 + 1e-9);
        expect(fullest).toBeGreaterThan(0.85);
      }
    }
  });
});
