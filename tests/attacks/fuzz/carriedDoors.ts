import { carriesDesign } from '../../../src/panels/files/carriers';
import { createFileDesk } from '../../../src/panels/files/fileDesk';
import type { Session } from '../../../src/state/session';
import { type Door, designFlaw, type Opened, refused, taken } from './door';

/** Opens a file that a design may ride in, as the page does: what is dropped is first looked through for a design. */
async function openCarrier(session: Session, name: string, bytes: Uint8Array): Promise<Opened> {
  const before = session.store.getState();
  const file = new File([bytes as BlobPart], name);
  const carries = await carriesDesign(file);
  await createFileDesk(session).openFile(file);
  const { design, notice } = session.store.getState();
  if (design === before.design) return refused(notice?.text ?? '');
  if (name.endsWith('.3mf') && !carries) return taken('opened, and said to carry none');
  return taken(designFlaw(design));
}

function carrierDoor(name: string, ending: string, form: Door['form'], good: string): Door {
  return {
    name,
    entries: ['src/panels/files/carriers.ts', 'src/state/carried/carriedDesign.ts'],
    form,
    good: [good],
    open: (bytes, session) => openCarrier(session, `a.${ending}`, bytes),
  };
}

/** Doors behind which a design is read out of a picture or a package of ours. */
export const CARRIED_DOORS: readonly Door[] = [
  carrierDoor('design in a 3MF', '3mf', 'zip', '3MF of our own'),
  carrierDoor('design in an SVG', 'svg', 'text', 'SVG of our own'),
  carrierDoor('design in a PNG', 'png', 'png', 'PNG of our own'),
];
