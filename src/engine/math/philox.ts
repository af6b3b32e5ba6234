/**
 * Philox4x32-10, the counter-based generator of Salmon, Moraes, Dror and Shaw, "Parallel random numbers: as easy as
 * 1, 2, 3", SC11 (2011): four 32-bit words from a counter of four words and a key of two. Nothing is carried from one
 * draw to the next, so the n-th draw of a seed is the same wherever and whenever it is made, and can be made again.
 *
 * Tested against the known answers published with the authors' Random123.
 */
const MULTIPLIER_0 = 0xd2511f53;
const MULTIPLIER_1 = 0xcd9e8d57;
const WEYL_0 = 0x9e3779b9;
const WEYL_1 = 0xbb67ae85;
const ROUNDS = 10;

/** Writes the four words (unsigned) for a counter and a key. */
export function philox(
  counter: readonly [number, number, number, number],
  key: readonly [number, number],
  out: Uint32Array,
): Uint32Array {
  let [c0, c1, c2, c3] = counter;
  let [k0, k1] = key;
  for (let round = 0; round < ROUNDS; round++) {
    const high0 = highProduct(MULTIPLIER_0, c0);
    const low0 = Math.imul(MULTIPLIER_0, c0);
    const high1 = highProduct(MULTIPLIER_1, c2);
    const low1 = Math.imul(MULTIPLIER_1, c2);
    const [old1, old3] = [c1, c3];
    c0 = high1 ^ old1 ^ k0;
    c1 = low1;
    c2 = high0 ^ old3 ^ k1;
    c3 = low0;
    k0 = (k0 + WEYL_0) | 0;
    k1 = (k1 + WEYL_1) | 0;
  }
  out[0] = c0;
  out[1] = c1;
  out[2] = c2;
  out[3] = c3;
  return out;
}

/** Upper 32 bits of the product of two unsigned words, by halves of 16 bits. */
function highProduct(a: number, b: number): number {
  const [aLow, aHigh] = [a & 0xffff, a >>> 16];
  const [bLow, bHigh] = [b & 0xffff, b >>> 16];
  const low = aLow * bLow;
  const middle = aHigh * bLow + (low >>> 16);
  const cross = aLow * bHigh + (middle % 0x10000);
  return (aHigh * bHigh + Math.floor(middle / 0x10000) + Math.floor(cross / 0x10000)) | 0;
}

/** A number in (0, 1), never either end, from one word: the middle of one of 2^32 equal steps. */
export function openUnit(word: number): number {
  return (word + 0.5) / 4_294_967_296;
}
