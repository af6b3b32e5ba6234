import type { Page } from '@playwright/test';
import { parseDesign } from '../../../src/design/file';

/** A record as it lies in the browser, read without the page's own code. */
export interface Lying {
  readonly key: string;
  readonly card: { readonly name: string; readonly length: number; readonly title?: string };
  readonly text: string;
}

/** All records of the page's store, and the files that it wrote into the browser's own file system. */
export function readStore(page: Page): Promise<{ records: Lying[]; files: [string, string][] }> {
  return page.evaluate(async () => {
    const opening = indexedDB.open('stillgrip-designs');
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      opening.onsuccess = () => resolve(opening.result);
      opening.addEventListener('error', () => reject(opening.error));
    });
    const reading = database.transaction(['cards', 'texts'], 'readonly');
    const all = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.addEventListener('error', () => reject(request.error));
      });
    const [keys, cards, textKeys, texts] = await Promise.all([
      all(reading.objectStore('cards').getAllKeys()),
      all(reading.objectStore('cards').getAll()),
      all(reading.objectStore('texts').getAllKeys()),
      all(reading.objectStore('texts').getAll()),
    ]);
    database.close();
    const textOf = new Map(textKeys.map((key, k) => [String(key), String(texts[k])]));
    const records = keys.map((key, k) => ({
      key: String(key),
      card: cards[k],
      text: textOf.get(String(key)) ?? '',
    }));
    const files: [string, string][] = [];
    const folder = (await navigator.storage.getDirectory()) as FileSystemDirectoryHandle & {
      entries(): AsyncIterable<[string, FileSystemHandle]>;
    };
    for await (const [name, handle] of folder.entries()) {
      if (handle.kind !== 'file') continue;
      files.push([name, await (await (handle as FileSystemFileHandle).getFile()).text()]);
    }
    return { records, files };
  });
}

/** Why a record is not whole, or null. */
export function tornRecord({ key, card, text }: Lying): string | null {
  if (card.length !== text.length) return `${key}: ${text.length} of ${card.length} characters`;
  const read = parseDesign(text);
  if (!read.ok) return `${key}: cannot be read: ${read.error.path}`;
  return read.value.name === card.name ? null : `${key}: ${read.value.name} as ${card.name}`;
}

/** The name of the design in a file, or null where it is not a whole design. */
export function designIn(text: string): string | null {
  const read = parseDesign(text);
  return read.ok ? read.value.name : null;
}
