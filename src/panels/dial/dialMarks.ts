import { t } from '../../messages';
import { closedEdges } from '../../state/closedSpans';
import type { HeadReading } from '../../state/reading';
import { type PitchMark, pitchMarks } from '../../state/words/pitchMarks';
import { signedDegrees } from '../../state/words/pitchText';
import { type DialLayout, pointAt } from '../../ui/drawn/dialLayout';
import {
  freePlace,
  type PlacedRingLabel,
  placeRingLabels,
  type RingLabel,
  touches,
} from '../../ui/drawn/ringLabels';
import { ElementPool, setShown, setText, setValues, svgElement } from '../marks/svg';

/**
 * What stands on and beside the ring: rest angles (filled), flee angles (hollow), tangent angles (half filled), and
 * all texts: those of the marks, of over-centre, of the ticks, and the pointer's own. Tick texts give way to marks,
 * marks move aside for the pointer's text.
 */
export interface DialMarks {
  layout(layout: DialLayout): void;
  update(reading: HeadReading, pitchDeg: number): void;
}

const MARK_RADIUS = 6;
/** A click target of 28 px about a mark of 12. */
const HIT_RADIUS = 14;
const CLEARANCE = 14;
const TICK_LABELS = [-90, -60, -30, 0, 30, 60, 90];

export function createMarks(
  marksGroup: SVGGElement,
  textGroup: SVGGElement,
  goTo: (pitchDeg: number) => void,
): DialMarks {
  const marks = new ElementPool((index) => makeMark(marksGroup, () => goTo(shown[index].pitchDeg)));
  const texts = new ElementPool(() => svgElement('text', textGroup, { class: 'dial-text' }));
  const tickTexts = TICK_LABELS.map((pitch) => {
    const text = svgElement('text', textGroup, { class: 'dial-text dial-tick-text' });
    setText(text, signedDegrees(pitch, 0));
    return text;
  });
  let shown: readonly PitchMark[] = [];
  let place: DialLayout | null = null;
  let latest: { reading: HeadReading; pitchDeg: number } | null = null;

  function layout(next: DialLayout): void {
    place = next;
    if (latest) update(latest.reading, latest.pitchDeg);
  }

  function update(reading: HeadReading, pitchDeg: number): void {
    latest = { reading, pitchDeg };
    if (!place) return;
    const current = place;
    shown = pitchMarks(reading);
    const discs = marks.take(shown.length);
    shown.forEach((mark, i) => {
      const [x, y] = pointAt(current, mark.pitchDeg, current.radius);
      setValues(discs[i], {
        transform: `translate(${x.toFixed(2)} ${y.toFixed(2)})`,
        class: `dial-mark dial-mark-${mark.kind}`,
        'data-kind': mark.kind,
        'data-pitch-deg': mark.pitchDeg.toFixed(2),
      });
      const title = discs[i].querySelector('title');
      if (title) setText(title, t('dial.goTo', { angle: signedDegrees(mark.pitchDeg) }));
    });
    showTexts(current, reading, pitchDeg);
  }

  function showTexts(current: DialLayout, reading: HeadReading, pitchDeg: number): void {
    const pointer = signedDegrees(pitchDeg);
    const labels: (RingLabel & { readonly look: string })[] = [
      { pitchDeg, text: pointer, firm: true, look: 'dial-text dial-pointer-text' },
    ];
    for (const mark of shown) {
      const text = signedDegrees(mark.pitchDeg);
      if (text === pointer) continue;
      labels.push({ pitchDeg: mark.pitchDeg, text, look: 'dial-text dial-mark-text' });
    }
    for (const { edgeDeg } of closedEdges(reading.linkage)) {
      labels.push({
        pitchDeg: edgeDeg,
        text: signedDegrees(edgeDeg),
        look: 'dial-text dial-lock-text',
      });
    }
    // Nine texts at most round half a ring always fit; the pointer's alone is the fallback for a tiny dial.
    const placed = placeRingLabels(labels, current.radius, CLEARANCE) ?? [
      freePlace(pointer, pitchDeg, current.radius, CLEARANCE),
    ];
    const elements = texts.take(placed.length);
    placed.forEach((spot, i) =>
      showText(elements[i], labels[i].text, labels[i].look, spot, current),
    );
    TICK_LABELS.forEach((pitch, i) => {
      const text = signedDegrees(pitch, 0);
      const spot = freePlace(text, pitch, current.radius, CLEARANCE);
      setShown(tickTexts[i], !touches(text, spot, labels, placed));
      showText(tickTexts[i], text, 'dial-text dial-tick-text', spot, current);
    });
  }

  return { layout, update };
}

function showText(
  element: SVGTextElement,
  text: string,
  look: string,
  spot: PlacedRingLabel,
  layout: DialLayout,
): void {
  const [x, y] = pointAt(layout, spot.pitchDeg, spot.distance);
  setText(element, text);
  setValues(element, { x, y: y + 4, class: look });
}

function makeMark(parent: SVGGElement, click: () => void): SVGGElement {
  const mark = svgElement('g', parent);
  svgElement('title', mark);
  svgElement('circle', mark, { class: 'dial-hit', r: HIT_RADIUS });
  svgElement('circle', mark, { class: 'dial-disc', r: MARK_RADIUS });
  svgElement('path', mark, {
    class: 'dial-half',
    d: `M0 ${-MARK_RADIUS}A${MARK_RADIUS} ${MARK_RADIUS} 0 0 0 0 ${MARK_RADIUS}Z`,
  });
  mark.addEventListener('click', click);
  return mark;
}
