import type { Seeded } from '../../support/seeded';

/** Lengths and counts that lie, as 16 and 32 bits. */
const LIES = [0, 1, 2, 0x7f, 0xff, 0x100, 0x7fff, 0xffff, 0x7fffffff, 0x80000000, 0xffffffff];
/** Infinity, NaN, the greatest and the least, and -0 as float32. */
const FLOATS = [Infinity, -Infinity, NaN, 3.4e38, -3.4e38, 1e-45, -0, 1e9, 2e9];

type Change = (bytes: Uint8Array, random: Seeded, other: Uint8Array) => Uint8Array;

const CHANGES: readonly Change[] = [
  // A bit, a byte, a run of bytes.
  (bytes, random) => {
    const at = place(bytes, random);
    return written(bytes, at, [bytes[at] ^ (1 << random.whole(0, 7))]);
  },
  (bytes, random) => written(bytes, place(bytes, random), [random.whole(0, 255)]),
  (bytes, random) => {
    const noise = Array.from({ length: random.whole(1, 16) }, () => random.whole(0, 255));
    return spliced(bytes, place(bytes, random), 0, Uint8Array.from(noise));
  },
  // Something is gone, twice there, or in another's place.
  (bytes, random) => bytes.slice(0, place(bytes, random)),
  (bytes, random) => bytes.slice(place(bytes, random)),
  (bytes, random) => spliced(bytes, place(bytes, random), size(random), new Uint8Array(0)),
  (bytes, random) => {
    const at = place(bytes, random);
    return spliced(bytes, at, 0, bytes.slice(at, at + size(random)));
  },
  (bytes, random) => {
    const piece = bytes.slice(place(bytes, random)).slice(0, size(random));
    return spliced(bytes, place(bytes, random), piece.length, piece);
  },
  (bytes, random, other) => {
    const piece = other.slice(place(other, random)).slice(0, size(random));
    return spliced(bytes, place(bytes, random), random.pick([0, piece.length]), piece);
  },
  (bytes, random, other) =>
    joined(bytes.slice(0, place(bytes, random)), other.slice(place(other, random))),
  // Lengths and numbers that lie, in either order of bytes.
  (bytes, random) => {
    const four = new Uint8Array(4);
    const little = random.unit() < 0.8;
    new DataView(four.buffer).setUint32(0, random.pick(LIES), little);
    return written(bytes, place(bytes, random), four.subarray(0, random.pick([2, 4])));
  },
  (bytes, random) => {
    const four = new Uint8Array(4);
    new DataView(four.buffer).setFloat32(0, random.pick(FLOATS), true);
    return written(bytes, place(bytes, random), four);
  },
];

/** One to eight changes to bytes, whatever they mean; `other` is another good file. */
export function mutatedBytes(good: Uint8Array, random: Seeded, other: Uint8Array): Uint8Array {
  let bytes = good;
  const count = Math.ceil(8 * random.unit() ** 3);
  for (let k = 0; k < count; k++) bytes = random.pick(CHANGES)(bytes, random, other);
  return bytes;
}

function place(bytes: Uint8Array, random: Seeded): number {
  // Heads and tables of contents stand at the ends: a third of the changes goes there.
  const last = Math.max(0, bytes.length - 1);
  const near = Math.min(last, 128);
  const where = random.unit();
  if (where < 0.2) return random.whole(0, near);
  return where < 0.33 ? random.whole(last - near, last) : random.whole(0, last);
}

function size(random: Seeded): number {
  return Math.ceil(2000 * random.unit() ** 4);
}

function written(bytes: Uint8Array, at: number, piece: ArrayLike<number>): Uint8Array {
  const out = bytes.slice();
  for (let k = 0; k < piece.length && at + k < out.length; k++) out[at + k] = piece[k];
  return out;
}

function spliced(bytes: Uint8Array, at: number, drop: number, piece: Uint8Array): Uint8Array {
  return joined(bytes.subarray(0, at), piece, bytes.subarray(at + drop));
}

export function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  const out = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    out.set(piece, at);
    at += piece.length;
  }
  return out;
}
