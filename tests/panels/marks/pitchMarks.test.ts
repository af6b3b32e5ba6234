import { describe, expect, it } from 'vitest';
import { beyondOverCentre } from '../../../src/panels/marks/pitchMarks';

describe('pitches beyond over-centre', () => {
  it('reach from the lock to the end of the range, away from flat pitch', () => {
    expect(beyondOverCentre([76])).toEqual([{ fromDeg: 76, toDeg: 90 }]);
    expect(beyondOverCentre([-52, 52])).toEqual([
      { fromDeg: -90, toDeg: -52 },
      { fromDeg: 52, toDeg: 90 },
    ]);
  });
  it('are none without an arm, or where it locks at the very end', () => {
    expect(beyondOverCentre([])).toEqual([]);
    expect(beyondOverCentre([-90, 90])).toEqual([]);
  });
});
