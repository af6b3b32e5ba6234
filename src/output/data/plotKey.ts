import type { PlotData } from '../../ui/drawn/plotLayout';
import { INK, type Shape, text } from '../report/figures/figure';
import { box } from '../report/figures/plotShapes';
import { bandLook, hatchShape, pointShape } from './plotAreas';

const SIZE = 9.5;
const LINE = 15;
const SAMPLE = 16;
const GAP = 14;
/** Letters of this type are at most about this wide, as a share of their size. */
const LETTER = 0.56;

interface Entry {
  readonly name: string;
  /** About a middle. */
  readonly sample: (x: number, y: number) => readonly Shape[];
}

/** What areas and points of a plot mean, in lines from `left` to the width of the picture, from y = 0 down. */
export function plotKey(data: PlotData, left: number, width: number) {
  const shapes: Shape[] = [];
  let [x, y] = [left, LINE];
  const entries = entriesOf(data);
  for (const { name, sample } of entries) {
    const wide = SAMPLE + 5 + name.length * SIZE * LETTER;
    if (x > left && x + wide > width) [x, y] = [left, y + LINE];
    shapes.push(
      ...sample(x + SAMPLE / 2, y - 3.5),
      text(x + SAMPLE + 5, y, name, { size: SIZE, colour: INK.quiet }),
    );
    x += wide + GAP;
  }
  return { shapes, height: entries.length === 0 ? 0 : y + 4 };
}

function entriesOf({ bands = [], points = [], cells }: PlotData): Entry[] {
  const half = SAMPLE / 2;
  return [
    ...points
      .filter(({ name, x }) => name !== '' && x.length > 0)
      .map(
        ({ name, shape, state }): Entry => ({
          name,
          sample: (x, y) => pointShape(shape, state, x, y),
        }),
      ),
    ...bands
      .filter(({ name }) => name !== '')
      .map(
        ({ name, look }): Entry => ({
          name,
          sample: (x, y) => [box(x - half, y - 4, x + half, y + 4, bandLook(look))],
        }),
      ),
    ...(cells?.kinds ?? [])
      .map((kind, i) => ({ ...kind, i }))
      .filter(({ bit }) => cells?.cells.some((cell) => (cell & bit) !== 0))
      .map(
        ({ name, i }): Entry => ({
          name,
          sample: (x, y) => [
            hatchShape(i, x - half, y - 5, x, y + 5),
            hatchShape(i, x, y - 5, x + half, y + 5),
          ],
        }),
      ),
  ];
}
