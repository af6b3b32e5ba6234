import { describe, expect, it } from 'vitest';
import type { TravelEnds } from '../../../src/design/forces/travel';
import { anglesOf, judgeHead, type Verdict, type VerdictSource } from '../../../src/design/verdict';
import { inertialEquilibria } from '../../../src/engine/feathering/equilibria';
import {
  COS1,
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
  SIN1,
} from '../../../src/engine/feathering/harmonics';
import {
  createLinkState,
  type Linkage,
  linkState,
  pushRodForce,
} from '../../../src/engine/linkage/linkage';
import { overCentreAngles } from '../../../src/engine/linkage/reach';
import { createMoments, JYY, JYZ, JZZ, M, SY, SZ } from '../../../src/engine/mass/moments';
import { degreesFromRadians, radians, radiansFromDegrees } from '../../../src/engine/units';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { verdictText } from '../../../src/state/words/verdictText';

const QUARTER = radians(Math.PI / 2);
const SPEED = 1047.197551;

interface Head {
  readonly grams?: number;
  /** Second moments in g mm^2. */
  readonly along?: number;
  readonly across?: number;
  readonly product?: number;
  readonly arm?: readonly [number, number] | null;
  readonly speed?: number;
  readonly hidden?: number;
  readonly parts?: number;
  /** First moment along the chord, g mm, and torque offset, mm. */
  readonly ahead?: number;
  readonly offset?: number;
  readonly lifted?: number;
  readonly ends?: TravelEnds | null;
  /** Friction, N m; known where it is given. */
  readonly friction?: number;
}

/** A head by its numbers: mass, spread along the chord and along the bolt, and the ball's y and z in mm. */
function head(options: Head): VerdictSource {
  const totals = createMoments();
  totals[M] = (options.grams ?? 10) / 1000;
  totals[JYY] = (options.along ?? 0) * 1e-9;
  totals[JZZ] = (options.across ?? 0) * 1e-9;
  totals[JYZ] = (options.product ?? 0) * 1e-9;
  const speed = options.speed ?? SPEED;
  totals[SZ] = (options.lifted ?? 0) * 1e-6;
  totals[SY] = (options.ahead ?? 0) * 1e-6;
  const torqueOffset = (options.offset ?? 0) / 1000;
  const rotor = { angularSpeed: speed, torqueOffset, precone: radians(0) };
  const harmonics = featheringHarmonics(totals, rotor, createHarmonics());
  const arm = options.arm === undefined ? ([17, 0] as const) : options.arm;
  const linkage: Linkage | null = arm && {
    ball_G: [0, arm[0] / 1000, arm[1] / 1000],
    side: -1,
    length: null,
    sliderX: 0,
    sliderY: 0,
    rod: null,
  };
  const overCentreDeg = linkage
    ? overCentreAngles(linkage, rotor, radians(-QUARTER), QUARTER).map(degreesFromRadians)
    : [];
  const state = createLinkState();
  const momentAt = (pitchDeg: number) => featheringMoment(harmonics, radiansFromDegrees(pitchDeg));
  return {
    partCount: options.parts ?? 3,
    hiddenCount: options.hidden ?? 0,
    spins: speed !== 0,
    hasArm: linkage !== null,
    noLever: arm?.[0] === 0 && arm[1] === 0,
    ends: linkage && (options.ends ?? endsOf(overCentreDeg)),
    frictionKnown: options.friction !== undefined,
    frictionAt: () => options.friction ?? 0,
    totals,
    angularSpeed: speed,
    equilibria: inertialEquilibria(harmonics, radians(-QUARTER), QUARTER, 1),
    overCentreDeg,
    usedPitchDeg: 20,
    offAxisMoment: Math.hypot(harmonics[SIN1], harmonics[COS1]),
    momentAt,
    forceOf: (moment, pitchDeg) =>
      linkage &&
      pushRodForce(moment, linkState(linkage, rotor, radiansFromDegrees(pitchDeg), state)),
  };
}

function endsOf(overCentreDeg: readonly number[]): TravelEnds {
  const end = (deg: number, open: number) =>
    ({ deg, why: deg === open ? 'open' : 'overCentre' }) as const;
  const below = overCentreDeg.filter((deg) => deg < 0);
  const above = overCentreDeg.filter((deg) => deg > 0);
  return { low: end(Math.max(-90, ...below), -90), high: end(Math.min(90, ...above), 90) };
}

function words(options: Head, units = METRIC_UNITS) {
  const source = head(options);
  return verdictText(judgeHead(source), anglesOf(source.equilibria, 'stable'), units);
}
function judged<K extends Verdict['kind']>(options: Head, kind: K) {
  const verdict = judgeHead(head(options));
  expect(verdict.kind).toBe(kind);
  return verdict as Extract<Verdict, { kind: K }>;
}

describe('the verdict of a head with torque offset', () => {
  it('is driven, not fleeing, where the moment has one sign at every pitch in use', () => {
    const verdict = judged(
      { along: 400, across: 399, lifted: -20, ahead: -3, offset: 5 },
      'driven',
    );
    expect(verdict.sign).toBe(1);
    const { detail } = words({ along: 400, across: 399, lifted: -20, ahead: -3, offset: 5 });
    expect(detail).toContain('Torque offset and precone add up to');
  });
});

describe('the verdict', () => {
  it('has nothing to judge without parts, without mass, or at rest', () => {
    expect(judgeHead(head({ parts: 0 })).kind).toBe('noParts');
    expect(judgeHead(head({ grams: 0, hidden: 3 })).kind).toBe('noMass');
    expect(judgeHead(head({ along: 700, speed: 0 })).kind).toBe('standsStill');
    for (const options of [{ parts: 0 }, { grams: 0 }, { speed: 0 }]) {
      expect(words(options).line).not.toBe('');
      expect(words(options).hold).toBe('\u2013');
    }
  });

  it('says that a round head stays where it is put', () => {
    expect(judged({ along: 400, across: 400 }, 'stays').by).toBe('balance');
    expect(words({ along: 400, across: 400 })).toMatchObject({
      rest: 'anywhere',
      difference: '0\u00a0g\u00a0mm\u00b2',
    });
  });

  it('says that a blade-like head centres itself, hard when the force is large, with the force both ways', () => {
    // M(20 deg) = W^2 A sin 40 / 2, at 17 mm cos 20: hand formula.
    const A = 700e-9;
    const force =
      (SPEED ** 2 * A * Math.sin((40 * Math.PI) / 180)) / 2 / (0.017 * Math.cos(Math.PI / 9));
    const verdict = judged({ along: 750, across: 50 }, 'centres');
    expect(verdict.restDeg).toBeCloseTo(0, 9);
    expect(verdict.hold?.size).toBeCloseTo(force, 6);
    expect(verdict.hard).toBe(true);
    expect(judged({ along: 250, across: 50 }, 'centres').hard).toBe(false);
    const text = words({ along: 750, across: 50 });
    expect(text.line).toBe(
      `Centres itself hard. ${force.toFixed(1)}\u00a0N to hold \u00b120\u00b0.`,
    );
    expect(text.detail).toBe(
      'Add weight along the bolt: 700\u00a0g\u00a0mm\u00b2 short of neutral.',
    );
    expect(text.hold).toBe(`${force.toFixed(1)}\u00a0N`);
  });

  it('speaks in ounces-force where those are shown', () => {
    expect(words({ along: 750, across: 50 }, INCH_UNITS).hold).toContain('ozf');
    expect(words({ along: 750, across: 50 }, INCH_UNITS).detail).toContain('oz\u00a0in\u00b2');
  });

  it('says that a bolt-like head flees flat pitch and where it runs to', () => {
    const verdict = judged({ along: 50, across: 750, arm: [-17, 4] }, 'flees');
    expect(verdict.fleeDeg).toBeCloseTo(0, 9);
    expect(verdict.below).toBeCloseTo(-90, 6);
    expect(verdict.above).toBeCloseTo(90, 6);
    const { line, detail } = words({ along: 50, across: 750, arm: [-17, 4] });
    expect(line).toMatch(
      /^Flees flat pitch: jams at \u221276\.8\u00b0 or runs to 90\.0\u00b0\. [\d.]+\u00a0N to hold \u00b120\u00b0\.$/,
    );
    expect(words({ along: 50, across: 750 }).line).toMatch(
      /^Flees flat pitch: runs to \u00b190\u00b0\./,
    );
    expect(detail).toBe('Too much weight along the bolt: 700\u00a0g\u00a0mm\u00b2 past neutral.');
  });

  it('says beyond 90 degrees where the far rest angle lies outside the half turn shown', () => {
    const verdict = judged({ along: 50, across: 750, product: 100 }, 'flees');
    // tan 2t = -2 J_yz / (J_yy - J_zz)
    expect(verdict.fleeDeg).toBeCloseTo((Math.atan2(200, 700) * 90) / Math.PI, 6);
    expect(verdict.above).toBeNull();
    expect(verdict.below).toBeCloseTo(verdict.fleeDeg - 90, 6);
    expect(words({ along: 50, across: 750, product: 100 }).line).toContain('or beyond 90\u00b0');
  });

  it('says where a tilted head rests, and how much lies off the chord plane', () => {
    const verdict = judged({ along: 750, across: 50, product: -200 }, 'tilted');
    expect(verdict.restDeg).toBeCloseTo((Math.atan2(400, 700) * 90) / Math.PI, 6);
    expect(words({ along: 750, across: 50, product: -200 }).detail).toBe(
      'Add weight along the bolt: 700\u00a0g\u00a0mm\u00b2 short of neutral. Off the chord plane: \u2212200\u00a0g\u00a0mm\u00b2 of product of inertia.',
    );
  });

  it('calls neutral what the drag of a linkage holds all over the pitch in use, not only at its ends', () => {
    expect(judged({ along: 420, across: 400 }, 'stays').by).toBe('usualDrag');
    expect(words({ along: 420, across: 400 }).line).toMatch(
      /^Stays where it is put: at most 0\.\d+\u00a0N up to \u00b120\u00b0, within the drag of a small linkage\.$/,
    );
    expect(judgeHead(head({ along: 440, across: 400, product: 20 })).kind).not.toBe('stays');
  });

  it('judges by the moment where there is no arm', () => {
    const verdict = judged({ along: 750, across: 50, arm: null }, 'centres');
    expect(verdict.hold?.kind).toBe('moment');
    expect(words({ along: 750, across: 50, arm: null })).toMatchObject({ overCentre: 'no arm' });
    expect(judgeHead(head({ along: 400, across: 395, arm: null })).kind).toBe('stays');
  });

  it('warns where the arm goes over centre within the pitch in use', () => {
    const verdict = judged({ along: 750, across: 50, arm: [4, 14] }, 'centres');
    expect(verdict.overCentreInUse).toBe(true);
    expect(words({ along: 750, across: 50, arm: [4, 14] }).line).toContain(
      'within the pitch in use',
    );
  });

  it('stays where friction that is known holds it, and names both', () => {
    // 20 g mm^2: W^2 A sin 40 / 2 = 0.00705 N m at 20 degrees.
    const options = { along: 420, across: 400, friction: 0.008 };
    expect(judged(options, 'stays').by).toBe('friction');
    expect(words(options).line).toMatch(
      /^Stays where it is put: at most 0\.441\u00a0N up to \u00b120\u00b0, and friction holds up to 0\.501\u00a0N\.$/,
    );
    // Known and too small: what a small linkage usually has is not taken in its place.
    expect(judgeHead(head({ ...options, friction: 0.006 })).kind).toBe('centres');
    expect(judgeHead(head({ ...options, friction: 0 })).kind).toBe('centres');
  });

  it('is driven toward a rest angle beyond the pitch in use where it meets no flee angle within it', () => {
    // Flees from 30 degrees up, rests 90 degrees below: within 20 degrees it is driven down only.
    const product = (700 / 2) * Math.tan(Math.PI / 3);
    const verdict = judged({ along: 50, across: 750, product }, 'driven');
    expect(verdict.sign).toBe(-1);
    expect(verdict.toDeg).toBeCloseTo(-60, 6);
    expect(words({ along: 50, across: 750, product }).line).toContain(
      'leading edge down: runs to \u221260.0\u00b0',
    );
  });

  it('says that no rod can hold a ball on the axis, and that a rod is too short', () => {
    expect(words({ along: 750, across: 50, arm: [0, 0] }).line).toBe(
      'The ball lies on the feathering axis: no push rod can hold the grip.',
    );
    const short = { ...head({ along: 750, across: 50 }), ends: null };
    expect(judgeHead(short).kind).toBe('noReach');
  });

  it('tells the stop and the end of the reach that it runs into', () => {
    const ends = { low: { deg: -35, why: 'stop' }, high: { deg: 41, why: 'unreachable' } } as const;
    const { line } = words({ along: 50, across: 750, ends });
    expect(line).toContain('runs to the stop at \u221235.0\u00b0 or jams at 41.0\u00b0.');
    const near = { low: { deg: -15, why: 'stop' }, high: { deg: 12, why: 'unreachable' } } as const;
    const centring = words({ along: 750, across: 50, ends: near }).line;
    expect(centring).toContain('The slider stops it at \u221215.0\u00b0.');
    expect(centring).toContain('The push rod reaches no further than 12.0\u00b0: it jams there.');
    expect(line).not.toContain('over centre');
    // Well beyond the pitch in use and not run into: not worth a word.
    expect(words({ along: 750, across: 50, ends }).line).not.toContain('stops');
  });

  it('tells of hidden parts', () => {
    expect(words({ along: 750, across: 50, hidden: 2 }).detail).toContain('2 hidden parts');
  });
});
