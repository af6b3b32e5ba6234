import type { HeadReading } from '../../state/reading';
import { arcPath, type DialLayout, pointAt } from '../../ui/drawn/dialLayout';
import { setShown, setValues, svgElement } from '../marks/svg';

/**
 * The pitch pointer with its knob (`knob` holds only what takes presses and focus, above the marks), and the curved arrow that shows which way the moment turns the grip and how hard.
 * The arrow's length is the moment against the largest moment any one part could make, so it shrinks to nothing as
 * the head comes nearer to neutral.
 */
export interface DialPointer {
  layout(layout: DialLayout): void;
  update(reading: HeadReading, pitchDeg: number): void;
}

/** Half of 44 px: a finger finds it. */
const KNOB_HIT_RADIUS = 22;
/** Wide enough that a rest or flee mark shows inside it. */
const KNOB_RADIUS = 10;
const LONGEST_ARROW_DEG = 60;
const SHORTEST_ARROW_DEG = 4;
const NEGLIGIBLE = 2e-4;

export function createPointer(group: SVGGElement, knob: SVGGElement): DialPointer {
  const line = svgElement('line', group, { class: 'dial-pointer' });
  const axis = svgElement('circle', group, { class: 'dial-axis', r: 3 });
  const arrow = svgElement('path', group, { class: 'dial-drive' });
  const ring = svgElement('circle', group, { class: 'dial-knob', r: KNOB_RADIUS });
  const tip = svgElement('path', group, { class: 'dial-drive-tip', d: 'M-7 -5L3 0L-7 5Z' });
  svgElement('circle', knob, { class: 'dial-hit', r: KNOB_HIT_RADIUS });
  svgElement('circle', knob, { class: 'dial-focus', r: 16 });
  let place: DialLayout | null = null;
  let latest: { reading: HeadReading; pitchDeg: number } | null = null;
  let largest = 0;
  let weighedRevision = -1;

  function layout(next: DialLayout): void {
    place = next;
    setValues(axis, { cx: next.centreX, cy: next.centreY });
    if (latest) update(latest.reading, latest.pitchDeg);
  }

  function update(reading: HeadReading, pitchDeg: number): void {
    latest = { reading, pitchDeg };
    if (!place) return;
    const { radius } = place;
    const [x1, y1] = pointAt(place, pitchDeg, 3);
    const [x2, y2] = pointAt(place, pitchDeg, radius - KNOB_RADIUS);
    setValues(line, { x1, y1, x2, y2 });
    const [x, y] = pointAt(place, pitchDeg, radius);
    setValues(ring, { cx: x, cy: y });
    setValues(knob, { transform: `translate(${x.toFixed(2)} ${y.toFixed(2)})` });
    if (reading.revision !== weighedRevision) {
      weighedRevision = reading.revision;
      largest = largestShare(reading);
    }
    drawArrow(place, pitchDeg, largest > 0 ? reading.momentAt(pitchDeg) / largest : 0);
  }

  function drawArrow(current: DialLayout, pitchDeg: number, share: number): void {
    const shown = Math.abs(share) > NEGLIGIBLE;
    setShown(arrow, shown);
    setShown(tip, shown);
    if (!shown) return;
    const way = Math.sign(share);
    const length = Math.min(
      LONGEST_ARROW_DEG,
      SHORTEST_ARROW_DEG + LONGEST_ARROW_DEG * Math.abs(share),
    );
    const radius = current.radius - 20;
    const end = pitchDeg + way * length;
    setValues(arrow, { d: arcPath(current, pitchDeg, end, radius) });
    const [x, y] = pointAt(current, end, radius);
    // The tip points along the ring; screen angles run clockwise.
    setValues(tip, {
      transform: `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${(-end - way * 90).toFixed(2)})`,
    });
  }

  return { layout, update };
}

/** The largest moment that any one part could make, N m. */
function largestShare(reading: HeadReading): number {
  let largest = 0;
  for (const id of reading.order) {
    const part = reading.part(id);
    if (part) largest = Math.max(largest, part.bound);
  }
  return largest;
}
