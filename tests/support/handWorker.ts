import type { JobReply } from '../../src/neutralise/job';
import type { JobWorker } from '../../src/state/job';

/** Workers in the hands of a test: what they were asked, and what they say. */
export function handWorker<Result>() {
  const made: {
    readonly posted: unknown[];
    readonly heard: Map<string, (event: unknown) => void>;
    ended: boolean;
  }[] = [];
  return {
    made,
    start(): JobWorker {
      const own = { posted: [] as unknown[], heard: new Map(), ended: false };
      made.push(own);
      return {
        addEventListener: ((name: string, listener: (event: unknown) => void) =>
          own.heard.set(name, listener)) as JobWorker['addEventListener'],
        postMessage: (request: unknown) => own.posted.push(request),
        terminate() {
          own.ended = true;
        },
      };
    },
    say(index: number, data: JobReply<Result>) {
      made[index].heard.get('message')?.({ data });
    },
    fail(index: number, message: string) {
      made[index].heard.get('error')?.({ message });
    },
  };
}
