import { addTexts } from '../../messages';
import { DRAWING } from '../../messages/en/drawing';

addTexts('drawing', DRAWING);

/** Gives the texts of this room too: they come with this module, so that the page's first load does not hold them. */
export { t } from '../../messages';
