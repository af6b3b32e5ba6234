import type { Part } from '../../design/design';
import { t } from '../../messages';
import { tellRefusal } from '../../state/editing';
import type { Session } from '../../state/session';
import { underTheHead } from '../rail/firstPose';

/** Forms that need no file. */
export const PLAIN_FORMS = ['plane', 'box', 'cylinder'] as const;
export type PlainForm = (typeof PLAIN_FORMS)[number];

/** Half the height of each form at its first dimensions, mm. */
const HALF_HEIGHT_MM = { plane: 0, box: 5, cylinder: 10 } as const;

/** Puts a keep-out of the case under the head, clear of it, and selects it. */
export function addKeepOut(session: Session, form: PlainForm): void {
  const part = {
    id: '',
    kind: 'keepOut',
    name: t(`clearance.name.${form}`),
    form,
    fixedTo: 'case',
    pose: underTheHead(session, HALF_HEIGHT_MM[form]),
  } as unknown as Part;
  tellRefusal(session, session.actions.pastePart(part), null);
}
