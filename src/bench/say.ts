import { partText } from '../messages';
import { BENCH_ROOMS } from '../messages/en/benchRooms';

export type BenchText = keyof typeof BENCH_ROOMS;

/** A text of the measuring bench. They come with its rooms, so that the page's first load does not hold them. */
export function say(
  key: BenchText,
  values: Readonly<Record<string, string | number>> = {},
): string {
  return partText(key, BENCH_ROOMS[key]).replace(/\{(\w+)\}/g, (whole, name: string) =>
    String(values[name] ?? whole),
  );
}
