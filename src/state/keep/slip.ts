import { guardedStorage } from '../guardedStorage';
import type { Slip } from './ports';

/** One text in a storage of the browser, a reminder only: where it is not kept it is not there. */
export function slip(storage: () => Storage, key: string): Slip {
  const { read, write } = guardedStorage(storage);
  return { read: () => read(key), write: (text) => void write(key, text) };
}
