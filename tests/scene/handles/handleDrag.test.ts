import { readFileSync } from 'node:fs';
import { PerspectiveCamera, Vector3 } from 'three';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import type { PosedHandle } from '../../../src/scene/handles/handleBoard';
import { HandleDrag } from '../../../src/scene/handles/handleDrag';
import type { HandleSpec } from '../../../src/scene/handles/handleSpec';
import { handleSpecs } from '../../../src/scene/handles/handleSpecs';
import { handleFrame, poseHandle } from '../../../src/scene/handles/poseHandle';
import { pixelOf } from '../../../src/scene/handles/projection';
import { gripPose, partPose } from '../../../src/scene/maths/gripFrame';
import type { StageEye } from '../../../src/scene/stageKit';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';

const WIDTH = 800;
const HEIGHT = 500;
const PLAIN = { shiftKey: false, altKey: false };

function openDemo(): Session {
  const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const parsed = parseDesign(readFileSync(file, 'utf8'));
  if (!parsed.ok) throw new Error('the demo is not sound');
  return createSession(parsed.value, (callback) => callback());
}

/** Looks at the bolt from a direction. */
function eyeFrom(x: number, y: number, z: number): StageEye {
  const camera = new PerspectiveCamera(26, WIDTH / HEIGHT, 1, 2000);
  camera.up.set(0, 0, 1);
  camera.position.set(38 + x, y, z);
  camera.lookAt(38, 0, 0);
  camera.updateMatrixWorld();
  const host = { clientWidth: WIDTH, clientHeight: HEIGHT } as HTMLElement;
  return { camera, host, renderer: null as never, invalidate: () => {} };
}

function specOf(session: Session, key: string): HandleSpec {
  const spec = handleSpecs(session, { stationMm: 38, radiusMm: 45 }).find((one) => one.key === key);
  if (!spec) throw new Error(`no handle ${key}`);
  return spec;
}

function pose(session: Session, spec: HandleSpec): PosedHandle & { readonly way: Vector3 } {
  const { reading } = session.live;
  const { pitchDeg } = session.store.getState();
  const X_RG = gripPose(reading.rotor, pitchDeg);
  const placed = spec.partId ? reading.part(spec.partId) : undefined;
  const X_RP = placed ? partPose(placed, X_RG, reading.linkage?.rodAxisAt(pitchDeg) ?? null) : null;
  const frame = handleFrame(spec, X_RP, X_RG, gripPose(reading.rotor, 0));
  const { line, foot, way } = poseHandle(spec.motion, frame);
  const at = new Vector3(...foot);
  return { spec, line, foot: at, knob: at, spot: null, way: new Vector3(...way) };
}

function pixel(eye: StageEye, point: Vector3): { readonly x: number; readonly y: number } {
  const spot = pixelOf(eye.camera, point, WIDTH, HEIGHT);
  if (!spot) throw new Error('behind the camera');
  return { x: spot[0], y: spot[1] };
}

/** Drags a handle by `mm` along its line, as the pointer sees it, and lets go unless told to hold. */
function drag(session: Session, eye: StageEye, key: string, mm: number, modifiers = PLAIN) {
  const handle = pose(session, specOf(session, key));
  const start = pixel(eye, handle.foot);
  const target = pixel(eye, handle.foot.clone().addScaledVector(handle.way, mm));
  const held = new HandleDrag(session, eye, handle, { ...start, ...modifiers });
  const steps = 5;
  let moved = null;
  for (let i = 1; i <= steps; i++) {
    const x = start.x + ((target.x - start.x) * i) / steps;
    const y = start.y + ((target.y - start.y) * i) / steps;
    moved = held.move({ x, y, ...modifiers });
  }
  return { held, moved };
}

function bolt(session: Session): Part & { readonly kind: 'bolt' } {
  const part = session.store.getState().design.parts.find(({ kind }) => kind === 'bolt');
  if (part?.kind !== 'bolt') throw new Error('no bolt');
  return part;
}

const undoSteps = (session: Session) => session.store.temporal.getState().pastStates.length;

describe('dragging a handle of the bolt', () => {
  let session: Session;
  const eye = eyeFrom(110, 160, 84);

  beforeEach(() => {
    session = openDemo();
    session.actions.select(bolt(session).id);
    session.actions.setPitch(12);
  });

  it('lengthens the head by what the pointer travels, as one undo step', () => {
    const { held, moved } = drag(session, eye, 'bolt/extensionLengthMm', 6.3);
    held.end();
    expect(moved).toEqual({ value: 6.3, reason: null });
    expect(bolt(session).extensionLengthMm).toBe(6.3);
    expect(undoSteps(session)).toBe(1);
    session.actions.undo();
    expect(bolt(session).extensionLengthMm).toBe(0);
  });

  it('goes on from where it is when the window or the view changes under the pointer', () => {
    const looking = eyeFrom(110, 160, 84);
    const { held } = drag(session, looking, 'bolt/extensionLengthMm', 6.3);
    const handle = pose(session, specOf(session, 'bolt/extensionLengthMm'));
    const narrow = 420;
    Object.assign(looking.host, { clientWidth: narrow });
    looking.camera.aspect = narrow / HEIGHT;
    looking.camera.updateProjectionMatrix();
    looking.camera.position.set(98, 210, 60);
    looking.camera.lookAt(38, 0, 0);
    looking.camera.updateMatrixWorld();
    const spot = (mm: number) => {
      const at = handle.foot.clone().addScaledVector(handle.way, mm);
      const [x, y] = pixelOf(looking.camera, at, narrow, HEIGHT) ?? [0, 0];
      // The hand has not moved with the picture.
      return { x: x + 37, y: y - 52, ...PLAIN };
    };
    held.move(spot(0));
    expect(bolt(session).extensionLengthMm).toBe(6.3);
    held.move(spot(2));
    expect(Math.abs((bolt(session).extensionLengthMm ?? 0) - 8.3)).toBeLessThan(0.2);
    // The wheel brings the camera nearer while the pointer goes on: its travel counts as it is seen now.
    const last = spot(2);
    looking.camera.position.set(68, 105, 30);
    looking.camera.updateMatrixWorld();
    const [there, on] = [spot(0), spot(1)];
    held.move({ ...last, x: last.x + on.x - there.x, y: last.y + on.y - there.y });
    expect(Math.abs((bolt(session).extensionLengthMm ?? 0) - 9.3)).toBeLessThan(0.4);
    held.cancel();
    expect(bolt(session).extensionLengthMm).toBe(0);
  });

  it('changes a diameter by twice the travel', () => {
    drag(session, eye, 'bolt/headDiameterMm', 1.5).held.end();
    expect(bolt(session).headDiameterMm).toBeCloseTo(8.5, 9);
  });

  it('snaps to a tenth, to whole millimetres with Shift, to hundredths with Alt', () => {
    drag(session, eye, 'bolt/extensionLengthMm', 4.26).held.end();
    expect(bolt(session).extensionLengthMm).toBe(4.3);
    drag(session, eye, 'bolt/extensionLengthMm', 2.3, { shiftKey: true, altKey: false }).held.end();
    expect(bolt(session).extensionLengthMm).toBe(7);
    drag(session, eye, 'bolt/extensionLengthMm', 1.234, {
      shiftKey: false,
      altKey: true,
    }).held.end();
    expect(bolt(session).extensionLengthMm).toBeCloseTo(8.23, 9);
  });

  it('stops at a limit and says which', () => {
    drag(session, eye, 'bolt/extensionLengthMm', 5).held.end();
    const { held, moved } = drag(session, eye, 'bolt/extensionLengthMm', -12);
    held.end();
    expect(moved?.value).toBe(0);
    expect(moved?.reason).toMatch(/at least 0/);
    expect(bolt(session).extensionLengthMm).toBe(0);
  });

  it('stops where another part is in the way: the nut stays on the thread', () => {
    const before = bolt(session).lengthMm;
    const { held, moved } = drag(session, eye, 'bolt/lengthMm', -15);
    held.end();
    expect(moved?.reason).not.toBeNull();
    expect(bolt(session).lengthMm).toBeLessThanOrEqual(before ?? Number.NaN);
    expect(bolt(session).lengthMm).toBeGreaterThan(10);
  });

  it('is put back by Escape, and leaves no undo step', () => {
    const { held } = drag(session, eye, 'bolt/extensionLengthMm', 6);
    expect(bolt(session).extensionLengthMm).toBe(6);
    held.cancel();
    expect(bolt(session).extensionLengthMm).toBe(0);
    expect(undoSteps(session)).toBe(0);
  });

  it('does nothing while the pointer has not really moved', () => {
    const handle = pose(session, specOf(session, 'bolt/extensionLengthMm'));
    const start = pixel(eye, handle.foot);
    const held = new HandleDrag(session, eye, handle, { ...start, ...PLAIN });
    expect(held.move({ x: start.x + 1, y: start.y - 1, ...PLAIN })).toBeNull();
    held.end();
    expect(undoSteps(session)).toBe(0);
  });

  it('works seen end-on: upward on the screen pulls it out', () => {
    session.actions.setPitch(0);
    const above = eyeFrom(0, -0.02, 220);
    const handle = pose(session, specOf(session, 'bolt/extensionLengthMm'));
    const start = pixel(above, handle.foot);
    const held = new HandleDrag(session, above, handle, { ...start, ...PLAIN });
    held.move({ x: start.x, y: start.y - 40, ...PLAIN });
    held.end();
    expect(bolt(session).extensionLengthMm).toBeGreaterThan(3);
    expect(bolt(session).extensionLengthMm).toBeLessThan(15);
  });
});

describe('every handle of every part in the demo', () => {
  it('moves the value it names, the way its arrow points', () => {
    const eye = eyeFrom(30, 70, 60);
    for (const { id } of openDemo().store.getState().design.parts) {
      const listed = openDemo();
      listed.actions.select(id);
      for (const { key, motion, value } of handleSpecs(listed, { stationMm: 38, radiusMm: 45 })) {
        if (key === 'pitch/pitchDeg') continue;
        const session = openDemo();
        session.actions.select(id);
        drag(session, eye, key, 0.6).held.end();
        const there = specOf(session, key).value - value;
        drag(session, eye, key, -0.8).held.end();
        const back = specOf(session, key).value - (value + there);
        // A rule between parts may forbid one way, never both.
        expect(Math.abs(there) + Math.abs(back), key).toBeGreaterThan(0);
        if (motion.kind !== 'linear') continue;
        expect(there * motion.perMm, key).toBeGreaterThanOrEqual(0);
        expect(back * motion.perMm, key).toBeLessThanOrEqual(0);
      }
    }
  });
});

describe('dragging the pitch knob', () => {
  it('turns the pitch pointer by the angle about the axis, within its stops, without an undo step', () => {
    const session = openDemo();
    const eye = eyeFrom(160, 60, 60);
    const handle = pose(session, specOf(session, 'pitch/pitchDeg'));
    const start = pixel(eye, handle.foot);
    const at = (pitchDeg: number) => {
      const angle = (pitchDeg * Math.PI) / 180;
      return pixel(eye, new Vector3(38, 45 * Math.cos(angle), 45 * Math.sin(angle)));
    };
    const held = new HandleDrag(session, eye, handle, { ...start, ...PLAIN });
    held.move({ ...at(17.5), ...PLAIN });
    expect(session.store.getState().pitchDeg).toBe(17.5);
    held.move({ ...at(60), ...PLAIN });
    held.move({ ...at(120), ...PLAIN });
    expect(session.store.getState().pitchDeg).toBe(90);
    held.end();
    expect(undoSteps(session)).toBe(0);
  });
});

describe('a freely placed part', () => {
  it('is moved along the grip\u2019s own axes by three arrows', () => {
    const session = openDemo();
    session.actions.addPart('cylinder', {
      pose: { positionMm: [38, 10, 12], rotationDeg: [0, 0, 0] },
    });
    session.actions.setPitch(25);
    const id = session.store.getState().selection;
    const eye = eyeFrom(110, 160, 84);
    for (const k of [0, 1, 2]) drag(session, eye, `${id}/positionMm.${k}`, 3).held.end();
    const part = session.store.getState().design.parts.find((one) => one.id === id);
    const moved = part?.pose?.positionMm.map((value) => Math.round(value * 10) / 10);
    expect(moved).toEqual([41, 13, 15]);
    expect(undoSteps(session)).toBe(4);
  });
});
