import { databaseConnection } from '../database';
import type { Card } from './records';

/** What may be done inside one transaction. Nothing else may be awaited there: the browser would end it. */
export interface RecordAccess {
  card(key: string): Promise<unknown>;
  /** All cards whose keys begin so, in the order of their keys. */
  cards(prefix: string): Promise<readonly unknown[]>;
  text(key: string): Promise<string | null>;
  put(card: Card, text: string): Promise<void>;
  /** The card alone; its text stays. */
  putCard(card: Card): Promise<void>;
  remove(key: string): Promise<void>;
}

/** Where the page keeps its designs: transactions that happen whole or not at all, one after another in all tabs. */
export interface RecordStore {
  read<T>(work: (access: RecordAccess) => Promise<T>): Promise<T>;
  /** Resolves once what was written has reached the disk; rejects where nothing of it was. */
  change<T>(work: (access: RecordAccess) => Promise<T>): Promise<T>;
  /** For good: what is under way is ended, and anything after it rejects. */
  close(): void;
}

const NAME = 'stillgrip-designs';
const VERSION = 1;
const CARDS = 'cards';
const TEXTS = 'texts';
const BOTH = [CARDS, TEXTS] as const;

/** Rejects where the browser refuses: no storage, a broken one, or one that a newer page has changed. */
export async function openRecordStore(): Promise<RecordStore> {
  const { opened, close } = databaseConnection(NAME, VERSION, (created) => {
    created.createObjectStore(CARDS);
    created.createObjectStore(TEXTS);
  });

  async function run<T>(
    mode: 'readonly' | 'readwrite',
    work: (access: RecordAccess) => Promise<T>,
  ): Promise<T> {
    // What is called saved must have reached the disk: the browser's default promises less.
    const transaction = (await opened()).transaction(BOTH, mode, { durability: 'strict' });
    const cards = transaction.objectStore(CARDS);
    const texts = transaction.objectStore(TEXTS);
    const access: RecordAccess = {
      card: (key) => cards.get(key),
      cards: (prefix) => cards.getAll(IDBKeyRange.bound(prefix, `${prefix}\uffff`)),
      async text(key) {
        const text: unknown = await texts.get(key);
        return typeof text === 'string' ? text : null;
      },
      async put(card, text) {
        await Promise.all([cards.put?.(card, card.key), texts.put?.(text, card.key)]);
      },
      async putCard(card) {
        await cards.put?.(card, card.key);
      },
      async remove(key) {
        await Promise.all([cards.delete?.(key), texts.delete?.(key)]);
      },
    };
    const settled = transaction.done.catch((error: unknown) => {
      throw error ?? new DOMException('the transaction was given up', 'AbortError');
    });
    try {
      const [result] = await Promise.all([work(access), settled]);
      return result;
    } catch (error) {
      settled.catch(() => undefined);
      abort(transaction);
      throw transaction.error ?? error;
    }
  }

  await opened();
  return {
    read: (work) => run('readonly', work),
    change: (work) => run('readwrite', work),
    close,
  };
}

/** It may have ended by itself. */
function abort(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // Then there is nothing left to give up.
  }
}
