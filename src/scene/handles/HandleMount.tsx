import { useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { usePalette } from '../drawing/palette';
import { EVERYTHING, type StageLayer } from '../layers/stageLayer';
import { useStageKit } from '../stageKit';
import { createHandleLayer } from './handleLayer';

/** Keeps the handles alive. Mounted after the layers: the pitch knob stands at the end of the fan's pointer. */
export function HandleMount() {
  const kit = useStageKit();
  const session = useSession();
  const { store, live } = session;
  const palette = usePalette();
  const invalidate = useThree((state) => state.invalidate);
  const layer = useRef<StageLayer | null>(null);

  useEffect(() => {
    const made = createHandleLayer(session, kit);
    layer.current = made;
    made.paint(palette);
    const redraw = () =>
      made.update({ reading: live.reading, state: store.getState() }, EVERYTHING);
    kit.redraws.add(redraw);
    redraw();
    invalidate();
    return () => {
      kit.redraws.delete(redraw);
      made.dispose();
    };
  }, [session, kit, live, store, palette, invalidate]);

  useLive((reading, changes) => {
    layer.current?.update({ reading, state: store.getState() }, changes);
    invalidate();
  });

  return null;
}
