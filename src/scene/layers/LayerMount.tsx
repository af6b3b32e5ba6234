import { useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import { EVERYTHING } from '../../state/changes';
import type { Session } from '../../state/session';
import type { Turn } from '../../state/turns';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { type Palette, usePalette } from '../drawing/palette';
import { type StageKit, useStageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Keeps one layer alive while it is mounted. `make` must be the same function at every render. */
export function LayerMount({
  make,
  turn = 'layers',
}: {
  readonly make: (kit: StageKit, session: Session) => StageLayer;
  readonly turn?: Turn;
}) {
  const kit = useStageKit();
  const palette = usePalette();
  const session = useSession();
  const { store, live } = session;
  const invalidate = useThree((state) => state.invalidate);
  const layer = useRef<StageLayer | null>(null);

  useEffect(() => {
    const made = make(kit, session);
    layer.current = made;
    made.paint(palette);
    const redraw = () =>
      made.update({ reading: live.reading, state: store.getState() }, EVERYTHING);
    kit.redraws.add(redraw);
    const paint = (colours: Palette) => made.paint(colours);
    kit.painters.add(paint);
    redraw();
    invalidate();
    return () => {
      kit.redraws.delete(redraw);
      kit.painters.delete(paint);
      made.dispose();
    };
  }, [kit, make, session, live, store, palette, invalidate]);

  useLive((reading, changes) => {
    layer.current?.update({ reading, state: store.getState() }, changes);
    invalidate();
  }, turn);

  return null;
}
