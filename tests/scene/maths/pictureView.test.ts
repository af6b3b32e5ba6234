import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONG_SIDE, pictureView } from '../../../src/scene/maths/pictureView';

const tangent = (degrees: number) => Math.tan((degrees * Math.PI) / 360);

describe('the view of a picture', () => {
  it('shows at least what the stage shows, both ways, and no more than it must', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 0.2, max: 6, noNaN: true }),
        fc.integer({ min: 64, max: 4096 }),
        fc.integer({ min: 64, max: 4096 }),
        (fov, shownAspect, width, height) => {
          const view = pictureView(fov, shownAspect, width, height);
          const up = tangent(view.fovDeg) / tangent(fov);
          const across = (up * width) / height / shownAspect;
          expect(Math.min(up, across)).toBeCloseTo(1, 9);
          expect(view.cssWidth * view.pixelRatio).toBeCloseTo(width, 6);
          expect(view.cssHeight * view.pixelRatio).toBeCloseTo(height, 6);
          // Lines and letters are the same share of the longer side at every size.
          expect(Math.max(view.cssWidth, view.cssHeight)).toBeCloseTo(LONG_SIDE, 9);
        },
      ),
      { seed: 6 },
    );
  });
});
