import type { Slip } from './keep/ports';
import { slip } from './keep/slip';

/** Where the lesson of this tab stands: a reload of the tab finds it again, another tab does not. */
export function lessonMark(): Slip {
  return slip(() => sessionStorage, 'stillgrip.lesson');
}
