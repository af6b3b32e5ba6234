import { Raycaster, Vector2 } from 'three';
import { t } from '../../messages';
import type { Session } from '../../state/session';
import { pickPoint } from '../picking/pickPoint';
import type { StageEye, StageKit } from '../stageKit';
import type { ViewControl } from '../view/viewControl';
import type { PosedHandle } from './handleBoard';
import { type DragPoint, HandleDrag } from './handleDrag';
import type { HandleSpec } from './handleSpec';
import { type Moved, valueText } from './moveValue';
import type { Size } from './placeReadout';
import type { Readout } from './readout';

/** A press that travels less than this, px, picks what is under it. */
const CLICK = 4;

/** What the pointer moves in, and what is said of it. */
interface Seen {
  readonly eye: StageEye;
  readonly view: ViewControl;
  readonly readout: Readout;
}

/**
 * The pointer on the stage, outside React. A press within reach of a handle drags it, and the camera control below
 * never hears of it; any other press is the camera's, and a click picks the part under it or, on nothing, none.
 * Escape during a drag puts the value back. Over a handle its name and value are said beside the pointer, over a part the
 * part's name. Returns the way to detach.
 */
export function attachPointer(
  session: Session,
  kit: StageKit,
  { eye, view, readout }: Seen,
): () => void {
  const { host } = eye;
  const listeners = new AbortController();
  let drag: { readonly pointer: number; readonly of: HandleDrag } | null = null;
  /** Of the listener of the drag's moves. */
  let moves = new AbortController();
  let press: DragPoint | null = null;
  let hoverQueued = false;
  /** Where the pointer was last during a drag, and what stopped it: said with the next picture. */
  let dragged: { readonly point: DragPoint; readonly moved: Moved; readonly room: Size } | null =
    null;
  /** Whether the mouse is over the picture and not over what floats there. */
  let over = false;

  function pointOf(event: PointerEvent): DragPoint {
    const { left, top } = host.getBoundingClientRect();
    const { shiftKey, altKey } = event;
    return { x: event.clientX - left, y: event.clientY - top, shiftKey, altKey };
  }

  function down(event: PointerEvent): void {
    if (drag) {
      event.stopPropagation();
      return;
    }
    const point = pointOf(event);
    readout.hide();
    press = event.isPrimary && event.button === 0 ? point : null;
    // A press on the part picks a point of it: its handles wait.
    const picking = session.store.getState().picking !== null;
    const free = press && !picking && !onControls(event);
    const handle = free ? kit.handles.nearest(point.x, point.y) : null;
    if (!handle) return;
    event.stopPropagation();
    event.preventDefault();
    press = null;
    host.setPointerCapture(event.pointerId);
    focusTwin(host, handle.spec.key);
    drag = { pointer: event.pointerId, of: new HandleDrag(session, eye, asItIs(handle), point) };
    // Heard before anybody else on the page, and by nobody else: React would look for its own listeners with every move.
    moves = new AbortController();
    window.addEventListener('pointermove', move, { capture: true, signal: moves.signal });
    kit.handles.active = handle.spec.key;
    view.rest(true);
    host.classList.add('stage-dragging');
    eye.invalidate();
  }

  /** A field that the focus has just left has taken over what was typed there: a drag goes on from that. */
  function asItIs(handle: PosedHandle): PosedHandle {
    session.live.flush();
    return kit.handles.find(handle.spec.key) ?? handle;
  }

  function move(event: PointerEvent): void {
    const point = pointOf(event);
    if (!drag) {
      if (event.pointerType !== 'mouse' || event.buttons !== 0) return;
      over = !onControls(event);
      return hover(point);
    }
    if (event.pointerId !== drag.pointer) return;
    event.stopPropagation();
    const room = sizeOf(host);
    const moved = drag.of.move(point);
    if (!moved) return;
    // Written here it would be the first change of the page since its last picture, which costs more than one within a picture. The
    // host is asked for its size here, for there it would cost a layout.
    if (!dragged) requestAnimationFrame(sayDragged);
    dragged = { point, moved, room };
  }

  function sayDragged(): void {
    const last = dragged;
    dragged = null;
    if (!last || !drag) return;
    const { point, moved, room } = last;
    say(point, room, handleText(drag.of.handle.spec, moved.value), moved.reason);
  }

  function handleText(spec: HandleSpec, now: number): string {
    return t('stage.readout', { name: spec.label, value: valueText(session, spec, now) });
  }

  function say(at: DragPoint, room: Size, text: string, reason: string | null): void {
    readout.show(at, room, text, reason, kit.labels.reserved);
  }

  function finish(how: 'end' | 'cancel'): void {
    if (!drag) return;
    const { pointer, of } = drag;
    drag = null;
    moves.abort();
    dragged = null;
    kit.handles.active = null;
    view.rest(false);
    if (host.hasPointerCapture(pointer)) host.releasePointerCapture(pointer);
    host.classList.remove('stage-dragging');
    readout.hide();
    of[how]();
    eye.invalidate();
  }

  function up(event: PointerEvent): void {
    if (drag) {
      if (event.pointerId === drag.pointer) finish('end');
      return;
    }
    const point = pointOf(event);
    const still = press && Math.hypot(point.x - press.x, point.y - press.y) < CLICK;
    press = null;
    if (!still || onControls(event)) return;
    if (session.store.getState().picking) pickOn(session, kit, eye, point);
    else session.actions.select(partUnder(kit, eye, point));
  }

  /** Cursor, highlight and name, at most once a frame. */
  function hover(point: DragPoint): void {
    if (hoverQueued) return;
    hoverQueued = true;
    requestAnimationFrame(() => {
      hoverQueued = false;
      if (listeners.signal.aborted || drag) return;
      const spec = kit.handles.nearest(point.x, point.y)?.spec ?? null;
      const part = spec || !over ? null : nameOf(partUnder(kit, eye, point));
      kit.heat(spec?.key ?? null);
      host.classList.toggle('stage-over-handle', spec !== null);
      host.classList.toggle('stage-over-part', part !== null);
      if (spec && over) say(point, sizeOf(host), handleText(spec, spec.value), null);
      else if (part !== null) readout.name(point, sizeOf(host), part);
      else readout.hide();
    });
  }

  function nameOf(id: string | null): string | null {
    const { parts } = session.store.getState().design;
    return parts.find((part) => part.id === id)?.name ?? null;
  }

  function leave(): void {
    over = false;
    kit.heat(null);
    if (!drag) readout.hide();
  }

  /** A finger that is put down beside the one that drags, and lifted again, is none of the drag's business. */
  function isDragging({ pointerId }: PointerEvent): boolean {
    return drag?.pointer === pointerId;
  }

  function escape(event: KeyboardEvent): void {
    if (event.key !== 'Escape') return;
    if (!drag) return readout.hide();
    event.stopPropagation();
    event.preventDefault();
    finish('cancel');
  }

  // An undo in the middle of a drag has taken back what the read-out says.
  const stopWatching = session.store.subscribe((state, before) => {
    if (!drag || state.gesture || !before.gesture) return;
    dragged = null;
    readout.hide();
  });

  const capture = { capture: true, signal: listeners.signal };
  host.addEventListener('pointerdown', down, capture);
  host.addEventListener('pointermove', move, capture);
  host.addEventListener('pointerup', up, capture);
  host.addEventListener('pointercancel', (event) => isDragging(event) && finish('cancel'), capture);
  host.addEventListener(
    'lostpointercapture',
    (event) => isDragging(event) && finish('end'),
    capture,
  );
  // It may be turned in the middle of a drag: then the camera control is needed again.
  host.addEventListener('wheel', () => view.rest(false), { ...capture, passive: true });
  host.addEventListener('pointerleave', leave, { signal: listeners.signal });
  window.addEventListener('keydown', escape, capture);
  return () => {
    finish('cancel');
    stopWatching();
    listeners.abort();
  };
}

function sizeOf({ clientWidth, clientHeight }: HTMLElement): Size {
  return { width: clientWidth, height: clientHeight };
}

/** Buttons and sliders that float over the canvas keep their own presses. */
function onControls(event: PointerEvent): boolean {
  return event.target instanceof Element && event.target.closest('[data-stage-control]') !== null;
}

/** The focus goes to the handle in the list; where the list is closed it leaves what is being typed, which is taken over then. */
function focusTwin(host: HTMLElement, key: string): void {
  const twin = host.parentElement?.querySelector<HTMLElement>(`[data-handle="${CSS.escape(key)}"]`);
  if (twin) twin.focus({ preventScroll: true });
  else (host.ownerDocument?.activeElement as HTMLElement | null)?.blur();
}

/** A point of the part that is being placed. */
function pickOn(session: Session, kit: StageKit, eye: StageEye, point: DragPoint): void {
  const { picking } = session.store.getState();
  const body = picking && kit.bodies.get(picking.part);
  if (!body) return;
  const { clientWidth, clientHeight } = eye.host;
  const found = pickPoint(body.mesh, eye.camera, point, clientWidth, clientHeight);
  if (found) session.actions.picking.point(found);
}

const caster = new Raycaster();
const pixel = new Vector2();

/** Id of the part seen at a point of the host; hidden parts can be picked by their ghosts. */
function partUnder(kit: StageKit, eye: StageEye, point: DragPoint): string | null {
  const { clientWidth, clientHeight } = eye.host;
  pixel.set((2 * point.x) / clientWidth - 1, 1 - (2 * point.y) / clientHeight);
  caster.setFromCamera(pixel, eye.camera);
  const meshes = [...kit.bodies.values()].map((body) => body.mesh);
  const hits = caster.intersectObjects(meshes, false);
  const solid = hits.find(({ object }) => !kit.bodies.get(object.name)?.hidden) ?? hits[0];
  return solid ? solid.object.name : null;
}
