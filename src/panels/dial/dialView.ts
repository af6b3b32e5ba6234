import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { spokenPitch } from '../../state/words/pitchText';
import { arcPath, type DialLayout, dialLayout, pitchOfPoint } from '../../ui/drawn/dialLayout';
import { attachPush, attachPushKeys } from '../../ui/letGo/push';
import { attachPitchKeys } from '../../ui/pitchKeys';
import { attachPitchDrag } from '../marks/pitchDrag';
import { setValues, svgElement } from '../marks/svg';
import { createFace } from './dialFace';
import { createMarks } from './dialMarks';
import { createParts } from './dialParts';
import { createPointer } from './dialPointer';
import type { DialPulls } from './dialPulls';
import type { DialTrail } from './dialTrail';

/** The whole dial in one SVG element, kept up to date outside React. */
export interface DialView {
  /** What turns inside the ring: shadows, spread of mass, pulls. */
  updateInside(reading: HeadReading): void;
  /** The ring: bands, rest and flee marks, pointer. */
  updateRing(reading: HeadReading): void;
  destroy(): void;
}

export function createDialView(svg: SVGSVGElement, session: Session, label: string): DialView {
  const { store, actions, live, pullsShow, letGo } = session;
  const clipId = `dial-clip-${Math.random().toString(36).slice(2)}`;
  const clip = svgElement('clipPath', svgElement('defs', svg), { id: clipId });
  const clipCircle = svgElement('circle', clip);
  const back = svgElement('g', svg);
  const clipped = svgElement('g', svg, { 'clip-path': `url(#${clipId})` });
  const rods = svgElement('g', clipped);
  const turning = svgElement('g', svg);
  const front = svgElement('g', svg, { class: 'dial-front' });
  const pullsGroup = svgElement('g', svg, { class: 'dial-front' });
  const trailGroup = svgElement('g', svg, { class: 'dial-front' });
  const pointerGroup = svgElement('g', svg, { class: 'dial-front' });
  // Pressing anywhere on the ring's right half takes the pointer there.
  const track = svgElement('path', svg, { class: 'dial-track' });
  const marksGroup = svgElement('g', svg);
  const textGroup = svgElement('g', svg, { class: 'dial-front' });
  const knob = svgElement('g', svg, {
    class: 'dial-slider',
    role: 'slider',
    tabindex: 0,
    'aria-label': label,
    'aria-valuemin': -90,
    'aria-valuemax': 90,
    'data-testid': 'dial-knob',
  });

  const face = createFace(back, front);
  const parts = createParts(rods, turning, actions.select);
  const marks = createMarks(marksGroup, textGroup, actions.setPitch);
  const pointer = createPointer(pointerGroup, knob);
  let layout: DialLayout = dialLayout(0, 0);
  /** Fetched when the room Pulls is first opened. */
  let pulls: DialPulls | null = null;
  let asked = false;
  /** Fetched when the grip is first let go. */
  let trail: DialTrail | null = null;
  let trailAsked = false;

  function resize(): void {
    const { width, height } = svg.getBoundingClientRect();
    if (width === 0 || height === 0) return;
    if (width === layout.width && height === layout.height) return;
    layout = dialLayout(width, height);
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    setValues(track, { d: arcPath(layout, -90, 90, layout.radius) });
    setValues(clipCircle, { cx: layout.centreX, cy: layout.centreY, r: layout.radius });
    for (const piece of [face, parts, marks, pointer]) piece.layout(layout);
    drawPulls();
    trail?.draw(layout);
  }

  function updateInside(reading: HeadReading): void {
    const { pitchDeg, selection, gesture } = store.getState();
    parts.update(reading, { pitchDeg, selection, dragging: gesture });
    drawPulls();
  }

  function updateRing(reading: HeadReading): void {
    const { pitchDeg, settings } = store.getState();
    face.update(reading);
    marks.update(reading, pitchDeg);
    pointer.update(reading, pitchDeg);
    setValues(knob, {
      'aria-valuenow': pitchDeg,
      'aria-valuetext': spokenPitch(reading, pitchDeg, settings.units),
    });
  }

  /** With the head; nothing while the room is closed. */
  function drawPulls(): void {
    if (pullsShow.shown.open) pulls?.draw(layout, parts.perMetre);
  }

  /** The drawing of the pulls is its own small file, which nobody needs before. */
  function pullsChanged(): void {
    pulls?.draw(layout, parts.perMetre);
    if (!pullsShow.shown.open) {
      // Where it could not be fetched (offline), opening the room again asks again; stage and table show the same.
      asked = pulls !== null;
      return;
    }
    if (asked) return;
    asked = true;
    import('./dialPulls').then(
      (module) => {
        pulls ??= module.createDialPulls(pullsGroup, session);
        drawPulls();
      },
      () => {},
    );
  }

  function letGoChanged(): void {
    trail?.draw(layout);
    if (trailAsked || !letGo.run) return;
    trailAsked = true;
    import('./dialTrail').then(
      (module) => {
        trail = module.createDialTrail(trailGroup, letGo);
        trail.draw(layout);
      },
      () => {
        trailAsked = false;
      },
    );
  }

  function pitchAt(event: PointerEvent): number {
    const box = svg.getBoundingClientRect();
    const x = event.clientX - box.left;
    const y = event.clientY - box.top;
    return pitchOfPoint(layout, x, y, store.getState().pitchDeg);
  }

  const observer = new ResizeObserver(resize);
  observer.observe(svg);
  resize();
  const detach = [
    // While it moves by itself a press pushes it; these come first and keep such a press to themselves.
    attachPush(knob, letGo, { pitchAt, takes: () => letGo.moving }),
    attachPush(track, letGo, { pitchAt, takes: () => letGo.moving }),
    attachPushKeys(knob, letGo, () => letGo.moving),
    letGo.subscribe(letGoChanged),
    attachPitchDrag(knob, session, { slider: knob, pitchAt, takes: () => 'carry' }),
    attachPitchDrag(track, session, { slider: knob, pitchAt, takes: () => 'jump' }),
    attachPitchKeys(knob, session),
    pullsShow.subscribe(pullsChanged),
    // The scale may settle once a drag is over.
    store.subscribe((state, before) => {
      if (before.gesture && !state.gesture) updateInside(live.reading);
    }),
  ];

  return {
    updateInside,
    updateRing,
    destroy() {
      observer.disconnect();
      for (const undo of detach) undo();
      svg.replaceChildren();
    },
  };
}
