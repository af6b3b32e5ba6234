import { describe, expect, it } from 'vitest';
import { previewReadings } from '../../../src/bench/readings/preview';
import type { Reading } from '../../../src/bench/readings/types';
import { steadyReadings } from '../../../src/bench/steadyReadings';
import { radiansFromDegrees } from '../../../src/engine/units';

const LEVELS = [-20, -10, 0, 10, 0];
const PER_LEVEL = 400;

/** A hundred samples a second, four seconds at each pitch; the force overshoots for 0.2 s after each step. */
function log(columns: 'pitch' | 'timeOnly'): readonly Reading[] {
  const lines = LEVELS.flatMap((deg, step) =>
    Array.from({ length: PER_LEVEL }, (_, k) => {
      const time = ((step * PER_LEVEL + k) / 100).toFixed(2);
      const force = deg / 10 + (k < 20 ? 5 : 0);
      return columns === 'pitch' ? `${time},${deg},${force}` : `${time},${force}`;
    }),
  );
  const head = columns === 'pitch' ? 'time [s],pitch [deg],force [N]' : 'time [s],force [N]';
  const preview = previewReadings(`${head}\n${lines.join('\n')}\n`);
  if (!preview.ok || !preview.value.derived.ok) throw new Error('not read');
  return preview.value.derived.value.readings;
}

describe('a log over time', () => {
  it('is one reading a pitch step, settled, with the way it was gone', () => {
    const found = steadyReadings(log('pitch'));
    expect(found?.of).toBe(LEVELS.length * PER_LEVEL);
    expect(found?.readings.map(({ pitch }) => pitch)).toEqual(LEVELS.map(radiansFromDegrees));
    expect(found?.readings.map(({ force }) => force)).toEqual(LEVELS.map((deg) => deg / 10));
    expect(found?.readings.map(({ travel }) => travel)).toEqual([null, 'up', 'up', 'up', 'down']);
  });

  it('without pitch or scale stays as it is', () => {
    expect(steadyReadings(log('timeOnly'))).toBeNull();
  });

  it('is not made of a sheet that was filled by hand', () => {
    expect(steadyReadings(log('pitch').slice(0, 9))).toBeNull();
  });
});
