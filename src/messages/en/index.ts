import { AIR } from './air';
import { APP } from './app';
import { BALANCE } from './balance';
import { CATALOGUE } from './catalogue';
import { CHART } from './chart';
import { CONDITIONS } from './conditions';
import { DIAL } from './dial';
import { FIELDS } from './fields';
import { IMPORT } from './import';
import { LOADS } from './loads';
import { LOWER } from './lower';
import { MASS_CARD } from './massCard';
import { MATERIALS_TEXT } from './materials';
import { MEASURED } from './measured';
import { PROFILE } from './profile';
import { RAIL } from './rail';
import { SHELF } from './shelf';
import { STAGE } from './stage';
import { VERDICT } from './verdict';

/** English: one file a room. */
export const EN = {
  ...APP,
  ...CATALOGUE,
  ...CHART,
  ...CONDITIONS,
  ...DIAL,
  ...FIELDS,
  ...IMPORT,
  ...AIR,
  ...BALANCE,
  ...LOADS,
  ...LOWER,
  ...MASS_CARD,
  ...MATERIALS_TEXT,
  ...MEASURED,
  ...PROFILE,
  ...RAIL,
  ...SHELF,
  ...STAGE,
  ...VERDICT,
} as const;
