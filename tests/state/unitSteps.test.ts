import { beforeEach, describe, expect, it } from 'vitest';
import { createSession } from '../../src/state/createSession';
import { createLessonDoor } from '../../src/state/lessonDoor';
import type { Session } from '../../src/state/session';
import { INCH_UNITS, METRIC_UNITS, MIXED_UNITS } from '../../src/state/settings';
import { HISTORY_LIMIT } from '../../src/state/store';
import { DEMOS, demo } from '../output/solids/heads';

describe('a change of the display units', () => {
  let session: Session;
  beforeEach(() => {
    session = createSession(demo(DEMOS[2]), () => {});
  });
  const units = () => session.store.getState().settings.units;
  const design = () => session.store.getState().design;
  const steps = () => session.store.temporal.getState();

  it('is undone and redone as one step, and the design stays the same object', () => {
    const before = design();
    session.actions.setUnits(INCH_UNITS);
    expect(units()).toEqual(INCH_UNITS);
    session.actions.undo();
    expect(units()).toEqual(METRIC_UNITS);
    expect(steps().pastStates).toHaveLength(0);
    session.actions.redo();
    expect(units()).toEqual(INCH_UNITS);
    expect(steps().futureStates).toHaveLength(0);
    expect(design()).toBe(before);
  });

  it('keeps its place between changes of the design, each undone alone', () => {
    const extension = () => {
      const bolt = design().parts.find(({ id }) => id === 'bolt');
      return bolt?.kind === 'bolt' ? bolt.extensionLengthMm : undefined;
    };
    session.actions.setParameter('bolt', 'extensionLengthMm', 2);
    session.actions.setUnits(MIXED_UNITS);
    session.actions.setParameter('bolt', 'extensionLengthMm', 5);
    session.actions.setUnits(INCH_UNITS);
    const seen: unknown[] = [];
    const note = () => seen.push([extension(), units()]);
    for (let i = 0; i < 4; i++) {
      session.actions.undo();
      note();
    }
    for (let i = 0; i < 4; i++) {
      session.actions.redo();
      note();
    }
    expect(seen).toEqual([
      [5, MIXED_UNITS],
      [2, MIXED_UNITS],
      [2, METRIC_UNITS],
      [0, METRIC_UNITS],
      [2, METRIC_UNITS],
      [2, MIXED_UNITS],
      [5, MIXED_UNITS],
      [5, INCH_UNITS],
    ]);
  });

  it('ends a drag, and other settings chosen since stay when it is undone', () => {
    const hold = session.actions.gesture.begin();
    session.actions.setParameter('bolt', 'extensionLengthMm', 5);
    session.actions.setUnits(INCH_UNITS);
    expect(hold.alive).toBe(false);
    session.actions.setSettings({ theme: 'dark' });
    session.actions.undo();
    expect(session.store.getState().settings).toMatchObject({ units: METRIC_UNITS, theme: 'dark' });
    expect(steps().pastStates).toHaveLength(1);
  });

  it('to the units that are shown is no step, and the history has its limit', () => {
    session.actions.setUnits({ ...METRIC_UNITS });
    expect(steps().pastStates).toHaveLength(0);
    for (let i = 0; i < HISTORY_LIMIT + 5; i++) {
      session.actions.setUnits(i % 2 === 0 ? INCH_UNITS : METRIC_UNITS);
    }
    expect(steps().pastStates).toHaveLength(HISTORY_LIMIT);
  });

  it('in a lesson is undone there, shows on both sides, and is no step of the own design', () => {
    const door = createLessonDoor(session, (lesson) => createSession(lesson, () => {}));
    const lesson = door.open({
      title: 'A lesson',
      design: demo(DEMOS[0]),
      pitchDeg: 0,
      select: null,
      settings: {},
    });
    lesson.actions.setUnits(INCH_UNITS);
    expect(units()).toEqual(INCH_UNITS);
    expect(steps().pastStates).toHaveLength(0);
    lesson.actions.undo();
    expect(units()).toEqual(METRIC_UNITS);
  });
});

describe('what was said of a step', () => {
  it('goes when steps are gone through; a warning stays', () => {
    const session = createSession(demo(DEMOS[2]), () => {});
    const said = () => session.store.getState().notice?.text;
    session.actions.setUnits(INCH_UNITS);
    session.actions.notify({ tone: 'plain', text: 'done' });
    session.actions.undo();
    expect(said()).toBeUndefined();
    session.actions.notify({ tone: 'plain', text: 'undone' });
    session.actions.redo();
    expect(said()).toBeUndefined();
    session.actions.notify({ tone: 'warning', text: 'not kept' });
    session.actions.undo();
    expect(said()).toBe('not kept');
  });
});
