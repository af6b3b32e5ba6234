import { familySteps } from './family';
import { serveJob } from './job';

serveJob(familySteps);
