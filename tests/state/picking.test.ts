import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Part } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { mmFromMetres } from '../../src/engine/units';
import { createSession } from '../../src/state/createSession';
import type { Session } from '../../src/state/session';

const file = new URL('../../assets/designs/3-ordinary-bolt.json', import.meta.url);

describe('a part that is placed by its holes', () => {
  let session: Session;
  const picking = () => session.store.getState().picking;
  const block = () => session.live.model.placed('block-1');

  beforeEach(() => {
    const read = parseDesign(readFileSync(file, 'utf8'));
    if (!read.ok) throw new Error(read.error.path);
    session = createSession(read.value, (callback) => callback());
    const { actions } = session;
    const pose = { positionMm: [60, 5, 9], rotationDeg: [0, 0, 0] } as const;
    expect(actions.addPart('block', { pose }).ok).toBe(true);
    actions.picking.begin('block-1');
    // A bore along the block's own z, of 3 mm.
    actions.picking.point([0.003, 0, 0]);
    actions.picking.point([0, 0.003, 0]);
    actions.picking.point([-0.003, 0, 0]);
  });

  it('asks for the bolt hole after three points of the bore, at the station of the bolt that is there', () => {
    expect(picking()?.rim).toBe('bolt');
    expect(picking()?.stationMm).toBe(38);
    const found = session.actions.picking.preview();
    expect(found?.ok && mmFromMetres(found.value.bore?.radius ?? 0)).toBeCloseTo(3, 12);
  });

  it('turns the bore into the feathering axis in one undo step, to whole ten-thousandths', () => {
    const before = block()?.pose;
    expect(session.actions.picking.apply().ok).toBe(true);
    expect(picking()).toBeNull();
    const pose = block()?.pose;
    // The part's z lies along the grip's x, its origin on the axis.
    expect(Math.abs(pose?.rotation[2] ?? 0)).toBeCloseTo(1, 12);
    expect(pose?.translation[1]).toBe(0);
    expect(pose?.translation[2]).toBe(0);
    expect(pose?.translation[0]).toBeCloseTo(0.06, 12);
    session.actions.undo();
    expect(block()?.pose).toEqual(before);
  });

  it('lets the points go when its shape changes, and all of it when another part is taken', () => {
    session.actions.renamePart('block-1', 'Lug');
    expect(picking()?.bore.length).toBe(3);
    const changed = session.actions.setParameter('block-1', 'sizeMm', [9, 9, 9]);
    expect(changed.ok).toBe(true);
    expect(picking()?.bore.length).toBe(0);
    session.actions.duplicatePart('block-1');
    expect(picking()).toBeNull();
  });

  it('is over when the part is undone away, or another design opens', () => {
    session.actions.undo();
    expect(picking()).toBeNull();
    session.actions.redo();
    session.actions.picking.begin('block-1');
    const { design } = session.store.getState();
    session.actions.openDesign({ ...design, parts: design.parts.slice(0, 1) as Part[] });
    expect(picking()).toBeNull();
  });
});
