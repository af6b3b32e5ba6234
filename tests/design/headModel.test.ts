import { describe, expect, test } from 'vitest';
import { checkParts } from '../../src/design/checkParts';
import type { Design, Part } from '../../src/design/design';
import { describeFault } from '../../src/design/faultText';
import { headLinkage } from '../../src/design/forces/headLinkage';
import { HeadModel } from '../../src/design/headModel';
import { NO_MATERIALS, valuesOf } from '../../src/design/resolve';
import { featheringMoment } from '../../src/engine/feathering/harmonics';
import { createMoments, M, type Moments } from '../../src/engine/mass/moments';
import type { Result } from '../../src/engine/result';
import { radians } from '../../src/engine/units';
import { partType } from '../../src/parts/registry';
import { momentsDeviation } from '../support/closeness';
import { type Seeded, seeded } from '../support/seeded';
import { designOf, fullHead, mounted, partOf, ROTOR } from './designs';

function done<T>(result: Result<T, Parameters<typeof describeFault>[0]>): void {
  if (!result.ok) throw new Error(describeFault(result.error));
}

function loaded(design: Design): HeadModel {
  const model = new HeadModel();
  done(model.load(design));
  return model;
}

function linkageOf(model: HeadModel) {
  return headLinkage(model)?.linkage;
}

function totals(model: HeadModel): Moments {
  return model.totals(createMoments());
}

/** Everything a model shows, against a model of the same parts loaded afresh. */
function expectFresh(model: HeadModel, design: Design): void {
  const fresh = loaded(design);
  expect(model.parts.map(({ part }) => part)).toEqual(design.parts);
  for (const [i, placed] of model.parts.entries()) {
    const { pose, moments_G, index } = fresh.parts[i];
    expect(placed.pose).toEqual(pose);
    expect(placed.moments_G).toEqual(moments_G);
    expect(placed.index).toBe(index);
  }
  // Two sums in double-double arithmetic: they may round to neighbouring numbers, no further.
  expect(momentsDeviation(totals(model), totals(fresh))).toBeLessThanOrEqual(1e-15);
  expect(linkageOf(model)).toEqual(linkageOf(fresh));
  expect(model.rotor).toEqual(fresh.rotor);
  const scale = Math.max(...fresh.harmonics.map(Math.abs));
  for (let i = 0; i < 4; i++) {
    expect(Math.abs(model.harmonics[i] - fresh.harmonics[i])).toBeLessThanOrEqual(1e-12 * scale);
  }
}

/** One random change of a list of parts; the list may break a rule afterwards. */
function randomEdit(parts: readonly Part[], random: Seeded, serial: number): Part[] {
  const next = [...parts];
  const at = random.whole(0, parts.length - 1);
  const part = parts[at] as Part & Record<string, unknown>;
  const edit = random.whole(0, 9);
  if (edit <= 3) next[at] = { ...part, ...randomValue(part, random) } as Part;
  else if (edit === 4) next[at] = { ...part, hidden: !part.hidden };
  else if (edit === 5) {
    const { socket: _, pose: __, ...rest } = part;
    const positionMm = [random.between(-90, 90), random.between(-20, 20), random.between(-20, 20)];
    const pose = { positionMm, rotationDeg: [serial % 360, 20, 0] };
    next[at] = { ...rest, pose } as unknown as Part;
  } else if (edit === 6) {
    const { pose: _, ...rest } = part;
    next[at] = { ...rest, socket: random.pick(SEATS) } as Part;
  } else if (edit === 7) {
    const fresh = mounted('washer', `n${serial}`, 'bolt', 'underHead');
    const lump = partOf('pointMass', `n${serial}`, { massGrams: random.between(0.1, 3) });
    next.splice(at, 0, random.unit() < 0.5 ? fresh : lump);
  } else if (edit === 8) next.splice(at, 1);
  else next.splice(random.whole(0, next.length - 1), 0, ...next.splice(at, 1));
  return next;
}

const SEATS = [
  { part: 'bolt', name: 'underHead' },
  { part: 'nut', name: 'nutFace' },
  { part: 'bolt', name: 'thread', offsetMm: 21.5 },
  { part: 'bolt', name: 'boltEnd' },
  { part: 'bolt', name: 'headTop', turnDeg: 30 },
  { part: 'grip', name: 'boltBottom' },
  { part: 'grip', name: 'boltTop', turnDeg: 90 },
  { part: 'grip', name: 'armSeat' },
  { part: 'arm', name: 'ball' },
  { part: 'grip', name: 'bladeRoot', turnDeg: -3 },
];

function randomValue(part: Part, random: Seeded): Record<string, unknown> {
  const [name, spec] = random.pick(Object.entries(partType(part.kind).parameters));
  if (spec.type === 'choice') return { [name]: random.pick(spec.options) };
  if (spec.type === 'text' || spec.type === 'numbers') return {};
  const value = valuesOf(part, NO_MATERIALS)[name];
  const factor = random.between(0.9, 1.1);
  if (Array.isArray(value)) return { [name]: value.map((one: number) => one * factor) };
  return { [name]: (value as number) * factor };
}

describe('the head model', () => {
  test('equals a fresh one after a thousand random edits, by single parts and by whole designs', () => {
    const random = seeded(7);
    let design = designOf(fullHead());
    const past = [design];
    const model = loaded(design);
    let accepted = 0;
    let single = 0;
    for (let serial = 0; accepted < 1000; serial++) {
      const parts = randomEdit(design.parts, random, serial);
      const changed = parts.filter((part, i) => part !== design.parts[i]);
      const [only] = changed;
      const sameIds = parts.every((part, i) => part.id === design.parts[i]?.id);
      const bySetting = changed.length === 1 && sameIds && parts.length === design.parts.length;
      const result = bySetting ? model.setPart(only) : model.sync({ ...design, parts });
      // One door and the other refuse the same changes for the same reason.
      const fault = checkParts(parts, NO_MATERIALS);
      expect(result.ok ? null : result.error.reason.code).toBe(fault && fault.reason.code);
      if (!result.ok) {
        if (serial % 40 === 0) expectFresh(model, design);
        continue;
      }
      accepted++;
      if (bySetting) single++;
      design = { ...design, parts };
      past.push(design);
      if (accepted % 25 === 0) {
        expectFresh(model, design);
        // Undo over many steps, to parts that may be gone.
        design = past[random.whole(0, past.length - 1)];
        done(model.sync(design));
        expectFresh(model, design);
      }
    }
    expectFresh(model, design);
    expect(single).toBeGreaterThan(300);
  });

  test('sums what its parts show, hidden ones left out but still in place', () => {
    const parts = fullHead().map((part) => (part.id === 'bolt' ? { ...part, hidden: true } : part));
    const model = loaded(designOf(parts));
    const open = loaded(designOf(fullHead()));
    const sum = createMoments();
    for (const { part, moments_G } of model.parts) {
      // The rod does not turn with the grip.
      if (part.hidden || part.id === 'link') continue;
      for (let i = 0; i < sum.length; i++) sum[i] += moments_G[i];
    }
    expect(momentsDeviation(totals(model), sum)).toBeLessThan(1e-15);
    const bolt = open.placed('bolt');
    expect(totals(open)[M] - totals(model)[M]).toBeCloseTo(bolt?.moments_G[M] ?? 0, 15);
    expect(model.placed('nut')?.pose).toEqual(open.placed('nut')?.pose);
    // Shown again, it weighs the same again.
    done(model.setPart(fullHead()[3]));
    expect(momentsDeviation(totals(model), totals(open))).toBeLessThan(1e-15);
  });

  test('leaves the rod out of what turns with the grip, and keeps its mass for the linkage', () => {
    const model = loaded(designOf(fullHead()));
    const bare = loaded(designOf(fullHead().filter((part) => part.id !== 'link')));
    expect(momentsDeviation(totals(model), totals(bare))).toBe(0);
    const rod = linkageOf(model)?.rod;
    const link = model.placed('link');
    expect(rod?.mass).toBe(link?.moments_G[M]);
    // Two equal cups and an even rod: the centre is half way, and the mass lies between the balls.
    const length = linkageOf(model)?.length ?? 0;
    expect((rod?.first ?? 0) / (rod?.mass ?? 1)).toBeCloseTo(length / 2, 12);
    expect(rod?.second).toBeGreaterThan(((rod?.mass ?? 0) * length ** 2) / 4);
    // Hidden, it keeps the length and weighs nothing.
    const hidden = { ...fullHead()[2], hidden: true } as Part;
    done(model.setPart(hidden));
    expect(linkageOf(model)).toEqual({ ...linkageOf(loaded(designOf(fullHead()))), rod: null });
  });

  test('finds the arm: the first visible ball, or else a hidden one, the slider on the side that the link says', () => {
    const second = mounted('pitchArm', 'arm 2', 'grip', 'armSeat', { armReachMm: 25 });
    const model = loaded(designOf([...fullHead(), second]));
    expect(model.armParts.map(({ part }) => part.id)).toEqual(['arm', 'arm 2']);
    expect(linkageOf(model)?.side).toBe(-1);
    const [, arm, link] = fullHead();
    done(model.setPart({ ...link, slider: 'above' } as Part));
    expect(linkageOf(model)?.side).toBe(1);
    done(model.setPart({ ...arm, hidden: true }));
    expect(model.armParts.map(({ part }) => part.id)).toEqual(['arm 2']);
    expect(linkageOf(model)?.side).toBe(-1);
    expect(Math.abs(linkageOf(model)?.ball_G[1] ?? 0)).toBeCloseTo(0.025, 12);
    done(model.setPart({ ...second, hidden: true }));
    // All left out of the sum: the rod stays where it was.
    expect(model.armParts.map(({ part }) => part.id)).toEqual(['arm', 'arm 2']);
    expect(linkageOf(model)?.ball_G[1]).toBeCloseTo(0.017, 12);
    done(model.setPart(arm));
    expect(model.armParts.map(({ part }) => part.id)).toEqual(['arm']);
  });

  test('moves a washer from one stack to another and back to its place in the order', () => {
    const parts = fullHead();
    const model = loaded(designOf(parts));
    const onNut = { ...parts[4], socket: { part: 'nut', name: 'nutFace' } };
    done(model.setPart(onNut));
    expectFresh(model, designOf(parts.map((part) => (part.id === 'w1' ? onNut : part))));
    done(model.setPart(parts[4]));
    expectFresh(model, designOf(parts));
  });

  test.each([0, 1, 2])('weighs a block anew when its size changes along axis %i alone', (axis) => {
    const block = partOf('block', 'block', { sizeMm: [10, 20, 30] });
    const model = loaded(designOf([block]));
    const sizeMm = [10, 20, 30].map((size, i) => (i === axis ? 2 * size : size));
    const mass = totals(model)[M];
    done(model.setPart({ ...block, sizeMm } as unknown as Part));
    expect(totals(model)[M] / mass).toBeCloseTo(2, 12);
  });

  test('moves the ball with the grip that carries the arm', () => {
    const model = loaded(designOf(fullHead()));
    const before = linkageOf(model)?.ball_G[0] ?? 0;
    const pose = { positionMm: [7, 0, 0], rotationDeg: [0, 0, 0] } as const;
    done(model.setPart({ ...fullHead()[0], pose } as Part));
    expect(linkageOf(model)?.ball_G[0]).toBeCloseTo(before + 0.007, 15);
  });

  test('takes a new rotor: the moment grows with the square of the speed', () => {
    const model = loaded(designOf(fullHead()));
    const before = featheringMoment(model.harmonics, radians(0.3));
    done(model.setSections({ rotor: { ...ROTOR, speedRpm: 2 * ROTOR.speedRpm } }));
    expect(featheringMoment(model.harmonics, radians(0.3)) / before).toBeCloseTo(4, 12);
    const refused = model.setSections({ rotor: { ...ROTOR, speedRpm: Number.NaN } });
    expect(refused.ok ? null : refused.error).toEqual({
      path: 'rotor.speedRpm',
      reason: { code: 'notFinite' },
    });
    expect(featheringMoment(model.harmonics, radians(0.3)) / before).toBeCloseTo(4, 12);
  });

  test('adds at a place, takes out, and refuses to leave a part without its parent', () => {
    const model = loaded(designOf(fullHead()));
    done(model.addPart(partOf('pointMass', 'first'), 0));
    expect(model.parts[0].part.id).toBe('first');
    expect(model.placed('grip')?.index).toBe(1);
    const refused = model.removePart('bolt');
    expect(refused.ok ? null : refused.error.reason).toEqual({
      code: 'missingParent',
      parent: 'bolt',
    });
    const twice = model.addPart(partOf('pointMass', 'first'));
    expect(twice.ok ? null : twice.error.reason.code).toBe('repeatedId');
    done(model.removePart('first'));
    expectFresh(model, designOf(fullHead()));
  });

  test('throws where a program asks for a part that is not there', () => {
    const model = loaded(designOf([]));
    expect(() => model.setPart(partOf('pointMass', 'x'))).toThrow(/setPart\(\): id is not in/);
    expect(() => model.removePart('x')).toThrow(/removePart\(\): id is not in/);
  });
});

describe('a refused change', () => {
  const parts = fullHead();
  const of = (id: string) => parts.find((part) => part.id === id) as Part;
  test.each<[string, Part, string]>([
    ['a NaN', { ...of('lump'), massGrams: Number.NaN } as Part, 'notFinite'],
    ['a name too long for the file', { ...of('lump'), name: 'x'.repeat(201) }, 'textTooLong'],
    ['a bolt too short for its nut', { ...of('bolt'), lengthMm: 21 } as Part, 'offsetOutOfRange'],
    ['a broken rule', { ...of('bolt'), threadLengthMm: 40 } as Part, 'rule'],
    [
      'a parent that is not there',
      { ...of('nut'), socket: { part: 'x', name: 'thread' } },
      'missingParent',
    ],
    [
      'a parent that it carries',
      { ...of('bolt'), socket: { part: 'nut', name: 'nutFace' } },
      'cycle',
    ],
    ['itself for a parent', { ...of('nut'), socket: { part: 'nut', name: 'nutFace' } }, 'cycle'],
    [
      'a socket that is not there',
      { ...of('nut'), socket: { part: 'bolt', name: 'x' } },
      'unknownSocket',
    ],
    [
      'a socket that does not fit',
      { ...of('nut'), socket: { part: 'bolt', name: 'headTop' } },
      'misfit',
    ],
    ['no place at all', partWithoutPlace(of('lump')), 'poseOrSocket'],
  ])('with %s leaves everything as it was, set alone or with a design', (_, change, code) => {
    const placed = parts.map((part) =>
      part.id === 'nut'
        ? { ...part, socket: { part: 'bolt', name: 'thread', offsetMm: 25 } }
        : part,
    );
    const design = designOf(placed);
    const model = loaded(design);
    const { revision } = model;
    const alone = model.setPart(change);
    expect(alone.ok ? null : alone.error.reason.code).toBe(code);
    const whole = {
      ...design,
      parts: placed.map((part) => (part.id === change.id ? change : part)),
    };
    for (const result of [model.sync(whole), model.load(whole)]) {
      expect(result.ok ? null : result.error.reason.code).toBe(code);
    }
    expect(model.revision).toBe(revision);
    expectFresh(model, design);
  });
});

function partWithoutPlace(part: Part): Part {
  const { pose: _, ...rest } = part;
  return rest as Part;
}
