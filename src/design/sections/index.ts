import { AIR_SECTION } from './air';
import { BLADE_BOLT_SECTION } from './bladeBolt';
import { CLEARANCE_SECTION } from './clearance';
import { CONTROL_SECTION } from './control';
import { COUNTED_SECTION } from './counted';
import { FRICTION_SECTION } from './friction';
import { ROTOR_SECTION } from './rotor';
import { TOLERANCE_SECTION } from './tolerance';

/** Every section of the document, in the order of the file. All but the rotor may be left out. */
export const SECTIONS = {
  rotor: ROTOR_SECTION,
  counted: COUNTED_SECTION,
  control: CONTROL_SECTION,
  friction: FRICTION_SECTION,
  air: AIR_SECTION,
  bladeBolt: BLADE_BOLT_SECTION,
  clearance: CLEARANCE_SECTION,
  tolerance: TOLERANCE_SECTION,
} as const;

export type SectionName = keyof typeof SECTIONS;
export const SECTION_NAMES = Object.keys(SECTIONS) as readonly SectionName[];
