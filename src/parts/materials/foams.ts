import type { Material } from './material';

/** Core foams. A foam is sold by its density: the number on its data sheet is better than these. */
const PMI_SOURCE = 'recalled data sheets of polymethacrylimide foam';

export const FOAMS: readonly Material[] = [
  {
    id: 'foam-pmi-32',
    name: 'PMI foam, lightest',
    group: 'foam',
    densityKgM3: 32,
    source: PMI_SOURCE,
    fromMemory: true,
  },
  {
    id: 'foam-pmi-52',
    name: 'PMI foam, light',
    group: 'foam',
    densityKgM3: 52,
    source: PMI_SOURCE,
    fromMemory: true,
  },
  {
    id: 'foam-pmi-75',
    name: 'PMI foam, medium',
    group: 'foam',
    densityKgM3: 75,
    source: PMI_SOURCE,
    fromMemory: true,
  },
  {
    id: 'foam-pmi-110',
    name: 'PMI foam, heavy',
    group: 'foam',
    densityKgM3: 110,
    source: PMI_SOURCE,
    fromMemory: true,
  },
  {
    id: 'foam-expanded',
    name: 'Expanded or extruded bead foam (EPS, XPS, EPP)',
    group: 'foam',
    densityKgM3: 30,
    densityLowKgM3: 20,
    densityHighKgM3: 60,
    source: 'recalled; one XPS sheet of 22 read on a club page',
    fromMemory: true,
  },
];
