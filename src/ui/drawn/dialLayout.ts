/**
 * Where things stand on the dial. Seen from the tip looking inboard (against the grip's x), with rotor Z up, the
 * leading edge (+y) lies to the right, since right = forward x up = (-x) x z = y; positive pitch, a right-hand turn
 * about x, turns anticlockwise. Pixels, y down.
 */
export interface DialLayout {
  readonly width: number;
  readonly height: number;
  readonly centreX: number;
  readonly centreY: number;
  /** Radius of the ring. */
  readonly radius: number;
}

/** Room kept for the labels right of the ring, and above and below it. */
const LABEL_ROOM = 58;
const LEFT_ROOM = 8;
const END_ROOM = 28;
const SMALLEST_RADIUS = 47;

/** The largest ring that fits, middle of its room. */
export function dialLayout(width: number, height: number): DialLayout {
  const across = width - LEFT_ROOM - LABEL_ROOM;
  const radius = Math.max(SMALLEST_RADIUS, Math.min(across, height - 2 * END_ROOM) / 2);
  return { width, height, centreX: LEFT_ROOM + across / 2, centreY: height / 2, radius };
}

/** The point at a pitch and a distance from the axis, as [x, y]. */
export function pointAt(layout: DialLayout, pitchDeg: number, distance: number): [number, number] {
  const angle = (pitchDeg * Math.PI) / 180;
  return [layout.centreX + distance * Math.cos(angle), layout.centreY - distance * Math.sin(angle)];
}

/**
 * The pitch of a point. On the left half, beyond the ends of the range, it is the end on the side where the pointer
 * stands (`currentDeg`): a drag past an end stops there and does not leap to the other.
 */
export function pitchOfPoint(layout: DialLayout, x: number, y: number, currentDeg: number): number {
  const angle = (Math.atan2(layout.centreY - y, x - layout.centreX) * 180) / Math.PI;
  if (Math.abs(angle) <= 90) return angle;
  return currentDeg >= 0 ? 90 : -90;
}

/** Path of an arc round the axis from one pitch to another, less than a full turn. */
export function arcPath(
  layout: DialLayout,
  fromDeg: number,
  toDeg: number,
  radius: number,
): string {
  const [x0, y0] = pointAt(layout, fromDeg, radius);
  const [x1, y1] = pointAt(layout, toDeg, radius);
  const large = Math.abs(toDeg - fromDeg) > 180 ? 1 : 0;
  const sweep = toDeg > fromDeg ? 0 : 1;
  return `M${round(x0)} ${round(y0)}A${round(radius)} ${round(radius)} 0 ${large} ${sweep} ${round(x1)} ${round(y1)}`;
}

/** The same arc closed to the axis: a sector. */
export function sectorPath(
  layout: DialLayout,
  fromDeg: number,
  toDeg: number,
  radius: number,
): string {
  const arc = arcPath(layout, fromDeg, toDeg, radius);
  return `${arc}L${round(layout.centreX)} ${round(layout.centreY)}Z`;
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}

/**
 * Pixels per metre so that what reaches `reach` from the axis stays inside the ring. Keeps the scale it has while
 * that still looks right, so that a part grows on screen when it is dragged longer; while dragging it only gives way.
 */
export function fittingScale(
  previous: number,
  reach: number,
  radius: number,
  dragging: boolean,
): number {
  const best = (0.8 * radius) / Math.max(reach, 1e-6);
  const filled = (previous * reach) / radius;
  if (previous > 0 && filled <= 0.92 && (dragging || filled >= 0.62)) return previous;
  return dragging ? (0.9 * radius) / Math.max(reach, 1e-6) : best;
}
