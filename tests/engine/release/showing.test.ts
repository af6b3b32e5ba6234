import { describe, expect, test } from 'vitest';
import { createSlowClock, roundSlowness } from '../../../src/engine/release/slowMotion';
import { createTrace } from '../../../src/engine/release/trace';
import { gripOf, letGo } from './systems';

describe('a trace', () => {
  test('holds a motion of any length from its start to its newest step, evenly thinned', () => {
    const release = letGo(gripOf(6e-6, 2e-6), 0.4);
    const trace = createTrace(100);
    trace.add(release);
    const all: number[] = [0];
    for (let i = 0; i < 40; i++) {
      release.advance(1e-3, (now) => {
        trace.add(now);
        all.push(now.time);
      });
      expect(trace.length).toBeLessThanOrEqual(100);
      expect(trace.time[0]).toBe(0);
      expect(trace.time[trace.length - 1]).toBe(release.time);
      expect(trace.pitch[trace.length - 1]).toBe(release.pitch);
    }
    expect(all.length).toBeGreaterThan(500);
    expect(trace.length).toBeGreaterThanOrEqual(50);
    // Kept steps are every so many of all, but for the newest.
    const at = Array.from(trace.time.subarray(0, trace.length - 1), (time) => all.indexOf(time));
    const every = at[1];
    expect(Math.log2(every) % 1).toBe(0);
    at.forEach((index, i) => expect(index).toBe(i * every));
  });

  test('begins anew when cleared, and refuses a size that is none', () => {
    const trace = createTrace(16);
    const release = letGo(gripOf(6e-6, 2e-6), 0.4);
    release.advance(0.01, (now) => trace.add(now));
    trace.clear();
    expect(trace.length).toBe(0);
    trace.add(release);
    expect([trace.length, trace.time[0]]).toEqual([1, 0.01]);
    expect(trace.kinetic[0]).toBe(release.energy.kinetic);
    expect(trace.rate[0]).toBe(release.rate);
    expect(() => createTrace(3)).toThrow('capacity');
  });
});

describe('a slow clock', () => {
  test('shows the watch slowed, and does not jump when the slowness changes', () => {
    const clock = createSlowClock(200);
    expect(clock.tick(10)).toBe(0);
    expect(clock.tick(10.05)).toBeCloseTo(0.05 / 200, 15);
    clock.setSlowness(50);
    expect(clock.shown).toBeCloseTo(0.05 / 200, 15);
    expect(clock.tick(10.06)).toBeCloseTo(0.01 / 50, 15);
    expect(clock.shown).toBeCloseTo(0.05 / 200 + 0.01 / 50, 15);
  });

  test('leaves out what a hidden page slept through and says how much, and stops for a pause', () => {
    const clock = createSlowClock(10);
    clock.tick(0);
    expect(clock.tick(60)).toBeCloseTo(0.01, 15);
    expect(clock.skipped).toBeCloseTo(59.9, 12);
    clock.pause();
    expect(clock.tick(100)).toBe(0);
    expect(clock.tick(100.05)).toBeCloseTo(0.005, 12);
    expect(clock.tick(99)).toBe(0);
    expect(clock.skipped).toBeCloseTo(59.9, 12);
  });

  test('a slowness that is none is refused', () => {
    expect(() => createSlowClock(0)).toThrow('slowness');
    expect(() => createSlowClock(3).setSlowness(Number.NaN)).toThrow('slowness');
  });

  test.each([
    [0.006, 1.2, 200],
    [0.006, 1, 200],
    [0.0125, 1, 100],
    [0.0127, 4, 200],
    [0.0005, 1, 2000],
    [0.9, 1, 1],
    [3, 1, 1],
    [0, 1, 1],
    [Infinity, 1, 1],
  ])('a swing of %d s in about %d s is slowed %d times', (period, shown, slowness) => {
    expect(roundSlowness(period, shown)).toBe(slowness);
  });
});
