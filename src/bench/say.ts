import { addTexts, t } from '../messages';
import { BENCH_FIT } from '../messages/en/benchFit';
import { BENCH_ROOMS } from '../messages/en/benchRooms';

export type BenchText = keyof typeof BENCH_FIT | keyof typeof BENCH_ROOMS;

addTexts('benchFit', BENCH_FIT);
addTexts('benchRooms', BENCH_ROOMS);

/** A text of the measuring bench's rooms: they come with this module, so that the page's first load does not hold them. */
export function say(key: BenchText, values?: Readonly<Record<string, string | number>>): string {
  return t(key, values);
}
