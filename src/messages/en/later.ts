import { BENCH } from './bench';
import { BENCH_FIT } from './benchFit';
import { BENCH_PLAN } from './benchPlan';
import { BENCH_ROOMS } from './benchRooms';
import { CLOSENESS } from './closeness';
import { DESIGNS_ROOM } from './designsRoom';
import { DRAWING } from './drawing';
import { HELP_TEXT } from './help';
import { LESSON_ROOM } from './lessonRoom';
import { LET_GO_ROOM } from './letGoRoom';
import { REPORT } from './report';

/**
 * English texts of rooms that load later. Nothing that the page opens with imports this but for its keys: each room hands
 * its own files to `addTexts`.
 */
export const LATER = {
  ...BENCH,
  ...BENCH_FIT,
  ...BENCH_PLAN,
  ...BENCH_ROOMS,
  ...CLOSENESS,
  ...DESIGNS_ROOM,
  ...REPORT,
  ...DRAWING,
  ...HELP_TEXT,
  ...LESSON_ROOM,
  ...LET_GO_ROOM,
} as const;
