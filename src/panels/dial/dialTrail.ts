import { degreesFromRadians, radians } from '../../engine/units';
import type { LetGoDesk } from '../../state/letGoTypes';
import { type DialLayout, pointAt } from '../../ui/drawn/dialLayout';
import { setShown, setValues, svgElement } from '../marks/svg';

/** Where the grip has been since it was let go: now at the ring, the past farther in, as a chart recorder's paper. */
export interface DialTrail {
  draw(layout: DialLayout): void;
}

/** Swings that are kept in view, few at first, and how far in the oldest of them lies, as a share of the ring's radius. */
const [FEWEST, MOST] = [0.75, 4];
const DEPTH = 0.45;
/** Short of the ring, where the pointer's knob is. */
const START = 12;

export function createDialTrail(group: SVGGElement, desk: LetGoDesk): DialTrail {
  const line = svgElement('path', group, { class: 'dial-trail' });
  const spring = svgElement('line', group, { class: 'dial-trail-spring' });

  function draw(layout: DialLayout): void {
    const { run } = desk;
    const { status, pushing } = desk.store.getState();
    const shown = run !== null && status !== 'held' && status !== 'starting';
    setShown(line, shown);
    setShown(spring, shown && pushing && run?.hand.kind === 'spring');
    if (!shown) return;
    const { release, trace, swing, hand } = run;
    const window = Math.min(MOST * swing, Math.max(FEWEST * swing, release.time));
    const outer = layout.radius - START;
    let d = '';
    for (let i = trace.length - 1; i >= 0; i--) {
      const age = release.time - trace.time[i];
      if (age > window) break;
      const reach = outer - (age / window) * DEPTH * layout.radius;
      const [x, y] = pointAt(layout, degreesFromRadians(radians(trace.pitch[i])), reach);
      d += `${d === '' ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`;
    }
    setValues(line, { d });
    if (hand.kind !== 'spring') return;
    const [x1, y1] = pointAt(layout, degreesFromRadians(release.pitch), layout.radius);
    const [x2, y2] = pointAt(layout, degreesFromRadians(hand.target), layout.radius);
    setValues(spring, { x1, y1, x2, y2 });
  }

  return { draw };
}
