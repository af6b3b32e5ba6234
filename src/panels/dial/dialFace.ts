import { t } from '../../messages';
import { closedEdges, closedSpans } from '../../state/closedSpans';
import type { HeadReading } from '../../state/reading';
import { arcPath, type DialLayout, pointAt, sectorPath } from '../../ui/drawn/dialLayout';
import { ElementPool, setShown, setText, setValues, svgElement } from '../marks/svg';

/** The still part of the dial: ring, degree ticks, pitch in use, what closes it, where friction holds, plane of rotation. */
export interface DialFace {
  layout(layout: DialLayout): void;
  update(reading: HeadReading): void;
}

const TICK_STEP_DEG = 10;
/** Radius from which the ring has room for the words at the plane of rotation beside the parts, pixels. */
const ROOM_FOR_WORDS = 64;
/** Of the holding bands from the ring. */
const BAND_GAP = 5;

export function createFace(back: SVGGElement, front: SVGGElement): DialFace {
  const used = svgElement('path', back, { class: 'dial-used' });
  const plane = svgElement('line', front, { class: 'dial-plane' });
  // Above and below the plane, or they would run into the parts.
  const words = t('dial.plane').split(/ (?=[^ ]+$)/);
  const planeTexts = words.map((line) => {
    const text = svgElement('text', front, { class: 'dial-text dial-plane-text' });
    setText(text, line);
    return text;
  });
  const ring = svgElement('circle', front, { class: 'dial-ring' });
  const still = svgElement('path', front, { class: 'dial-still' });
  const ticks: SVGLineElement[] = [];
  for (let pitch = -90; pitch <= 90; pitch += TICK_STEP_DEG) {
    ticks.push(svgElement('line', front, { class: 'dial-tick' }));
  }
  const beyond = new ElementPool(() => svgElement('path', front, { class: 'dial-beyond' }));
  const bands = new ElementPool(() => svgElement('path', front, { class: 'dial-band' }));
  const locks = new ElementPool(() => svgElement('line', front, { class: 'dial-lock' }));
  let place: DialLayout | null = null;
  let latest: HeadReading | null = null;

  function layout(next: DialLayout): void {
    place = next;
    const { centreX, centreY, radius } = next;
    setValues(ring, { cx: centreX, cy: centreY, r: radius });
    setValues(plane, { x1: centreX - radius, x2: centreX + radius, y1: centreY, y2: centreY });
    planeTexts.forEach((text, i) => {
      setValues(text, { x: centreX - radius + 8, y: centreY + (i === 0 ? -6 : 14) });
      // In a small ring they would lie on the parts.
      setShown(text, radius >= ROOM_FOR_WORDS);
    });
    setValues(still, { d: arcPath(next, -90, 90, radius) });
    ticks.forEach((tick, i) => {
      const pitch = -90 + i * TICK_STEP_DEG;
      const [x1, y1] = pointAt(next, pitch, radius);
      const [x2, y2] = pointAt(next, pitch, radius - (pitch % 30 === 0 ? 9 : 5));
      setValues(tick, { x1, y1, x2, y2 });
    });
    if (latest) update(latest);
  }

  function update(reading: HeadReading): void {
    latest = reading;
    if (!place) return;
    const current = place;
    const { radius } = current;
    const { usedPitchDeg } = reading;
    setValues(used, { d: sectorPath(current, -usedPitchDeg, usedPitchDeg, radius) });
    setShown(still, reading.equilibria.kind === 'neutral');
    const spans = closedSpans(reading.linkage);
    const arcs = beyond.take(spans.length);
    spans.forEach((span, i) => {
      setValues(arcs[i], { d: arcPath(current, span.fromDeg, span.toDeg, radius - 6) });
    });
    const edges = closedEdges(reading.linkage);
    const lines = locks.take(edges.length);
    edges.forEach((span, i) => {
      const [x1, y1] = pointAt(current, span.edgeDeg, radius - 16);
      const [x2, y2] = pointAt(current, span.edgeDeg, radius + 6);
      setValues(lines[i], { x1, y1, x2, y2, class: `dial-lock dial-lock-${span.why}` });
    });
    const held = bands.take(reading.bandsDeg.length);
    reading.bandsDeg.forEach(([from, to], i) => {
      setValues(held[i], {
        d: bandPath(current, from, to),
        'data-from-deg': from.toFixed(2),
        'data-to-deg': to.toFixed(2),
      });
    });
  }

  return { layout, update };
}

/** An arc just outside the ring with a tick at either end: a bracket round the pitches that friction holds. */
function bandPath(layout: DialLayout, from: number, to: number): string {
  const reach = layout.radius + BAND_GAP;
  const tick = (angle: number) => {
    const [x1, y1] = pointAt(layout, angle, reach - 3);
    const [x2, y2] = pointAt(layout, angle, reach + 3);
    return `M${x1.toFixed(2)} ${y1.toFixed(2)}L${x2.toFixed(2)} ${y2.toFixed(2)}`;
  };
  return arcPath(layout, from, to, reach) + tick(from) + tick(to);
}
