import { ChevronLeft, ChevronRight, Plus } from 'lucide-react';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { partText, t } from '../../messages';
import { PART_TYPES, type PartKind, partType } from '../../parts/registry';
import { tellRefusal } from '../../state/editing';
import { type Place, placesFor } from '../../state/places';
import { Menu, MenuItem } from '../../ui/Menu';
import { useSession } from '../../ui/session';
import { useMeshDesk } from '../import/ImportRoom';
import { firstPose } from './firstPose';

/** "Add a part": first the kind, then where it goes: on a free socket of a part that is there, or free. */
export function AddPart() {
  return (
    <div className="rail-add">
      <Menu
        label={t('rail.add')}
        testId="add-part"
        button={
          <>
            <Plus aria-hidden="true" />
            {t('rail.add')}
          </>
        }
      >
        <Kinds />
      </Menu>
    </div>
  );
}

function Kinds() {
  const session = useSession();
  const { store, actions } = session;
  const meshes = useMeshDesk();
  const [kind, setKind] = useState<PartKind | null>(null);

  function add(chosen: PartKind, place: Place | null): void {
    const seat = place && { part: place.part.id, name: place.socket.name };
    const outcome = actions.addPart(
      chosen,
      seat ? { socket: seat } : { pose: firstPose(session, chosen) },
    );
    tellRefusal(session, outcome, null);
  }
  /** Whether there is a choice of places. */
  function leads(chosen: PartKind): boolean {
    return placesFor(store.getState().design, chosen).length > 0;
  }
  function choose(chosen: PartKind): 'stay' | void {
    if (partType(chosen).fromFile) return void meshes.open();
    if (!leads(chosen)) return add(chosen, null);
    setKind(chosen);
    return 'stay';
  }

  if (kind === null) {
    return (
      <Page key="kinds">
        {PART_TYPES.map((type) => (
          <MenuItem
            key={type.kind}
            testId={`add-${type.kind}`}
            note={partText(`part.${type.kind}.help`, type.help)}
            aside={leads(type.kind) && <ChevronRight aria-hidden="true" width={14} height={14} />}
            onClick={() => choose(type.kind)}
          >
            {partText(`part.${type.kind}.label`, type.label)}
          </MenuItem>
        ))}
      </Page>
    );
  }
  const label = partText(`part.${kind}.label`, partType(kind).label);
  return (
    <Page key={kind}>
      <div className="ui-menu-group">{label}</div>
      {placesFor(store.getState().design, kind).map((place) => (
        <MenuItem
          key={`${place.part.id} ${place.socket.name}`}
          testId={`place-${place.part.id}-${place.socket.name}`}
          note={placeText(place)}
          onClick={() => add(kind, place)}
        >
          {t('rail.addOn', { part: place.part.name })}
        </MenuItem>
      ))}
      <MenuItem testId="place-free" note={t('rail.addFreeNote')} onClick={() => add(kind, null)}>
        {t('rail.addFree')}
      </MenuItem>
      <MenuItem
        onClick={() => {
          setKind(null);
          return 'stay';
        }}
      >
        <ChevronLeft aria-hidden="true" width={14} height={14} /> {t('rail.addBack')}
      </MenuItem>
    </Page>
  );
}

/** One page of the menu; its first item takes the focus. */
function Page(props: { readonly children: ReactNode }) {
  const page = useRef<HTMLDivElement>(null);
  useEffect(() => page.current?.querySelector<HTMLElement>('[role="menuitem"]')?.focus(), []);
  return <div ref={page}>{props.children}</div>;
}

function placeText({ part, socket }: Place): string {
  return partText(`part.${part.kind}.socket.${socket.name}`, socket.label);
}
