/**
 * A running sum of numbers and products kept in double-double arithmetic: about 32 digits, so that a small residual of large
 * numbers comes out with all its digits. Error-free sums and products after Knuth (TAOCP 4.2.2) and Dekker, "A
 * floating-point technique for extending the available precision", Numer. Math. 18 (1971). Products overflow above 1e300.
 */
export class ExactSum {
  high = 0;
  low = 0;

  set(high: number, low = 0): void {
    this.high = high;
    this.low = low;
  }

  add(x: number): void {
    const sum = this.high + x;
    const back = sum - this.high;
    this.settle(sum, this.high - (sum - back) + (x - back) + this.low);
  }

  addProduct(a: number, b: number): void {
    const p = a * b;
    const splitA = SPLIT * a;
    const aHigh = splitA - (splitA - a);
    const aLow = a - aHigh;
    const splitB = SPLIT * b;
    const bHigh = splitB - (splitB - b);
    const bLow = b - bHigh;
    const error = aLow * bLow - (p - aHigh * bHigh - aLow * bHigh - aHigh * bLow);
    this.add(p);
    this.low += error;
  }

  get value(): number {
    return this.high + this.low;
  }

  private settle(sum: number, error: number): void {
    this.high = sum + error;
    this.low = error - (this.high - sum);
  }
}

/** 2^27 + 1: halves the 53 bits of a number. */
const SPLIT = 134_217_729;
