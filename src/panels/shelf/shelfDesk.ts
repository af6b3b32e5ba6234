import { materialsOf } from '../../design/resolve';
import { partText, t } from '../../messages';
import { placesFor } from '../../state/places';
import { refusalText } from '../../state/refusalText';
import type { Session } from '../../state/session';
import { MAX_ITEMS } from '../../state/shelfFile';
import { carriedPart, type ShelfItem } from '../../state/shelfItem';
import { firstPose } from '../rail/firstPose';
import { type Said, told, warned } from './said';

/** Keeps a part of the head on the shelf. */
export async function keepPart({ store, live, shelf }: Session, id: string): Promise<Said> {
  const part = live.model.placed(id)?.part;
  if (!part) return warned(t('fields.unknownPart'));
  const kept = await shelf.keep(part, materialsOf(store.getState().design));
  if (!kept.ok) return warned(t('shelf.full', { limit: MAX_ITEMS }));
  const { name } = kept.value;
  const text =
    name === part.name
      ? t('shelf.kept', { name })
      : t('shelf.keptAs', { name: part.name, kept: name });
  return shelf.state.getState().home === 'page'
    ? warned(t('shelf.keptPage', { text }))
    : told(text);
}

/** Puts a part from the shelf into the head: on the first free socket that it fits, else free. */
export function putIn(session: Session, item: ShelfItem): Said {
  const { store, actions } = session;
  const { design, settings } = store.getState();
  const { part, materials } = carriedPart(item);
  const { pose: _, ...bare } = part;
  const [place] = placesFor(design, item.kind);
  const seat = place
    ? { socket: { part: place.part.id, name: place.socket.name } }
    : { pose: firstPose(session, item.kind) };
  const outcome = actions.pastePart({ ...bare, ...seat } as typeof part, materials);
  const { name } = item;
  if (!outcome.ok) {
    const reason = refusalText(outcome.error, design, null, settings.units);
    return warned(t('shelf.putRefused', { name, reason }));
  }
  if (!place) return told(t('shelf.putFree', { name }), actions.undo);
  const key = `part.${place.part.kind}.socket.${place.socket.name}`;
  const where = partText(key, place.socket.label);
  return told(t('shelf.putOn', { name, place: where, part: place.part.name }), actions.undo);
}

/** Puts a part from the shelf in the place of one in the head. */
export function swapIn(session: Session, item: ShelfItem, id: string): Said {
  const { store, actions } = session;
  const { design, settings } = store.getState();
  const old = design.parts.find((part) => part.id === id)?.name ?? '';
  const { name } = item;
  const outcome = actions.swapPart(id, carriedPart(item));
  if (!outcome.ok) {
    const reason = refusalText(outcome.error, design, id, settings.units);
    return warned(t('shelf.swapRefused', { name, reason }));
  }
  return told(t('shelf.swapped', { name, old }), actions.undo);
}
