import { APP } from './app';
import { CHART } from './chart';
import { DIAL } from './dial';
import { FIELDS } from './fields';
import { RAIL } from './rail';
import { STAGE } from './stage';
import { VERDICT } from './verdict';

/** English: one file a room. */
export const EN = { ...APP, ...CHART, ...DIAL, ...FIELDS, ...RAIL, ...STAGE, ...VERDICT } as const;
