import { GrowingFloats } from './growing';

/** Bytes of a point, and what a byte can be. */
const BYTES = 24;
const VALUES = 256;

/**
 * Points without repeats: equal coordinates (to the bit, -0 taken for 0) get the same index. A hash table with open
 * addressing, since a Map ends at 2^24 entries. The hash is by tables of random words, one for each byte of a point
 * ("simple tabulation": whatever the points are, a look takes a constant number of steps on average, J. ACM 59(3), 2012,
 * article 14; from memory): a file cannot be made so that its points fall on one another, as it could with a hash that it
 * knows. The indices do not depend on the random words.
 */
export class PointPool {
  /** Places of the table looked at so far. */
  looks = 0;
  count = 0;
  private readonly points = new GrowingFloats();
  private table = new Int32Array(4096).fill(-1);
  private readonly words = crypto.getRandomValues(new Uint32Array(BYTES * VALUES));
  private readonly numbers = new Float64Array(3);
  private readonly bytes = new Uint8Array(this.numbers.buffer);

  /** The index of the point, new or known. The coordinates are finite. */
  add(x: number, y: number, z: number): number {
    const px = x + 0;
    const py = y + 0;
    const pz = z + 0;
    if (2 * this.count > this.table.length) this.enlarge();
    const mask = this.table.length - 1;
    let slot = this.hash(px, py, pz) & mask;
    this.looks++;
    for (let known = this.table[slot]; known >= 0; known = this.table[slot]) {
      const at = 3 * known;
      const { points } = this;
      if (points.at(at) === px && points.at(at + 1) === py && points.at(at + 2) === pz)
        return known;
      slot = (slot + 1) & mask;
      this.looks++;
    }
    const index = this.count++;
    this.table[slot] = index;
    this.points.push3(px, py, pz);
    return index;
  }

  toArray(): Float64Array {
    return this.points.toArray();
  }

  private hash(x: number, y: number, z: number): number {
    const { bytes, words, numbers } = this;
    numbers[0] = x;
    numbers[1] = y;
    numbers[2] = z;
    let h = 0;
    for (let i = 0; i < BYTES; i++) h ^= words[VALUES * i + bytes[i]];
    return h >>> 0;
  }

  private enlarge(): void {
    this.table = new Int32Array(2 * this.table.length).fill(-1);
    const mask = this.table.length - 1;
    const { points } = this;
    for (let index = 0; index < this.count; index++) {
      const at = 3 * index;
      let slot = this.hash(points.at(at), points.at(at + 1), points.at(at + 2)) & mask;
      this.looks++;
      for (; this.table[slot] >= 0; this.looks++) slot = (slot + 1) & mask;
      this.table[slot] = index;
    }
  }
}
