/** Longer side of every picture in the CSS pixels that line widths and letters are given in. */
export const LONG_SIDE = 520;

export interface PictureView {
  /** Vertical field of view, degrees. */
  readonly fovDeg: number;
  /** Size in CSS pixels, and how many of the picture's pixels one of them has. */
  readonly cssWidth: number;
  readonly cssHeight: number;
  readonly pixelRatio: number;
}

/**
 * How to draw a picture of `width` x `height` pixels of what a view of the aspect `shownAspect` and the vertical field
 * `shownFovDeg` shows: nothing of the view is lost, a picture of another shape shows more at the sides or above and below.
 * Line widths and letters are the same share of the longer side at every size.
 */
export function pictureView(
  shownFovDeg: number,
  shownAspect: number,
  width: number,
  height: number,
): PictureView {
  const aspect = width / height;
  const half = Math.tan((shownFovDeg * Math.PI) / 360);
  const fitted = aspect < shownAspect ? (half * shownAspect) / aspect : half;
  const pixelRatio = Math.max(width, height) / LONG_SIDE;
  return {
    fovDeg: (Math.atan(fitted) * 360) / Math.PI,
    cssWidth: width / pixelRatio,
    cssHeight: height / pixelRatio,
    pixelRatio,
  };
}
