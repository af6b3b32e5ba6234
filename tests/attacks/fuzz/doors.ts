import { CARRIED_DOORS } from './carriedDoors';
import type { Door } from './door';
import { JSON_DOORS } from './jsonDoors';
import { MESH_DOORS } from './meshDoors';
import { NOTE_DOORS } from './noteDoors';
import { TABLE_DOORS } from './tableDoors';

/**
 * Every way by which something made elsewhere comes into the page. A new one belongs into one of the five lists;
 * `doors.test.ts` looks through the sources for what reads a file, the clipboard, the address or the browser's notes and
 * fails where no door names it.
 */
export const DOORS: readonly Door[] = [
  ...JSON_DOORS,
  ...CARRIED_DOORS,
  ...TABLE_DOORS,
  ...MESH_DOORS,
  ...NOTE_DOORS,
];
