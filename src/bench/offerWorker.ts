import { serveJob } from '../neutralise/job';
import { offerSteps } from './offer';

serveJob(offerSteps);
