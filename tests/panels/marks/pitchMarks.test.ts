import { describe, expect, it } from 'vitest';
import { closedSpans } from '../../../src/state/closedSpans';
import type { LinkageReading } from '../../../src/state/reading';

const linkage = (more: Partial<LinkageReading>) =>
  ({ reach: 0.015, unreachableDeg: [], ends: null, ...more }) as LinkageReading;
const end = (deg: number, why: 'stop' | 'overCentre' | 'unreachable' | 'open') => ({ deg, why });

describe('pitches that cannot be used', () => {
  it('reach from what ends the pitch to the end of the range, away from flat', () => {
    const ends = { low: end(-52, 'overCentre'), high: end(41, 'unreachable') };
    expect(closedSpans(linkage({ ends }))).toEqual([
      { fromDeg: -90, toDeg: -52, why: 'overCentre', edgeDeg: -52 },
      { fromDeg: 41, toDeg: 90, why: 'unreachable', edgeDeg: 41 },
    ]);
  });
  it('are none without an arm, where nothing ends it, or where it ends with the range', () => {
    expect(closedSpans(null)).toEqual([]);
    const open = { low: end(-90, 'open'), high: end(90, 'open') };
    expect(closedSpans(linkage({ ends: open }))).toEqual([]);
    const last = { low: end(-90, 'overCentre'), high: end(90, 'overCentre') };
    expect(closedSpans(linkage({ ends: last }))).toEqual([]);
  });
  it('are the rod\u2019s own where flat pitch is out of its reach', () => {
    expect(closedSpans(linkage({ unreachableDeg: [[-90, 12]] }))).toEqual([
      { fromDeg: -90, toDeg: 12, why: 'unreachable', edgeDeg: 12 },
    ]);
  });
});
