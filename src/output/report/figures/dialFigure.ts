import { rodRotation } from '../../../engine/linkage/rodPose';
import { spreadEllipse } from '../../../engine/mass/inertia';
import { type Mat3, ZERO } from '../../../engine/math/vector';
import { degreesFromRadians, radians, radiansFromDegrees } from '../../../engine/units';
import { partType } from '../../../parts/registry';
import { silhouettes } from '../../../parts/silhouette';
import { closedEdges, closedSpans } from '../../../state/closedSpans';
import type { HeadReading, PartReading } from '../../../state/reading';
import { ELLIPSE_REACH } from '../../../state/spread';
import { pitchMarks } from '../../../state/words/pitchMarks';
import { signedDegrees } from '../../../state/words/pitchText';
import { type DialLayout, pointAt } from '../../../ui/drawn/dialLayout';
import { freePlace, placeRingLabels, type RingLabel, touches } from '../../../ui/drawn/ringLabels';
import { t } from '../roomText';
import { circle, ellipse, type Figure, INK, line, path, polygon, type Shape, text } from './figure';

const WIDTH = 300;
const HEIGHT = 286;
const RADIUS = 104;
const CLEARANCE = 12;
const TICK_LABELS = [-90, -60, -30, 0, 30, 60, 90];
const LAYOUT: DialLayout = {
  width: WIDTH,
  height: HEIGHT,
  centreX: RADIUS + 8,
  centreY: HEIGHT / 2,
  radius: RADIUS,
};

/**
 * The view along the feathering axis from the tip, for paper: the parts' shadows at a pitch, the spread ellipse, rest angles
 * (filled), flee angles (hollow), where friction holds, what ends the pitch. The same geometry as the page's dial, without
 * what one drags. Keep-outs and hidden parts are left out.
 */
export function dialFigure(reading: HeadReading, pitchDeg: number): Figure {
  const shapes = [
    ...backShapes(reading),
    ...partShapes(reading, pitchDeg),
    ...ringShapes(reading),
    ...markShapes(reading),
    ...pointerShapes(pitchDeg),
    ...labelShapes(reading, pitchDeg),
  ];
  const alt = t('report.dialAlt', { pitch: signedDegrees(pitchDeg) });
  return { width: WIDTH, height: HEIGHT, alt, shapes };
}

function backShapes({ usedPitchDeg }: HeadReading): Shape[] {
  const { centreX, centreY } = LAYOUT;
  const sector = arcPoints(-usedPitchDeg, usedPitchDeg, RADIUS);
  return [polygon([[centreX, centreY], ...sector], { fill: INK.wash })];
}

function partShapes(reading: HeadReading, pitchDeg: number): Shape[] {
  const outlines = reading.order
    .flatMap((id) => reading.part(id) ?? [])
    .filter(({ part, carriedBy }) => !part.hidden && (carriedBy === 'grip' || carriedBy === 'rod'))
    .map((part) => ({ part, shadows: shadowsOf(part, reading, pitchDeg) }));
  const spread = spreadEllipse(reading.totals);
  const onGrip = outlines.filter(({ part }) => part.carriedBy === 'grip');
  const reach = Math.max(
    ELLIPSE_REACH * (spread?.long ?? 0),
    ...onGrip.flatMap(({ shadows }) => shadows.flat()).map(([y, z]) => Math.hypot(y, z)),
    1e-6,
  );
  const scale = (0.82 * RADIUS) / reach;
  const { centreX, centreY } = LAYOUT;
  const place = ([y, z]: readonly [number, number]): [number, number] => [
    centreX + y * scale,
    centreY - z * scale,
  ];
  const shapes: Shape[] = outlines
    .flatMap(({ shadows }) => shadows)
    .filter((shadow) => shadow.length > 2)
    .toSorted((a, b) => extent(b) - extent(a))
    .map((shadow) =>
      polygon(shadow.map(place), { fill: INK.part, stroke: INK.partEdge, width: 0.5 }),
    );
  if (spread) {
    const turn = -pitchDeg - degreesFromRadians(radians(spread.angle));
    const [a, b] = [ELLIPSE_REACH * spread.long * scale, ELLIPSE_REACH * spread.short * scale];
    shapes.push(
      ellipse(centreX, centreY, a, b, { stroke: INK.centres, width: 1.2, dash: [5, 2.5] }, turn),
    );
  }
  return shapes;
}

/** Outlines of a part at a pitch about the feathering axis, rotor directions (y, z), m. */
function shadowsOf(
  { part, values, pose_G, carriedBy }: PartReading,
  { linkage }: HeadReading,
  pitchDeg: number,
): (readonly [number, number])[][] {
  const axis = carriedBy === 'rod' ? linkage?.rodAxisAt(pitchDeg) : null;
  const rotation: Mat3 = axis ? rodRotation(pose_G.rotation, axis) : pose_G.rotation;
  const solids = partType(part.kind)
    .solids(values)
    .filter((solid) => !('density' in solid) || solid.density > 0);
  const [c, s] = [Math.cos(radiansFromDegrees(pitchDeg)), Math.sin(radiansFromDegrees(pitchDeg))];
  const turned = ([y, z]: readonly [number, number]) => [y * c - z * s, y * s + z * c] as const;
  const [, originY, originZ] = pose_G.translation;
  return silhouettes(solids, { rotation, translation: ZERO }).map(({ outline }) =>
    outline.map(([y, z]) => {
      // A rod's own axes are turned as the slider has it, its ball as the grip does.
      if (!axis) return turned([y + originY, z + originZ]);
      const [ballY, ballZ] = turned([originY, originZ]);
      return [y + ballY, z + ballZ] as const;
    }),
  );
}

function extent(outline: readonly (readonly [number, number])[]): number {
  const ys = outline.map(([y]) => y);
  const zs = outline.map(([, z]) => z);
  return Math.max(...ys) - Math.min(...ys) + Math.max(...zs) - Math.min(...zs);
}

function ringShapes(reading: HeadReading): Shape[] {
  const { centreX, centreY } = LAYOUT;
  const plane = { stroke: INK.line, width: 0.6, dash: [7, 2, 1.5, 2] };
  const shapes: Shape[] = [
    line(centreX - RADIUS, centreY, centreX + RADIUS, centreY, plane),
    circle(centreX, centreY, RADIUS, { stroke: INK.line, width: 0.8 }),
    circle(centreX, centreY, 1.6, { fill: INK.text }),
  ];
  for (let pitch = -90; pitch <= 90; pitch += 10) {
    const inner = RADIUS - (pitch % 30 === 0 ? 8 : 4.5);
    shapes.push(radial(pitch, inner, RADIUS, { stroke: INK.line, width: 0.7 }));
  }
  for (const { fromDeg, toDeg } of closedSpans(reading.linkage)) {
    const hatch = { stroke: INK.flees, width: 2.2, dash: [1.4, 2.2] };
    shapes.push(arc(fromDeg, toDeg, RADIUS - 5, hatch));
  }
  for (const { edgeDeg } of closedEdges(reading.linkage)) {
    shapes.push(radial(edgeDeg, RADIUS - 13, RADIUS + 5, { stroke: INK.flees, width: 1.4 }));
  }
  for (const [from, to] of reading.bandsDeg) {
    const look = { stroke: INK.holds, width: 1.8 };
    shapes.push(arc(from, to, RADIUS + 5, look));
    for (const end of [from, to]) shapes.push(radial(end, RADIUS + 2, RADIUS + 8, look));
  }
  return shapes;
}

function markShapes(reading: HeadReading): Shape[] {
  return pitchMarks(reading).flatMap(({ pitchDeg, kind }): Shape[] => {
    const [x, y] = pointAt(LAYOUT, pitchDeg, RADIUS);
    const edge = { stroke: INK.text, width: 1.4 };
    if (kind === 'stable') return [circle(x, y, 4.5, { ...edge, fill: INK.text })];
    const hollow = circle(x, y, 4.5, { ...edge, fill: '#ffffff' });
    return kind === 'unstable' ? [hollow] : [hollow, circle(x, y, 2, { fill: INK.text })];
  });
}

function pointerShapes(pitchDeg: number): Shape[] {
  return [radial(pitchDeg, 0, RADIUS - 9, { stroke: INK.pitch, width: 1.2 })];
}

/** Texts round the ring: the pitch drawn stands firm, marks and ends make room, ticks give way. */
function labelShapes(reading: HeadReading, pitchDeg: number): Shape[] {
  const own = signedDegrees(pitchDeg);
  const labels: (RingLabel & { readonly colour: string; readonly bold: boolean })[] = [
    { pitchDeg, text: own, firm: true, colour: INK.text, bold: true },
  ];
  const add = (angle: number, colour: string) => {
    const words = signedDegrees(angle);
    if (words !== own) labels.push({ pitchDeg: angle, text: words, colour, bold: false });
  };
  for (const mark of pitchMarks(reading)) add(mark.pitchDeg, INK.text);
  for (const { edgeDeg } of closedEdges(reading.linkage)) add(edgeDeg, INK.flees);
  const placed = placeRingLabels(labels, RADIUS, CLEARANCE) ?? [
    freePlace(own, pitchDeg, RADIUS, CLEARANCE),
  ];
  const shapes = placed.map((spot, i) => {
    const [x, y] = pointAt(LAYOUT, spot.pitchDeg, spot.distance);
    const { text: words, colour, bold } = labels[i];
    return text(x, y + 4, words, { anchor: 'middle', colour, bold });
  });
  for (const pitch of TICK_LABELS) {
    const words = signedDegrees(pitch, 0);
    const spot = freePlace(words, pitch, RADIUS, CLEARANCE);
    if (touches(words, spot, labels, placed)) continue;
    const [x, y] = pointAt(LAYOUT, spot.pitchDeg, spot.distance);
    shapes.push(text(x, y + 4, words, { anchor: 'middle', colour: INK.quiet, size: 9.5 }));
  }
  return shapes;
}

function radial(pitchDeg: number, from: number, to: number, look: Parameters<typeof line>[4]) {
  return line(...pointAt(LAYOUT, pitchDeg, from), ...pointAt(LAYOUT, pitchDeg, to), look);
}

/** Points of an arc, a degree or less apart: the chord leaves it by less than 0.004 % of the radius. */
function arcPoints(fromDeg: number, toDeg: number, radius: number): [number, number][] {
  const steps = Math.max(1, Math.ceil(Math.abs(toDeg - fromDeg)));
  return Array.from({ length: steps + 1 }, (_, i) =>
    pointAt(LAYOUT, fromDeg + ((toDeg - fromDeg) * i) / steps, radius),
  );
}

function arc(fromDeg: number, toDeg: number, radius: number, look: Parameters<typeof path>[1]) {
  const points = arcPoints(fromDeg, toDeg, radius);
  return path(
    points.map(([x, y], i) => [i === 0 ? 'M' : 'L', x, y] as const),
    look,
  );
}
