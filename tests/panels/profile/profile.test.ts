import { describe, expect, it } from 'vitest';
import { bodyMoments } from '../../../src/design/bodyMoments';
import type { PartOf } from '../../../src/design/design';
import { NO_MATERIALS, valuesOf } from '../../../src/design/resolve';
import { JXX, M, SX } from '../../../src/engine/mass/moments';
import {
  dropSection,
  outlineHeight,
  outlinePath,
  takeSection,
} from '../../../src/panels/profile/sectionDesk';
import { spanView } from '../../../src/panels/profile/spanView';
import { partType } from '../../../src/parts/registry';
import { createSession } from '../../../src/state/createSession';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { linePath, place, roundTicks } from '../../../src/ui/drawn/plotScale';
import { designOf, partOf } from '../../design/designs';

/** An invented eight-sided section. */
const FILE =
  'Lozenge\n1 0\n0.95 0.01\n0.6 0.06\n0.2 0.05\n0 0\n0.2 -0.05\n0.6 -0.06\n0.95 -0.01\n1 0\n';
const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');

function open() {
  const {
    sectionCoordinates: _,
    sectionName: __,
    ...bare
  } = partOf('blade', 'blade') as PartOf<'blade'>;
  return createSession(designOf([bare]), (callback) => callback());
}

describe('the plot of mass along the span', () => {
  const part = partOf('blade', 'blade', { lagDeg: 20 });
  const values = valuesOf(part, NO_MATERIALS);
  const moments = bodyMoments(part, values);
  if (!moments) throw new Error('the blade weighs nothing');

  it('draws what adds up to the blade: its mass and first moment, whatever the lag', () => {
    const profile = partType('blade').spanProfile?.(values, 4001);
    if (!profile) throw new Error('the blade has no profile');
    const step = profile.x[1] - profile.x[0];
    let mass = 0;
    let first = 0;
    profile.massPerLength.forEach((one, i) => {
      const end = i === 0 || i === profile.x.length - 1 ? 0.5 : 1;
      mass += end * one * step;
      first += end * one * step * profile.x[i];
    });
    // The trapezium rule errs by at most half a step at the one jump (root block to airfoil): 1 / 4000 of the span.
    expect(Math.abs(mass / moments[M] - 1)).toBeLessThan(2.5e-4);
    expect(Math.abs(first / moments[SX] - 1)).toBeLessThan(2.5e-4);
  });

  it('tells the centre and J about it, in the units on screen', () => {
    const profile = partType('blade').spanProfile?.(values, 11);
    if (!profile) throw new Error('the blade has no profile');
    const view = spanView(profile, 1, moments, METRIC_UNITS);
    const x = moments[SX] / moments[M];
    expect(plain(view?.summary ?? '')).toContain(`${(1000 * x).toFixed(2)} mm outboard`);
    const J = 1e9 * (moments[JXX] - moments[M] * x * x);
    expect(plain(view?.summary ?? '')).toContain(`${J.toFixed(0)} g mm² along the span`);
    expect(view?.massTitle).toContain('g/mm');
    expect(spanView(profile, 1, moments, INCH_UNITS)?.massTitle).toContain('oz/in');
  });

  it('has round numbers on its axes, and lifts the pen where there is no mass', () => {
    expect(roundTicks(0, 92, 5)).toEqual([0, 20, 40, 60, 80]);
    expect(roundTicks(-0.31, 0.12, 3)).toEqual([-0.2, 0]);
    expect(roundTicks(3, 3, 3)).toEqual([3]);
    // One number alone is no scale.
    expect(roundTicks(-4.9, 4.9, 2)).toEqual([-4, -2, 0, 2, 4]);
    expect(place(5, 0, 10, 40, 60)).toBe(50);
    expect(linePath([0, 1, 2, 3], [1, Number.NaN, 2, 3])).toBe('M0.00 1.00M2.00 2.00L3.00 3.00');
  });
});

describe('a section from a file', () => {
  const part = (session: ReturnType<typeof open>) => session.store.getState().design.parts[0];

  it('is taken on with its name in one undo step, and let go in one', () => {
    const session = open();
    const before = part(session);
    const steps = () => session.store.temporal.getState().pastStates.length;
    expect(takeSection(session, 'blade', 'lozenge.dat', FILE)).toMatchObject({ ok: true });
    expect(part(session)).toMatchObject({ sectionName: 'Lozenge' });
    expect(steps()).toBe(1);
    expect(dropSection(session, 'blade')).toBeNull();
    expect('sectionName' in part(session)).toBe(false);
    expect('sectionCoordinates' in part(session)).toBe(false);
    expect(steps()).toBe(2);
    session.actions.undo();
    expect(part(session)).toMatchObject({ sectionName: 'Lozenge' });
    session.actions.undo();
    expect(part(session)).toBe(before);
  });

  it('that cannot be read is refused with its line and reason, and nothing changes', () => {
    const session = open();
    const before = session.store.getState().design;
    const taken = takeSection(session, 'blade', 'bad.dat', FILE.replace('0.2 0.05', '0.2 five'));
    expect(taken.ok ? '' : taken.error).toMatch(
      /^bad\.dat is not taken, because line 5 has "0\.2 five"/,
    );
    expect(session.store.getState().design).toBe(before);
  });

  it('without a name is called by its file, and its outline keeps its proportions', () => {
    const session = open();
    takeSection(session, 'blade', 'own.txt', FILE.replace('Lozenge\n', ''));
    expect(part(session)).toMatchObject({ sectionName: 'own' });
    expect(outlineHeight([1, 0, 0.5, 0.1, 0, -0.02])).toBe(22);
    expect(outlinePath([1, 0, 0.5, 0.1, 0, 0], 30)).toBe('M100.00 15.00L50.00 5.00L0.00 15.00Z');
  });
});
