import type { Rotor } from './design';
import { type NumberLimits, ROTOR_LIMITS } from './limits';

/** One of the rotor's numbers as a field shows it. */
export interface RotorParameter extends NumberLimits {
  readonly label: string;
  readonly help: string;
  readonly default: number;
  readonly step: number;
}

/** The rotor's own numbers with the limits that the file's check has; texts may be replaced by the message catalogue. */
export const ROTOR_PARAMETERS: Readonly<Record<keyof Rotor, RotorParameter>> = {
  speedRpm: {
    ...ROTOR_LIMITS.speedRpm,
    label: 'Speed',
    help: 'Rotor speed in revolutions per minute; every inertial force grows with its square.',
    default: 10000,
    step: 100,
  },
  bladeCount: {
    ...ROTOR_LIMITS.bladeCount,
    label: 'Blades',
    help: 'How many grips the rotor carries. Every force shown is that of one grip.',
    default: 2,
    step: 1,
  },
  torqueOffsetMm: {
    ...ROTOR_LIMITS.torqueOffsetMm,
    label: 'Torque offset',
    help: 'How far the feathering axis lies ahead of the shaft axis, toward the way the blade travels.',
    default: 0,
    step: 0.1,
  },
  preconeDeg: {
    ...ROTOR_LIMITS.preconeDeg,
    label: 'Precone',
    help: 'How far the feathering axis is tilted up toward positive thrust.',
    default: 0,
    step: 0.5,
  },
  usedPitchDeg: {
    ...ROTOR_LIMITS.usedPitchDeg,
    label: 'Pitch in use',
    help: 'Largest pitch in ordinary use, both ways of flat; the verdict gives the force there.',
    default: 20,
    step: 1,
  },
};
