/** Typed arrays that grow by doubling: memory follows what was read, not what a file claims. */

export class GrowingFloats {
  private array = new Float64Array(1024);
  length = 0;

  push3(x: number, y: number, z: number): void {
    if (this.length + 3 > this.array.length) this.grow();
    this.array[this.length] = x;
    this.array[this.length + 1] = y;
    this.array[this.length + 2] = z;
    this.length += 3;
  }
  at(index: number): number {
    return this.array[index];
  }
  /** A copy of its own length. */
  toArray(): Float64Array {
    return this.array.slice(0, this.length);
  }
  private grow(): void {
    const larger = new Float64Array(2 * this.array.length);
    larger.set(this.array);
    this.array = larger;
  }
}

export class GrowingIndices {
  private array = new Uint32Array(1024);
  length = 0;

  push3(a: number, b: number, c: number): void {
    if (this.length + 3 > this.array.length) this.grow();
    this.array[this.length] = a;
    this.array[this.length + 1] = b;
    this.array[this.length + 2] = c;
    this.length += 3;
  }
  at(index: number): number {
    return this.array[index];
  }
  toArray(): Uint32Array {
    return this.array.slice(0, this.length);
  }
  private grow(): void {
    const larger = new Uint32Array(2 * this.array.length);
    larger.set(this.array);
    this.array = larger;
  }
}
