import { describe, expect, it } from 'vitest';
import { judgeHead, type VerdictSource } from '../../src/design/verdict';
import type { Equilibria } from '../../src/engine/feathering/equilibria';
import { createMoments, JYY, JZZ, M } from '../../src/engine/mass/moments';
import { radiansFromDegrees } from '../../src/engine/units';

const LEVER = 0.015;
const USED = 20;

/** A head whose moment is -size sin 2t / sin 40: `size` N m at the 20 degrees in use. */
function head(size: number, more: Partial<VerdictSource> = {}): VerdictSource {
  const totals = createMoments();
  totals[M] = 0.02;
  totals[JYY] = 3e-6;
  totals[JZZ] = 1e-6;
  const at = (pitchDeg: number, kind: 'stable' | 'unstable') => ({
    pitch: radiansFromDegrees(pitchDeg),
    kind,
    stiffness: kind === 'stable' ? 1 : -1,
  });
  const flat = size > 0 ? 'stable' : 'unstable';
  const across = size > 0 ? 'unstable' : 'stable';
  const equilibria: Equilibria = {
    kind: 'found',
    roots: [at(-90, across), at(0, flat), at(90, across)],
  };
  const per = size / Math.sin(radiansFromDegrees(2 * USED));
  return {
    partCount: 3,
    hiddenCount: 0,
    spins: true,
    hasArm: true,
    noLever: false,
    totals,
    angularSpeed: 1000,
    equilibria,
    overCentreDeg: [-70, 70],
    ends: { low: { deg: -70, why: 'overCentre' }, high: { deg: 70, why: 'overCentre' } },
    usedPitchDeg: USED,
    offAxisMoment: 0,
    frictionKnown: false,
    frictionAt: () => 0,
    momentAt: (deg) => -per * Math.sin(radiansFromDegrees(2 * deg)),
    forceOf: (moment, deg) => -moment / (LEVER * Math.cos(radiansFromDegrees(deg))),
    ...more,
  };
}

/** The moment that makes a push-rod force at the pitch in use. */
function momentOf(force: number): number {
  return force * LEVER * Math.cos(radiansFromDegrees(USED));
}

describe('the verdict on a head', () => {
  it('rests at flat where the moment drives back and flees where it drives away', () => {
    expect(judgeHead(head(0.1))).toMatchObject({ kind: 'centres', restDeg: 0 });
    expect(judgeHead(head(-0.1))).toMatchObject({
      kind: 'flees',
      fleeDeg: 0,
      flat: true,
      below: expect.closeTo(-90, 9),
      above: expect.closeTo(90, 9),
    });
  });

  // The limits are the project's own: 0.6 N is the upper end of the drag of a linkage (common practice), 5 N a hand's.
  it('is hard to hold from 5 N at the push rod, and light below 0.6 N', () => {
    expect(judgeHead(head(momentOf(4.9)))).toMatchObject({ kind: 'centres', hard: false });
    expect(judgeHead(head(momentOf(5.1)))).toMatchObject({ kind: 'centres', hard: true });
    expect(judgeHead(head(momentOf(0.61)))).toMatchObject({ kind: 'centres', hard: false });
    expect(judgeHead(head(momentOf(0.59)))).toMatchObject({ kind: 'stays', by: 'usualDrag' });
  });

  it('names the force at the pitch in use', () => {
    const { hold } = judgeHead(head(momentOf(3))) as { hold: { kind: string; size: number } };
    expect(hold).toEqual({ kind: 'force', size: expect.closeTo(3, 12) });
  });

  // Without an arm: shares of W^2 (J_yy + J_zz) / 2 = 1e6 x 4e-6 / 2 = 2 N m.
  it('without an arm is judged by the share of the moment that its mass could make', () => {
    const bare = { hasArm: false, ends: null, forceOf: () => null };
    const by = (size: number) => judgeHead(head(size, bare));
    expect(by(0.049)).toMatchObject({ kind: 'stays', by: 'usualDrag' });
    expect(by(0.051)).toMatchObject({ kind: 'centres', hard: false });
    expect(by(0.39)).toMatchObject({ hard: false });
    expect(by(0.41)).toMatchObject({ hard: true, hold: { kind: 'moment' } });
  });

  it('stays where known friction is at least the moment everywhere in use', () => {
    const rubbing = (friction: number) =>
      judgeHead(head(0.1, { frictionKnown: true, frictionAt: () => friction }));
    expect(rubbing(0.1001)).toMatchObject({ kind: 'stays', by: 'friction' });
    expect(rubbing(0.0999)).toMatchObject({ kind: 'centres' });
    expect(judgeHead(head(momentOf(0.5), { frictionKnown: true }))).toMatchObject({
      kind: 'centres',
    });
  });

  it('says first what there is no verdict without', () => {
    expect(judgeHead(head(0.1, { partCount: 0 }))).toEqual({ kind: 'noParts' });
    expect(judgeHead(head(0.1, { totals: createMoments(), hiddenCount: 2 }))).toEqual({
      kind: 'noMass',
      hiddenCount: 2,
    });
    expect(judgeHead(head(0.1, { spins: false }))).toMatchObject({ kind: 'standsStill' });
    expect(judgeHead(head(0.1, { noLever: true }))).toMatchObject({ kind: 'noLever' });
    expect(judgeHead(head(0.1, { ends: null }))).toMatchObject({ kind: 'noReach' });
    expect(judgeHead(head(0.1, { equilibria: { kind: 'neutral' } }))).toMatchObject({
      kind: 'stays',
      by: 'balance',
    });
  });
});
