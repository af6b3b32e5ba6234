import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { radiansFromDegrees } from '../../../src/engine/units';
import { createSession } from '../../../src/state/createSession';
import { type HelpHead, helpHead } from '../../../src/state/help/helpHead';
import { TOPICS, type TopicId } from '../../../src/state/help/topics';
import type { Worked } from '../../../src/state/help/worked';
import { energyOf, inRotor, momentOf, type Point, pointsOf } from './pointHead';

function headOf(name: string, pitchDeg: number, change: (design: Design) => Design = (d) => d) {
  const text = readFileSync(
    new URL(`../../../assets/designs/${name}.json`, import.meta.url),
    'utf8',
  );
  const read = parseDesign(text);
  if (!read.ok) throw new Error(read.error.path);
  const session = createSession(change(read.value), (update) => update());
  session.actions.setPitch(pitchDeg);
  return helpHead(session);
}

/** Offset and precone, so that no term of a formula is zero by luck. */
function skewed(design: Design): Design {
  return { ...design, rotor: { ...design.rotor, torqueOffsetMm: 2.5, preconeDeg: 3 } };
}

/** Nothing but the mass, and no rod: then every formula of the spread is the whole. */
function massOnly(design: Design): Design {
  return { ...design, counted: { rodMass: false, air: false, friction: false } };
}

const HEADS: readonly (readonly [string, HelpHead])[] = [
  ['blade with ordinary bolt, as it opens', headOf('3-ordinary-bolt', 12)],
  ['the same weight on both sides, with offset and precone', headOf('5-both-sides', -8, skewed)],
];
const ALONE: readonly (readonly [string, HelpHead])[] = [
  ['blade with ordinary bolt, mass alone', headOf('3-ordinary-bolt', 12, massOnly)],
  ['long bolt without a blade, mass alone', headOf('2-long-bolt', -15, massOnly)],
];

/** Flats for round walls: a second moment loses twice (2 pi / 72)^2 / 6, 2.5e-3, of what is round. */
const MESH = 2.5e-3;

/** Made once a head: some ten thousand points. */
const made = new Map<HelpHead, readonly Point[]>();
function pointsOnce(head: HelpHead): readonly Point[] {
  const found = made.get(head) ?? pointsOf(head.model);
  made.set(head, found);
  return found;
}

function linesOf(id: TopicId, head: HelpHead): readonly Worked[] {
  const found = TOPICS[id].work?.(head);
  if (found?.kind !== 'worked') throw new Error(`${id}: ${found?.why ?? 'has no formula'}`);
  return found.lines;
}
const last = (id: TopicId, head: HelpHead) => linesOf(id, head).at(-1)?.result.value ?? Number.NaN;

/** What the page shows, from its own code for it. */
const PAGE: Partial<Record<TopicId, (head: HelpHead) => number>> = {
  speed: ({ reading }) => reading.rotor.angularSpeed,
  mass: ({ reading }) => reading.totals[0],
  difference: ({ reading }) => {
    const verdict = reading.verdict();
    return 'shortOfNeutral' in verdict ? verdict.shortOfNeutral : Number.NaN;
  },
  product: ({ reading }) => reading.totals[9],
  featheringMoment: ({ reading, pitchDeg }) => reading.momentAt(pitchDeg),
  pushRodForce: ({ reading, pitchDeg }) => reading.forceAt(pitchDeg) ?? Number.NaN,
  sliderForce: ({ reading, pitchDeg }) => reading.sliderAt(pitchDeg) ?? Number.NaN,
  servoTorque: ({ reading, pitchDeg }) => {
    const servo = reading.servoAt(pitchDeg);
    return servo.kind === 'holds' ? servo.torque : Number.NaN;
  },
  sliderTravel: ({ reading, pitchDeg }) => reading.linkage?.ratioAt(pitchDeg) ?? Number.NaN,
  axialPull: ({ reading, pitchDeg }) => reading.loadsAt(pitchDeg).axialPull,
  boltPull: ({ reading, pitchDeg }) => {
    const shear = reading.loadsAt(pitchDeg).bolts[0].checks.find(({ name }) => name === 'shear');
    return shear?.margin.value ?? Number.NaN;
  },
  firstLimit: ({ reading, pitchDeg }) => reading.loadsAt(pitchDeg).first?.limitRpm ?? Number.NaN,
  flapMoment: ({ reading, pitchDeg }) => {
    const { flap } = reading.loadsAt(pitchDeg);
    return flap.fromMass + (flap.fromThrust ?? 0);
  },
  unbalance: ({ reading }) => reading.balance().unbalance,
  balanceGrade: ({ reading }) => (reading.balance().grade?.value ?? Number.NaN) / 1000,
  shaftForce: ({ reading }) => reading.balance().shaftForce,
};

describe.each(HEADS)('the formulas of %s', (_, head) => {
  // Both sides are sums of a few dozen doubles: 1e-9 is far above their rounding and far below any other formula.
  it.each(Object.entries(PAGE) as [TopicId, (head: HelpHead) => number][])(
    'give the page\u2019s own number for %s',
    (id, page) => {
      const own = page(head);
      expect(Number.isFinite(own)).toBe(true);
      expect(Math.abs(last(id, head) - own)).toBeLessThanOrEqual(1e-9 * Math.abs(own) + 1e-18);
    },
  );

  it('give the page\u2019s friction, which is held at whole degrees and straight between', () => {
    const own = head.reading.friction.at(head.pitchDeg);
    expect(own).toBeGreaterThan(0);
    expect(Math.abs(last('friction', head) / own - 1)).toBeLessThan(2e-4);
  });

  it('give the pull and the bearing loads of the table of loads', () => {
    const { pulls, bearings } = head.reading.loadsAt(head.pitchDeg);
    const [line] = linesOf('pull', head);
    const own = pulls.find(({ id }) => head.reading.part(id)?.part.name === line.result.symbol);
    expect(line.result.value / (own?.pull ?? Number.NaN)).toBeCloseTo(1, 9);
    const shown = linesOf('bearingLoad', head).map(({ result }) => result.value);
    expect(shown.length).toBe(bearings.length);
    shown.forEach((value, i) => expect(value / bearings[i].rating.value).toBeCloseTo(1, 9));
  });

  it('give the moment that brute force over thousands of mass points gives', () => {
    const points = pointsOnce(head);
    const { rotor, totals } = head.reading;
    const pitch = radiansFromDegrees(head.pitchDeg);
    const mass = linesOf('featheringMoment', head)
      .slice(0, -1)
      .reduce((sum, { result }) => sum + result.value, 0);
    const scale = (rotor.angularSpeed ** 2 * (totals[5] + totals[6])) / 2;
    expect(Math.abs(mass - momentOf(points, rotor, pitch))).toBeLessThan(MESH * scale);
    const sums = points.reduce(
      (sum, { mass: m, at: [, y, z] }) => [sum[0] + m, sum[1] + m * y * y, sum[2] + m * z * z],
      [0, 0, 0],
    );
    expect(Math.abs(last('mass', head) / sums[0] - 1)).toBeLessThan(MESH);
    expect(Math.abs(last('difference', head) - (sums[1] - sums[2]))).toBeLessThan(
      MESH * (sums[1] + sums[2]),
    );
  });

  it('give the pull of the whole head that brute force gives', () => {
    const points = pointsOnce(head);
    const { rotor } = head.reading;
    const whole = points.reduce(
      (sum, point) => sum + point.mass * inRotor(point, rotor, head.pitch).X,
      0,
    );
    const [line] = linesOf('axialPull', head);
    const ofParts = Object.values(line.terms)
      .filter(({ symbol }) => symbol !== 'rod and air')
      .reduce((sum, { value }) => sum + value, 0);
    const brute = rotor.angularSpeed ** 2 * Math.cos(rotor.precone) * whole;
    expect(Math.abs(ofParts / brute - 1)).toBeLessThan(MESH);
  });
});

describe.each(ALONE)('where the mass alone counts, %s', (_, head) => {
  it('rests and flees where the formula says', () => {
    const { equilibria } = head.reading;
    if (equilibria.kind === 'neutral') throw new Error('neutral');
    for (const [id, kind] of [
      ['restAngle', 'stable'],
      ['fleeAngle', 'unstable'],
    ] as const) {
      const angles = equilibria.roots.filter((one) => one.kind === kind).map((one) => one.pitch);
      const [shown] = linesOf(id, head);
      // A quarter turn either way of flat may hold the angle and its opposite.
      expect(Math.min(...angles.map((angle) => Math.abs(angle - shown.result.value)))).toBeLessThan(
        1e-9,
      );
    }
  });

  it('has the energy that brute force gives', () => {
    const points = pointsOnce(head);
    const { rotor, totals } = head.reading;
    const brute = energyOf(points, rotor, head.pitch) - energyOf(points, rotor, 0);
    const scale = rotor.angularSpeed ** 2 * (totals[5] + totals[6]);
    expect(Math.abs(last('energy', head) - brute)).toBeLessThan(MESH * scale);
    expect(last('energy', head)).toBeCloseTo(head.reading.energyAt(head.pitchDeg), 12);
  });

  it('is as stiff at rest as the moment is steep there', () => {
    const [k] = linesOf('stiffness', head);
    const rest = head.reading.equilibria;
    if (rest.kind === 'neutral') throw new Error('neutral');
    const deg =
      (Object.values(k.terms).find((one) => one.symbol === '\u03b8_rest')?.value ?? 0) *
      (180 / Math.PI);
    const step = 0.01;
    const slope =
      (head.reading.momentAt(deg + step) - head.reading.momentAt(deg - step)) /
      radiansFromDegrees(2 * step);
    // A central difference of a sine of 2t: (2 h)^2 / 6 of it, 2e-8.
    expect(k.result.value / -slope).toBeCloseTo(1, 6);
  });
});

describe('formulas with known answers', () => {
  it('a thin plate in the chord plane swings once a turn, as textbooks of helicopters say (memory)', () => {
    const head = headOf('3-ordinary-bolt', 5, (design) => ({
      ...massOnly(design),
      parts: [
        {
          id: 'left',
          kind: 'pointMass',
          name: 'left',
          massGrams: 1,
          pose: { positionMm: [40, 14, 0], rotationDeg: [0, 0, 0] },
        },
        {
          id: 'right',
          kind: 'pointMass',
          name: 'right',
          massGrams: 1,
          pose: { positionMm: [40, -14, 0], rotationDeg: [0, 0, 0] },
        },
      ] as unknown as Design['parts'],
    }));
    expect(last('frequency', head)).toBeCloseTo(1, 12);
    expect(last('difference', head)).toBeCloseTo(2 * 1e-3 * 0.014 ** 2, 15);
    // 2 g at 14 mm take 3.92 g at 10 mm: (14 / 10)^2.
    expect(last('lumpToNeutral', head)).toBeCloseTo(3.92e-3, 12);
  });

  it('a gauge of 0.1 N steps is uncertain by 0.0289 N (JCGM 100, 4.3.7: a step over the root of twelve)', () => {
    const head = headOf('3-ordinary-bolt', 5, (design) => ({
      ...design,
      bench: { ...design.bench, gaugeStepN: 0.1 },
    }));
    expect(last('gaugeStep', head)).toBeCloseTo(0.0289, 4);
  });
});
