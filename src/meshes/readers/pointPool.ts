import { GrowingFloats } from './growing';

/**
 * Points without repeats: equal coordinates (to the bit, -0 taken for 0) get the same index. A hash table with open
 * addressing, since a Map ends at 2^24 entries.
 */
export class PointPool {
  private readonly points = new GrowingFloats();
  private table = new Int32Array(4096).fill(-1);
  private readonly bits = new Uint32Array(6);
  private readonly numbers = new Float64Array(this.bits.buffer);

  get count(): number {
    return this.points.length / 3;
  }

  /** The index of the point, new or known. The coordinates are finite. */
  add(x: number, y: number, z: number): number {
    const px = x + 0;
    const py = y + 0;
    const pz = z + 0;
    if (2 * this.count > this.table.length) this.enlarge();
    const mask = this.table.length - 1;
    let slot = this.hash(px, py, pz) & mask;
    for (let known = this.table[slot]; known >= 0; known = this.table[slot]) {
      const at = 3 * known;
      const { points } = this;
      if (points.at(at) === px && points.at(at + 1) === py && points.at(at + 2) === pz)
        return known;
      slot = (slot + 1) & mask;
    }
    const index = this.count;
    this.table[slot] = index;
    this.points.push3(px, py, pz);
    return index;
  }

  toArray(): Float64Array {
    return this.points.toArray();
  }

  private hash(x: number, y: number, z: number): number {
    this.numbers[0] = x;
    this.numbers[1] = y;
    this.numbers[2] = z;
    let h = 0;
    for (let i = 0; i < 6; i++) {
      h = Math.imul(h ^ this.bits[i], 0x9e3779b1);
      h ^= h >>> 15;
    }
    h = Math.imul(h, 0x85ebca6b);
    return (h ^ (h >>> 13)) >>> 0;
  }

  private enlarge(): void {
    this.table = new Int32Array(2 * this.table.length).fill(-1);
    const mask = this.table.length - 1;
    for (let index = 0; index < this.count; index++) {
      const { points } = this;
      let slot = this.hash(
        points.at(3 * index),
        points.at(3 * index + 1),
        points.at(3 * index + 2),
      );
      slot &= mask;
      while (this.table[slot] >= 0) slot = (slot + 1) & mask;
      this.table[slot] = index;
    }
  }
}
