import { serveJob } from '../neutralise/job';
import { runOffer } from './offer';

serveJob(runOffer);
