import { useEffect } from 'react';
import type { PerspectiveCamera } from 'three';
import { degreesFromRadians, radians, radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { usePalette } from '../drawing/palette';
import { hasWebGl, StageBoundary, StageNote } from '../StageBoundary';
import type { FirstCamera } from '../view/livePicture';
import { Picture, usePicture } from '../view/Picture';
import { useOrbit } from '../view/useOrbit';
import type { RacketBody } from './racketBody';
import type { RacketRun } from './racketRun';
import { RacketScene } from './racketScene';

/** Of the camera, degrees: in a picture at least as wide as `FULL` times its height. */
const FIELD_DEG = 24;
const FULL = 1.1;

const FIRST_CAMERA: FirstCamera = {
  fovDeg: FIELD_DEG,
  position: [305, -385, 165],
  near: 25,
  far: 2000,
};

/** The racket in a small picture of its own; frames are drawn when something has changed, and all is given back at the end. */
export function RacketPicture(props: { readonly body: RacketBody; readonly run: RacketRun }) {
  return (
    <div className="racket-picture" role="img" aria-label={t('racket.picture')}>
      <StageBoundary>
        {hasWebGl() ? (
          <Picture camera={FIRST_CAMERA}>
            <Racket {...props} />
          </Picture>
        ) : (
          <StageNote text={t('racket.noWebGl')} />
        )}
      </StageBoundary>
    </div>
  );
}

function Racket({ body, run }: { readonly body: RacketBody; readonly run: RacketRun }) {
  const palette = usePalette();
  const picture = usePicture();
  const { scene: world, invalidate } = picture;
  useOrbit({ zoom: false, pan: false });
  // In a narrow picture the whole racket is to be seen as well.
  useEffect(() => {
    const widen = () => widenFor(picture.camera, picture.width, picture.height);
    widen();
    picture.resized.add(widen);
    return () => {
      picture.resized.delete(widen);
    };
  }, [picture]);
  useEffect(() => {
    const scene = new RacketScene(body);
    scene.paint(palette);
    picture.backWith(palette.surface);
    world.add(scene.root);
    const show = () => {
      scene.update(run);
      invalidate();
    };
    show();
    const stop = run.subscribe(show);
    return () => {
      stop();
      scene.dispose();
      invalidate();
    };
  }, [body, run, palette, picture, world, invalidate]);
  return null;
}

function widenFor(camera: PerspectiveCamera, width: number, height: number): void {
  if (width <= 0 || height <= 0) return;
  const narrow = Math.max(1, (FULL * height) / width);
  const half = Math.atan(Math.tan(radiansFromDegrees(FIELD_DEG / 2)) * narrow);
  camera.fov = 2 * degreesFromRadians(radians(half));
  camera.updateProjectionMatrix();
}
