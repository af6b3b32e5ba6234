import { defineSection } from './section';

/** How the blade is held on its bolt. */
export const BLADE_BOLT_SECTION = defineSection({
  hold: {
    type: 'choice',
    label: 'Blade on its bolt',
    help: 'Clamped: keeps the angle it is drawn at. Free: swings on the bolt to where its pull passes through it.',
    options: ['clamped', 'free'],
    optionLabels: { clamped: 'Clamped', free: 'Free to swing' },
    default: 'clamped',
  },
  frictionCoefficient: {
    type: 'number',
    label: 'Friction on the bolt',
    help: 'Coefficient of friction between blade, bolt and cheeks: 0.1 to 0.2 dry.',
    unit: '1',
    min: 0,
    max: 1,
    step: 0.01,
    default: 0.15,
  },
  clampForceN: {
    type: 'number',
    label: 'Clamp force',
    help: 'Force with which the bolt presses the cheeks on the blade\u2019s root; 0 where it is left loose.',
    unit: 'N',
    min: 0,
    max: 1e6,
    step: 10,
    default: 0,
  },
});
