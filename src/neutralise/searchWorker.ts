import { serveJob } from './job';
import { searchSteps } from './search';

serveJob(searchSteps);
