import { defineSection } from './section';

/** How far turning parts must stay from what stands still. */
export const CLEARANCE_SECTION = defineSection({
  wantedGapMm: {
    type: 'number',
    label: 'Wanted gap',
    help: 'The least gap that every turning part must keep from every keep-out through its whole travel.',
    unit: 'mm',
    min: 0,
    max: 1000,
    step: 0.1,
    default: 1,
  },
});
