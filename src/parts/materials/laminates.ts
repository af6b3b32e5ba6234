import type { Material } from './material';

/**
 * Fibre laminates without core. Density follows the fibre's share v by volume, v fibre + (1 - v) resin, with carbon
 * fibre 1780, E-glass 2540 and epoxy 1100 to 1200 kg/m^3; voids and a resin-rich skin take some of it away.
 */
export const LAMINATES: readonly Material[] = [
  {
    id: 'carbon-laminate',
    name: 'Carbon/epoxy laminate, woven or wet laid',
    group: 'laminate',
    densityKgM3: 1520,
    densityLowKgM3: 1440,
    densityHighKgM3: 1600,
    source:
      'worked out: 55 % carbon fibre (1780, read at avdweb.nl) by volume in epoxy of 1200 (recalled)',
    fromMemory: true,
    note: 'Low end: half fibre, resin of 1100. High end: the unidirectional one.',
  },
  {
    id: 'carbon-ud',
    name: 'Carbon/epoxy, unidirectional, 61 % fibre',
    group: 'laminate',
    densityKgM3: 1600,
    densityLowKgM3: 1550,
    densityHighKgM3: 1600,
    youngsModulusGPa: 142,
    tensileStrengthMPa: 1730,
    source: 'two online data tables (70 % fibre: 1600)',
    fromMemory: false,
    note: 'Stiffness and strength along the fibres only. Low end of the range recalled.',
  },
  {
    id: 'glass-laminate',
    name: 'Glass/epoxy laminate, sheet',
    group: 'laminate',
    densityKgM3: 1870,
    densityLowKgM3: 1800,
    densityHighKgM3: 1900,
    source: 'two online data tables (1.87; 1.8 and 1.9)',
    fromMemory: false,
  },
];
