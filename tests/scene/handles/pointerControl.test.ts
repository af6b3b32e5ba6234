import { readFileSync } from 'node:fs';
import { PerspectiveCamera, Vector3 } from 'three';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { handleSpecs } from '../../../src/scene/handles/handleSpecs';
import { attachPointer } from '../../../src/scene/handles/pointerControl';
import type { Readout } from '../../../src/scene/handles/readout';
import type { StageKit } from '../../../src/scene/stageKit';
import { ViewControl } from '../../../src/scene/view/viewControl';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';

/** As much of a page's element as the pointer's work asks for. */
class Host extends EventTarget {
  readonly clientWidth = 800;
  readonly clientHeight = 500;
  parentElement: unknown = null;
  readonly classList = { add() {}, remove() {}, toggle() {} };
  getBoundingClientRect = () => ({ left: 0, top: 0 });
  setPointerCapture() {}
  hasPointerCapture = () => false;
  closest = () => null;
}

function openDemo(): Session {
  const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const parsed = parseDesign(readFileSync(file, 'utf8'));
  if (!parsed.ok) throw new Error('the demo is not sound');
  return createSession(parsed.value, (callback) => callback());
}

describe('the pointer on the stage', () => {
  let session: Session;
  let host: Host;
  let orbit: { enabled: boolean };
  let detach: () => void;
  let pictures: (() => void)[];
  let said: string[];

  function pointer(type: string, pointerId: number, x = 400): void {
    const isPrimary = pointerId === 1;
    const own = { pointerId, isPrimary, button: 0, buttons: 1, pointerType: 'touch' };
    host.dispatchEvent(
      Object.assign(new Event(type, { cancelable: true }), { clientX: x, clientY: 250 }, own),
    );
  }

  const length = () =>
    (session.store.getState().design.parts as readonly (Part & { lengthMm?: number })[]).find(
      ({ id }) => id === 'bolt',
    )?.lengthMm ?? Number.NaN;

  /** The bolt's length, by a handle along the screen's x. */
  beforeEach(() => {
    pictures = [];
    said = [];
    vi.stubGlobal('window', new EventTarget());
    vi.stubGlobal('Element', Host);
    vi.stubGlobal('requestAnimationFrame', (picture: () => void) => pictures.push(picture));
    session = openDemo();
    session.actions.select('bolt');
    host = new Host();
    orbit = { enabled: true };
    const camera = new PerspectiveCamera(26, 800 / 500, 1, 2000);
    camera.position.set(0, 0, 200);
    camera.updateMatrixWorld();
    const at = new Vector3();
    const line = { origin: [0, 0, 0], direction: [1, 0, 0] };
    const posed = () => {
      const found = handleSpecs(session, { stationMm: 38, radiusMm: 45 }).find(
        ({ key }) => key === 'bolt/lengthMm',
      );
      if (!found) throw new Error('no handle');
      const spec = { ...found, motion: { kind: 'linear' as const, perMm: 1 } };
      return { spec, line, foot: at, knob: at, spot: null };
    };
    const kit = {
      handles: { active: null, nearest: posed, find: posed },
      labels: { reserved: [] },
      bodies: new Map(),
      heat() {},
    };
    const view = new ViewControl(kit as unknown as StageKit);
    view.attach(orbit as never);
    const readout = { show: (_at: unknown, _room: unknown, text: string) => said.push(text) };
    const eye = { camera, host, renderer: null, invalidate() {} };
    detach = attachPointer(session, kit as unknown as StageKit, {
      eye: eye as never,
      view,
      readout: { ...readout, hide: () => said.splice(0), name() {} } as unknown as Readout,
    });
  });

  afterEach(() => {
    detach();
    vi.unstubAllGlobals();
  });

  it.each(['lostpointercapture', 'pointercancel', 'pointerup'])(
    'goes on dragging when another finger is put down and ends with %s',
    (end) => {
      const before = length();
      pointer('pointerdown', 1);
      pointer('pointermove', 1, 420);
      const first = length();
      expect(first).not.toBe(before);
      pointer('pointerdown', 2, 100);
      pointer('pointermove', 2, 150);
      pointer(end, 2);
      expect(length()).toBe(first);
      pointer('pointermove', 1, 450);
      expect(length()).not.toBe(first);
      pointer('pointerup', 1);
      expect(session.store.getState().gesture).toBe(false);
      session.actions.undo();
      expect(length()).toBe(before);
    },
  );

  it.each([
    ['lostpointercapture', () => pointer('lostpointercapture', 1)],
    ['pointercancel', () => pointer('pointercancel', 1)],
    ['pointerup', () => pointer('pointerup', 1)],
    ['the stage going', () => detach()],
    ['Escape', () => window.dispatchEvent(Object.assign(new Event('keydown'), { key: 'Escape' }))],
  ] as const)('gives the camera its control back at %s', (_, end) => {
    pointer('pointerdown', 1);
    pointer('pointermove', 1, 420);
    expect(orbit.enabled).toBe(false);
    end();
    expect(orbit.enabled).toBe(true);
    expect(session.store.getState().gesture).toBe(false);
  });

  it('begins with what a field that the press took the focus from has taken over', () => {
    pointer('pointerdown', 1);
    pointer('pointermove', 1, 410);
    const travelled = length() - 22;
    window.dispatchEvent(Object.assign(new Event('keydown'), { key: 'Escape' }));
    expect(length()).toBe(22);
    const focus = () => session.actions.setParameter('bolt', 'lengthMm', 24);
    vi.stubGlobal('CSS', { escape: (text: string) => text });
    host.parentElement = { querySelector: () => ({ focus }) };
    pointer('pointerdown', 1);
    expect(length()).toBe(24);
    pointer('pointermove', 1, 410);
    expect(length()).toBeCloseTo(24 + travelled, 9);
  });

  it('takes over what is being typed where the list of handles is closed, too', () => {
    const blur = () => session.actions.setParameter('bolt', 'lengthMm', 24);
    Object.assign(host, { ownerDocument: { activeElement: { blur } } });
    pointer('pointerdown', 1);
    expect(length()).toBe(24);
  });

  it('lets the wheel zoom in the middle of a drag', () => {
    pointer('pointerdown', 1);
    pointer('pointermove', 1, 420);
    let heard = false;
    host.addEventListener('wheel', () => {
      heard = orbit.enabled;
    });
    host.dispatchEvent(new Event('wheel'));
    expect(heard).toBe(true);
  });

  it('no longer says a value that an undo in the middle of the drag has taken back', () => {
    pointer('pointerdown', 1);
    pointer('pointermove', 1, 420);
    for (const picture of pictures.splice(0)) picture();
    expect(said).toHaveLength(1);
    pointer('pointermove', 1, 440);
    session.actions.undo();
    for (const picture of pictures.splice(0)) picture();
    expect(said).toEqual([]);
    pointer('pointermove', 1, 460);
    for (const picture of pictures.splice(0)) picture();
    expect(said).toEqual([]);
  });

  it('says nothing of a drag that is over in a picture that comes later, nor of it in the next drag', () => {
    pointer('pointerdown', 1);
    pointer('pointermove', 1, 420);
    pointer('pointerup', 1);
    pointer('pointerdown', 1);
    for (const picture of pictures.splice(0)) picture();
    expect(said).toEqual([]);
    pointer('pointermove', 1, 440);
    for (const picture of pictures.splice(0)) picture();
    expect(said).toHaveLength(1);
  });
});
