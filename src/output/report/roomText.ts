import { addTexts } from '../../messages';
import { REPORT } from '../../messages/en/report';

addTexts('report', REPORT);

/** Gives the texts of this room too: they come with this module, so that the page's first load does not hold them. */
export { t } from '../../messages';
