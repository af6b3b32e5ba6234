import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** How many of them are held by nobody else, after the engine's collector has looked through everything. */
export async function collected(refs: readonly WeakRef<object>[]): Promise<number> {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  // What was made or asked for in this turn is held until it ends.
  await new Promise((resolve) => setImmediate(resolve));
  collect();
  return refs.filter((ref) => ref.deref() === undefined).length;
}
