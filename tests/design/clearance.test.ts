import { describe, expect, it } from 'vitest';
import { leastPair } from '../../src/design/clearance/clearanceDesk';
import type { Design, Part } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { balanceOf } from '../../src/design/forces/balance';
import { HeadForces } from '../../src/design/forces/headForces';
import { travelEnds } from '../../src/design/forces/travel';
import { HeadModel } from '../../src/design/headModel';
import { massCard } from '../../src/design/massCard';
import { recastPart } from '../../src/design/recast';
import { findWarnings } from '../../src/design/warnings';
import { warningMessage } from '../../src/design/warningText';
import { createMoments } from '../../src/engine/mass/moments';
import { radiansFromDegrees } from '../../src/engine/units';
import { designOf, fullHead, partOf, ROTOR } from './designs';

function forcesOf(parts: readonly Part[], more: Partial<Design> = {}): HeadForces {
  const model = new HeadModel();
  const outcome = model.load({ ...designOf(parts), ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.error));
  return new HeadForces(model);
}

function keepOut(id: string, zMm: number, more: Record<string, unknown> = {}): Part {
  return partOf('keepOut', id, {
    pose: { positionMm: [0, 0, zMm], rotationDeg: [0, 0, 0] },
    ...more,
  });
}

/** A round bar of 14 mm along the feathering axis: at every pitch its lowest line is 7 mm under it. */
const BAR = partOf('cylinder', 'bar', {
  diameterMm: 14,
  lengthMm: 40,
  pose: { positionMm: [40, 0, 0], rotationDeg: [0, 90, 0] },
});

describe('a keep-out', () => {
  it('weighs nothing: no sum, balance or line of the mass card knows of it', () => {
    const head = fullHead();
    const bare = forcesOf(head);
    const kept = forcesOf([
      ...head,
      keepOut('case', -40),
      keepOut('hub', 30, { fixedTo: 'hub', form: 'box' }),
    ]);
    const totals = (forces: HeadForces) => [...forces.model.totals(createMoments())];
    expect(totals(kept)).toEqual(totals(bare));
    expect([...kept.model.harmonics]).toEqual([...bare.model.harmonics]);
    expect(balanceOf(kept.model, [])).toEqual(balanceOf(bare.model, []));
    const card = (forces: HeadForces) =>
      massCard(forces.model.parts, forces.model.totals(createMoments()));
    expect(card(kept)).toEqual(card(bare));
    expect([...(kept.model.placed('case')?.moments_G ?? [])]).toEqual(new Array(10).fill(0));
  });

  it('stays where it is when the pitch, the precone and the offset change', () => {
    const forces = forcesOf([keepOut('case', -40)], {
      rotor: { ...ROTOR, preconeDeg: 5, torqueOffsetMm: 3 },
    });
    expect(forces.model.placed('case')?.pose.translation).toEqual([0, 0, -0.04]);
  });

  it('comes back from a file as it was, form and wanted gap too', () => {
    const design = {
      ...designOf([
        BAR,
        keepOut('case', -12.5, { form: 'cylinder', diameterMm: 31, fixedTo: 'hub' }),
      ]),
      clearance: { wantedGapMm: 0.8 },
    };
    const again = parseDesign(serializeDesign(design));
    expect(again.ok && again.value).toEqual(design);
  });

  it('is turned from a body of a mesh and back without moving it or its triangles', () => {
    const rotor = { ...ROTOR, preconeDeg: 4, torqueOffsetMm: 2 };
    const body = partOf('meshBody', 'm', {
      pose: { positionMm: [30, -4, 5], rotationDeg: [10, 20, 30] },
      shiftMm: [1, 2, 3],
    });
    const kept = recastPart(body, rotor);
    const back = kept && recastPart(kept, rotor);
    expect(kept).toMatchObject({ id: 'm', kind: 'keepOut', form: 'mesh', shiftMm: [1, 2, 3] });
    // Placements are rounded to 1e-9 mm and degrees, twice.
    for (const key of ['positionMm', 'rotationDeg'] as const) {
      back?.pose?.[key].forEach((value, i) => {
        expect(Math.abs(value - (body.pose?.[key][i] ?? 0))).toBeLessThan(1e-7);
      });
    }
    expect(back).toMatchObject({ id: 'm', kind: 'meshBody' });
    expect(recastPart(BAR, rotor)).toBeNull();
    expect(recastPart(keepOut('p', 0), rotor)).toBeNull();
  });
});

describe('the clearance of a head', () => {
  it('of a round bar is its true gap within the error that is said, chords and all', () => {
    for (const [form, depth] of [
      ['plane', 0],
      ['box', 5],
      ['cylinder', 10],
    ] as const) {
      const forces = forcesOf([
        BAR,
        keepOut('case', -10 - depth, {
          form,
          sizeMm: [200, 200, 10],
          diameterMm: 200,
          lengthMm: 20,
        }),
      ]);
      const [pair] = forces.clearance.pairs;
      // The chords lie inside the bar, so what is found is no less than the true 3 mm.
      expect(pair.gap, form).toBeGreaterThanOrEqual(0.003 - 1e-9);
      expect(pair.gap - pair.error, form).toBeLessThanOrEqual(0.003 + 1e-12);
      expect(pair.error, form).toBeLessThan(2e-5);
    }
  });

  it('looks through what the linkage allows, and a quarter turn each way without one', () => {
    const head = fullHead();
    const forces = forcesOf([...head, keepOut('case', -60)]);
    const quarter = radiansFromDegrees(90);
    const found = forces.linkage;
    const ends = found && travelEnds(found, forces.model, radiansFromDegrees(-90), quarter);
    expect(forces.clearance.range).toEqual({
      lowDeg: ends?.low.deg,
      highDeg: ends?.high.deg,
      from: 'linkage',
    });
    expect(forces.clearance.pairs.map(({ part }) => part)).toContain('link');
    expect(forcesOf([BAR, keepOut('case', -60)]).clearance.range).toEqual({
      lowDeg: -90,
      highDeg: 90,
      from: 'noLinkage',
    });
  });

  it('leaves out hidden parts, hidden keep-outs and lumps without a size', () => {
    const lump = partOf('pointMass', 'lump');
    const hidden = keepOut('other', -20, { hidden: true });
    const forces = forcesOf([
      BAR,
      lump,
      { ...BAR, id: 'gone', hidden: true },
      keepOut('case', -20),
      hidden,
    ]);
    expect(forces.clearance.pairs.map(({ part, keepOut: of }) => [part, of])).toEqual([
      ['bar', 'case'],
    ]);
    expect(leastPair(forces.clearance)).toBe(forces.clearance.pairs[0]);
    expect(forcesOf([BAR]).clearance.pairs).toEqual([]);
    expect(leastPair(forcesOf([BAR]).clearance)).toBeNull();
  });

  it('holds what is fixed to the hub still, and turns the shaft past what is fixed to the case', () => {
    // A wall 70 mm out on the side of -X, its free side toward the shaft.
    const wall = {
      pose: { positionMm: [-70, 0, 0] as const, rotationDeg: [0, 90, 0] as const },
    };
    const [onHub] = forcesOf([BAR, keepOut('w', 0, { ...wall, fixedTo: 'hub' })]).clearance.pairs;
    const [onCase] = forcesOf([BAR, keepOut('w', 0, wall)]).clearance.pairs;
    // The bar reaches from x = 20 to x = 60, 7 mm to each side.
    expect(onHub.gap).toBeCloseTo(0.09, 6);
    expect(onCase.gap).toBeCloseTo(0.07 - Math.hypot(0.06, 0.007), 4);
    expect(Math.abs(onCase.azimuthDeg - 180)).toBeCloseTo((Math.atan2(7, 60) * 180) / Math.PI, 0);
  });

  it('is warned of where a part overlaps or comes nearer than wanted', () => {
    const warned = (zMm: number) => {
      const model = forcesOf([BAR, keepOut('case', zMm)]);
      const quarter = radiansFromDegrees(90);
      return findWarnings(model, radiansFromDegrees(-90), quarter)
        .map(warningMessage)
        .filter((text) => text.includes('keep-out'));
    };
    expect(warned(-20)).toEqual([]);
    expect(warned(-7.5).join()).toMatch(/"bar" comes to 0\.50\d? mm from the keep-out "case"/);
    expect(warned(-5).join()).toMatch(/"bar" enters the keep-out "case" by 2\.00 mm/);
  });

  it('places a new keep-out no higher than anything comes', () => {
    // Proven to a fiftieth of the depth under the shaft's origin.
    expect(forcesOf([BAR]).lowestTurning).toBeLessThanOrEqual(-0.007 + 1e-9);
    expect(forcesOf([BAR]).lowestTurning).toBeGreaterThan(-0.007 * 1.025);
    expect(forcesOf([]).lowestTurning).toBeNull();
  });
});

describe('the cost of a drag', () => {
  const planes = [
    keepOut('a', -60),
    keepOut('b', 60, { pose: { positionMm: [0, 0, 60], rotationDeg: [180, 0, 0] } }),
  ];

  /** Has the gaps worked out. */
  function look(forces: HeadForces): void {
    expect(forces.clearance.pairs.length).toBeGreaterThan(0);
  }

  function changed(forces: HeadForces, id: string, change: Record<string, unknown>): number {
    const before = forces.clearanceSearched;
    const part = forces.model.placed(id)?.part as Part;
    const outcome = forces.model.setPart({ ...part, ...change } as Part);
    expect(outcome.ok).toBe(true);
    look(forces);
    return forces.clearanceSearched - before;
  }

  it('is one search a keep-out for the part that changed, none for the rest', () => {
    const forces = forcesOf([...fullHead(), ...planes]);
    look(forces);
    expect(changed(forces, 'weight', { diameterMm: 7.3 })).toBe(2);
    expect(changed(forces, 'weight', { name: 'another name' })).toBe(0);
    // One keep-out moved: every part is held against that one.
    const parts = forces.clearance.pairs.length / 2;
    expect(
      changed(forces, 'a', { pose: { positionMm: [0, 0, -61], rotationDeg: [0, 0, 0] } }),
    ).toBe(parts);
    expect(changed(forces, 'a', { hidden: true })).toBe(0);
  });

  it('leaves what a fresh look at the changed head finds', () => {
    const forces = forcesOf([...fullHead(), ...planes]);
    look(forces);
    changed(forces, 'bolt', { lengthMm: 33 });
    changed(forces, 'link', { lengthMm: 26 });
    changed(forces, 'b', { form: 'box', sizeMm: [40, 40, 20] });
    const fresh = forcesOf(forces.model.parts.map(({ part }) => part));
    expect(forces.clearance).toEqual(fresh.clearance);
  });
});
