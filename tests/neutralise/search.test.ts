import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import { createMoments, JYY, JZZ, M } from '../../src/engine/mass/moments';
import { picksOf } from '../../src/neutralise/choices';
import { offersOf, suggestedKnobs } from '../../src/neutralise/offers';
import { combinationCount, requestFault, type SearchRequest } from '../../src/neutralise/request';
import { runSearch } from '../../src/neutralise/search';
import { TrialHead } from '../../src/neutralise/trialHead';
import { designOf } from '../design/designs';

/** The invented demo head with its ordinary bolt. */
function demo(name = '3-ordinary-bolt'): Design {
  const path = new URL(`../../assets/designs/${name}.json`, import.meta.url);
  const read = parseDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

const NUT_HEIGHT = { part: 'nut', field: 'heightMm' };
const HEAD = { part: 'bolt', field: 'extensionLengthMm' };

function request(change: Partial<SearchRequest> = {}): SearchRequest {
  return {
    design: demo(),
    wanted: { goal: { kind: 'neutral' }, speedsRpm: [10_200] },
    knobs: [{ ref: NUT_HEIGHT, min: 2.4, max: 20, step: 0.1 }],
    together: false,
    choices: [],
    weight: null,
    ...change,
  };
}

/** J_yy - J_zz of a list of parts, weighed afresh; NaN where a rule refuses it. */
function even(design: Design, parts: readonly Part[]): { even: number; mass: number } {
  const model = new HeadModel();
  if (!model.load({ ...design, parts }).ok) return { even: Number.NaN, mass: Number.NaN };
  const totals = model.totals(createMoments());
  return { even: totals[JYY] - totals[JZZ], mass: totals[M] };
}

describe('runSearch', () => {
  it('agrees with brute force over a small catalogue with continuous trim inside', () => {
    const design = demo();
    const rows = [
      { standard: 'ISO 4032', size: 'M3' },
      { standard: 'ISO 7040', size: 'M3' },
      { standard: 'ISO 4035', size: 'M3' },
    ];
    const found = runSearch(
      request({
        knobs: [{ ref: HEAD, min: 0, max: 22, step: 0 }],
        choices: [
          { kind: 'catalogue', part: 'nut', rows },
          { kind: 'count', part: 'washer-top', counts: [0, 1, 2, 3] },
          { kind: 'material', part: 'bolt', field: 'densityKgM3', materials: ['steel', 'brass'] },
        ],
      }),
    );
    // By hand: every nut, every count, both materials, the head's length by halving on the model itself.
    const expected: string[] = [];
    const nuts: (Part | null)[] = [null, ...rows.map((catalogue) => nutOf(design, catalogue))];
    for (const nut of nuts) {
      for (const count of [0, 1, 2, 3]) {
        for (const material of ['steel', 'brass']) {
          const parts = (extensionLengthMm: number) =>
            built(design, nut, count, material, extensionLengthMm);
          const at = (length: number) => even(design, parts(length)).even;
          let [low, high] = [0, 22];
          if (!(at(low) * at(high) < 0)) continue;
          for (let k = 0; k < 60; k++) {
            const middle = (low + high) / 2;
            if (at(low) * at(middle) <= 0) high = middle;
            else low = middle;
          }
          const mass = even(design, parts(low)).mass;
          expected.push(`${low.toFixed(6)} ${(1e3 * mass).toFixed(6)}`);
        }
      }
    }
    const got = found.answers
      .filter(({ settings }) => settings.length === 1)
      .map(
        ({ settings, report }) =>
          `${settings[0].exact.toFixed(6)} ${(1e3 * report.mass).toFixed(6)}`,
      );
    expect(expected).toHaveLength(32);
    expect(got.toSorted()).toEqual(expected.toSorted());
    // The lightest comes first among those that meet the goal.
    const lightest = Math.min(...expected.map((line) => Number(line.split(' ')[1])));
    expect(1e3 * found.answers[0].report.mass).toBeCloseTo(lightest, 6);
  });

  it('rounds to what can be made by the neighbour that leaves less', () => {
    const [answer] = runSearch(request()).answers;
    const [{ exact, made }] = answer.settings;
    const leaves = (heightMm: number) => {
      const parts = demo().parts.map((part) => (part.id === 'nut' ? { ...part, heightMm } : part));
      return Math.abs(even(demo(), parts as Part[]).even);
    };
    expect(Math.abs(made - exact)).toBeLessThan(0.1);
    expect(made * 10).toBeCloseTo(Math.round(made * 10), 9);
    const below = Math.floor(exact * 10) / 10;
    const best = leaves(below) < leaves(below + 0.1) ? below : below + 0.1;
    expect(made).toBeCloseTo(best, 9);
    expect(leaves(exact)).toBeLessThan(1e-9 * leaves(2.4));
  });

  it('sets a diameter to common bar and solves the length for each', () => {
    const found = runSearch(
      request({
        together: true,
        knobs: [
          { ref: NUT_HEIGHT, min: 2.4, max: 20, step: 0.1 },
          { ref: { part: 'nut', field: 'acrossMm' }, min: 6, max: 9, step: 'bars' },
        ],
      }),
    );
    const bars = found.answers
      .filter(({ make }) => make === 'turned')
      .map(({ settings }) => settings.find(({ ref }) => ref.field === 'acrossMm')?.made);
    expect(bars.toSorted()).toEqual([6, 6.5, 7, 8, 9]);
    // What is left is the off-plane ball's J_yz and the rounding to tenths.
    const turned = found.answers.filter(({ make }) => make === 'turned');
    expect(turned.every(({ left }) => left < 0.05)).toBe(true);
  });

  it('finds what can be bought without turning, and says how near it comes', () => {
    const found = runSearch(
      request({
        knobs: [],
        choices: [
          {
            kind: 'catalogue',
            part: 'nut',
            rows: [
              { standard: 'ISO 4032', size: 'M3' },
              { standard: 'ISO 7040', size: 'M3' },
            ],
          },
          { kind: 'count', part: 'washer-bottom', counts: [0, 2, 3, 4] },
        ],
      }),
    );
    const bought = found.answers.filter(({ make }) => make === 'bought');
    expect(bought.length).toBe(3 * 5 - 1);
    const [best] = bought;
    // The heaviest nut on the most washers comes nearest, and is still far off.
    expect(best.left).toBeGreaterThan(0.3);
    expect(best.left).toBeLessThan(1);
    // The lightest of those within a fiftieth of the nearest.
    expect(best.left - Math.min(...bought.map(({ left }) => left))).toBeLessThanOrEqual(0.02);
  });

  it('weight on one side loads the bearings more than the same effect on both', () => {
    const weight = {
      bolt: 'bolt',
      diametersMm: [8],
      materials: ['steel'],
      minMm: 0.5,
      maxMm: 20,
      stepMm: 0.1,
    } as const;
    const best = (side: 'boltEnd' | 'both') =>
      runSearch(request({ knobs: [], weight: { ...weight, side } })).answers[0];
    const [one, both] = [best('boltEnd'), best('both')];
    expect(one.added).toHaveLength(1);
    expect(both.added).toHaveLength(2);
    expect(both.report.limit?.use ?? 0).toBeLessThan(one.report.limit?.use ?? 0);
    // Both are equal and reach the goal.
    const lengths = both.parts
      .filter(({ id }) => both.added.includes(id))
      .map((part) => (part as { readonly lengthMm?: number }).lengthMm);
    expect(new Set(lengths).size).toBe(1);
    expect(both.left).toBeLessThan(0.05);
  });

  it('the least force over a range, air and friction in, is no more than neutral leaves', () => {
    const of = (goal: SearchRequest['wanted']['goal']) =>
      runSearch(request({ wanted: { goal, speedsRpm: [10_200] } })).answers[0];
    const squares = (holds: readonly (number | null)[]) =>
      holds.reduce<number>((sum, hold) => sum + (hold ?? 0) ** 2, 0);
    const GOAL = { kind: 'leastForce', fromDeg: -20, toDeg: 20 } as const;
    const least = of(GOAL);
    const neutral = of({ kind: 'neutral' });
    expect(squares(least.report.holds)).toBeLessThan(squares(neutral.report.holds));
    // No nut of the list of tenths leaves less, by the same sum over the range.
    const made = TrialHead.of(demo(), { goal: GOAL, speedsRpm: [10_200] }, [{ ref: NUT_HEIGHT }]);
    if (!made.ok) throw new Error(made.error.path);
    const residuals = new Float64Array(made.value.residualCount);
    const sum = (height: number) => {
      made.value.set([height]);
      made.value.residuals(residuals);
      return residuals.reduce((all, one) => all + one * one, 0);
    };
    const tenths = Array.from({ length: 150 }, (_, i) => sum(2.4 + i / 10));
    expect(sum(least.settings[0].exact)).toBeLessThanOrEqual(Math.min(...tenths));
    const servo = of({ kind: 'leastServo', fromDeg: -20, toDeg: 20 });
    // Slider and arms are nearly proportional to the push rod: nearly the same part.
    expect(Math.abs(servo.settings[0].exact - least.settings[0].exact)).toBeLessThan(0.3);
  });

  it('gentle centring rests where it was asked to, with the pull that was asked for', () => {
    // Without air, friction and rod mass, so that the grip's own moment is all there is.
    const design = { ...demo(), counted: { rodMass: false } };
    const found = runSearch(
      request({
        design,
        wanted: {
          goal: { kind: 'centring', restDeg: 0, awayDeg: 10, forceN: 1 },
          speedsRpm: [10_200],
        },
        knobs: [{ ref: NUT_HEIGHT, min: 2.4, max: 20, step: 0 }],
      }),
    );
    const [answer] = found.answers.filter(({ make }) => make === 'turned');
    const report = answer.report;
    const [, minus, , plus] = report.holds;
    expect(((minus ?? 0) - (plus ?? 0)) / 2).toBeCloseTo(1, 9);
    // One number sets the stiffness; where it rests is left to the off-plane ball.
    expect(['centres', 'tilted']).toContain(report.verdict.kind);
    expect(report.restsDeg).toHaveLength(1);
  });

  it('nothing is changed in the request, and a search repeats bit for bit', () => {
    const asked = request({
      choices: offersOf(demo())
        .slice(0, 2)
        .map(({ choice }) => choice),
    });
    const before = JSON.stringify(asked);
    const first = JSON.stringify(runSearch(asked).answers);
    expect(JSON.stringify(asked)).toBe(before);
    expect(JSON.stringify(runSearch(asked).answers)).toBe(first);
  });

  it('tells of progress up to the number that was announced, and can be ended from there', () => {
    const asked = request({ knobs: suggestedKnobs(demo()) });
    const seen: number[] = [];
    const { looked } = runSearch(asked, ({ done }) => seen.push(done));
    expect(looked).toBe(combinationCount(asked));
    // The last is said again while the answers are worked out.
    expect([...new Set(seen)]).toEqual(Array.from({ length: looked }, (_, i) => i + 1));
    expect(() =>
      runSearch(asked, () => {
        throw new Error('ended');
      }),
    ).toThrow('ended');
  });

  it('says which limit stands in the way, and by how much', () => {
    const tight = request({ knobs: [{ ref: NUT_HEIGHT, min: 2.4, max: 8, step: 0.1 }] });
    const { obstacles, answers } = runSearch(tight);
    const [{ obstacle }] = obstacles;
    expect(obstacle).toMatchObject({ kind: 'limit', knob: 0, limit: 8 });
    const needed = obstacle.kind === 'limit' ? (obstacle.needed ?? 0) : 0;
    const parts = demo().parts.map((part) =>
      part.id === 'nut' ? { ...part, heightMm: needed } : part,
    );
    const start = Math.abs(even(demo(), demo().parts).even);
    expect(Math.abs(even(demo(), parts as Part[]).even)).toBeLessThan(1e-9 * start);
    // The nearest within the limits is still shown.
    expect(answers.some(({ settings }) => settings[0]?.made === 8)).toBe(true);
  });
});

function nutOf(design: Design, catalogue: { standard: string; size: string }): Part {
  const nut = design.parts.find(({ id }) => id === 'nut') as unknown as Record<string, unknown>;
  const { id, kind, name, material, socket } = nut;
  return { id, kind, name, material, socket, catalogue } as unknown as Part;
}

/** The demo's parts with another nut, so many washers under the head, another bolt. */
function built(
  design: Design,
  nut: Part | null,
  count: number,
  material: string,
  extensionLengthMm: number,
): readonly Part[] {
  return design.parts.flatMap((part): Part[] => {
    if (part.id === 'nut' && nut) return [nut];
    if (part.id === 'bolt') return [{ ...part, material, extensionLengthMm } as unknown as Part];
    if (part.id !== 'washer-top') return [part];
    return Array.from({ length: count }, (_, k) => ({ ...part, id: `washer-${k}` }));
  });
}

describe('what a maker must not be told', () => {
  it('a bolt that meets the end of a closed nut is said, and comes after those that do not', () => {
    const nut = (part: Part) =>
      part.id === 'nut' ? ({ ...part, collarGrip: 'plain' } as Part) : part;
    const design = { ...demo(), parts: demo().parts.map(nut) };
    const found = runSearch(
      request({
        design,
        knobs: [
          { ref: { part: 'nut', field: 'closedEndMm' }, min: 0, max: 20, step: 0.1 },
          { ref: NUT_HEIGHT, min: 2.4, max: 20, step: 0.1 },
        ],
      }),
    );
    const [first, second] = found.answers;
    expect(first.settings[0].ref.field).toBe('heightMm');
    expect(first.report.bottomsMm).toBeNull();
    // By hand: the tip stands 22 - 16.5 - 0.5 (washer) = 5 mm past the face, the thread ends at 2.4 + 1.6 = 4 mm.
    expect(second.report.bottomsMm).toBeCloseTo(1, 9);
  });

  it('with torque offset neutral means the least moment of the mass, not a round ellipse', () => {
    const skewed: Design = {
      ...demo(),
      counted: { rodMass: false },
      rotor: { ...demo().rotor, torqueOffsetMm: 8 },
    };
    const { answers } = runSearch(request({ design: skewed }));
    const moments = (parts: readonly Part[]) => {
      const model = new HeadModel();
      model.load({ ...skewed, parts });
      const h = model.harmonics;
      return h.reduce((sum, one) => sum + one * one, 0);
    };
    expect(moments(answers[0].parts)).toBeLessThanOrEqual(moments(skewed.parts));
  });

  it('the head as it is stands last, and an answer that changes nothing is none', () => {
    const neutral = runSearch(request()).answers[0];
    const again = runSearch(
      request({ design: { ...demo(), parts: neutral.parts }, knobs: suggestedKnobs(demo()) }),
    );
    expect(again.answers.at(-1)?.make).toBe('asIs');
    for (const { settings, make, left } of again.answers) {
      if (make !== 'asIs') expect(settings.some(({ from, made }) => from !== made)).toBe(true);
      expect(left).toBeLessThan(5);
    }
  });

  it('a part that a count takes away takes its knob along', () => {
    const found = runSearch(
      request({
        choices: [{ kind: 'count', part: 'washer-bottom', counts: [0, 2] }],
        knobs: [
          { ref: { part: 'washer-bottom', field: 'outerDiameterMm' }, min: 7, max: 9, step: 0.1 },
        ],
      }),
    );
    expect(found.answers.length).toBeGreaterThan(0);
  });

  it('a bar takes what goes along by the same change', () => {
    const found = runSearch(
      request({
        design: demo('5-both-sides'),
        together: true,
        knobs: [
          {
            ref: { part: 'bolt', field: 'extensionDiameterMm' },
            also: [{ part: 'nut', field: 'acrossMm' }],
            min: 6,
            max: 6,
            step: 'bars',
          },
        ].map((one) => ({ ...one, max: 6.2 })) as SearchRequest['knobs'],
      }),
    );
    const values = (parts: readonly Part[], id: string) =>
      parts.find((part) => part.id === id) as unknown as Record<string, number>;
    const before = demo('5-both-sides').parts;
    const [answer] = found.answers.filter(({ make }) => make === 'turned');
    const change = 6 - values(before, 'bolt').extensionDiameterMm;
    expect(values(answer.parts, 'nut').acrossMm - values(before, 'nut').acrossMm).toBeCloseTo(
      change,
      9,
    );
  });

  it('a range that goes over centre is refused with the angle', () => {
    const wanted = {
      goal: { kind: 'leastForce', fromDeg: -60, toDeg: 60 },
      speedsRpm: [10_200],
    } as const;
    expect(requestFault(request({ wanted }))).toMatchObject({
      code: 'beyondTravel',
      deg: -60,
      why: 'overCentre',
      endDeg: expect.closeTo(-53.7, 1),
    });
  });

  it('what is suggested for every demo head can be searched', () => {
    for (const name of [
      '1-bare-grip',
      '2-long-bolt',
      '4-turned-nut',
      '5-both-sides',
      '6-full-size',
    ]) {
      const design = demo(name);
      const knobs = suggestedKnobs(design);
      if (knobs.length > 0) expect(requestFault(request({ design, knobs }))).toBeNull();
    }
  });
});

describe('requestFault', () => {
  it.each<[string, Partial<SearchRequest>]>([
    ['nothingMayChange', { knobs: [] }],
    ['noParts', { design: designOf([]) }],
    ['limitsReversed', { knobs: [{ ref: NUT_HEIGHT, min: 8, max: 2, step: 0.1 }] }],
    ['outsideRange', { knobs: [{ ref: NUT_HEIGHT, min: 0, max: 8, step: 0.1 }] }],
    ['outsideRange', { knobs: [{ ref: NUT_HEIGHT, min: 1, max: 9e9, step: 0.1 }] }],
    ['limitsReversed', { knobs: [{ ref: NUT_HEIGHT, min: Number.NaN, max: 8, step: 0.1 }] }],
    ['badStep', { knobs: [{ ref: NUT_HEIGHT, min: 1, max: 2, step: 5 }] }],
    ['noBars', { knobs: [{ ref: NUT_HEIGHT, min: 5.1, max: 5.2, step: 'bars' }] }],
    ['noSuchNumber', { knobs: [{ ref: { part: 'gone', field: 'x' }, min: 1, max: 2, step: 0 }] }],
    [
      'sameNumberTwice',
      {
        knobs: [
          { ref: NUT_HEIGHT, min: 1, max: 2, step: 0 },
          { ref: NUT_HEIGHT, min: 1, max: 3, step: 0 },
        ],
      },
    ],
    [
      'pitchReversed',
      { wanted: { goal: { kind: 'leastForce', fromDeg: 5, toDeg: -5 }, speedsRpm: [1000] } },
    ],
    [
      'pitchOutside',
      { wanted: { goal: { kind: 'leastForce', fromDeg: -95, toDeg: 5 }, speedsRpm: [1000] } },
    ],
    [
      'standsStill',
      { wanted: { goal: { kind: 'leastForce', fromDeg: -5, toDeg: 5 }, speedsRpm: [0] } },
    ],
    [
      'noServo',
      {
        design: { ...demo(), control: {} },
        wanted: { goal: { kind: 'leastServo', fromDeg: -5, toDeg: 5 }, speedsRpm: [1000] },
      },
    ],
    [
      'noWeights',
      {
        weight: {
          bolt: 'bolt',
          side: 'both',
          diametersMm: [],
          materials: ['steel'],
          minMm: 1,
          maxMm: 5,
          stepMm: 0.1,
        },
      },
    ],
  ])('%s is said before anything is begun', (code, change) => {
    expect(requestFault(request(change))?.code).toBe(code);
  });

  it('too many combinations are refused with their number', () => {
    const values = Array.from({ length: 700 }, (_, i) => 1 + i / 100);
    const choices = [
      { kind: 'values', ref: NUT_HEIGHT, values },
      { kind: 'values', ref: HEAD, values },
    ] as const;
    expect(choices.reduce((product, choice) => product * picksOf(choice).length, 1)).toBe(
      701 * 701,
    );
    expect(requestFault(request({ choices }))).toMatchObject({
      code: 'tooMany',
      count: 701 * 701 * 2,
    });
  });

  it('a sound request passes', () => {
    expect(requestFault(request())).toBeNull();
  });
});

describe('offersOf the demo head', () => {
  it('has locking nuts of the same thread for a locking nut, screws with a head, washers and materials', () => {
    const offers = offersOf(demo());
    const nuts = offers.find(({ part, what }) => part === 'nut' && what === 'catalogue');
    const rows = nuts?.choice.kind === 'catalogue' ? nuts.choice.rows : [];
    expect(rows.map(({ standard }) => standard).toSorted()).toEqual([
      // The demo's nut locks: a plain one is not offered for it.
      'ISO 10511',
      'ISO 7040',
    ]);
    expect(new Set(rows.map(({ size }) => size))).toEqual(new Set(['M3']));
    const screws = offers.find(({ part, what }) => part === 'bolt' && what === 'catalogue');
    expect(screws?.choice.kind === 'catalogue' && screws.choice.rows.length).toBeGreaterThan(5);
    expect(offers.some(({ part, what }) => part === 'washer-top' && what === 'count')).toBe(true);
    expect(offers.some(({ part, what }) => part === 'nut' && what === 'material')).toBe(true);
    expect(offers.some(({ field }) => field === 'propertyClass')).toBe(false);
  });
});
