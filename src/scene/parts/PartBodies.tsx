import { useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { Part } from '../../design/design';
import type { Pose } from '../../engine/math/pose';
import { type Changes, EVERYTHING } from '../../state/changes';
import type { HeadReading, PartReading } from '../../state/reading';
import { useAppState, useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { partPose } from '../maths/gripFrame';
import { type StageKit, useStageKit } from '../stageKit';
import { PartBody } from './partBody';

type Update = (reading: HeadReading, changes: Changes) => void;

/** One body a part. React renders here only when parts come, go or change their kind; drags do not pass through. */
export function PartBodies() {
  const kit = useStageKit();
  const listed = useListed();
  const mounts = useRef(new Set<Update>());
  useLive((reading, changes) => {
    for (const update of mounts.current) update(reading, changes);
  });
  // Runs after the effects of the bodies below.
  useEffect(() => {
    kit.settle(listed.map(({ kind, id }) => `${kind}\n${id}`).join('\n'));
  }, [kit, listed]);
  return listed.map(({ kind, id }) => (
    <PartBodyMount key={`${kind}/${id}`} kind={kind} id={id} mounts={mounts} />
  ));
}

type Listed = readonly Pick<Part, 'id' | 'kind'>[];

/** The parts by kind and id: the same list until parts come, go, change places or their kind. */
function useListed(): Listed {
  const held = useRef<Listed>([]);
  return useAppState(({ design: { parts } }) => {
    const before = held.current;
    const same =
      parts.length === before.length &&
      parts.every(({ id, kind }, i) => id === before[i].id && kind === before[i].kind);
    if (!same) held.current = parts.map(({ id, kind }) => ({ id, kind }));
    return held.current;
  });
}

function PartBodyMount(props: {
  readonly kind: string;
  readonly id: string;
  readonly mounts: { readonly current: Set<Update> };
}) {
  const { kind, id, mounts } = props;
  const kit = useStageKit();
  const { store, live } = useSession();
  const invalidate = useThree((state) => state.invalidate);

  useEffect(() => {
    const made = new PartBody(id, kind, kit.finishes, kit.lines);
    let pose: Pose | null = null;
    function update(reading: HeadReading, changes: Changes): void {
      const placed = reading.part(id);
      if (!placed || placed.part.kind !== kind) return;
      made.shape(placed.part, placed.values);
      if (changes.design || changes.selection) {
        const selected = store.getState().selection === id;
        made.wear(placed.part.hidden ? 'ghost' : selected ? 'selected' : 'plain');
      }
      const swings = placed.carriedBy === 'rod' && (changes.pitch || changes.design);
      if (pose === placed.pose_G && !swings) return;
      put(kit, made, placed);
      pose = placed.pose_G;
    }
    kit.bodies.set(id, made);
    const all = mounts.current;
    all.add(update);
    update(live.reading, EVERYTHING);
    return () => {
      all.delete(update);
      if (kit.bodies.get(id) === made) kit.bodies.delete(id);
      made.dispose();
      invalidate();
    };
  }, [kit, id, kind, store, live, mounts, invalidate]);

  return null;
}

function put(
  { X_RG, rodAxis, gripBodies, rotorBodies }: StageKit,
  made: PartBody,
  placed: PartReading,
): void {
  const turns = placed.carriedBy === 'grip';
  const pose = turns ? placed.pose_G : partPose(placed, X_RG, rodAxis);
  made.put(turns ? gripBodies : rotorBodies, pose, turns);
}
