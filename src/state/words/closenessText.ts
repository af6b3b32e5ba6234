import { addTexts } from '../../messages';
import { CLOSENESS } from '../../messages/en/closeness';

addTexts('closeness', CLOSENESS);

/** Gives the texts of "How close" too: they come with this module, so that the page's first load does not hold them. */
export { t } from '../../messages';
