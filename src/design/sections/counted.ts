import { defineSection } from './section';

/** Which shares are counted in moment, force and verdict beside the grip's own mass. */
export const COUNTED_SECTION = defineSection({
  rodMass: {
    type: 'switch',
    label: 'Push rod',
    help: "The pull of the spin on the push rod's own mass.",
    default: true,
  },
  air: {
    type: 'switch',
    label: 'Air',
    help: 'The moment of the air on the blade in hover: an estimate, where the inertial part is exact.',
    default: false,
  },
  friction: {
    type: 'switch',
    label: 'Friction',
    help: 'Drag of the linkage measured at rest, and friction of the bearings under load.',
    default: false,
  },
});
