import { placeLabels } from './labels';

/** A text beside the ring: it wants to stand at its pitch. */
export interface RingLabel {
  readonly pitchDeg: number;
  readonly text: string;
  /** The pointer's own text stays where it is; the others make room. */
  readonly firm?: boolean;
}

export interface PlacedRingLabel {
  readonly pitchDeg: number;
  /** Distance of the text's middle from the axis. */
  readonly distance: number;
}

const LINE_HEIGHT = 14;
const CHARACTER_WIDTH = 6.8;
const GAP = 3;
/** Labels may be pushed past the ends of the pitch range, where the ring is empty. */
const FURTHEST_DEG = 118;

/**
 * Places labels round the outside of a ring without overlap. Their room is measured along the ring: a text of width
 * w and height h takes h near flat pitch and w near the ends.
 */
export function placeRingLabels(
  labels: readonly RingLabel[],
  radius: number,
  clearance: number,
): readonly PlacedRingLabel[] | null {
  const track = radius + clearance + LINE_HEIGHT / 2;
  const perDegree = (track * Math.PI) / 180;
  const places = placeLabels(
    labels.map((label) => ({
      at: label.pitchDeg * perDegree,
      size: lengthAlongRing(label.text, label.pitchDeg),
      weight: label.firm ? 1e6 : 1,
    })),
    -FURTHEST_DEG * perDegree,
    FURTHEST_DEG * perDegree,
    GAP,
  );
  return (
    places?.map((place, i) => {
      const pitchDeg = place / perDegree;
      return { pitchDeg, distance: radius + clearance + depth(labels[i].text, pitchDeg) / 2 };
    }) ?? null
  );
}

/** True where the box of a text at its place would come nearer than the gap to the box of another. */
export function touches(
  text: string,
  place: PlacedRingLabel,
  labels: readonly RingLabel[],
  placed: readonly PlacedRingLabel[],
): boolean {
  const own = middle(place);
  return placed.some((spot, i) => {
    const other = middle(spot);
    const across = ((text.length + labels[i].text.length) / 2) * CHARACTER_WIDTH;
    return (
      Math.abs(own.x - other.x) < across + GAP && Math.abs(own.y - other.y) < LINE_HEIGHT + GAP
    );
  });
}

function middle({ pitchDeg, distance }: PlacedRingLabel) {
  const angle = (pitchDeg * Math.PI) / 180;
  return { x: distance * Math.cos(angle), y: distance * Math.sin(angle) };
}

/** Where a label stands that nothing pushes. */
export function freePlace(
  text: string,
  pitchDeg: number,
  radius: number,
  clearance: number,
): PlacedRingLabel {
  return { pitchDeg, distance: radius + clearance + depth(text, pitchDeg) / 2 };
}

function lengthAlongRing(text: string, pitchDeg: number): number {
  const angle = (pitchDeg * Math.PI) / 180;
  const width = text.length * CHARACTER_WIDTH;
  return width * Math.abs(Math.sin(angle)) + LINE_HEIGHT * Math.abs(Math.cos(angle));
}

/** Extent of a text square to the ring. */
function depth(text: string, pitchDeg: number): number {
  const angle = (pitchDeg * Math.PI) / 180;
  const width = text.length * CHARACTER_WIDTH;
  return width * Math.abs(Math.cos(angle)) + LINE_HEIGHT * Math.abs(Math.sin(angle));
}
