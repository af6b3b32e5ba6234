import { withTexts } from '../messages';
import type { Session } from '../state/session';

/** Fetches the bench when a design with runs is open and the chart is to show them: a page without runs never does. */
export function watchBench(session: Session): void {
  const { store } = session;
  let isAsked = false;
  function look(): void {
    const { design, settings } = store.getState();
    if (isAsked || !settings.chartBench || (design.bench?.runs ?? []).length === 0) return;
    isAsked = true;
    withTexts(import('../bench/layOverChart')).then(
      ({ layOverChart }) => {
        stop();
        layOverChart(session);
      },
      () => {
        // Offline, or a newer build: the next change asks again; the chart itself lacks nothing.
        isAsked = false;
      },
    );
  }
  const stop = store.subscribe(look);
  look();
}
