import { MOMENT_COUNT, type Moments } from './moments';

/**
 * The running sum of the moments of many parts. Replacing one part costs one subtraction and one addition however
 * many parts there are. The sums are kept in double-double arithmetic (error-free two-sum; Dekker 1971, Knuth
 * TAOCP 4.2.2), so a part taken out leaves no rounding behind: about 1e-32 of the largest part per change, and a
 * million drags end on the digits of a fresh sum.
 */
export class MassLedger {
  private readonly high = new Float64Array(MOMENT_COUNT);
  private readonly low = new Float64Array(MOMENT_COUNT);
  /** Additions and subtractions of a part so far: the counted cost of a change. */
  operations = 0;

  add(moments: Moments): void {
    this.change(moments, 1);
  }

  remove(moments: Moments): void {
    this.change(moments, -1);
  }

  clear(): void {
    this.high.fill(0);
    this.low.fill(0);
  }

  total(out: Moments): Moments {
    for (let i = 0; i < MOMENT_COUNT; i++) out[i] = this.high[i] + this.low[i];
    return out;
  }

  private change(moments: Moments, sign: number): void {
    const { high, low } = this;
    for (let i = 0; i < MOMENT_COUNT; i++) {
      const a = high[i];
      const b = sign * moments[i];
      const sum = a + b;
      const back = sum - a;
      const error = a - (sum - back) + (b - back) + low[i];
      const settled = sum + error;
      low[i] = error - (settled - sum);
      high[i] = settled;
    }
    this.operations++;
  }
}
