import type { Corpus } from './corpus';
import { DOORS } from './doors';
import type { Bench } from './run';

type DoorAndFile = readonly [door: string, file: string];

/** Every door with every one of its good inputs. */
export const ALL_FILES: readonly DoorAndFile[] = DOORS.flatMap(({ name, good }) =>
  good.map((file) => [name, file] as const),
);

/** Those of less than about a kilobyte. */
export const SMALL_FILES: readonly DoorAndFile[] = [
  ['cells pasted into the grid', 'cells'],
  ['table of a section', 'polar'],
  ['outline of a section', 'outline'],
  ['table of drag', 'drag'],
  ['list of numbers', 'list of numbers'],
  ['typed number', 'typed number'],
  ['typed number', 'typed sum'],
  ['STL, text', 'STL text'],
  ['STL, binary', 'STL binary'],
  ['OBJ', 'OBJ'],
  ['3MF', '3MF'],
  ['GLB', 'GLB'],
  ['pasted part', 'copied bolt'],
  ['pasted readings', 'drag at rest'],
  ['readings file', 'readings parted by blanks'],
  ['kept settings', 'settings'],
  ['kept plan', 'plan'],
  ['kept let go', 'let go'],
  ['kept drawing choice', 'drawing choice'],
  ['kept bench notes', 'bench draft'],
];

/** Cuts a good input short at every `step`th byte; what the door did not stand up to, and how many cuts there were. */
export async function cutFinds(
  bench: Bench,
  corpus: Corpus,
  doorName: string,
  file: string,
  step: number,
): Promise<{ readonly finds: readonly string[]; readonly cuts: number }> {
  const door = DOORS.find(({ name }) => name === doorName);
  const bytes = corpus.get(file);
  if (!door || !bytes) throw new Error(`cutFinds(): there is no ${doorName} or ${file}`);
  const finds: string[] = [];
  let cuts = 0;
  for (let end = 0; end < bytes.length; end += step) {
    cuts++;
    const find = await bench.open(door, bytes.slice(0, end));
    if (find) finds.push(`${doorName}, ${file} cut at ${end}: ${find.what}: ${find.detail}`);
  }
  return { finds, cuts };
}
