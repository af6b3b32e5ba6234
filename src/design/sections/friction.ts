import { defineSection } from './section';

/** What resists turning; the table of drag at rest stands beside these. */
export const FRICTION_SECTION = defineSection({
  startingFactor: {
    type: 'number',
    label: 'Starting factor',
    help: 'How many times the running friction a bearing resists before it starts to turn: up to 2.',
    unit: '1',
    min: 1,
    max: 5,
    step: 0.1,
    default: 2,
  },
});

/** One reading of the drag at rest. */
export interface DragRow {
  /** Slider travel from its place at flat pitch, along +Z. */
  readonly travelMm: number;
  /** Force that just moves the slider, the whole head; its size, never its sign. */
  readonly forceN: number;
}

export const DRAG_ROW_LIMITS = {
  travelMm: { min: -2000, max: 2000, unit: 'mm' },
  forceN: { min: 0, max: 100_000, unit: 'N' },
} as const;
export const MAX_DRAG_ROWS = 200;
