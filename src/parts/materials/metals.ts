import type { Material } from './material';

/**
 * Structural metals. Strengths are least values of the named class or temper where there is one, so that a margin
 * worked out with them is on the safe side. A range end or modulus called "recalled" was not read anywhere.
 */
const BOLT_CLASSES = 'ISO 898-1, read in two online tables';
const STAINLESS_CLASSES = 'ISO 3506-1, read in three online tables';
const TEXTBOOK = 'textbook appendix B.1, read online';
const STEEL_DENSITY = 'density 7.85 kg/dm3, as printed fastener mass tables use (fasten.it)';

const steel = {
  group: 'metal',
  densityKgM3: 7850,
  densityLowKgM3: 7830,
  densityHighKgM3: 7870,
  youngsModulusGPa: 205,
  fromMemory: false,
} as const;
const steelNote = 'Modulus and ends of the range recalled.';

const stainless = {
  group: 'metal',
  densityKgM3: 8000,
  youngsModulusGPa: 193,
  fromMemory: false,
} as const;
const a2 = { ...stainless, densityLowKgM3: 7900, densityHighKgM3: 8030 } as const;
const a2Note =
  'EN 10088-1 lists 7900, handbooks up to 8030 (both recalled, as is the modulus): weigh a piece.';
const a4 = { ...stainless, densityLowKgM3: 7980, densityHighKgM3: 8030 } as const;
const a4Note = 'Modulus and ends of the range recalled.';

const STEELS: readonly Material[] = [
  {
    ...steel,
    id: 'steel',
    name: 'Steel',
    source: `${STEEL_DENSITY}; online density table; ${TEXTBOOK}`,
    note: steelNote,
  },
  {
    ...steel,
    id: 'steel-8-8',
    name: 'Bolt steel 8.8',
    tensileStrengthMPa: 800,
    yieldStrengthMPa: 640,
    source: `${BOLT_CLASSES}; ${STEEL_DENSITY}`,
    note: `Least values up to 16 mm diameter. ${steelNote}`,
  },
  {
    ...steel,
    id: 'steel-10-9',
    name: 'Bolt steel 10.9',
    tensileStrengthMPa: 1040,
    yieldStrengthMPa: 940,
    source: `${BOLT_CLASSES}; ${STEEL_DENSITY}`,
    note: `Least values. ${steelNote}`,
  },
  {
    ...steel,
    id: 'steel-12-9',
    name: 'Bolt steel 12.9',
    tensileStrengthMPa: 1220,
    yieldStrengthMPa: 1100,
    source: `${BOLT_CLASSES}; ${STEEL_DENSITY}`,
    note: `Least values. ${steelNote}`,
  },
];

const STAINLESS_STEELS: readonly Material[] = [
  {
    ...a2,
    id: 'stainless-a2',
    name: 'Stainless steel A2 (304)',
    source: `${TEXTBOOK} (8.00)`,
    note: a2Note,
  },
  {
    ...a2,
    id: 'stainless-a2-70',
    name: 'Stainless bolt steel A2-70',
    tensileStrengthMPa: 700,
    yieldStrengthMPa: 450,
    source: `${STAINLESS_CLASSES}; density: ${TEXTBOOK} (8.00)`,
    note: `Least values; the soft class A2-50 has 500 and 210. ${a2Note}`,
  },
  {
    ...a4,
    id: 'stainless-a4',
    name: 'Stainless steel A4 (316)',
    source: `${TEXTBOOK} (8.00)`,
    note: a4Note,
  },
  {
    ...a4,
    id: 'stainless-a4-80',
    name: 'Stainless bolt steel A4-80',
    tensileStrengthMPa: 800,
    yieldStrengthMPa: 600,
    source: `${STAINLESS_CLASSES}; density: ${TEXTBOOK} (8.00)`,
    note: `Least values. ${a4Note}`,
  },
];

const LIGHT_METALS: readonly Material[] = [
  {
    id: 'titanium',
    name: 'Titanium 6Al-4V (grade 5), annealed',
    group: 'metal',
    densityKgM3: 4430,
    densityLowKgM3: 4420,
    densityHighKgM3: 4430,
    youngsModulusGPa: 114,
    tensileStrengthMPa: 896,
    yieldStrengthMPa: 827,
    source: 'three online data sheets (one 4.42; one for the strengths)',
    fromMemory: false,
    note: 'Least values; typical bar is 900 and 830 or above.',
  },
  {
    id: 'aluminium-7075',
    name: 'Aluminium 7075-T6',
    group: 'metal',
    densityKgM3: 2810,
    densityLowKgM3: 2800,
    densityHighKgM3: 2810,
    youngsModulusGPa: 72,
    tensileStrengthMPa: 572,
    yieldStrengthMPa: 503,
    source: 'two online data sheets',
    fromMemory: false,
    note: 'Typical strengths; another data sheet has 560 and 480. Low end of the range recalled.',
  },
  {
    id: 'aluminium-6061',
    name: 'Aluminium 6061-T6',
    group: 'metal',
    densityKgM3: 2700,
    youngsModulusGPa: 69,
    tensileStrengthMPa: 310,
    yieldStrengthMPa: 270,
    source: `online data sheet; ${TEXTBOOK}`,
    fromMemory: false,
    note: 'Typical strengths.',
  },
  {
    id: 'aluminium-2024',
    name: 'Aluminium 2024-T3',
    group: 'metal',
    densityKgM3: 2780,
    densityLowKgM3: 2770,
    densityHighKgM3: 2780,
    source: `${TEXTBOOK} (2.77); online density table (2.78)`,
    fromMemory: false,
  },
  {
    id: 'magnesium-az91',
    name: 'Magnesium AZ91',
    group: 'metal',
    densityKgM3: 1810,
    source: 'online density table',
    fromMemory: false,
  },
];

const COPPER_ALLOYS: readonly Material[] = [
  {
    id: 'brass',
    name: 'Brass, free-cutting (CuZn39Pb3, CW614N)',
    group: 'metal',
    densityKgM3: 8470,
    densityLowKgM3: 8400,
    densityHighKgM3: 8500,
    youngsModulusGPa: 97,
    yieldStrengthMPa: 220,
    source: 'data sheet of a metal dealer; online density table (C36000, 8.50)',
    fromMemory: false,
    note: 'Yield from 220 to 350 by temper. The range spans neighbouring leaded brasses.',
  },
];

export const METALS: readonly Material[] = [
  ...STEELS,
  ...STAINLESS_STEELS,
  ...LIGHT_METALS,
  ...COPPER_ALLOYS,
];
