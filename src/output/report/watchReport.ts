import type { Session } from '../../state/session';
import type { StagePicture } from '../../state/stageCamera';
import { reasonOf } from '../../ui/fileErrors';
import { fileStem } from '../../ui/fileStem';
import { isoDay } from '../isoDay';
import { shareLink } from '../share/shareLink';
import type { Choice } from './choice';
import type { ReportInputs, ReportLink } from './inputs';
import type { ReportModel } from './model';
import { reportModel } from './reportModel';

/** Size of the picture, pixels: sharp on paper at the width it has there. */
const PICTURE = { width: 1600, height: 1000 } as const;
/** A report is a tenth of a second's work: it is made when nothing has changed for so long, ms. */
const STILL = 250;

/** The report, or in words why it could not be made; neither before the first is made. */
export interface ReportShown {
  readonly report: ReportModel | null;
  readonly fault: string | null;
}

export interface ReportWatch {
  /** Makes the report anew by the choice that holds then. */
  again(): void;
  /** The same with a new picture of the stage, whose view may have been turned. */
  retake(): void;
  /** Makes at once what is still to be made. */
  now(): void;
  stop(): void;
}

/**
 * Shows the report at once and again whenever what it tells of has come to rest: never while something is dragged. The
 * picture is taken with it, so that it is of the same head as the numbers.
 */
export function watchReport(
  session: Session,
  choice: () => Choice,
  show: (shown: ReportShown) => void,
): ReportWatch {
  const { store, stageCamera, closeness } = session;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let picture: StagePicture | null = null;
  let pictured = false;

  function make(): void {
    clearTimeout(timer);
    timer = undefined;
    // The end of the gesture asks again.
    if (store.getState().gesture) return;
    try {
      if (!pictured) {
        session.live.flush();
        picture = stageCamera.take(PICTURE.width, PICTURE.height);
        pictured = true;
      }
      show({ report: reportModel(inputsNow(session, choice(), picture)), fault: null });
    } catch (error) {
      // An old sheet would pass for one of the head as it is now.
      show({ report: null, fault: reasonOf(error) });
    }
  }
  function schedule(wait = STILL): void {
    clearTimeout(timer);
    timer = setTimeout(make, wait);
  }
  function retake(): void {
    pictured = false;
    schedule(0);
  }

  const stopStore = store.subscribe((now, before) => {
    const headMoved = now.design !== before.design || now.pitchDeg !== before.pitchDeg;
    if (headMoved) pictured = false;
    if (now.gesture) clearTimeout(timer);
    else if (headMoved || before.gesture || now.settings.units !== before.settings.units)
      schedule();
  });
  const stopCamera = stageCamera.subscribe(() => {
    if (stageCamera.ready()) retake();
  });
  const stopRun = closeness.run.store.subscribe((now, before) => {
    if (now.job.kind !== before.job.kind) schedule();
  });
  schedule(0);
  return {
    again: schedule,
    retake,
    now() {
      if (timer !== undefined) make();
    },
    stop() {
      clearTimeout(timer);
      stopStore();
      stopCamera();
      stopRun();
    },
  };
}

function inputsNow(session: Session, choice: Choice, picture: StagePicture | null): ReportInputs {
  const { store, live, closeness } = session;
  live.flush();
  const { design, settings, pitchDeg } = store.getState();
  const { job } = closeness.run.store.getState();
  return {
    ...choice,
    design,
    reading: live.reading,
    model: live.model,
    units: settings.units,
    pitchDeg,
    date: isoDay(new Date()),
    picture,
    tolerance: job.kind === 'done' ? { design: job.request, answer: job.result } : null,
    fileName: `${fileStem(design.name, 'head')}.json`,
    link: linkTo(design),
  };
}

/** Behind the address that the page has here, as the page's own share link. */
function linkTo(design: ReportInputs['design']): ReportLink {
  const { origin, pathname } = window.location;
  const made = shareLink(design, `${origin}${pathname}`);
  return made.ok
    ? { length: made.value.length, address: made.value }
    : { length: made.error.length, address: null };
}
