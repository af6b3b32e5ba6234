import { describe, expect, it } from 'vitest';
import { spreadEllipse } from '../../../src/engine/mass/inertia';
import { createMoments, JYY, JZZ, M } from '../../../src/engine/mass/moments';
import { radiansFromDegrees } from '../../../src/engine/units';
import { axisPattern, dashPattern, dashPolyline, SOLID } from '../../../src/scene/maths/dashes';
import { ELLIPSE_SCALE, fillEllipse, spreadKind } from '../../../src/scene/maths/ellipse';
import { measureBoxes, START_EXTENT, steadyExtent } from '../../../src/scene/maths/extent';
import { ghostChords } from '../../../src/scene/maths/ghosts';
import { niceAbove, niceBelow, steadyScale } from '../../../src/scene/maths/niceScale';

describe('ghost chords', () => {
  const extent = { inboard: 40, outboard: 130, leading: 10, trailing: -18 };
  it('lie at the rest and flee angles, chord from leading to trailing edge', () => {
    const ghosts = ghostChords(
      {
        kind: 'found',
        roots: [
          { pitch: radiansFromDegrees(0), kind: 'stable', stiffness: 1 },
          { pitch: radiansFromDegrees(90), kind: 'unstable', stiffness: -1 },
        ],
      },
      extent,
    );
    expect(ghosts.map(({ kind }) => kind)).toEqual(['stable', 'unstable']);
    expect(ghosts[0].corners[0]).toEqual([40, 10, 0]);
    expect(ghosts[0].corners[2]).toEqual([130, -18, -0]);
    expect(ghosts[1].corners[1][2]).toBeCloseTo(10, 12);
    expect(ghosts[1].pitchDeg).toBeCloseTo(90, 12);
  });
  it('are none where the head is neutral', () => {
    expect(ghostChords({ kind: 'neutral' }, extent)).toHaveLength(0);
  });
});

describe('spread ellipse', () => {
  function spread(yy: number, zz: number) {
    const moments = createMoments();
    moments[M] = 0.01;
    moments[JYY] = yy;
    moments[JZZ] = zz;
    const ellipse = spreadEllipse(moments);
    if (!ellipse) throw new Error('no ellipse');
    return { ellipse, kind: spreadKind(ellipse, moments) };
  }
  it('is named by the way its long axis lies, and round within two per cent', () => {
    expect(spread(4e-7, 1e-7).kind).toBe('centres');
    expect(spread(1e-7, 4e-7).kind).toBe('flees');
    expect(spread(1e-7, 1.02e-7).kind).toBe('round');
  });
  it('is drawn at twice the root-mean-square distances, in millimetres', () => {
    const { ellipse } = spread(4e-7, 1e-7);
    const points = new Float32Array(12);
    fillEllipse(points, 4, ellipse);
    expect(points[1]).toBeCloseTo(ELLIPSE_SCALE * Math.sqrt(4e-7 / 0.01) * 1000, 3);
    expect(points[5]).toBeCloseTo(ELLIPSE_SCALE * Math.sqrt(1e-7 / 0.01) * 1000, 3);
  });
});

describe('dashes', () => {
  const length = (strokes: readonly number[]) => {
    let sum = 0;
    for (let i = 0; i < strokes.length; i += 6) sum += Math.abs(strokes[i + 3] - strokes[i]);
    return sum;
  };
  it('of no pattern are the whole line', () => {
    const strokes: number[] = [];
    dashPolyline(
      strokes,
      [
        [0, 0, 0],
        [5, 0, 0],
        [5, 5, 0],
      ],
      SOLID,
    );
    expect(strokes).toHaveLength(12);
  });
  it('cover the pattern\u2019s share of the line', () => {
    const strokes: number[] = [];
    dashPolyline(
      strokes,
      [
        [0, 0, 0],
        [180, 0, 0],
      ],
      dashPattern(1),
    );
    expect(length(strokes)).toBeCloseTo(100, 6);
    const axis: number[] = [];
    dashPolyline(
      axis,
      [
        [0, 0, 0],
        [490, 0, 0],
      ],
      axisPattern(1),
    );
    expect(length(axis)).toBeCloseTo(350, 6);
  });
  it('run on round a corner', () => {
    const strokes: number[] = [];
    dashPolyline(
      strokes,
      [
        [0, 0, 0],
        [1.5, 0, 0],
        [1.5, 1, 0],
      ],
      [2, 1],
    );
    expect(strokes).toEqual([0, 0, 0, 1.5, 0, 0, 1.5, 0, 0, 1.5, 0.5, 0]);
  });
  it('of a line of no length are none', () => {
    const strokes: number[] = [];
    dashPolyline(
      strokes,
      [
        [1, 1, 1],
        [1, 1, 1],
      ],
      dashPattern(1),
    );
    expect(strokes).toHaveLength(0);
  });
});

describe('scales', () => {
  it('are 1, 2 or 5 times a power of ten, not below or not above', () => {
    expect([0.03, 1, 1.01, 2, 4.2, 51].map(niceAbove)).toEqual([0.05, 1, 2, 2, 5, 100]);
    expect([0.03, 1, 1.9, 2, 4.9, 51].map(niceBelow)).toEqual([0.02, 1, 1, 2, 2, 50]);
    expect(niceAbove(0)).toBe(1);
  });
  it('grow at once and come down only after the drag, when much too large', () => {
    expect(steadyScale(0, 7, false)).toBe(10);
    expect(steadyScale(10, 11, true)).toBe(20);
    expect(steadyScale(20, 5, true)).toBe(20);
    expect(steadyScale(20, 8, false)).toBe(20);
    expect(steadyScale(20, 5, false)).toBe(5);
    expect(steadyScale(20, 0, false)).toBe(20);
  });
});

describe('measures of the head', () => {
  const blade = { min: [30, -18, -2], max: [130, 10, 2] } as const;
  const bolt = { min: [35, -3, -12], max: [41, 3, 14] } as const;
  it('take the chord from what reaches farthest out', () => {
    const extent = measureBoxes([bolt, blade]);
    expect(extent.outboard).toBe(130);
    expect(extent.height).toBe(14);
    expect(extent.clearance).toBe(18);
    expect(extent.chord).toEqual({ inboard: 30, outboard: 130, leading: 10, trailing: -18 });
    expect(measureBoxes([])).toBe(START_EXTENT);
  });
  it('follow growth, but shrink only when the drag is over', () => {
    const wide = steadyExtent(START_EXTENT, measureBoxes([bolt, blade]), false);
    const narrow = measureBoxes([bolt]);
    expect(steadyExtent(wide, narrow, true).outboard).toBe(wide.outboard);
    expect(steadyExtent(wide, narrow, false).outboard).toBeLessThan(wide.outboard);
    expect(steadyExtent(wide, measureBoxes([bolt, blade]), false)).toEqual(wide);
  });
});
