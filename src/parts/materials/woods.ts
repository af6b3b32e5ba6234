import type { Material } from './material';

/** Woods at about 12 % moisture. Boards of one kind differ by a third and more: weigh the blank. */
export const WOODS: readonly Material[] = [
  {
    id: 'balsa',
    name: 'Balsa',
    group: 'wood',
    densityKgM3: 160,
    densityLowKgM3: 40,
    densityHighKgM3: 340,
    source: 'online materials collection; a timber dealer (as sold, 110 to 170)',
    fromMemory: false,
    note: 'Pieces as sold are mostly 110 to 170.',
  },
  {
    id: 'spruce',
    name: 'Sitka spruce',
    group: 'wood',
    densityKgM3: 470,
    densityLowKgM3: 454,
    youngsModulusGPa: 9.9,
    source: 'table of weights at cci.one',
    fromMemory: false,
    note: 'Modulus along the grain.',
  },
  {
    id: 'beech',
    name: 'Beech',
    group: 'wood',
    densityKgM3: 710,
    densityLowKgM3: 690,
    densityHighKgM3: 750,
    source: 'recalled handbook value (EN 350)',
    fromMemory: true,
  },
  {
    id: 'birch-plywood',
    name: 'Birch plywood',
    group: 'wood',
    densityKgM3: 680,
    densityLowKgM3: 640,
    densityHighKgM3: 700,
    source: 'recalled handbook value',
    fromMemory: true,
    note: 'Thin plywood is heavier for its glue.',
  },
];
