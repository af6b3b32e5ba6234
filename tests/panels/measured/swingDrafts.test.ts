import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { keepDraft, keptDraft } from '../../../src/panels/measured/swingDrafts';
import { createSession } from '../../../src/state/createSession';

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
const read = () => (parseDesign(readFileSync(file, 'utf8')) as { value: Design }).value;
const start = () => createSession(read(), (callback) => callback());

describe('half-filled timings', () => {
  it('stay with their part and axis through changes of the design, and come back after undo', () => {
    const session = start();
    keepDraft(session, 'bolt', 'span', { spacingMm: 60 });
    session.actions.renamePart('bolt', 'M3');
    session.actions.undo();
    expect(keptDraft(session, 'bolt', 'span')).toEqual({ spacingMm: 60 });
    expect(keptDraft(session, 'bolt', 'chord')).toBeNull();
    keepDraft(session, 'bolt', 'span', null);
    expect(keptDraft(session, 'bolt', 'span')).toBeNull();
  });

  it('do not show in another design whose part has the same id, nor in the same file opened again', () => {
    const session = start();
    keepDraft(session, 'bolt', 'span', { spacingMm: 60 });
    expect(session.actions.openDesign(read()).ok).toBe(true);
    expect(session.store.getState().design.parts.some(({ id }) => id === 'bolt')).toBe(true);
    expect(keptDraft(session, 'bolt', 'span')).toBeNull();
  });

  it('go with the design through undo and redo of its opening, and no later opening finds them', () => {
    const session = start();
    const { actions } = session;
    keepDraft(session, 'bolt', 'span', { spacingMm: 60 });
    actions.openDesign(read());
    keepDraft(session, 'bolt', 'span', { spacingMm: 75 });
    actions.undo();
    expect(keptDraft(session, 'bolt', 'span')).toEqual({ spacingMm: 60 });
    actions.redo();
    expect(keptDraft(session, 'bolt', 'span')).toEqual({ spacingMm: 75 });
    actions.undo();
    actions.openDesign(read());
    expect(keptDraft(session, 'bolt', 'span')).toBeNull();
  });

  it('stay with the design that is open when a file is refused, and through a drag that is undone', () => {
    const session = start();
    const { actions } = session;
    actions.openDesign(read());
    keepDraft(session, 'bolt', 'span', { spacingMm: 60 });
    const design = read();
    const rotor = { ...design.rotor, speedRpm: Number.NaN };
    expect(actions.openDesign({ ...design, rotor }).ok).toBe(false);
    const hold = actions.gesture.begin();
    expect(actions.setParameter('bolt', 'extensionLengthMm', 3.25).ok).toBe(true);
    hold.end();
    actions.undo();
    expect(keptDraft(session, 'bolt', 'span')).toEqual({ spacingMm: 60 });
    actions.redo();
    expect(keptDraft(session, 'bolt', 'span')).toEqual({ spacingMm: 60 });
  });
});
