import type { Fault } from './fault';
import { FILE_FAULTS } from './files';
import { FORCE_FAULTS } from './forces';
import { LOAD_FAULTS } from './loads';
import { MASS_FAULTS } from './mass';
import { STATISTICS_FAULTS } from './statistics';
import { UNIT_FAULTS } from './units';

/** Every deliberate fault. */
export const FAULTS: readonly Fault[] = [
  ...UNIT_FAULTS,
  ...MASS_FAULTS,
  ...FORCE_FAULTS,
  ...LOAD_FAULTS,
  ...STATISTICS_FAULTS,
  ...FILE_FAULTS,
];
