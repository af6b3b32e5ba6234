import type { Session } from '../state/session';
import { chartPoints } from './chartPoints';
import { benchDeskOf } from './deskOf';
import { headAnalysis } from './headAnalysis';

/** Head and runs are worked out when both have rested so long, ms. */
const RESTS = 250;

/**
 * Keeps the points over the chart those of the bench's runs and the design at rest, for as long as the page lives and the
 * chart is to show them.
 */
export function layOverChart(session: Session): void {
  const { store, live, benchPoints } = session;
  const desk = benchDeskOf(session);
  let timer: ReturnType<typeof setTimeout> | undefined;

  function put(): void {
    const { design, settings, gesture } = store.getState();
    const state = desk.store.getState();
    // The end of the drag asks again.
    if (gesture) return;
    const isWanted = settings.chartBench && state.runs.length > 0;
    const points = isWanted ? chartPoints(headAnalysis(design, state, live.reading)) : [];
    if (points.length + benchPoints.getState().length > 0) benchPoints.setState(points, true);
  }
  function soon(): void {
    clearTimeout(timer);
    timer = setTimeout(put, RESTS);
  }
  desk.store.subscribe(soon);
  store.subscribe((now, before) => {
    const isOther =
      now.design !== before.design ||
      now.gesture !== before.gesture ||
      now.settings.chartBench !== before.settings.chartBench;
    if (isOther) soon();
  });
  put();
}
