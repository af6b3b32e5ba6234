import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { headOutlook } from '../../src/design/headOutlook';
import type { CarriedPart } from '../../src/design/ownMaterials';
import { swapPart } from '../../src/design/swap';
import { createSession } from '../../src/state/createSession';
import { designOf, fullHead, mounted, partOf } from './designs';

const AT_ORIGIN = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
const rotor = {
  speedRpm: 10_200,
  bladeCount: 2,
  torqueOffsetMm: 2,
  preconeDeg: 3,
  usedPitchDeg: 18,
};

/** A part as it comes from the shelf: with an id and a place that mean nothing here. */
function carried(kind: Part['kind'], more: object = {}, materials: CarriedPart['materials'] = []) {
  return { part: partOf(kind, 'from the shelf', { ...more }), materials };
}
const longBolt = carried('bolt', { lengthMm: 34, threadLengthMm: 20, name: 'Long bolt' });

function swapped(design: Design, id: string, part: CarriedPart) {
  const outcome = swapPart(design, id, part);
  if (!outcome.ok) throw new Error(`${outcome.error.path}: ${outcome.error.reason.code}`);
  return outcome.value;
}

describe('a part swapped in', () => {
  const design = designOf(fullHead(), rotor);

  it('keeps id, place in the list, seat and what sits on it; name and dimensions are its own', () => {
    const after = swapped(design, 'bolt', longBolt);
    const at = design.parts.findIndex((part) => part.id === 'bolt');
    expect(after.parts[at]).toMatchObject({
      id: 'bolt',
      name: 'Long bolt',
      lengthMm: 34,
      socket: { part: 'grip', name: 'boltTop' },
    });
    expect(after.parts[at]).not.toHaveProperty('pose');
    expect(after.parts.filter((_, i) => i !== at)).toEqual(design.parts.filter((_, i) => i !== at));
  });

  it('keeps a free pose, and stays hidden where the old one was', () => {
    const pose = { positionMm: [25, 12, 4], rotationDeg: [10, 20, 30] } as const;
    const hidden = designOf([partOf('block', 'a', { pose, hidden: true })]);
    const [part] = swapped(hidden, 'a', carried('block', { sizeMm: [3, 4, 5] })).parts;
    expect(part).toMatchObject({ id: 'a', pose, hidden: true, sizeMm: [3, 4, 5] });
  });

  it('lets go of what the old one had and the new one has not', () => {
    const weighed = designOf([partOf('block', 'a', { measured: { massGrams: 3 } })]);
    const [part] = swapped(weighed, 'a', carried('block')).parts;
    expect(part).not.toHaveProperty('measured');
  });

  it('does not change the design it is swapped into', () => {
    const before = serializeDesign(design);
    swapped(design, 'bolt', longBolt);
    expect(serializeDesign(design)).toBe(before);
  });

  it('brings its own material along, under a fresh id where the name means another', () => {
    const own = { id: 'bar', name: 'Bar', densityKgM3: 8000 };
    const { densityKgM3: _, ...bare } = partOf('block', 'x') as unknown as Record<string, unknown>;
    const made = { ...bare, material: 'bar' } as unknown as Part;
    const there = { ...designOf([partOf('block', 'a')]), materials: [{ ...own, densityKgM3: 5 }] };
    const after = swapped(there, 'a', { part: made, materials: [own] });
    expect(after.parts[0]).toMatchObject({ material: 'bar-2' });
    expect(after.materials).toMatchObject([{ densityKgM3: 5 }, { densityKgM3: 8000 }]);
  });

  it('keeps its offset along the seat', () => {
    const mount = { part: 'grip', name: 'bladeRoot', turnDeg: 4 };
    const after = swapped(design, 'blade', carried('blade', { name: 'Spare' }));
    expect(after.parts.find((part) => part.id === 'blade')?.socket).toEqual(mount);
  });

  it('is refused where what sits on it would lose its seat, and the fault names that part', () => {
    const parts = [
      partOf('grip', 'grip'),
      mounted('bolt', 'bolt', 'grip', 'boltTop', { lengthMm: 40, threadLengthMm: 30 }),
      mounted('nut', 'nut', 'bolt', 'thread'),
    ];
    const { model } = createSession(designOf(parts), (call) => call()).live;
    const thread = model.placed('bolt')?.sockets.find((one) => one.name === 'thread');
    const offsetMm = thread?.offsetRangeMm[1] ?? 0;
    const nut = { ...parts[2], socket: { part: 'bolt', name: 'thread', offsetMm } } as Part;
    const far = designOf([parts[0], parts[1], nut]);
    const refused = swapPart(far, 'bolt', carried('bolt', { lengthMm: 30, threadLengthMm: 20 }));
    expect(refused).toMatchObject({ ok: false, error: { path: 'parts[2].socket.offsetMm' } });
  });

  it('of another kind, or for a part that is not there, is a fault of the program', () => {
    expect(() => swapPart(design, 'bolt', carried('nut'))).toThrow(/is no nut/);
    expect(() => swapPart(design, 'nobody', longBolt)).toThrow(/nobody/);
  });
});

describe('the outlook with a part swapped in', () => {
  it('equals, to the bit, what the page shows when the swapped design is opened from its file', () => {
    const design = designOf(fullHead(), rotor);
    const after = swapped(design, 'bolt', longBolt);
    const opened = parseDesign(serializeDesign(after));
    if (!opened.ok) throw new Error(opened.error.path);
    const { live } = createSession(opened.value, (call) => call());
    const outlook = headOutlook(after);
    if (!outlook.ok) throw new Error(outlook.error.path);
    const { pitchesDeg, moments, forces, totals } = outlook.value;
    expect(pitchesDeg).toEqual([-18, -9, 0, 9, 18]);
    expect(moments).toEqual(pitchesDeg.map((pitch) => live.reading.momentAt(pitch)));
    expect(forces).toEqual(pitchesDeg.map((pitch) => live.reading.forceAt(pitch)));
    expect([...totals]).toEqual([...live.reading.totals]);
    const before = headOutlook(design);
    expect(before.ok && before.value.moments[4]).not.toBe(moments[4]);
  });

  it('swapped there and back is the head it was', () => {
    const design = designOf(fullHead(), rotor);
    const old = design.parts.find((part) => part.id === 'bolt') as Part;
    const there = swapped(design, 'bolt', longBolt);
    const back = swapped(there, 'bolt', {
      part: { ...old, pose: AT_ORIGIN } as unknown as Part,
      materials: [],
    });
    expect(serializeDesign(back)).toBe(serializeDesign(design));
    expect(headOutlook(back)).toEqual(headOutlook(design));
  });

  it('has no force without an arm, and a fault where the design is not sound', () => {
    const bare = headOutlook(designOf([partOf('block', 'a')]));
    expect(bare.ok && bare.value.forces).toBeNull();
    const rotorFault = headOutlook(designOf([], { ...rotor, speedRpm: -1 }));
    expect(rotorFault).toMatchObject({ ok: false, error: { path: 'rotor.speedRpm' } });
  });
});
