import { t, withTexts } from '../messages';
import { reasonOf } from '../ui/fileErrors';
import type { SavePlot } from '../ui/plotFiles';

/** Fetches what writes plots when one is first saved. */
export const savePlotFile: SavePlot = async (plot, kind) => {
  try {
    const { savePlot } = await withTexts(import('../output/data/savePlot'));
    return await savePlot(plot, kind);
  } catch (error) {
    return t('app.notFetched', { reason: reasonOf(error) });
  }
};
