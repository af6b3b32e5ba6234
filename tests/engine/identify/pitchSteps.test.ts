import { describe, expect, it } from 'vitest';
import { findSteady, type StepOptions } from '../../../src/engine/identify/pitchSteps';

const OPTIONS: StepOptions = { shortest: 0.5, smallest: 3, settling: 0 };

/** Ten samples a second; each level for so many samples. */
function logOf(...levels: readonly (readonly [level: number, samples: number])[]) {
  const value = levels.flatMap(([level, samples]) => Array.from({ length: samples }, () => level));
  return { time: value.map((_, i) => i / 10), value };
}
const found = (log: ReturnType<typeof logOf>, options: Partial<StepOptions> = {}) =>
  findSteady(log.time, log.value, { ...OPTIONS, ...options });

describe('levels of a log without noise', () => {
  it('are cut exactly where they change', () => {
    const steady = found(logOf([5, 10], [-5, 20], [0, 10]));
    expect(steady.map(({ from, to, level }) => [from, to, level])).toEqual([
      [0, 10, 5],
      [10, 30, -5],
      [30, 40, 0],
    ]);
    expect(steady[1]).toEqual({
      from: 10,
      to: 30,
      begins: 1,
      ends: 2.9,
      level: -5,
      deviation: 0,
      drift: 0,
      creeping: false,
    });
  });

  it('are one where nothing changes, and none where nothing is logged', () => {
    expect(found(logOf([7, 10])).map(({ from, to }) => [from, to])).toEqual([[0, 10]]);
    expect(found(logOf())).toEqual([]);
    expect(found(logOf([7, 1]), { shortest: 0 })).toEqual([]);
  });

  it('must last: from first to last sample as long as the shortest', () => {
    // Six samples at ten a second are half a second, five are not.
    expect(found(logOf([0, 10], [9, 6], [0, 10]))).toHaveLength(3);
    expect(found(logOf([0, 10], [9, 5], [0, 10]))).toHaveLength(2);
  });

  it('are told apart by as much as the smallest jump, and one below it', () => {
    expect(found(logOf([0, 10], [3, 10]))).toHaveLength(2);
    const joined = found(logOf([0, 10], [2.9, 10]));
    expect(joined.map(({ from, to }) => [from, to])).toEqual([[0, 20]]);
    // Half of twenty samples at each end: median halfway.
    expect(joined[0].level).toBeCloseTo(1.45, 12);
    expect(joined[0].deviation).toBeCloseTo(Math.sqrt((20 * 1.45 ** 2) / 19), 12);
  });

  it('are found where two jumps cancel', () => {
    // Up by 10 and down again: the first cut divides the whole unevenly, the second is larger.
    const steady = found(logOf([0, 30], [10, 10], [0, 30]));
    expect(steady.map(({ from, to }) => [from, to])).toEqual([
      [0, 30],
      [30, 40],
      [40, 70],
    ]);
  });

  it('do not depend on where they lie: far off and turned round', () => {
    const near = logOf([5, 10], [-5, 20], [0, 10]);
    const cuts = found(near).map(({ from, to }) => [from, to]);
    for (const move of [(v: number) => v + 1e6, (v: number) => -v]) {
      const moved = found({ time: near.time, value: near.value.map(move) });
      expect(moved.map(({ from, to }) => [from, to])).toEqual(cuts);
    }
  });

  it('begin later by the time of settling, but not at the beginning of the log', () => {
    const steady = found(logOf([0, 10], [9, 10], [0, 10]), { settling: 0.3 });
    expect(steady.map(({ from, to }) => [from, to])).toEqual([
      [0, 10],
      [13, 20],
      [23, 30],
    ]);
    // Nothing is left of a stretch that settles for longer than it lasts.
    expect(found(logOf([0, 10], [9, 10]), { settling: 5 })).toHaveLength(1);
    expect(found(logOf([0, 10], [9, 10]), { settling: 0.85 })).toHaveLength(1);
    expect(found(logOf([0, 10], [9, 10]), { settling: 0.75 })).toHaveLength(2);
  });

  it('are cut by samples that are no number', () => {
    const log = logOf([2, 30]);
    log.value[12] = Number.NaN;
    expect(found(log).map(({ from, to }) => [from, to])).toEqual([
      [0, 12],
      [13, 30],
    ]);
    log.value[0] = Number.POSITIVE_INFINITY;
    expect(found(log).map(({ from, to, level }) => [from, to, level])).toEqual([
      [1, 12, 2],
      [13, 30, 2],
    ]);
  });

  it('are as far apart as they are, on both sides of nothing', () => {
    const steady = found(logOf([0, 10], [5, 10], [-5, 10]));
    expect(steady.map(({ level }) => level)).toEqual([0, 5, -5]);
  });

  it('are cut where they change also near the beginning of a long log, and down to single samples', () => {
    expect(found(logOf([0, 6], [9, 94])).map(({ from, to }) => [from, to])).toEqual([
      [0, 6],
      [6, 100],
    ]);
    // Two samples that differ are no level.
    const short = found(logOf([0, 10], [9, 1], [20, 1]), { shortest: 0 });
    expect(short.map(({ from, to }) => [from, to])).toEqual([[0, 10]]);
  });

  it('are told apart by just the smallest jump after a short beginning', () => {
    expect(found(logOf([0, 6], [3, 94]))).toHaveLength(2);
  });

  it('are found where two jumps cancel, beside others and far from nothing', () => {
    // Thirty samples of 0, ten of 10, thirty of 0: the best cut jumps by 2.5 only.
    const wanted = [
      [0, 20],
      [20, 40],
      [40, 70],
      [70, 80],
      [80, 110],
    ];
    for (const base of [0, 1e9, -1e9]) {
      const levels = [20, -40, 0, 10, 0].map((level) => base + level);
      const samples = [20, 20, 30, 10, 30];
      const steady = found(logOf(...levels.map((level, k) => [level, samples[k]] as const)));
      expect(steady.map(({ from, to }) => [from, to])).toEqual(wanted);
    }
  });

  it('keep a beginning that is a little off, beside others', () => {
    // Three samples a little below the rest: less than the smallest jump, and no two jumps hide in it.
    const steady = found(logOf([0, 20], [40, 20], [20, 3], [21, 30]));
    expect(steady.map(({ from, to }) => [from, to])).toEqual([
      [0, 20],
      [20, 40],
      [40, 73],
    ]);
  });

  it('do not drift where no time passes', () => {
    const [only] = findSteady([1, 1, 1], [2, 2, 2], { ...OPTIONS, shortest: 0 });
    expect([only.drift, only.creeping]).toEqual([0, false]);
  });

  it('are found beside a stretch that is mostly not there', () => {
    const log = logOf([0, 10], [9, 10], [Number.NaN, 100]);
    expect(found(log).map(({ level }) => level)).toEqual([0, 9]);
  });

  it('need a time for every value', () => {
    expect(() => findSteady([0, 1], [0], OPTIONS)).toThrow(RangeError);
  });
});

describe('one level', () => {
  it('has the median, the deviation and the slope of its samples', () => {
    const value = [1, 2, 4, 3, 10, 5];
    const [only] = findSteady([0, 1, 2, 3, 4, 5], value, { ...OPTIONS, smallest: 100 });
    // Mean 25/6, squares about it 155 - 625/6; slope sum t v / sum t t about the middle: 21.5 / 17.5.
    expect(only.level).toBe(3.5);
    expect(only.deviation).toBeCloseTo(Math.sqrt((155 - 625 / 6) / 5), 13);
    expect(only.drift).toBeCloseTo(21.5 / 17.5, 13);
    expect(only.creeping).toBe(false);
  });

  it('has the noise of all neighbours, the first two among them', () => {
    // Differences 2 and 0: the larger of two is their median here. A slope of 1 is less than five times 2.1 / root 2.
    const [only] = findSteady([0, 1, 2], [0, 2, 2], { ...OPTIONS, smallest: 100 });
    expect([only.drift, only.creeping]).toEqual([1, false]);
    // Of three it is the one in the middle, 0.1: noise 0.105, and a slope of 4.06 is more than five times that / root 5.
    const leap = findSteady([0, 1, 2, 3], [0, 0.1, 10.1, 10.2], { ...OPTIONS, smallest: 100 });
    expect(leap[0].drift).toBeCloseTo(4.06, 12);
    expect(leap[0].creeping).toBe(true);
  });

  it('creeps where its slope is beyond five of its standard uncertainties', () => {
    // Neighbours differ by 1 (median), so that noise is 1.4826 / sqrt 2 = 1.0484; 5 x 1.0484 / sqrt(sum t t) is the limit.
    const saw = (slope: number) =>
      Array.from({ length: 101 }, (_, i) => (i % 2 === 0 ? 0.5 : -0.5) + slope * (i - 50));
    const time = saw(0).map((_, i) => i);
    const limit = (5 * 1.4826) / Math.SQRT2 / Math.sqrt((100 * 101 * 102) / 12);
    const creeps = (slope: number) =>
      findSteady(time, saw(slope), { ...OPTIONS, smallest: 1000 })[0].creeping;
    expect([creeps(0.95 * limit), creeps(1.05 * limit), creeps(-1.05 * limit)]).toEqual([
      false,
      true,
      true,
    ]);
  });
});

describe('a jump among noise', () => {
  /** Samples that go up and down by half a unit: noise of 1.4826 / sqrt 2 by the rule of neighbours. */
  const noisy = (jump: number) =>
    Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? 0.5 : -0.5) + (i < 20 ? 0 : jump));

  it('counts from five of its standard uncertainties on', () => {
    // Noise 1.0484, twenty samples on each side: 5 x 1.0484 x sqrt(2/20) = 1.6577.
    const time = noisy(0).map((_, i) => i / 10);
    const count = (jump: number) =>
      findSteady(time, noisy(jump), { ...OPTIONS, smallest: 0.1 }).length;
    expect([count(1.5), count(1.8)]).toEqual([1, 2]);
  });

  it('is looked for where it lessens the squares most, near an end as well', () => {
    // Six samples and 94, up and down by 0.572: noise 1.2. The jump of 9 counts from 5 x 1.2 x sqrt(1/6 + 1/94) = 2.5 on; in the
    // middle the means differ by 1.08, which is less than 5 x 1.2 x sqrt(2/50) = 1.2.
    const value = Array.from(
      { length: 100 },
      (_, i) => (i % 2 === 0 ? 0.572 : -0.572) + (i < 6 ? 0 : 9),
    );
    const time = value.map((_, i) => i / 10);
    const steady = findSteady(time, value, { ...OPTIONS, shortest: 0.4 });
    expect(steady.map(({ from, to }) => [from, to])).toEqual([
      [0, 6],
      [6, 100],
    ]);
  });
});
