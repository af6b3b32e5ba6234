import { useEffect, useRef } from 'react';
import type { Pose } from '../../engine/math/pose';
import type { PartReading } from '../../state/reading';
import { useAppState, useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { placeObject } from '../drawing/place';
import { partPose } from '../maths/gripFrame';
import { useStageKit } from '../stageKit';
import { usePicture } from '../view/Picture';
import { PartBody } from './partBody';

/** One body a part. React renders here only when parts come, go or change their kind; drags do not pass through. */
export function PartBodies() {
  const kit = useStageKit();
  const key = useAppState((state) =>
    state.design.parts.map((part) => `${part.kind}\n${part.id}`).join('\n'),
  );
  // Runs after the effects of the bodies below.
  useEffect(() => kit.settle(key), [kit, key]);

  const words = key === '' ? [] : key.split('\n');
  const parts = [];
  for (let i = 0; i < words.length; i += 2) {
    const [kind, id] = [words[i], words[i + 1]];
    parts.push(<PartBodyMount key={`${kind}/${id}`} kind={kind} id={id} />);
  }
  return <>{parts}</>;
}

function PartBodyMount({ kind, id }: { readonly kind: string; readonly id: string }) {
  const kit = useStageKit();
  const { store } = useSession();
  const { invalidate } = usePicture();
  const body = useRef<PartBody | null>(null);
  const pose = useRef<Pose | null>(null);

  useEffect(() => {
    const made = new PartBody(id, kind, kit.finishes);
    body.current = made;
    pose.current = null;
    kit.bodies.set(id, made);
    return () => {
      if (kit.bodies.get(id) === made) kit.bodies.delete(id);
      made.dispose();
      invalidate();
    };
  }, [kit, id, kind, invalidate]);

  useLive((reading, changes) => {
    const placed = reading.part(id);
    if (!placed || !body.current || placed.part.kind !== kind) return;
    body.current.shape(placed.part, placed.values);
    if (changes.design || changes.selection) {
      const selected = store.getState().selection === id;
      body.current.wear(placed.part.hidden ? 'ghost' : selected ? 'selected' : 'plain');
    }
    const swings = placed.carriedBy === 'rod' && (changes.pitch || changes.design);
    if (pose.current !== placed.pose_G || swings) {
      put(body.current, placed);
      pose.current = placed.pose_G;
    }
  });

  function put(made: PartBody, placed: PartReading): void {
    const { X_RG, rodAxis } = kit;
    const parent = placed.carriedBy === 'grip' ? kit.gripBodies : kit.rotorBodies;
    if (made.mesh.parent !== parent) parent.add(made.mesh);
    placeObject(
      made.mesh,
      placed.carriedBy === 'grip' ? placed.pose_G : partPose(placed, X_RG, rodAxis),
    );
  }

  return null;
}
