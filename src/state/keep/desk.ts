import { createStore, type StoreApi } from 'zustand/vanilla';
import { bringBack, setDesignAside } from './aside';
import { dropRecord, isWhole, type Listing, listDesigns, putBack, readKept } from './designs';
import type { Keeper } from './keeper';
import { listPasts, listPastsOf, nameState, renameState } from './pasts';
import type { KeepPorts } from './ports';
import type { RecordStore } from './recordStore';
import type { Card, Kept } from './records';
import { newOrigin } from './slot';
import { type Trouble, troubleOf } from './trouble';

/** What a person may do with the designs that lie in the browser. */
export interface KeepDesk {
  readonly state: StoreApi<DeskState>;
  /** Reads the lists again. */
  load(): Promise<void>;
  /** Opens a kept design; what is on the stage stays kept, and undo brings it back. */
  openDesign(card: Card): Promise<boolean>;
  /** The design on the stage as it was; the state that is left goes into the history, and undo brings it back. */
  goBack(card: Card): Promise<boolean>;
  /** A past state, or something set aside, as a design of its own. */
  openCopy(card: Card): Promise<boolean>;
  /** Keeps the state on the stage under a name. */
  nameNow(title: string): Promise<boolean>;
  rename(card: Card, title: string): Promise<boolean>;
  /** Removes a design, or a past state, or something set aside. Gives what undoes it. */
  remove(card: Card): Promise<(() => Promise<void>) | null>;
  /** A removed design back among the others. */
  bringBack(card: Card): Promise<boolean>;
  /** The text of a record as it lies there, to be saved as a file; null where it is gone. */
  text(card: Card): Promise<string | null>;
}

export interface DeskState {
  readonly listing: Listing;
  /** Past states of the design on the stage. */
  readonly pasts: readonly Card[];
  /** Past states of the damaged designs that were set aside, by id: each was whole when it was written. */
  readonly pastsOfDamaged: ReadonlyMap<string, readonly Card[]>;
  readonly reading: 'not yet' | 'read' | Trouble;
  /** Whether the browser has promised not to clear what is kept by itself; null where it does not say. */
  readonly promised: boolean | null;
}

const NOTHING: Listing = { designs: [], aside: [], newer: 0 };

export function createKeepDesk(
  keeper: Keeper,
  ports: Pick<KeepPorts, 'now' | 'newId' | 'canary'>,
  promised: () => Promise<boolean | null>,
): KeepDesk {
  const state = createStore<DeskState>(() => ({
    listing: NOTHING,
    pasts: [],
    pastsOfDamaged: new Map(),
    reading: 'not yet',
    promised: null,
  }));
  const here = () => keeper.status.getState().id;

  async function load(): Promise<void> {
    await attempt(async (store) => {
      const [listing, pasts, promise] = await Promise.all([
        listDesigns(store),
        listPasts(store, here()),
        promised().catch(() => null),
      ]);
      const damaged = listing.aside.filter(({ reason }) => reason === 'damaged');
      const pastsOfDamaged = await listPastsOf(
        store,
        damaged.map(({ id }) => id),
      );
      state.setState({ listing, pasts, pastsOfDamaged, reading: 'read', promised: promise });
    });
  }

  /** Null, and the reason in sight, where the store would not. */
  async function attempt<T>(work: (store: RecordStore) => Promise<T>): Promise<T | null> {
    try {
      return await work(await keeper.store());
    } catch (error) {
      state.setState({ reading: troubleOf(error) });
      return null;
    }
  }

  async function kept(card: Card): Promise<Kept | null> {
    const found = await attempt((store) => readKept(store, card.key));
    return found && isWhole(found) ? found : null;
  }

  async function change<T>(work: (store: RecordStore) => Promise<T>): Promise<T | null> {
    const outcome = await attempt(work);
    if (outcome !== null) await load();
    return outcome;
  }

  return {
    state,
    load,
    async openDesign(card) {
      const found = await kept(card);
      if (!found) return false;
      const { id, revision, edited, copyOf } = found.card;
      return keeper.open(found.text, {
        id,
        revision,
        edited,
        copyOf,
        stamps: [],
        stored: true,
        notes: [],
      });
    },
    async goBack(card) {
      const found = await kept(card);
      return found !== null && keeper.open(found.text, null);
    },
    async openCopy(card) {
      const found = await kept(card);
      if (!found) return false;
      const { id } = found.card;
      return keeper.open(found.text, {
        ...newOrigin(ports.newId()),
        edited: true,
        copyOf: id,
      });
    },
    async nameNow(title) {
      await keeper.flush();
      return (await change((store) => nameState(store, here(), title))) ?? false;
    },
    rename: async (card, title) =>
      (await change((store) => renameState(store, card.key, title))) ?? false,
    async remove(card) {
      if (card.key.startsWith('design/')) {
        const key = await change((store) => setDesignAside(store, card.id, 'removed', ports.now()));
        if (key === null) return null;
        return async () => void (await change((store) => bringBack(store, key, ports.newId())));
      }
      const gone = await change((store) => dropRecord(store, card.key));
      if (!gone) return null;
      const { designs, aside } = state.getState().listing;
      // Emptied by hand: that is not a loss.
      if (designs.length + aside.length === 0) ports.canary.write('');
      return async () => void (await change((store) => putBack(store, gone)));
    },
    bringBack: async (card) =>
      (await change((store) => bringBack(store, card.key, ports.newId()))) !== null,
    text: async (card) => (await attempt((store) => readKept(store, card.key)))?.text ?? null,
  };
}
