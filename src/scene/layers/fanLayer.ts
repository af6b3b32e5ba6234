import { Group } from 'three';
import { degreesFromRadians } from '../../engine/units';
import { t } from '../../messages';
import { displayForce, displayMoment, show } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { DisplayUnits } from '../../state/settings';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { arcPoints, dashPattern, dashPolyline, type Point, SOLID } from '../maths/dashes';
import { FAN_RIM, type FanSize, fanExcursion, fillHeld, heldRoom, homePitch } from '../maths/fan';
import { steadyScale } from '../maths/niceScale';
import type { StageKit } from '../stageKit';
import { FanStrip } from './fanStrip';
import { MarkPool } from './markPool';
import type { StageLayer } from './stageLayer';

/** At most this many samples round the half turn. */
const SAMPLES = 181;
/** Full scale is at least this share of what the parts would do with none cancelling another. */
const GROSS_SHARE = 0.4;
/** Pitch beside which the scale is written: between the usual places of marks. */
const SCALE_AT = 36;

/**
 * The force fan (what it means: `maths/fan`). Blue and solid-edged outside its base arc, vermilion and dash-edged
 * inside it; filled and hollow marks at rest and flee angles; a green bracket where friction holds; thin arcs at full
 * scale. Full scale is set by what the
 * parts would do with none of them cancelling another, so that a head in balance lies flat on its arc instead of being
 * blown up.
 */
export function createFanLayer(kit: StageKit): StageLayer {
  const group = new Group();
  kit.axisFrame.add(group);
  const outward = new FanStrip(kit.lines, 1);
  const inward = new FanStrip(kit.lines, -1);
  const base = new Segments(kit.lines, 1.25);
  const rings = new Segments(kit.lines, 1, { opacity: 0.6 });
  const held = new Segments(kit.lines, 4);
  const pointer = new Segments(kit.lines, 2);
  group.add(outward.object, inward.object, base.object, rings.object, held.object, pointer.object);
  const marks = new MarkPool(kit.labels);
  const scaleLabel = kit.labels.add('stage-label stage-label-quiet', 4);
  let angles = new Float64Array(0);
  let excursions = new Float64Array(0);
  let fullScale = 0;
  let unit = '';
  let drawnSize = '';

  /** World position of a point of the fan's plane. */
  function worldPoint(
    station: number,
    radius: number,
    pitchDeg: number,
    reading: HeadReading,
  ): Point {
    const angle = (pitchDeg * Math.PI) / 180;
    const y = radius * Math.cos(angle);
    const z = radius * Math.sin(angle);
    const c = Math.cos(reading.rotor.precone);
    const s = Math.sin(reading.rotor.precone);
    return [station * c - z * s, y + reading.rotor.torqueOffset * MM, station * s + z * c];
  }

  function sample(reading: HeadReading, units: DisplayUnits): void {
    const { curve, linkage } = reading;
    const perUnit = linkage ? displayForce(1, units).value : displayMoment(1, units).value;
    const size = linkage ? curve.force : curve.moment;
    const stride = Math.ceil(curve.pitchDeg.length / SAMPLES);
    const count = Math.floor((curve.pitchDeg.length - 1) / stride) + 1;
    if (angles.length !== count) {
      angles = new Float64Array(count);
      excursions = new Float64Array(count);
    }
    const home = homePitch(reading.equilibria);
    for (let i = 0; i < count; i++) {
      const at = i * stride;
      angles[i] = curve.pitchDeg[at];
      const shown = Math.abs(size[at]) * perUnit;
      excursions[i] = fanExcursion(curve.moment[at], shown, angles[i], home, fullScale);
    }
  }

  function drawArcs(size: FanSize): void {
    const key = `${size.base} ${size.reach}`;
    if (key === drawnSize) return;
    drawnSize = key;
    const arc = (radius: number) => arcPoints(radius, -90, 90, (c, s): Point => [0, c, s], 60);
    const strokes: number[] = [];
    dashPolyline(strokes, arc(size.base), SOLID);
    base.set(strokes);
    const thin: number[] = [];
    dashPolyline(thin, arc(size.base + size.reach), dashPattern(1.6));
    dashPolyline(thin, arc(size.base - size.reach), dashPattern(1.6));
    rings.set(thin);
  }

  function drawMarks(reading: HeadReading, size: FanSize, station: number): void {
    marks.begin();
    if (reading.equilibria.kind === 'found') {
      for (const root of reading.equilibria.roots) {
        const pitchDeg = degreesFromRadians(root.pitch);
        const at = worldPoint(station, size.base, pitchDeg, reading);
        const words = worldPoint(
          station,
          size.base + size.reach * (FAN_RIM + 0.15),
          pitchDeg,
          reading,
        );
        marks.add(root.kind, pitchDeg, at, words);
      }
    }
    marks.end();
  }

  return {
    update({ reading, state }, changes) {
      const { units, layers } = state.settings;
      const visible = layers.fan;
      for (const drawn of [outward, inward, base, rings, held]) drawn.object.visible = visible;
      scaleLabel.visible = visible;
      if (!visible) marks.hide();
      const size = kit.fanSize();
      const station = kit.fanStation;
      group.position.x = station;
      drawPointer(pointer, kit.pointerRadius(), state.pitchDeg);
      if (!visible || !(changes.design || changes.settings)) return;
      const peak = Math.max(GROSS_SHARE * grossSize(reading, units), netPeak(reading, units));
      const now = reading.linkage ? units.force : units.moment;
      fullScale = steadyScale(now === unit ? fullScale : 0, peak, state.gesture);
      unit = now;
      sample(reading, units);
      drawArcs(size);
      outward.draw(angles, excursions, size);
      inward.draw(angles, excursions, size);
      held.show(fillHeld(held.room(heldRoom(reading.bandsDeg)), reading.bandsDeg, size));
      drawMarks(reading, size, station);
      scaleLabel.put(worldPoint(station, size.base + size.reach * 1.5, SCALE_AT, reading));
      scaleLabel.text = scaleText(reading, fullScale, units);
    },
    paint(palette) {
      outward.paint(palette.centres);
      inward.paint(palette.flees);
      base.paint(palette.ink);
      rings.paint(palette.lineStrong);
      held.paint(palette.holds);
      pointer.paint(palette.accent);
    },
    dispose() {
      group.removeFromParent();
      outward.dispose();
      inward.dispose();
      base.dispose();
      rings.dispose();
      held.dispose();
      pointer.dispose();
      marks.dispose();
      kit.labels.remove(scaleLabel);
    },
  };
}

function drawPointer(pointer: Segments, radius: number, pitchDeg: number): void {
  const angle = (pitchDeg * Math.PI) / 180;
  pointer.set([0, 0, 0, 0, radius * Math.cos(angle), radius * Math.sin(angle)]);
}

/** Largest force (or moment) in display units if no part cancelled another, the arm at its full lever. */
function grossSize(reading: HeadReading, units: DisplayUnits): number {
  let moment = 0;
  for (const id of reading.order) {
    const placed = reading.part(id);
    if (placed && !placed.part.hidden) moment += placed.bound;
  }
  const { linkage } = reading;
  if (!linkage) return displayMoment(moment, units).value;
  const lever = linkage.reach * Math.cos(reading.rotor.precone);
  return displayForce(moment / lever, units).value;
}

/** Largest force (or moment) in display units as far as twice the pitch in use. */
function netPeak(reading: HeadReading, units: DisplayUnits): number {
  const { curve, linkage } = reading;
  const sizes = linkage ? curve.force : curve.moment;
  let peak = 0;
  for (let i = 0; i < sizes.length; i++) {
    if (Math.abs(curve.pitchDeg[i]) > 2 * reading.usedPitchDeg) continue;
    peak = Math.max(peak, Math.abs(sizes[i]) || 0);
  }
  return linkage ? displayForce(peak, units).value : displayMoment(peak, units).value;
}

function scaleText(reading: HeadReading, fullScale: number, units: DisplayUnits): string {
  const quantity = reading.linkage ? displayForce(1, units) : displayMoment(1, units);
  const size = show({ value: fullScale, unit: quantity.unit }, 1);
  return t(reading.linkage ? 'stage.fan.force' : 'stage.fan.moment', { size });
}
