import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

/** Looks by the collector: code that is still being compiled in the background may hold something at one of them. */
const LOOKS = 10;

/** How many of them are held by nobody else, after the engine's collector has looked through everything, several times. */
export async function collected(refs: readonly WeakRef<object>[]): Promise<number> {
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  const gone = () => refs.filter((ref) => ref.deref() === undefined).length;
  for (let look = 0; look < LOOKS && gone() < refs.length; look++) {
    // What was made or asked for in this turn is held until it ends.
    await new Promise((resolve) => setTimeout(resolve, 10));
    collect();
  }
  // A reference that was followed in this turn holds what it leads to until the turn ends.
  return gone();
}
