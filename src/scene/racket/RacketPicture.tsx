import { OrbitControls } from '@react-three/drei';
import { Canvas, useThree } from '@react-three/fiber';
import { useEffect, useState } from 'react';
import { type Camera, PerspectiveCamera } from 'three';
import { degreesFromRadians, radians, radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { useContextLoss } from '../contextLoss';
import { usePalette } from '../drawing/palette';
import { hasWebGl, StageBoundary, StageNote } from '../StageBoundary';
import { quietThree } from '../threeConsole';
import type { RacketBody } from './racketBody';
import type { RacketRun } from './racketRun';
import { RacketScene } from './racketScene';

quietThree();

/** Of the camera, degrees: in a picture at least as wide as `FULL` times its height. */
const FIELD_DEG = 24;
const FULL = 1.1;

/** The racket in a small picture of its own; frames are drawn when something has changed, and all is given back at the end. */
export function RacketPicture(props: { readonly body: RacketBody; readonly run: RacketRun }) {
  const palette = usePalette();
  const [lost, setLost] = useState(false);
  // Nothing inside an image is read out: a note instead of it has to stand by itself.
  const isDrawn = hasWebGl() && !lost;
  return (
    <div
      className="racket-picture"
      {...(isDrawn && { role: 'img', 'aria-label': t('racket.picture') })}
    >
      <StageBoundary>
        {hasWebGl() ? (
          <Canvas
            frameloop="demand"
            flat
            dpr={[1, 2]}
            gl={{ antialias: true }}
            camera={{
              up: [0, 0, 1],
              fov: FIELD_DEG,
              position: [305, -385, 165],
              near: 25,
              far: 2000,
            }}
          >
            <color attach="background" args={[palette.surface]} />
            <Racket {...props} onLost={setLost} />
            <OrbitControls enableDamping={false} enableZoom={false} enablePan={false} />
          </Canvas>
        ) : (
          <StageNote text={t('racket.noWebGl')} />
        )}
        {lost && <StageNote text={t('stage.lost')} />}
      </StageBoundary>
    </div>
  );
}

interface RacketProps {
  readonly body: RacketBody;
  readonly run: RacketRun;
  onLost(lost: boolean): void;
}

function Racket({ body, run, onLost }: RacketProps) {
  const palette = usePalette();
  useContextLoss(onLost);
  const world = useThree((state) => state.scene);
  const invalidate = useThree((state) => state.invalidate);
  const get = useThree((state) => state.get);
  const { width, height } = useThree((state) => state.size);
  // In a narrow picture the whole racket is to be seen as well.
  useEffect(() => {
    widenFor(get().camera, width, height);
    invalidate();
  }, [get, width, height, invalidate]);
  useEffect(() => {
    const scene = new RacketScene(body);
    scene.paint(palette);
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
  }, [body, run, palette, world, invalidate]);
  return null;
}

function widenFor(camera: Camera, width: number, height: number): void {
  if (!(camera instanceof PerspectiveCamera) || width <= 0 || height <= 0) return;
  const narrow = Math.max(1, (FULL * height) / width);
  const half = Math.atan(Math.tan(radiansFromDegrees(FIELD_DEG / 2)) * narrow);
  camera.fov = 2 * degreesFromRadians(radians(half));
  camera.updateProjectionMatrix();
}
