import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseDesign } from '../../src/design/file';
import { createSession } from '../../src/state/createSession';
import { pullTally, runningSums } from '../../src/state/pullTally';
import type { HeadReading } from '../../src/state/reading';
import { slowness } from '../../src/state/turnTime';
import { turnWay } from '../../src/state/words/pullText';

const DEMOS = [
  '1-bare-grip',
  '2-long-bolt',
  '3-ordinary-bolt',
  '4-turned-nut',
  '5-both-sides',
  '6-full-size',
];

function readingOf(file: string): HeadReading {
  const text = readFileSync(new URL(`../../assets/designs/${file}.json`, import.meta.url), 'utf8');
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error(`${file} is not sound: ${parsed.error.path}`);
  return createSession(parsed.value, (callback) => callback()).live.reading;
}

const HEADS = DEMOS.map((file) => ({ file, reading: readingOf(file) }));
const PITCHES = [-62.5, -20, 0, 7.3, 20, 45];

describe('the pulls added one by one', () => {
  test.each(HEADS)(
    'come to the page\u2019s total, part by part and lump by lump: $file',
    ({ reading }) => {
      for (const pitchDeg of PITCHES) {
        for (const grain of ['parts', 'lumps'] as const) {
          const { entries, total } = pullTally(reading, pitchDeg, grain, null);
          expect(total).toBe(reading.momentAt(pitchDeg));
          const sum = runningSums(entries).at(-1) ?? Number.NaN;
          // Everything that is added up, before anything cancels: rounding is judged against it.
          const size = entries.reduce((all, entry) => all + Math.abs(entry.moment), 0);
          const pulled = entries
            .flatMap((entry) => entry.pulls)
            .reduce((all, pull) => all + Math.hypot(...pull.force) * pull.lever, 0);
          expect(size).toBeGreaterThan(0);
          expect(Math.abs(sum - total)).toBeLessThan(1e-12 * (size + pulled));
        }
      }
    },
  );

  test('a part\u2019s lumps turn the grip as the part does, with its pull', () => {
    for (const { reading } of HEADS) {
      for (const pitchDeg of PITCHES) {
        const parts = pullTally(reading, pitchDeg, 'parts', null).entries;
        const lumps = pullTally(reading, pitchDeg, 'lumps', null).entries;
        for (const part of parts.filter((entry) => entry.kind === 'part')) {
          const own = lumps.filter((entry) => entry.part === part.part && entry.kind === 'lump');
          expect(own.length).toBe(part.pulls.length);
          const scale = own.reduce(
            (all, { pulls: [pull] }) => all + Math.hypot(...pull.force) * (pull.lever + 1e-3),
            0,
          );
          const moment = own.reduce((sum, entry) => sum + entry.moment, 0);
          expect(Math.abs(moment - part.moment)).toBeLessThan(1e-12 * scale);
        }
      }
    }
  });

  test('name of two lumps the one further to the leading edge leading, the one higher up upper', () => {
    const seen = new Set<unknown>();
    for (const { reading } of HEADS) {
      const { entries } = pullTally(reading, 0, 'lumps', null);
      entries.forEach(({ side, pulls, part }, i) => {
        const other = entries[i + 1];
        if (other?.part !== part || typeof side !== 'string' || side === 'whole') return;
        const [own, next] = [pulls[0].lump.p_G, other.pulls[0].lump.p_G];
        // Grip frame: y to the leading edge, z up (DEVELOPERS.md).
        const place = side === 'leading' || side === 'trailing' ? 1 : 2;
        const isFirst = side === 'leading' || side === 'upper';
        expect(own[place] > next[place], `${part} ${side}`).toBe(isFirst);
        seen.add(side).add(other.side);
      });
    }
    expect([...seen].toSorted()).toEqual(['leading', 'lower', 'trailing', 'upper']);
  });

  test('go with the square of the speed, and vanish with it', () => {
    const { reading } = HEADS[2];
    const full = pullTally(reading, 20, 'parts', 10_200);
    for (const [speedRpm, share] of [
      [0, 0],
      [2550, 1 / 16],
      [5100, 1 / 4],
      [12_240, 1.44],
    ] as const) {
      const tried = pullTally(reading, 20, 'parts', speedRpm);
      expect(Math.abs(tried.total)).toBeCloseTo(share * Math.abs(full.total), 12);
      tried.entries.forEach((entry, i) => {
        const [now, before] = [entry, full.entries[i] ?? entry].map(({ force }) =>
          Math.hypot(...force),
        );
        expect(now).toBeCloseTo(share * before, 9);
      });
      // Shares without a place, the air's and the rod's, follow it too; at rest they are left out.
      for (const { key, moment } of tried.entries) {
        const before = full.entries.find((entry) => entry.key === key);
        expect(moment, key).toBeCloseTo(share * (before?.moment ?? Number.NaN), 12);
      }
    }
    expect(full.entries.map(({ kind }) => kind)).toContain('air');
    // The reading's speed is the demo's own, 10 200 rpm.
    expect(full.total).toBeCloseTo(reading.momentAt(20), 12);
  });

  test('the words for which way: toward flat against the pitch, away from flat with it, up or down at flat', () => {
    expect(turnWay(-1, 10)).toBe('toFlat');
    expect(turnWay(1, -10)).toBe('toFlat');
    expect(turnWay(1, 10)).toBe('fromFlat');
    expect(turnWay(-1, -10)).toBe('fromFlat');
    expect([turnWay(1, 0), turnWay(-1, 0)]).toEqual(['up', 'down']);
    expect(turnWay(0, 10)).toBe('none');
    expect(turnWay(Number.NaN, 10)).toBe('unknown');
  });

  test('seen from outside the slowing is the same at every speed', () => {
    // 170 turns a second shown as one in six seconds.
    expect(slowness(10_200, 10_200)).toBeCloseTo(1020, 9);
    expect(slowness(3000, 10_200)).toBeCloseTo(1020, 9);
  });
});
