import { describe, expect, it } from 'vitest';
import { closedEdges, closedSpans } from '../../../src/state/closedSpans';
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
    // The end that has a reached angle behind it, though flat is nearer to the other.
    expect(closedSpans(linkage({ unreachableDeg: [[-90, 90]] }))).toHaveLength(1);
    expect(
      closedSpans(
        linkage({
          unreachableDeg: [
            [-20, 90],
            [-90, -60],
          ],
        }),
      ).map(({ edgeDeg }) => edgeDeg),
    ).toEqual([-20, -60]);
    expect(closedSpans(linkage({ unreachableDeg: [[-20, 30]] }))[0].edgeDeg).toBe(-20);
  });
  it('have no edge to be marked where nothing is reached at all', () => {
    expect(closedEdges(linkage({ unreachableDeg: [[-90, 90]] }))).toEqual([]);
    expect(closedEdges(linkage({ unreachableDeg: [[-90, 12]] }))).toHaveLength(1);
    const ends = { low: end(-52, 'overCentre'), high: end(41, 'unreachable') };
    expect(closedEdges(linkage({ ends }))).toEqual(closedSpans(linkage({ ends })));
  });
});
