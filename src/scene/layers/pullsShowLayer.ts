import type { LumpPull } from '../../engine/feathering/lumps';
import { scale, type Vec3 } from '../../engine/math/vector';
import { EVERYTHING } from '../../state/changes';
import { type PullEntry, pullTally } from '../../state/pullTally';
import type { Session } from '../../state/session';
import { entryMoment, entryName } from '../../state/words/pullText';
import { Arrows } from '../drawing/arrows';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { dashPattern, dashPolyline, type Point } from '../maths/dashes';
import { steadyScale } from '../maths/niceScale';
import type { StageKit } from '../stageKit';
import type { StageLayer } from './stageLayer';

/** Longest arrows at full scale and the design's speed, mm. */
const PULL_LENGTH = 56;
const TURNING_LENGTH = 36;
/**
 * Of what pulls a lump across the axis half turns it at 45 degrees from the plane of rotation, and about so much within the
 * pitch that is mostly used.
 */
const TURNED = 0.3;
/** The trail behind a part reaches back so far, radians. */
const TRAIL = 1.9;
const TRAIL_STEPS = 40;
/** From outside the newest pull's name stands almost alone: lesser words would hide the small head. */
const OWN_RANK = 6;

/**
 * The pulls as the room Pulls adds them one by one: at every lump the whole pull away from the shaft (pale), the share of it
 * that turns the grip (vivid, at a scale of its own) and its lever. The newest has its distance from the shaft drawn and its
 * name said; from outside it leaves a trail, and a dashed line goes where it would fly if nothing held it.
 */
export function createPullsShowLayer(kit: StageKit, session: Session): StageLayer {
  const whole = new Arrows(kit.lines, 2, 0.6);
  const turning = new Arrows(kit.lines, 3.5, 1);
  const levers = new Segments(kit.lines, 1.5, { overlay: true });
  const radius = new Segments(kit.lines, 1.25, { overlay: true });
  const trail = new Segments(kit.lines, 2.5, { opacity: 0.8 });
  const ring = new Segments(kit.lines, 1.5, { opacity: 0.8 });
  const objects = [whole, turning, levers, radius, trail].map(({ object }) => object);
  kit.root.add(...objects);
  kit.roomFrame.add(ring.object);
  const label = kit.labels.add('stage-label', OWN_RANK);
  let wasOpen = false;

  function visible(open: boolean): void {
    for (const object of objects) object.visible = open;
    const outside = open && session.pullsShow.shown.eye === 'outside';
    trail.object.visible = outside;
    ring.object.visible = outside;
    kit.labels.lowestRank = outside ? OWN_RANK : 0;
  }

  function draw(): void {
    const { shown } = session.pullsShow;
    visible(shown.open);
    kit.pullScale.whole = shown.open;
    label.visible = false;
    if (!shown.open) {
      kit.pullArrows = 0;
      return;
    }
    const { reading, store } = { reading: session.live.reading, store: session.store.getState() };
    const full = pullTally(reading, store.pitchDeg, shown.grain, null);
    const { entries } =
      shown.speedRpm === null
        ? full
        : pullTally(reading, store.pitchDeg, shown.grain, shown.speedRpm);
    setScales(full.entries, store.gesture);
    drawEntries(entries, shown.progress);
    const last = entries.slice(0, Math.ceil(shown.progress)).findLast(hasPulls);
    drawNewest(last ?? null, shown.eye === 'outside');
    if (last) {
      label.visible = true;
      label.text = `${entryName(last)}: ${entryMoment(last.moment, store.settings.units)}`;
      label.put(scale(last.pulls[0].at, MM));
      label.offset = [0, -16];
    }
  }

  function setScales(entries: readonly PullEntry[], dragging: boolean): void {
    let largest = 0;
    let bound = 0;
    for (const { pulls } of entries) {
      for (const pull of pulls) {
        const size = Math.hypot(...pull.force);
        largest = Math.max(largest, size);
        const across = pull.lump.mass * kit.angularSpeed ** 2 * pull.lever;
        bound = Math.max(bound, TURNED * across);
      }
    }
    const scales = kit.pullScale;
    scales.visible = true;
    scales.still = steadyScale(scales.still, largest, dragging);
    scales.turning = steadyScale(scales.turning, bound, dragging);
    scales.stillMmPerN = PULL_LENGTH / scales.still;
    scales.turningMmPerN = TURNING_LENGTH / scales.turning;
  }

  function drawEntries(entries: readonly PullEntry[], progress: number): void {
    const { stillMmPerN, turningMmPerN } = kit.pullScale;
    const strokes: number[] = [];
    let count = 0;
    whole.begin();
    turning.begin();
    entries.forEach(({ pulls }, i) => {
      const grown = Math.min(1, progress - i);
      if (!(grown > 0)) return;
      for (const { at, foot, force, turning: share } of pulls) {
        whole.add(at, force, stillMmPerN * grown);
        turning.add(at, share, turningMmPerN * grown);
        strokes.push(...scale(foot, MM), ...scale(at, MM));
        if (Math.hypot(...force) > 0) count++;
      }
    });
    whole.end();
    turning.end();
    levers.set(strokes);
    kit.pullArrows = count;
  }

  /** From the shaft out to each lump; from outside the way that it came and the way that it would go. */
  function drawNewest(entry: PullEntry | null, outside: boolean): void {
    const dashes: number[] = [];
    for (const { at } of entry?.pulls ?? []) {
      const start: Point = [0, 0, at[2] * MM];
      dashPolyline(dashes, [start, scale(at, MM)], dashPattern(kit.extent.outboard / 60));
    }
    if (outside && entry) dashes.push(...tangent(entry.pulls[0]));
    radius.set(dashes);
    trail.set(outside && entry ? trailOf(entry.pulls[0].at) : []);
    ring.set(outside ? ringTicks(kit.extent.outboard) : []);
  }

  function tangent({ at }: LumpPull): number[] {
    const reach = 0.7;
    const end: Point = [(at[0] - reach * at[1]) * MM, (at[1] + reach * at[0]) * MM, at[2] * MM];
    const strokes: number[] = [];
    dashPolyline(strokes, [scale(at, MM), end], dashPattern(kit.extent.outboard / 25));
    return strokes;
  }

  const stop = session.pullsShow.subscribe(() => {
    const { open } = session.pullsShow.shown;
    draw();
    if (open !== wasOpen) {
      wasOpen = open;
      // The layer that draws all of them at once comes or goes.
      kit.redraw();
    }
    kit.eye?.invalidate();
  });

  return {
    update(_now, changes) {
      if (changes === EVERYTHING || changes.design || changes.pitch || changes.settings) draw();
    },
    paint(palette) {
      whole.paint(palette.pull);
      turning.paint(palette.pull);
      levers.paint(palette.ink);
      radius.paint(palette.inkQuiet);
      trail.paint(palette.accent);
      ring.paint(palette.lineStrong);
    },
    dispose() {
      stop();
      for (const object of [...objects, ring.object]) object.removeFromParent();
      for (const made of [whole, turning, levers, radius, trail, ring]) made.dispose();
      kit.labels.remove(label);
      kit.labels.lowestRank = 0;
      kit.pullArrows = 0;
    },
  };
}

function hasPulls(entry: PullEntry): boolean {
  return entry.pulls.length > 0;
}

/** An arc round the shaft that ends at a point, mm. */
function trailOf(at: Vec3): number[] {
  const distance = Math.hypot(at[0], at[1]) * MM;
  const end = Math.atan2(at[1], at[0]);
  const strokes: number[] = [];
  const on = (i: number) => {
    const angle = end - (TRAIL * i) / TRAIL_STEPS;
    return [distance * Math.cos(angle), distance * Math.sin(angle), at[2] * MM];
  };
  for (let i = 0; i < TRAIL_STEPS; i++) strokes.push(...on(i), ...on(i + 1));
  return strokes;
}

/** Marks that stand still round the disc: against them one sees it go round. */
function ringTicks(outboard: number): number[] {
  const strokes: number[] = [];
  for (let i = 0; i < 24; i++) {
    const [c, s] = [Math.cos((i * Math.PI) / 12), Math.sin((i * Math.PI) / 12)];
    const [from, to] = [outboard * 1.05, outboard * (i % 6 === 0 ? 1.16 : 1.09)];
    strokes.push(c * from, s * from, 0, c * to, s * to, 0);
  }
  return strokes;
}
