import { OrbitControls } from '@react-three/drei';
import { Canvas, useThree } from '@react-three/fiber';
import { useEffect } from 'react';
import { t } from '../../messages';
import { usePalette } from '../drawing/palette';
import { hasWebGl, StageBoundary, StageNote } from '../StageBoundary';
import type { RacketBody } from './racketBody';
import type { RacketRun } from './racketRun';
import { RacketScene } from './racketScene';

/** The racket in a small picture of its own; frames are drawn when something has changed, and all is given back at the end. */
export function RacketPicture(props: { readonly body: RacketBody; readonly run: RacketRun }) {
  const palette = usePalette();
  return (
    <div className="racket-picture" role="img" aria-label={t('racket.picture')}>
      <StageBoundary>
        {hasWebGl() ? (
          <Canvas
            frameloop="demand"
            flat
            dpr={[1, 2]}
            gl={{ antialias: true }}
            camera={{ up: [0, 0, 1], fov: 24, position: [305, -385, 165], near: 25, far: 2000 }}
          >
            <color attach="background" args={[palette.surface]} />
            <Racket {...props} />
            <OrbitControls enableDamping={false} enableZoom={false} enablePan={false} />
          </Canvas>
        ) : (
          <StageNote text={t('racket.noWebGl')} />
        )}
      </StageBoundary>
    </div>
  );
}

function Racket({ body, run }: { readonly body: RacketBody; readonly run: RacketRun }) {
  const palette = usePalette();
  const world = useThree((state) => state.scene);
  const invalidate = useThree((state) => state.invalidate);
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
