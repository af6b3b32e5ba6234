import { rodRotation } from '../../engine/linkage/rodPose';
import { spreadEllipse } from '../../engine/mass/inertia';
import type { Mat3 } from '../../engine/math/vector';
import { degreesFromRadians, mmFromMetres, radians, radiansFromDegrees } from '../../engine/units';
import type { HeadReading, PartReading } from '../../state/reading';
import { ELLIPSE_REACH, spreadSide } from '../../state/spread';
import { type DialLayout, fittingScale } from '../../ui/drawn/dialLayout';
import { setShown, setValues, svgElement } from '../marks/svg';
import { PartShadow } from './partShadow';

/** What turns inside the ring: the parts' shadows and the spread ellipse, all at one scale. */
export interface DialParts {
  layout(layout: DialLayout): void;
  /** `dragging`: the scale holds still unless something would leave the ring. */
  update(reading: HeadReading, view: DialPartsView): void;
  /** Pixels a metre, as the parts are drawn now. */
  readonly perMetre: number;
}

export interface DialPartsView {
  readonly pitchDeg: number;
  readonly selection: string | null;
  readonly dragging: boolean;
}

export function createParts(
  rods: SVGGElement,
  turning: SVGGElement,
  select: (id: string) => void,
): DialParts {
  const shadows = new Map<string, PartShadow>();
  const ellipse = svgElement('ellipse', turning, { class: 'dial-ellipse' });
  const slider = svgElement('circle', rods, { class: 'dial-slider-ball', r: 1.6 });
  /** The shadows in the order in which they lie on one another. */
  let stacked: readonly PartShadow[] = [];
  let scale = 0;
  let place: DialLayout | null = null;
  let latest: { reading: HeadReading; view: DialPartsView } | null = null;
  let drawnRevision = -1;
  let reach = 0;

  function layout(next: DialLayout): void {
    place = next;
    scale = 0;
    if (latest) update(latest.reading, latest.view);
  }

  function update(reading: HeadReading, view: DialPartsView): void {
    latest = { reading, view };
    if (reading.revision !== drawnRevision) {
      drawnRevision = reading.revision;
      takeParts(reading, view.pitchDeg);
      takeEllipse(reading);
      reach = reachOf(reading);
    }
    if (!place) return;
    scale = fittingScale(scale, reach, place.radius, view.dragging);
    const perMm = scale / 1000;
    const centre = `translate(${place.centreX} ${place.centreY})`;
    const grow = `scale(${perMm.toFixed(4)} ${(-perMm).toFixed(4)})`;
    setValues(rods, { transform: `${centre} ${grow}` });
    setValues(turning, { transform: `${centre} rotate(${-view.pitchDeg}) ${grow}` });
    placeParts(reading, view);
  }

  function takeParts(reading: HeadReading, pitchDeg: number): void {
    for (const [id, shadow] of shadows) {
      if (reading.part(id)) continue;
      shadow.element.remove();
      shadows.delete(id);
    }
    let reorder = false;
    for (const id of reading.order) {
      const part = reading.part(id);
      if (!part) continue;
      let shadow = shadows.get(id);
      if (!shadow) {
        shadow = new PartShadow(id);
        shadow.element.addEventListener('click', () => select(id));
        shadows.set(id, shadow);
      }
      const group = part.carriedBy === 'grip' ? turning : rods;
      const changed =
        shadow.update(part, rotationOf(part, reading, pitchDeg)) ||
        shadow.element.parentNode !== group;
      if (shadow.element.parentNode !== group) {
        group.append(shadow.element);
        stacked = [];
      }
      reorder ||= changed;
    }
    if (reorder) smallOverLarge();
  }

  /** Large shadows first, so that a click finds the small ones; the ellipse on top takes no clicks. */
  function smallOverLarge(): void {
    const sorted = [...shadows.values()].toSorted((a, b) => b.extent - a.extent);
    if (sorted.length === stacked.length && sorted.every((one, i) => one === stacked[i])) return;
    stacked = sorted;
    for (const { element } of sorted) element.parentNode?.append(element);
    turning.append(ellipse);
  }

  function takeEllipse(reading: HeadReading): void {
    const spread = spreadEllipse(reading.totals);
    setShown(ellipse, spread !== null);
    if (!spread) return;
    setValues(ellipse, {
      class: `dial-ellipse dial-ellipse-${spreadSide(reading, spread)}`,
      rx: mmFromMetres(ELLIPSE_REACH * spread.long),
      ry: mmFromMetres(ELLIPSE_REACH * spread.short),
      transform: `rotate(${degreesFromRadians(radians(spread.angle)).toFixed(3)})`,
    });
  }

  function reachOf(reading: HeadReading): number {
    let furthest = ELLIPSE_REACH * (spreadEllipse(reading.totals)?.long ?? 0);
    for (const [id, shadow] of shadows) {
      const part = reading.part(id);
      if (!part || part.carriedBy !== 'grip') continue;
      const [, y, z] = part.pose_G.translation;
      furthest = Math.max(furthest, shadow.reach(y, z));
    }
    return furthest;
  }

  function placeParts(reading: HeadReading, view: DialPartsView): void {
    for (const [id, shadow] of shadows) {
      const part = reading.part(id);
      if (!part) continue;
      if (part.carriedBy === 'rod') shadow.update(part, rotationOf(part, reading, view.pitchDeg));
      const [y, z] = originOf(part, reading, view.pitchDeg);
      shadow.place(mmFromMetres(y), mmFromMetres(z));
      shadow.look(id === view.selection, part.part.hidden === true, isFixed(part));
    }
    const ball = reading.linkage?.rodPart ? reading.linkage.sliderBallAt(view.pitchDeg) : null;
    setShown(slider, ball !== null);
    if (!ball) return;
    const y = mmFromMetres(ball[1] - reading.rotor.torqueOffset);
    setValues(slider, { cx: y.toFixed(3), cy: mmFromMetres(ball[2]).toFixed(3) });
  }

  return {
    layout,
    update,
    get perMetre() {
      return scale;
    },
  };
}

/** How a part's own axes are turned on the dial: a rod points to the slider. */
function rotationOf(part: PartReading, { linkage }: HeadReading, pitchDeg: number): Mat3 {
  const { rotation } = part.pose_G;
  if (part.carriedBy !== 'rod') return rotation;
  const axis = linkage?.rodAxisAt(pitchDeg);
  return axis ? rodRotation(rotation, axis) : rotation;
}

/** A keep-out stands still in the picture, whatever the pitch. */
function isFixed({ carriedBy }: PartReading): boolean {
  return carriedBy === 'hub' || carriedBy === 'case';
}

/**
 * Grip-carried parts stay where they are in the turning group; a rod hangs on its ball, which turns. The dial's middle is
 * the feathering axis, so what stands in the rotor frame is drawn from there.
 */
function originOf(
  part: PartReading,
  { rotor }: HeadReading,
  pitchDeg: number,
): readonly [number, number] {
  const [, y, z] = part.pose_G.translation;
  if (part.carriedBy === 'grip') return [y, z];
  if (isFixed(part)) return [y - rotor.torqueOffset, z];
  const pitch = radiansFromDegrees(pitchDeg);
  const c = Math.cos(pitch);
  const s = Math.sin(pitch);
  return [y * c - z * s, y * s + z * c];
}
