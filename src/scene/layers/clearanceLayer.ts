import type { ClearancePair, HeadClearance } from '../../design/clearance/clearanceTypes';
import type { Vec3 } from '../../engine/math/vector';
import { clearanceWatch } from '../../state/clearanceWatch';
import { gapOnStage } from '../../state/gapText';
import type { Session } from '../../state/session';
import type { StageLabel } from '../drawing/labels';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { dashPattern, dashPolyline } from '../maths/dashes';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Keep-outs that have a line of their own. */
const MOST = 4;
/** A line is solid where its pitch is the one shown, within this, degrees. */
const SAME_PITCH = 0.05;
/** Half length of the crosses at a line's ends, and a dash, mm. */
const CROSS = 0.7;
const DASH = 1;

/**
 * The nearest gap to every keep-out, drawn where and at the pitch at which it happens, with its length. What overlaps is
 * outlined in the colour of warnings whether or not the layer is shown.
 */
export function createClearanceLayer(kit: StageKit, session: Session): StageLayer {
  const clear = new Segments(kit.lines, 2, { overlay: true });
  const close = new Segments(kit.lines, 2.5, { overlay: true });
  kit.root.add(clear.object, close.object);
  const words: StageLabel[] = Array.from({ length: MOST }, (_, i) =>
    // The least gap keeps its place.
    kit.labels.add('stage-label', i === 0 ? 10 : 8),
  );
  let found: HeadClearance | null = null;

  const stop = clearanceWatch(session).subscribe((next) => {
    found = next;
    draw();
    kit.eye?.invalidate();
  });

  function draw(): void {
    const { settings, pitchDeg } = session.store.getState();
    const clashing = new Set<string>();
    for (const { part, keepOut, meeting } of found?.pairs ?? []) {
      if (meeting !== 'clear') clashing.add(part).add(keepOut);
    }
    for (const [id, body] of kit.bodies) body.warn(clashing.has(id));
    const shown = settings.layers.clearance && found ? nearestOfEach(found) : [];
    const strokes = { clear: [] as number[], close: [] as number[] };
    for (const word of words) word.visible = false;
    shown.forEach((pair, i) => {
      const isClose = pair.gap < (found?.wanted ?? 0);
      const isNow = Math.abs(pair.pitchDeg - pitchDeg) < SAME_PITCH;
      addLine(isClose ? strokes.close : strokes.clear, pair, isNow);
      const word = words[i];
      const warns = isClose ? ' stage-label-warning' : '';
      word.element.className = `stage-label${warns}`;
      word.text = gapOnStage(pair, settings.units);
      word.put(middle(pair));
      word.offset = [0, -14];
      word.visible = true;
    });
    clear.set(strokes.clear);
    close.set(strokes.close);
  }

  return {
    update(_now, changes) {
      // The watch tells of a changed design; bodies that came since are marked here.
      if (changes.settings || changes.pitch || changes.parts === 'all') draw();
    },
    paint(palette) {
      clear.paint(palette.ink);
      close.paint(palette.warning);
    },
    dispose() {
      stop();
      for (const body of kit.bodies.values()) body.warn(false);
      for (const line of [clear, close]) {
        line.object.removeFromParent();
        line.dispose();
      }
      for (const word of words) kit.labels.remove(word);
    },
  };
}

/** The nearest part of each keep-out: pairs come with the least gap first. */
function nearestOfEach({ pairs }: HeadClearance): readonly ClearancePair[] {
  const seen = new Set<string>();
  return pairs.filter(({ keepOut }) => !seen.has(keepOut) && seen.add(keepOut)).slice(0, MOST);
}

function addLine(strokes: number[], { onPart, onKeepOut }: ClearancePair, solid: boolean): void {
  const [a, b] = [inMm(onPart), inMm(onKeepOut)];
  if (solid) strokes.push(...a, ...b);
  else dashPolyline(strokes, [a, b], dashPattern(DASH));
  for (const [x, y, z] of [a, b]) {
    strokes.push(x - CROSS, y, z, x + CROSS, y, z);
    strokes.push(x, y - CROSS, z, x, y + CROSS, z);
    strokes.push(x, y, z - CROSS, x, y, z + CROSS);
  }
}

function middle({ onPart, onKeepOut }: ClearancePair): Vec3 {
  const [a, b] = [inMm(onPart), inMm(onKeepOut)];
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
}

function inMm([x, y, z]: Vec3): Vec3 {
  return [x * MM, y * MM, z * MM];
}
