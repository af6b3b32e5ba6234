import { describe, expect, it } from 'vitest';
import {
  arcPath,
  dialLayout,
  fittingScale,
  pitchOfPoint,
  pointAt,
} from '../../../src/ui/drawn/dialLayout';

const layout = dialLayout(320, 300);

describe('the dial seen from the tip', () => {
  it('turns positive pitch up on the side of the leading edge, which lies to the right', () => {
    const [x, y] = pointAt(layout, 30, layout.radius);
    expect(x).toBeGreaterThan(layout.centreX);
    expect(y).toBeLessThan(layout.centreY);
  });

  it('reads back the pitch that it drew', () => {
    for (const pitch of [-90, -12.3, 0, 45, 90]) {
      const [x, y] = pointAt(layout, pitch, 77);
      expect(pitchOfPoint(layout, x, y, 0)).toBeCloseTo(pitch, 9);
    }
  });

  it('stops at the end that a drag went past', () => {
    const [x, y] = [layout.centreX - 50, layout.centreY + 1];
    expect(pitchOfPoint(layout, x, y, 80)).toBe(90);
    expect(pitchOfPoint(layout, x, y, -80)).toBe(-90);
  });

  it('keeps ring and labels inside its room', () => {
    for (const [width, height] of [
      [260, 240],
      [348, 510],
      [600, 220],
    ]) {
      const { centreX, centreY, radius } = dialLayout(width, height);
      expect(centreX - radius).toBeGreaterThanOrEqual(0);
      expect(centreX + radius).toBeLessThanOrEqual(width - 50);
      expect(centreY - radius).toBeGreaterThanOrEqual(20);
    }
  });

  it('draws arcs the short way round', () => {
    expect(arcPath(layout, 0, 30, 100)).toContain('A100 100 0 0 0 ');
    expect(arcPath(layout, 30, 0, 100)).toContain('A100 100 0 0 1 ');
  });
});

describe('the scale of the shadows', () => {
  it('fits what there is at first', () => {
    expect(fittingScale(0, 0.02, 100, false)).toBeCloseTo(4000, 9);
  });
  it('stays while a part grows inside the ring', () => {
    expect(fittingScale(4000, 0.0225, 100, true)).toBe(4000);
  });
  it('gives way when a part would leave the ring', () => {
    expect(fittingScale(4000, 0.03, 100, true) * 0.03).toBeLessThanOrEqual(92);
  });
  it('grows again only when the hand is off', () => {
    expect(fittingScale(4000, 0.01, 100, true)).toBe(4000);
    expect(fittingScale(4000, 0.01, 100, false)).toBeCloseTo(8000, 9);
  });
});
