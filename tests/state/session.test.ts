import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Design } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import { createMoments, JYY, JZZ } from '../../src/engine/mass/moments';
import type { Changes } from '../../src/state/changes';
import { createSession } from '../../src/state/createSession';
import type { Session } from '../../src/state/session';

function demo(file: string): Design {
  const text = readFileSync(new URL(`../../assets/designs/${file}.json`, import.meta.url), 'utf8');
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error(`demo(): ${file} is not sound: ${parsed.error.path}`);
  return parsed.value;
}

/** Frames come when the test says so. */
function frames() {
  const waiting: (() => void)[] = [];
  return {
    schedule: (callback: () => void) => void waiting.push(callback),
    draw() {
      for (const callback of waiting.splice(0)) callback();
    },
    count: () => waiting.length,
  };
}

describe('a drag through actions, without a browser', () => {
  let session: Session;
  let clock: ReturnType<typeof frames>;
  let heard: Changes[];

  beforeEach(() => {
    clock = frames();
    session = createSession(demo('3-ordinary-bolt'), clock.schedule);
    heard = [];
    session.live.subscribe((changes) => heard.push(changes));
  });

  function extension(): number {
    const part = session.store.getState().design.parts.find((one) => one.id === 'bolt');
    return part?.kind === 'bolt' ? (part.extensionLengthMm ?? Number.NaN) : Number.NaN;
  }

  it('says that every part may have changed when a material of the design does', () => {
    const own = [{ id: 'bar', name: 'Bar', densityKgM3: 8000 }];
    expect(session.actions.setOwnMaterials(own).ok).toBe(true);
    expect(session.actions.setMaterial('bolt', 'densityKgM3', 'bar').ok).toBe(true);
    clock.draw();
    heard.length = 0;
    expect(session.actions.setOwnMaterials([{ ...own[0], densityKgM3: 4000 }]).ok).toBe(true);
    clock.draw();
    const told = heard.at(-1)?.parts;
    expect(told === 'all' || told?.has('bolt')).toBe(true);
    expect(session.actions.setOwnMaterials([]).ok).toBe(false);
  });

  it('lets listeners wait during a drag, and tells all of them when the hand rests or lets go', () => {
    const { actions, live } = session;
    const lengths: Record<string, number> = {};
    // Whoever is told takes the whole time of a picture.
    for (const turn of ['chart', 'dial', 'verdict'] as const) {
      live.subscribe(() => {
        lengths[turn] = extension();
        for (const until = performance.now() + 2; performance.now() < until; );
      }, turn);
    }
    const behind = (now: number) =>
      Object.values(lengths).filter((length) => length !== now).length;
    actions.setParameter('bolt', 'extensionLengthMm', 4);
    clock.draw();
    expect(Object.values(lengths)).toEqual([4, 4, 4]);
    actions.gesture.begin();
    actions.setParameter('bolt', 'extensionLengthMm', 5);
    clock.draw();
    expect(heard.at(-1)?.parts).toEqual(new Set(['bolt']));
    expect(behind(5)).toBeGreaterThanOrEqual(2);
    // The hand rests: one picture may be another's turn, the next tells everybody.
    clock.draw();
    clock.draw();
    expect(behind(5)).toBe(0);
    expect(clock.count()).toBe(0);
    actions.setParameter('bolt', 'extensionLengthMm', 6);
    clock.draw();
    expect(behind(6)).toBeGreaterThanOrEqual(2);
    live.flush();
    expect(behind(6)).toBe(0);
    actions.setParameter('bolt', 'extensionLengthMm', 7);
    actions.gesture.end();
    clock.draw();
    expect(behind(7)).toBe(0);
  });

  it('works out curve, bands and rest angles once a change, and only when somebody asks', () => {
    const { actions, live } = session;
    const { reading, forces } = live;
    clock.draw();
    const asked = () => forces.termSamples;
    expect(reading.curve.moment.length).toBe(721);
    const before = asked();
    const [centre] = reading.curve.moment.slice(400);
    actions.setParameter('bolt', 'extensionLengthMm', 4);
    clock.draw();
    expect(asked()).toBe(before);
    expect(reading.curve.moment[400]).not.toBe(centre);
    expect(reading.curve.moment[400]).toBeCloseTo(
      reading.momentAt(reading.curve.pitchDeg[400]),
      12,
    );
    const { bandsDeg, equilibria } = reading;
    const after = asked();
    expect(after).toBeGreaterThan(before);
    expect(reading.bandsDeg).toBe(bandsDeg);
    expect(reading.equilibria).toBe(equilibria);
    expect(reading.curve.moment[400]).not.toBe(centre);
    expect(asked()).toBe(after);
  });

  it('lengthening the bolt head turns a centring grip over into a fleeing one', () => {
    const spread = () => session.live.reading.totals[JYY] - session.live.reading.totals[JZZ];
    expect(spread()).toBeGreaterThan(0);
    const before = session.live.reading.forceAt(20) ?? Number.NaN;
    expect(Math.abs(before)).toBeGreaterThan(4);
    session.actions.gesture.begin();
    for (let mm = 0.1; mm < 10; mm += 0.1) {
      expect(session.actions.setParameter('bolt', 'extensionLengthMm', mm).ok).toBe(true);
    }
    session.actions.gesture.end();
    clock.draw();
    expect(spread()).toBeLessThan(0);
    expect(Math.sign(session.live.reading.forceAt(20) ?? 0)).toBe(-Math.sign(before));
    const { equilibria } = session.live.reading;
    expect(
      equilibria.kind === 'found' && equilibria.roots.some((root) => root.kind === 'unstable'),
    ).toBe(true);
  });

  it('a hundred moves between two frames are one reading and one call to each listener', () => {
    const revision = session.live.reading.revision;
    session.actions.gesture.begin();
    for (let k = 1; k <= 100; k++) {
      session.actions.setParameter('bolt', 'extensionLengthMm', k / 20);
    }
    clock.draw();
    session.actions.gesture.end();
    expect(heard).toHaveLength(1);
    expect(session.live.reading.revision).toBe(revision + 1);
    expect(heard[0].parts).toEqual(new Set(['bolt']));
  });

  it('one drag is one undo step, and redo brings it back', () => {
    session.actions.gesture.begin();
    for (const mm of [1, 2, 3]) session.actions.setParameter('bolt', 'extensionLengthMm', mm);
    session.actions.gesture.end();
    session.actions.setParameter('bolt', 'extensionLengthMm', 4);
    session.actions.undo();
    expect(extension()).toBe(3);
    session.actions.undo();
    expect(extension()).toBe(0);
    session.actions.redo();
    expect(extension()).toBe(3);
  });

  it('undo puts every derived number back to the bit', () => {
    const curve = session.live.reading.curve.moment.slice();
    const totals = session.live.reading.totals.slice();
    session.actions.setParameter('bolt', 'extensionLengthMm', 7.7);
    clock.draw();
    expect(session.live.reading.curve.moment).not.toEqual(curve);
    session.actions.undo();
    clock.draw();
    expect(session.live.reading.totals).toEqual(totals);
    expect(session.live.reading.curve.moment).toEqual(curve);
  });

  it('Escape in a drag restores the design and leaves no undo step', () => {
    session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'extensionLengthMm', 5);
    session.actions.gesture.cancel();
    expect(extension()).toBe(0);
    expect(session.store.temporal.getState().pastStates).toHaveLength(0);
  });

  it('undo in the middle of a drag takes back the drag and nothing before it', () => {
    session.actions.setParameter('bolt', 'extensionLengthMm', 2);
    session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'extensionLengthMm', 5);
    session.actions.undo();
    expect(extension()).toBe(2);
    session.actions.gesture.end();
    expect(extension()).toBe(2);
    session.actions.undo();
    expect(extension()).toBe(0);
    session.actions.redo();
    expect(extension()).toBe(2);
  });

  it('a drag out and back leaves no undo step and keeps what can be redone', () => {
    session.actions.setParameter('bolt', 'extensionLengthMm', 2);
    session.actions.undo();
    const hold = session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'extensionLengthMm', 5);
    session.actions.setParameter('bolt', 'extensionLengthMm', 0);
    hold.end();
    const { pastStates, futureStates } = session.store.temporal.getState();
    expect([pastStates.length, futureStates.length]).toEqual([0, 1]);
  });

  it('writing what is there already is no undo step', () => {
    session.actions.setParameter('bolt', 'extensionLengthMm', 0);
    session.actions.setSection('rotor', { speedRpm: 10200 });
    session.actions.renamePart('bolt', 'Blade bolt M3 x 22');
    session.actions.setHidden('bolt', false);
    session.actions.setDesignName('Dunlin 260, ordinary bolt');
    session.actions.removePart('nobody');
    expect(session.store.temporal.getState().pastStates).toHaveLength(0);
  });

  it('opening another design, or deleting, in the middle of a drag is a step of its own', () => {
    const hold = session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'extensionLengthMm', 5);
    session.actions.openDesign(demo('1-bare-grip'));
    expect(hold.alive).toBe(false);
    session.actions.undo();
    expect(extension()).toBe(5);
    session.actions.undo();
    expect(extension()).toBe(0);
  });

  it('whoever held a gesture that is over can end or cancel no other', () => {
    const first = session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'extensionLengthMm', 1);
    const second = session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'extensionLengthMm', 2);
    first.end();
    expect(first.cancel()).toBe(false);
    expect(second.alive).toBe(true);
    second.cancel();
    expect(extension()).toBe(1);
    expect(session.store.getState().gesture).toBe(false);
  });

  it('a listener that fails leaves none of the others on old numbers', () => {
    const calls: string[] = [];
    session.live.subscribe(() => {
      throw new Error('a bad layer');
    });
    session.live.subscribe(() => calls.push('later'));
    session.actions.setParameter('bolt', 'extensionLengthMm', 1);
    expect(() => clock.draw()).toThrow('a bad layer');
    expect(calls).toEqual(['later']);
  });

  it('a design name that no file may hold is refused', () => {
    expect(session.actions.setDesignName('x'.repeat(300)).ok).toBe(false);
    expect(session.store.getState().design.name).toBe('Dunlin 260, ordinary bolt');
  });

  it('a refused value names the field and its limit and writes nothing', () => {
    const { design } = session.store.getState();
    const long = session.actions.setParameter('bolt', 'threadLengthMm', 30);
    expect(long.ok).toBe(false);
    if (!long.ok) {
      expect(long.error).toMatchObject({ field: 'threadLengthMm', limit: 22 });
    }
    for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -3]) {
      expect(session.actions.setParameter('bolt', 'headHeightMm', bad).ok).toBe(false);
    }
    expect(session.store.getState().design).toBe(design);
  });

  it('a bolt too short for its nut is refused, and the nut is named', () => {
    const result = session.actions.setParameter('bolt', 'lengthMm', 12);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.error).toMatchObject({ part: 'nut', field: 'offsetMm' });
  });

  it('changing one number of the rotor scales every moment with the square of the speed', () => {
    const before = session.live.reading.momentAt(13);
    session.actions.setSection('rotor', { speedRpm: 20400 });
    clock.draw();
    expect(session.live.reading.momentAt(13) / before).toBeCloseTo(4, 12);
  });

  it('the reading after many edits equals one loaded afresh', () => {
    for (let k = 0; k < 300; k++) {
      session.actions.setParameter('bolt', 'extensionLengthMm', (k * 37) % 11);
      session.actions.setMount('nut', { offsetMm: 14 + ((k * 13) % 5) / 2 });
    }
    clock.draw();
    const fresh = new HeadModel();
    expect(fresh.load(session.store.getState().design).ok).toBe(true);
    const totals = fresh.totals(createMoments());
    for (let i = 0; i < 10; i++) {
      const scale = Math.max(Math.abs(totals[i]), 1e-12);
      expect(Math.abs(session.live.reading.totals[i] - totals[i])).toBeLessThan(
        1e-15 * scale + 1e-30,
      );
    }
  });
});

describe('lists of parts', () => {
  it('removing the bolt takes its nut and washers with it, and undo brings all of them back', () => {
    const session = createSession(demo('3-ordinary-bolt'), (callback) => callback());
    const ids = () => session.store.getState().design.parts.map((part) => part.id);
    const before = ids();
    session.actions.removePart('bolt');
    const bearings = ['bearing-in', 'bearing-thrust', 'bearing-out'];
    expect(ids()).toEqual(['grip', 'arm', 'link', ...bearings, 'blade']);
    expect(session.live.reading.order).toEqual(ids());
    session.actions.undo();
    expect(ids()).toEqual(before);
  });

  it('hiding a part takes it out of the sum and leaves it in its place', () => {
    const session = createSession(demo('3-ordinary-bolt'), (callback) => callback());
    const mass = session.live.reading.totals[0];
    session.actions.setHidden('blade', true);
    expect(session.live.reading.totals[0]).toBeLessThan(mass - 0.005);
    session.actions.setHidden('blade', false);
    expect(session.live.reading.totals[0]).toBe(mass);
  });

  it('with every part hidden nothing is left, to the last digit: no rest or flee angle of rounding', () => {
    const session = createSession(demo('3-ordinary-bolt'), (callback) => callback());
    for (const id of [
      'bearing-out',
      'arm',
      'bearing-in',
      'bearing-thrust',
      'grip',
      'nut',
      'blade',
      'link',
      'washer-bottom',
      'bolt',
      'washer-top',
    ]) {
      session.actions.setHidden(id, true);
    }
    expect([...session.live.reading.totals]).toEqual(new Array(10).fill(0));
    expect(session.live.reading.equilibria.kind).toBe('neutral');
  });

  it('a part taken off its socket stays where it was', () => {
    const session = createSession(demo('3-ordinary-bolt'), (callback) => callback());
    const before = session.live.reading.totals.slice();
    expect(session.actions.freePart('nut').ok).toBe(true);
    const after = session.live.reading.totals;
    // The washer on the nut's face comes along; poses are rounded to 1e-9 mm.
    for (let i = 0; i < 10; i++) expect(after[i]).toBeCloseTo(before[i], 14);
  });

  it('a mirrored free part balances the first moment off the chord plane', () => {
    const session = createSession(demo('1-bare-grip'), (callback) => callback());
    const added = session.actions.addPart('pointMass', {
      pose: { positionMm: [30, 4, 9], rotationDeg: [0, 0, 0] },
    });
    if (!added.ok) throw new Error('the part was refused');
    const z = session.live.reading.totals[3];
    const copy = session.actions.mirrorPart(added.value);
    expect(copy.ok).toBe(true);
    expect(session.live.reading.totals[3]).toBeCloseTo(z - 0.001 * 0.009, 15);
  });
});

describe('the five stages of the demo head show the facts of the trade (common practice)', () => {
  const read = (file: string) => createSession(demo(file), (callback) => callback()).live.reading;
  const restNearFlat = (file: string) => {
    const { equilibria } = read(file);
    if (equilibria.kind !== 'found') return null;
    return equilibria.roots.find((root) => Math.abs(root.pitch) < 0.2)?.kind ?? null;
  };

  it('a bare grip with pitch arm and link centres itself', () => {
    expect(restNearFlat('1-bare-grip')).toBe('stable');
  });
  it('a long bolt without a blade flees flat pitch', () => {
    expect(restNearFlat('2-long-bolt')).toBe('unstable');
  });
  it('a blade on an ordinary bolt centres with tens of ounces-force at the push rod', () => {
    expect(restNearFlat('3-ordinary-bolt')).toBe('stable');
    const ounces = Math.abs(read('3-ordinary-bolt').forceAt(20) ?? 0) / 0.2780138509537812;
    expect(ounces).toBeGreaterThan(10);
    expect(ounces).toBeLessThan(100);
  });
  it.each(['4-turned-nut', '5-both-sides'])(
    'with the right nut (%s) the force is under 1 N at 10 and 20 degrees both ways',
    (file) => {
      for (const pitch of [-20, -10, 10, 20]) {
        expect(Math.abs(read(file).forceAt(pitch) ?? Number.NaN)).toBeLessThan(1);
      }
    },
  );
});
