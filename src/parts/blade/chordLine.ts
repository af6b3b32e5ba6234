import { type SectionOutline, uprightCut } from '../../engine/mass/sectionOutline';

/** Ends of a section's chord (place along it from the outline's zero, height) and its greatest camber, in the outline's unit. */
export interface ChordLine {
  readonly nose: readonly [number, number];
  readonly tail: readonly [number, number];
  readonly camber: number;
}

/**
 * The chord line of an outline that runs from the trailing edge over the top and back along the bottom: from its
 * foremost corner to the middle of its blunt trailing edge. Camber is the greatest distance of the middle between top
 * and bottom from that line, measured upright at the corners: for thin sections the camber of the books to a few per
 * cent, which is what a warning needs.
 */
export function chordLineOf(outline: SectionOutline): ChordLine {
  const last = outline.length - 2;
  let front = 0;
  for (let i = 0; i < outline.length; i += 2) if (outline[i] < outline[front]) front = i;
  const nose: readonly [number, number] = [outline[front], outline[front + 1]];
  const blunt = isBlunt(outline, last, nose[0]);
  const tail: readonly [number, number] = blunt
    ? [(outline[0] + outline[last]) / 2, (outline[1] + outline[last + 1]) / 2]
    : [outline[0], outline[1]];
  const slope = (tail[1] - nose[1]) / (tail[0] - nose[0]);
  let camber = 0;
  for (let i = 0; i < outline.length; i += 2) {
    const cut = uprightCut(outline, outline[i]);
    if (!cut) continue;
    const middle = (cut.low + cut.high) / 2;
    camber = Math.max(camber, Math.abs(middle - nose[1] - slope * (outline[i] - nose[0])));
  }
  return { nose, tail, camber };
}

/** From the last point to the first the outline goes rather up than along, within a hundredth of the chord. */
function isBlunt(outline: SectionOutline, last: number, front: number): boolean {
  const along = Math.abs(outline[0] - outline[last]);
  const up = Math.abs(outline[1] - outline[last + 1]);
  return along < up && along < 0.01 * (outline[0] - front);
}
