import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { spokenPitch } from '../../state/words/pitchText';
import { arcPath, type DialLayout, dialLayout, pitchOfPoint } from '../../ui/drawn/dialLayout';
import { attachPitchDrag } from '../marks/pitchDrag';
import { attachPitchKeys } from '../marks/pitchKeys';
import { setValues, svgElement } from '../marks/svg';
import { createFace } from './dialFace';
import { createMarks } from './dialMarks';
import { createParts } from './dialParts';
import { createPointer } from './dialPointer';

/** The whole dial in one SVG element, kept up to date outside React. */
export interface DialView {
  update(reading: HeadReading): void;
  destroy(): void;
}

export function createDialView(svg: SVGSVGElement, session: Session, label: string): DialView {
  const { store, actions, live } = session;
  const clipId = `dial-clip-${Math.random().toString(36).slice(2)}`;
  const clip = svgElement('clipPath', svgElement('defs', svg), { id: clipId });
  const clipCircle = svgElement('circle', clip);
  const back = svgElement('g', svg);
  const clipped = svgElement('g', svg, { 'clip-path': `url(#${clipId})` });
  const rods = svgElement('g', clipped);
  const turning = svgElement('g', svg);
  const front = svgElement('g', svg, { class: 'dial-front' });
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

  function resize(): void {
    const { width, height } = svg.getBoundingClientRect();
    if (width === 0 || height === 0) return;
    if (width === layout.width && height === layout.height) return;
    layout = dialLayout(width, height);
    setValues(svg, { viewBox: `0 0 ${width} ${height}` });
    setValues(track, { d: arcPath(layout, -90, 90, layout.radius) });
    setValues(clipCircle, { cx: layout.centreX, cy: layout.centreY, r: layout.radius });
    for (const piece of [face, parts, marks, pointer]) piece.layout(layout);
  }

  function update(reading: HeadReading): void {
    const { pitchDeg, selection, gesture, settings } = store.getState();
    face.update(reading);
    parts.update(reading, { pitchDeg, selection, dragging: gesture });
    marks.update(reading, pitchDeg);
    pointer.update(reading, pitchDeg);
    setValues(knob, {
      'aria-valuenow': pitchDeg,
      'aria-valuetext': spokenPitch(reading, pitchDeg, settings.units),
    });
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
    attachPitchDrag(knob, session, { slider: knob, pitchAt, takes: () => 'carry' }),
    attachPitchDrag(track, session, { slider: knob, pitchAt, takes: () => 'jump' }),
    attachPitchKeys(knob, session),
    // The scale may settle once a drag is over.
    store.subscribe((state, before) => {
      if (before.gesture && !state.gesture) update(live.reading);
    }),
  ];

  return {
    update,
    destroy() {
      observer.disconnect();
      for (const undo of detach) undo();
      svg.replaceChildren();
    },
  };
}
