import { AIR } from './air';
import { ANSWERS } from './answers';
import { APP } from './app';
import { BALANCE } from './balance';
import { CATALOGUE } from './catalogue';
import { CHART } from './chart';
import { CLEARANCE } from './clearance';
import { CONDITIONS } from './conditions';
import { DIAL } from './dial';
import { FAMILY } from './family';
import { FIELDS } from './fields';
import { FILES } from './files';
import { FIRST_MINUTE } from './firstMinute';
import { GOAL } from './goal';
import { IMPORT } from './import';
import { KEEP } from './keep';
import { LESSONS } from './lessons';
import { LET_GO } from './letGo';
import { LOADS } from './loads';
import { LOWER } from './lower';
import { MASS_CARD } from './massCard';
import { MATERIALS_TEXT } from './materials';
import { MEASURED } from './measured';
import { OFFLINE } from './offline';
import { PROFILE } from './profile';
import { PULLS } from './pulls';
import { RACKET } from './racket';
import { RAIL } from './rail';
import { SHARE } from './share';
import { SHELF } from './shelf';
import { STAGE } from './stage';
import { TRY_OUTS } from './tryOuts';
import { VERDICT } from './verdict';

/** German: what the page opens with, one file a room, the same keys as EN. What only a room shows that loads later is in that room's own file. */
export const DE = {
  ...ANSWERS,
  ...APP,
  ...CATALOGUE,
  ...CHART,
  ...CLEARANCE,
  ...CONDITIONS,
  ...DIAL,
  ...FAMILY,
  ...FIELDS,
  ...FILES,
  ...FIRST_MINUTE,
  ...GOAL,
  ...IMPORT,
  ...AIR,
  ...BALANCE,
  ...KEEP,
  ...LESSONS,
  ...LET_GO,
  ...LOADS,
  ...LOWER,
  ...MASS_CARD,
  ...MATERIALS_TEXT,
  ...MEASURED,
  ...OFFLINE,
  ...PROFILE,
  ...PULLS,
  ...RACKET,
  ...RAIL,
  ...SHARE,
  ...SHELF,
  ...STAGE,
  ...TRY_OUTS,
  ...VERDICT,
} as const;
