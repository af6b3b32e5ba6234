import { keptIn, newestFirst, readable } from './cards';
import type { RecordAccess, RecordStore } from './recordStore';
import { ALL_ASIDE, type Card, cardFrom, designKey, pastKey, pastsOf } from './records';

/** Named states of one design. */
const MOST_NAMED = 200;

/** The past states of a design. */
export function listPasts(store: RecordStore, id: string): Promise<readonly Card[]> {
  return store.read(async (access) => newestFirst(readable(await access.cards(pastsOf(id)))));
}

/** The past states of several designs, by id; those that have none are left out. */
export async function listPastsOf(
  store: RecordStore,
  ids: readonly string[],
): Promise<ReadonlyMap<string, readonly Card[]>> {
  const all = await Promise.all(
    [...new Set(ids)].map(async (id) => [id, await listPasts(store, id)] as const),
  );
  return new Map(all.filter(([, pasts]) => pasts.length > 0));
}

/** The stored state of a design, kept under a name. False where it is gone, or has as many as it may. */
export function nameState(store: RecordStore, id: string, title: string): Promise<boolean> {
  return store.change(async (access) => {
    const kept = await keptIn(access, designKey(id));
    if (!kept) return false;
    const pasts = readable(await access.cards(pastsOf(id)));
    if (pasts.filter((one) => one.title !== undefined).length >= MOST_NAMED) return false;
    await access.put({ ...kept.card, key: pastKey(kept.card), title } as Card, kept.text);
    return true;
  });
}

/** Another name for a past state; an empty one leaves it without, to be thinned like the rest. */
export function renameState(store: RecordStore, key: string, title: string): Promise<boolean> {
  return store.change(async (access) => {
    const card = cardFrom(await access.card(key));
    if (card === null || card === 'newer') return false;
    const { title: _, ...rest } = card;
    await access.putCard(title === '' ? rest : { ...rest, title });
    return true;
  });
}

/** Past states that nobody can get at: those of a design that is neither there nor set aside. */
export async function orphans(access: RecordAccess, id: string): Promise<readonly Card[]> {
  if ((await access.card(designKey(id))) !== undefined) return [];
  const aside = readable(await access.cards(ALL_ASIDE));
  return aside.some((card) => card.id === id) ? [] : readable(await access.cards(pastsOf(id)));
}

export async function dropOrphans(access: RecordAccess, id: string): Promise<void> {
  for (const { key } of await orphans(access, id)) await access.remove(key);
}
