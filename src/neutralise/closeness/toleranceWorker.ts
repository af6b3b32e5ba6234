import { serveJob } from '../job';
import { runTolerances } from './runTolerances';

serveJob(runTolerances);
