import { serveJob } from './job';
import { runSearch } from './search';

serveJob(runSearch);
