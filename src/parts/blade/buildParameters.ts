import { densityKgM3, lengthMm, type ParameterSet } from '../contract';

const BUILD = 'Build';
const SKIN = { key: 'build', is: 'skin' } as const;

/** How the airfoil is made: one material throughout, or a skin of even thickness over a core. */
export const buildParameters = {
  build: {
    type: 'choice',
    label: 'Made of',
    help: 'One material throughout, or a skin of even thickness over a core of another.',
    options: ['solid', 'skin'],
    optionLabels: { solid: 'One material', skin: 'Skin over a core' },
    default: 'solid',
    optional: true,
    group: BUILD,
  },
  skinThicknessMm: {
    ...lengthMm({
      label: 'Skin thickness',
      help: 'Thickness of the skin, square to the surface; toward the trailing edge its halves meet and no core is left.',
      default: 0.4,
      min: 0.001,
      max: 100,
      step: 0.05,
    }),
    optional: true,
    group: BUILD,
    usedWhen: SKIN,
  },
  skinDensityKgM3: densityKgM3(1550, {
    label: 'Skin density',
    help: 'Mass of one cubic metre of the skin: carbon laminate 1550, glass laminate 1900.',
    materialKey: 'skinMaterial',
    usedWhen: SKIN,
    optional: true,
    group: BUILD,
  }),
  coreDensityKgM3: densityKgM3(60, {
    label: 'Core density',
    help: 'Mass of one cubic metre of the core inside the skin: rigid foam 30 to 200, balsa 160.',
    materialKey: 'coreMaterial',
    usedWhen: SKIN,
    optional: true,
    group: BUILD,
  }),
} as const satisfies ParameterSet;
