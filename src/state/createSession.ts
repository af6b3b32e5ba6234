import type { Design } from '../design/design';
import {
  startFamilyWorker,
  startSearchWorker,
  startSlopeWorker,
  startToleranceWorker,
} from '../neutralise/startWorkers';
import { createActions } from './actions';
import { createBenchPoints } from './benchPoints';
import { createClosenessDesk } from './closeness';
import { createHappenings } from './happenings';
import { createLetGoDesk } from './letGo';
import { createLive, type Schedule } from './live';
import { createPlanDesk } from './plan';
import { createPullsShow } from './pullsShow';
import type { Session } from './session';
import { createShelf } from './shelf';
import { openShelfDatabase } from './shelfDatabase';
import { createStageCamera } from './stageCamera';
import { createSteadyStore } from './steadyStore';
import { createAppStore } from './store';
import { createTryOutOutlooks } from './tryOutOutlooks';
import { wantsNoMotion } from './wantsNoMotion';

/** Before the next picture; by a timer while the page is hidden, when no pictures come. */
function nextFrame(callback: () => void): void {
  if (typeof requestAnimationFrame === 'function' && !document.hidden)
    requestAnimationFrame(callback);
  else setTimeout(callback, 0);
}

/** A run of the released grip stands still while the page is hidden. */
function nextPicture(callback: (now: number) => void): () => void {
  const asked = requestAnimationFrame((now) => callback(now / 1000));
  return () => cancelAnimationFrame(asked);
}

/** As good as never given twice; `randomUUID` is missing where a page does not come over a safe connection. */
export function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** A session on a sound design (one that `parseDesign` accepted), or on an empty one. */
export function createSession(design?: Design, schedule: Schedule = nextFrame): Session {
  const store = createAppStore(design);
  const live = createLive(store, schedule);
  const shelf = createShelf({
    database: openShelfDatabase,
    now: Date.now,
    newId,
  });
  const outlooks = createTryOutOutlooks(store, live.reading.curve.pitchDeg, schedule);
  const plan = createPlanDesk(store, {
    search: startSearchWorker,
    family: startFamilyWorker,
  });
  const closeness = createClosenessDesk(store, {
    slopes: startSlopeWorker,
    tolerances: startToleranceWorker,
  });
  const happenings = createHappenings();
  const letGo = createLetGoDesk(
    { store, live, happenings },
    {
      load: () => import('../design/release/headRun').then(({ createHeadRun }) => createHeadRun),
      frame: nextPicture,
      calm: wantsNoMotion,
    },
  );
  return {
    store,
    steady: createSteadyStore(store, live),
    live,
    actions: createActions(store, live),
    outlooks,
    plan,
    closeness,
    shelf,
    stageCamera: createStageCamera(),
    benchPoints: createBenchPoints(),
    happenings,
    letGo,
    pullsShow: createPullsShow(),
  };
}
