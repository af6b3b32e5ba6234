import { createJob, type Job } from '../../state/job';
import type { Session } from '../../state/session';
import { startStepWorker } from '../solids/startStepWorker';
import type { StepFile, StepRequest } from '../solids/stepTypes';

export type StepJob = Job<StepRequest, StepFile>;

const jobs = new WeakMap<Session, StepJob>();

/** The page's one job of the CAD kernel: it goes on while another room is looked at. Nothing is fetched before it starts. */
export function stepJobOf(session: Session): StepJob {
  const found = jobs.get(session);
  if (found) return found;
  const made = createJob<StepRequest, StepFile>(startStepWorker);
  jobs.set(session, made);
  return made;
}
