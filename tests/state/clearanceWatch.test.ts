import { describe, expect, it } from 'vitest';
import type { HeadClearance } from '../../src/design/clearance/clearanceTypes';
import type { Part } from '../../src/design/design';
import { clearanceWatch } from '../../src/state/clearanceWatch';
import { createSession } from '../../src/state/createSession';
import { designOf, partOf } from '../design/designs';

const BAR = partOf('cylinder', 'bar', {
  diameterMm: 14,
  lengthMm: 40,
  pose: { positionMm: [40, 0, 0], rotationDeg: [0, 90, 0] },
});
const CASE = partOf('keepOut', 'case', {
  pose: { positionMm: [0, 0, -10], rotationDeg: [0, 0, 0] },
});

/** A session that draws a frame after every change. */
function session(parts: readonly Part[] = [BAR, CASE]) {
  return createSession(designOf(parts), (call) => call());
}

describe('the clearance under a drag', () => {
  it('follows the part that is dragged, and tells of the overlap at once', () => {
    const made = session();
    const told: HeadClearance[] = [];
    const stop = clearanceWatch(made).subscribe((found) => told.push(found));
    expect(told.at(-1)?.pairs[0].gap).toBeCloseTo(0.003, 4);
    const hold = made.actions.gesture.begin();
    for (const diameterMm of [15, 17, 21])
      made.actions.setParameter('bar', 'diameterMm', diameterMm);
    hold.end();
    made.live.flush();
    // 10 mm down to the plane, 10.5 mm of radius.
    const found = made.live.reading.clearance();
    expect(found.pairs[0].gap).toBeCloseTo(-0.0005, 4);
    expect(found.pairs[0].meeting).toBe('cut');
    stop();
  });

  it('is looked at no longer once nobody listens', () => {
    const made = session();
    let told = 0;
    const stop = clearanceWatch(made).subscribe(() => told++);
    stop();
    const before = told;
    made.actions.setParameter('bar', 'diameterMm', 12);
    made.live.flush();
    expect(told).toBe(before);
  });

  it('keeps the wanted gap in the design, one undo step each', () => {
    const made = session();
    expect(made.live.reading.clearance().wanted).toBe(0.001);
    expect(made.actions.setSection('clearance', { wantedGapMm: 2.5 }).ok).toBe(true);
    made.live.flush();
    expect(made.live.reading.clearance().wanted).toBe(0.0025);
    expect(made.actions.setSection('clearance', { wantedGapMm: -1 }).ok).toBe(false);
    made.actions.undo();
    made.live.flush();
    expect(made.live.reading.clearance().wanted).toBe(0.001);
  });

  it('goes on when a body from a mesh becomes a keep-out and a body again', () => {
    const body = partOf('meshBody', 'm', {
      pose: { positionMm: [0, 0, -40], rotationDeg: [0, 0, 0] },
    });
    const made = session([BAR, body]);
    expect(made.live.reading.clearance().pairs).toEqual([]);
    expect(made.actions.recastPart('m').ok).toBe(true);
    made.live.flush();
    // A cube of 10 mm about z = -40: its upper face 28 mm under the bar's lowest line, beside it along x.
    const [pair] = made.live.reading.clearance().pairs;
    expect([pair.part, pair.keepOut]).toEqual(['bar', 'm']);
    // The shaft turns the bar past it: its near end at x = 20 is 20 - 5 sqrt(2) away seen along the shaft.
    expect(pair.gap).toBeGreaterThan(0.028);
    expect(pair.gap - pair.error).toBeLessThan(Math.hypot(0.028, 0.02 - 0.005 * Math.SQRT2) + 1e-6);
    expect(made.actions.recastPart('m').ok).toBe(true);
    made.actions.undo();
    made.live.flush();
    expect(made.live.reading.part('m')?.part.kind).toBe('keepOut');
    expect(made.actions.recastPart('bar').ok).toBe(false);
  });
});
