import { useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { PerspectiveCamera } from 'three';
import { useSession } from '../ui/session';
import { usePalette } from './drawing/palette';
import { Darkroom } from './picture/darkroom';
import { useStageKit } from './stageKit';
import type { ViewControl } from './view/viewControl';

/** Takes pictures of the stage for the rooms that ask the session's camera for one. */
export function StagePhotographer({ view }: { readonly view: ViewControl }) {
  const kit = useStageKit();
  const palette = usePalette();
  const { live, stageCamera } = useSession();
  const get = useThree((state) => state.get);
  const colours = useRef(palette);
  useEffect(() => {
    colours.current = palette;
  }, [palette]);

  useEffect(() => {
    const darkroom = new Darkroom(kit);
    const detach = stageCamera.attach((width, height) => {
      // What was changed in this very moment is in the picture.
      live.flush();
      const { scene, size, invalidate } = get();
      const camera = get().camera as PerspectiveCamera;
      const aspect = size.width / Math.max(1, size.height);
      const sitting = { scene, camera, aspect, view, palette: colours.current };
      const picture = darkroom.take(sitting, width, height);
      invalidate();
      return picture;
    });
    return () => {
      detach();
      darkroom.dispose();
    };
  }, [kit, live, stageCamera, get, view]);

  return null;
}
