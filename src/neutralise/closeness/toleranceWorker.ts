import { serveJob } from '../job';
import { toleranceSteps } from './runTolerances';

serveJob(toleranceSteps);
