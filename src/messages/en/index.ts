import { AIR } from './air';
import { ANSWERS } from './answers';
import { APP } from './app';
import { BALANCE } from './balance';
import { BENCH } from './bench';
import { BENCH_PLAN } from './benchPlan';
import { BENCH_ROOMS } from './benchRooms';
import { CATALOGUE } from './catalogue';
import { CHART } from './chart';
import { CLEARANCE } from './clearance';
import { CLOSENESS } from './closeness';
import { CONDITIONS } from './conditions';
import { DIAL } from './dial';
import { DRAWING } from './drawing';
import { FAMILY } from './family';
import { FIELDS } from './fields';
import { FILES } from './files';
import { GOAL } from './goal';
import { IMPORT } from './import';
import { LOADS } from './loads';
import { LOWER } from './lower';
import { MASS_CARD } from './massCard';
import { MATERIALS_TEXT } from './materials';
import { MEASURED } from './measured';
import { PROFILE } from './profile';
import { RAIL } from './rail';
import { REPORT } from './report';
import { SHARE } from './share';
import { SHELF } from './shelf';
import { STAGE } from './stage';
import { TRY_OUTS } from './tryOuts';
import { VERDICT } from './verdict';

/** English: one file a room. */
export const EN = {
  ...ANSWERS,
  ...APP,
  ...BENCH,
  ...BENCH_PLAN,
  ...BENCH_ROOMS,
  ...CATALOGUE,
  ...CHART,
  ...CLOSENESS,
  ...CLEARANCE,
  ...CONDITIONS,
  ...DIAL,
  ...DRAWING,
  ...FAMILY,
  ...FIELDS,
  ...FILES,
  ...GOAL,
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
  ...REPORT,
  ...SHARE,
  ...SHELF,
  ...STAGE,
  ...TRY_OUTS,
  ...VERDICT,
} as const;
