import type { Browser, Page } from '@playwright/test';

/** Script time of the frames of one gesture, ms of the page's own thread. */
export interface ScriptTime {
  readonly frames: number;
  readonly median: number;
  readonly p95: number;
  readonly worst: number;
}

/** One event of the browser's trace; times in microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly data?: { readonly type?: string } };
}

const CATEGORIES = ['devtools.timeline', 'v8', 'v8.execute', 'disabled-by-default-v8.gc'];

/** What counts as script: the page's functions with all that they call (layout that they ask for too), and the collector. */
const SCRIPT = /^(FunctionCall|EvaluateScript|RunMicrotasks|V8\.GC.*|MinorGC|MajorGC)$/;

/**
 * Runs a gesture under the browser's own trace and takes the script time of each of its frames: all that ran on the page's
 * thread from one pointer move (or picture) to the next. Processor time of the thread, so that other programs do not count; painting,
 * style and layout outside a script do not count either.
 */
export async function scriptTimeOf(
  browser: Browser,
  page: Page,
  gesture: () => Promise<void>,
  begins: (event: TraceEvent) => boolean = pointerMoves,
): Promise<ScriptTime> {
  await browser.startTracing(page, { categories: CATEGORIES });
  await gesture();
  const trace = JSON.parse((await browser.stopTracing()).toString()) as {
    readonly traceEvents: readonly TraceEvent[];
  };
  return summary(frameTimes(trace.traceEvents, begins));
}

/** Exported for its test. Script time between the beginnings of a trace's frames, ms; what ran before the first is left out. */
export function frameTimes(
  events: readonly TraceEvent[],
  begins: (event: TraceEvent) => boolean = pointerMoves,
): number[] {
  const moves = events.filter(begins);
  if (moves.length === 0) return [];
  const { pid, tid } = moves[0];
  const own = events
    .filter((event) => event.ph === 'X' && event.pid === pid && event.tid === tid)
    .filter((event) => SCRIPT.test(event.name))
    .toSorted((a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0));
  const starts = moves.map((event) => event.ts).toSorted((a, b) => a - b);
  const times = starts.map(() => 0);
  let frame = -1;
  let end = 0;
  for (const event of own) {
    // What runs inside another is part of it.
    if (event.ts < end) continue;
    end = event.ts + (event.dur ?? 0);
    // A move's handlers begin just after the move itself.
    while (frame + 1 < starts.length && starts[frame + 1] <= event.ts) frame++;
    if (frame >= 0) times[frame] += (event.tdur ?? event.dur ?? 0) / 1000;
  }
  return times;
}

function pointerMoves({ name, args }: TraceEvent): boolean {
  return name === 'EventDispatch' && args?.data?.type === 'pointermove';
}

/** Of a movement that nobody's hand makes: the page begins its next picture. */
export function pictureBegins({ name, ph }: TraceEvent): boolean {
  return name === 'AnimationFrame' && ph === 'b';
}

function summary(times: readonly number[]): ScriptTime {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number) =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  return { frames: sorted.length, median: at(0.5), p95: at(0.95), worst: at(1) };
}
