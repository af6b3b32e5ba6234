import { runFamily } from './family';
import { serveJob } from './job';

serveJob(runFamily);
