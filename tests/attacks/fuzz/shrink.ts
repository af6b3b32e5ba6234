/** Tries at most: a find that takes its time is not waited for. */
const MOST_TRIES = 400;

/** A smaller input that fails still: pieces are left out, halves first, for as long as that helps. */
export async function smallest(
  bytes: Uint8Array,
  fails: (bytes: Uint8Array) => Promise<boolean>,
): Promise<Uint8Array> {
  let best = bytes;
  let tries = 0;
  for (let size = Math.ceil(best.length / 2); size >= 1 && tries < MOST_TRIES; ) {
    let helped = false;
    for (let at = 0; at < best.length && tries < MOST_TRIES; tries++) {
      const less = Uint8Array.from([...best.subarray(0, at), ...best.subarray(at + size)]);
      if (await fails(less)) {
        best = less;
        helped = true;
      } else at += size;
    }
    if (!helped || size > best.length) size = size === 1 ? 0 : Math.ceil(size / 2);
  }
  return best;
}
