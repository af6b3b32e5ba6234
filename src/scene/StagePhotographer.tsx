import { useEffect, useRef } from 'react';
import { useSession } from '../ui/session';
import { usePalette } from './drawing/palette';
import { Darkroom } from './picture/darkroom';
import { useStageKit } from './stageKit';
import { usePicture } from './view/Picture';
import type { ViewControl } from './view/viewControl';

/** Takes pictures of the stage for the rooms that ask the session's camera for one. */
export function StagePhotographer({ view }: { readonly view: ViewControl }) {
  const kit = useStageKit();
  const palette = usePalette();
  const { live, stageCamera } = useSession();
  const picture = usePicture();
  const colours = useRef(palette);
  useEffect(() => {
    colours.current = palette;
  }, [palette]);

  useEffect(() => {
    const darkroom = new Darkroom(kit);
    const detach = stageCamera.attach((width, height) => {
      // What was changed in this very moment is in the picture.
      live.flush();
      const { scene, camera } = picture;
      const aspect = picture.width / Math.max(1, picture.height);
      const sitting = { scene, camera, aspect, view, palette: colours.current };
      const taken = darkroom.take(sitting, width, height);
      picture.invalidate();
      return taken;
    });
    return () => {
      detach();
      darkroom.dispose();
    };
  }, [kit, live, stageCamera, picture, view]);

  return null;
}
