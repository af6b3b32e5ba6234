import { t, withTexts } from '../messages';
import type { ReadingsDoor } from '../panels/files/readingsDoor';
import type { Session } from '../state/session';
import { reasonOf } from '../ui/fileErrors';

const ENDINGS = ['.csv', '.tsv', '.txt', '.dat', '.log'];

/** The bench's door for files that are dropped or opened anywhere; the bench is fetched when the first comes. */
export function createReadingsDoor(session: Session): ReadingsDoor {
  const { store, actions } = session;
  const fetchBench = () => withTexts(import('../bench/arrivals'));
  return {
    isName: (name) => ENDINGS.some((ending) => name.toLowerCase().endsWith(ending)),
    async likeness(file) {
      try {
        const { likenessOf } = await fetchBench();
        return await likenessOf(file);
      } catch {
        // The bench cannot be fetched, or the file not be read: whoever takes it says so.
        return 0;
      }
    },
    isOpen() {
      const { room, benchView } = store.getState().settings;
      return room === 'bench' && benchView === 'readings';
    },
    async offer(files) {
      try {
        const { offerFiles } = await fetchBench();
        await offerFiles(session, files);
        actions.setSettings({ room: 'bench', benchView: 'readings' });
      } catch (error) {
        const text = t('app.openFailed', { reason: reasonOf(error) });
        actions.notify({ tone: 'warning', text });
      }
    },
  };
}
