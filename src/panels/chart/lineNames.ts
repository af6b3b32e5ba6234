import { type Label, placeLabels } from '../../ui/drawn/labels';
import { ElementPool, setText, setValues, svgElement } from '../marks/svg';
import type { PlotFrame } from './plotFrame';

/** A line of the plot with its name at its end. */
export interface NamedLine {
  readonly name: string;
  /** Class of its colour: `chart-name-<look>`. */
  readonly look: string;
  readonly dash: readonly number[] | null;
  /** The total: its name gives way last. */
  readonly main: boolean;
  /** What a press on the name selects or shows; null: nothing. */
  readonly part: string | null;
  readonly tryOut: string | null;
  readonly values: Float64Array;
}

export interface LineNames {
  update(frame: PlotFrame, lines: readonly NamedLine[], view: NamesView): void;
}

export interface NamesView {
  readonly pitchDeg: Float64Array;
  /** Lines are followed no further. */
  readonly lastDeg: number;
  readonly gutter: number;
  readonly selection: string | null;
}

const NAME_HEIGHT = 15;
const NAME_GAP = 14;

/** Writes each line's name in the gutter right of the plot, at the height where the line ends, joined by a leader. */
export function createLineNames(group: SVGGElement, pick: (line: NamedLine) => void): LineNames {
  const shown: NamedLine[] = [];
  const leaders = new ElementPool(() => svgElement('path', group));
  const names = new ElementPool((index) => {
    const text = svgElement('text', group);
    text.addEventListener('click', () => pick(shown[index]));
    return text;
  });

  function update(frame: PlotFrame, lines: readonly NamedLine[], view: NamesView): void {
    const ends: LineEnd[] = lines.flatMap((line) => {
      const end = visibleEnd(frame, line.values, view);
      return end ? [{ line, ...end }] : [];
    });
    const together = runTogether(ends);
    if (together) orderByWidest(frame, ends, view);
    // Too many for the height: the last slots are the first to go.
    let places: number[] | null = null;
    for (; ends.length > 0; ends.pop()) {
      const labels: Label[] = ends.map((end) => ({
        at: end.y,
        size: NAME_HEIGHT,
        weight: end.line.main ? 4 : 1,
      }));
      places = placeLabels(labels, frame.top - 6, frame.bottom + 6);
      if (places) break;
    }
    const heights = places ?? [];
    const texts = names.take(heights.length);
    const paths = leaders.take(heights.length);
    const cut = shortenedNames(
      ends.map((end) => end.line.name),
      view.gutter - NAME_GAP,
    );
    heights.forEach((y, i) => {
      const { line, x: endX, y: endY } = ends[i];
      shown[i] = line;
      const look = `chart-name-${line.look}`;
      const chosen = line.part !== null && line.part === view.selection ? ' chart-name-chosen' : '';
      setValues(texts[i], {
        x: frame.right + NAME_GAP,
        y: y + 4,
        class: `chart-name ${look}${chosen}`,
      });
      setText(texts[i], cut[i]);
      setValues(paths[i], {
        class: `chart-leader ${look}`,
        d: together
          ? `M${frame.right + 2} ${y.toFixed(1)}h${NAME_GAP - 5}`
          : `M${endX.toFixed(1)} ${endY.toFixed(1)}L${frame.right + NAME_GAP - 3} ${y.toFixed(1)}`,
        'stroke-dasharray': line.dash?.join(' ') ?? 'none',
      });
    });
  }

  return { update };
}

interface LineEnd {
  readonly line: NamedLine;
  x: number;
  y: number;
}

/** True where the ends lie so close that leaders would only make a fan: then the names are a key instead. */
function runTogether(ends: readonly LineEnd[]): boolean {
  const heights = ends.map((end) => end.y);
  const spread = Math.max(...heights) - Math.min(...heights);
  return ends.length > 2 && spread < (NAME_HEIGHT * ends.length) / 3;
}

/** Gives the names the order that the lines have where they stand furthest apart, in the right half of the view. */
function orderByWidest(frame: PlotFrame, ends: LineEnd[], view: NamesView): void {
  const { pitchDeg, lastDeg } = view;
  const from = frame.pitchAt((frame.left + frame.right) / 2);
  const to = Math.min(lastDeg, frame.pitchAt(frame.right));
  const columns = ends.map(({ line }) => line.values);
  let widest = -1;
  let place = 0;
  for (let i = 0; i < pitchDeg.length; i++) {
    if (pitchDeg[i] < from || pitchDeg[i] > to) continue;
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let k = 0; k < columns.length; k++) {
      const value = columns[k][i];
      // A gap in one line: no place to compare them.
      if (Number.isNaN(value)) high = Number.NaN;
      if (value < low) low = value;
      if (value > high) high = value;
    }
    if (high - low > widest) {
      widest = high - low;
      place = i;
    }
  }
  for (const end of ends) end.y = frame.y(end.line.values[place]);
}

/** The last point of a line that is in view, before over-centre. */
function visibleEnd(frame: PlotFrame, values: Float64Array, view: NamesView) {
  const { pitchDeg, lastDeg } = view;
  for (let i = values.length - 1; i >= 0; i--) {
    if (pitchDeg[i] > lastDeg) continue;
    const x = frame.x(pitchDeg[i]);
    if (x > frame.right + 0.5) continue;
    if (x < frame.left) return null;
    const y = frame.y(values[i]);
    if (y >= frame.top && y <= frame.bottom) return { x, y };
  }
  return null;
}

/** Every name cut to the width; names that then read the same keep their ends instead of their middles. */
function shortenedNames(names: readonly string[], width: number): readonly string[] {
  const cut = names.map((name) => shortened(name, width, false));
  return cut.map((text, i) => {
    const twice = cut.some((other, j) => j !== i && other === text);
    return twice ? shortened(names[i], width, true) : text;
  });
}

const cuts = new Map<string, string>();
let ruler: CanvasRenderingContext2D | null = null;

/** The name cut with an ellipsis, at its end or in its middle, to a width in pixels. */
function shortened(name: string, width: number, keepsEnd: boolean): string {
  const key = `${Math.round(width)} ${keepsEnd} ${name}`;
  const known = cuts.get(key);
  if (known !== undefined) return known;
  ruler ??= document.createElement('canvas').getContext('2d');
  if (!ruler) return name;
  ruler.font = "12px 'Inter Variable', system-ui, sans-serif";
  let text = name;
  for (
    let length = name.length - 1;
    ruler.measureText(text).width > width && length > 1;
    length--
  ) {
    const end = keepsEnd ? Math.floor(length / 2) : 0;
    text = `${name.slice(0, length - end).trimEnd()}\u2026${name.slice(name.length - end)}`;
  }
  cuts.set(key, text);
  return text;
}
