import { defineSection } from './section';

/** How the air is estimated; a table of the section's coefficients stands beside these. */
export const AIR_SECTION = defineSection({
  section: {
    type: 'choice',
    label: 'Blade section',
    help: 'Where lift, drag and moment of the section come from: the built-in symmetric model, or a table from a file.',
    options: ['builtIn', 'table'],
    optionLabels: { builtIn: 'Built-in, symmetric', table: 'Table from a file' },
    default: 'builtIn',
  },
  tipLoss: {
    type: 'switch',
    label: 'Tip loss',
    help: "Prandtl's loss of lift toward the tip.",
    default: true,
  },
  rootLoss: {
    type: 'switch',
    label: 'Root loss',
    help: "Prandtl's loss of lift toward the blade's root.",
    default: true,
  },
});

/** Coefficients of a section as the file had them. */
export interface PolarFile {
  readonly name: string;
  readonly text: string;
}
/** UTF-16 units of a table's text. */
export const MAX_POLAR_TEXT = 500_000;
