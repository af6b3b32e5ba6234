import type { Design, TryOut } from '../design/design';
import { shownTryOut, tryOutsOf } from '../design/tryOuts';
import type { BenchRun } from './readings/benchSection';
import { buildRungs, type Rung } from './rungs';
import { rungOfRun } from './runs';

/** A run that takes no part in what is said of the head on the stage; it is kept, and can be counted again. */
export type ApartRun = { readonly run: BenchRun } & (
  | { readonly why: 'uncounted' }
  /** It was measured on the head of another try-out. */
  | { readonly why: 'otherHead'; readonly name: string }
  /** The try-out whose head it was measured on is no longer there. */
  | { readonly why: 'goneHead' }
);

/**
 * Which runs were measured on the head that is on the stage and are to be counted, and which not, with the reason. A run of
 * another try-out counts where what was fitted for it is the same in both: the bare grip of two heads that differ in a nut,
 * and drag at rest. Without try-outs there is one head, and all were measured on it.
 */
export function runsOfHead(
  runs: readonly BenchRun[],
  design: Design,
): { readonly counted: readonly BenchRun[]; readonly apart: readonly ApartRun[] } {
  const entries = tryOutsOf(design);
  const shown = shownTryOut(design)?.id;
  const counted: BenchRun[] = [];
  const apart: ApartRun[] = [];
  for (const run of runs) {
    const entry = entries.find(({ id }) => id === run.tryOut);
    const isOwn = shown === undefined || run.tryOut === undefined || run.tryOut === shown;
    if (run.uncounted) apart.push({ run, why: 'uncounted' });
    else if (isOwn || (entry && isSameFitted(run, entry, design))) counted.push(run);
    else apart.push(entry ? { run, why: 'otherHead', name: entry.name } : { run, why: 'goneHead' });
  }
  return { counted, apart };
}

/** Runs that name no head, once another comes on the stage: they were measured on the try-out that was there before. */
export function runsLeftWith(runs: readonly BenchRun[], tryOut: string): readonly BenchRun[] {
  return runs.map((run) => (run.tryOut === undefined ? { ...run, tryOut } : run));
}

/** Runs of one try-out, once the model of that same head is put right as another: they go with it. */
export function runsMoved(runs: readonly BenchRun[], from: string, to: string) {
  return runs.map((run) => (run.tryOut === from ? { ...run, tryOut: to } : run));
}

function isSameFitted(run: BenchRun, entry: TryOut, design: Design): boolean {
  const rung = rungOfRun(run, rungsOf(entry.parts ?? design.parts, design));
  if (!rung) return false;
  if (rung.key === 'drag') return true;
  const here = rungsOf(design.parts, design).find(({ key }) => key === rung.key);
  return here !== undefined && fittedText(rung) === fittedText(here);
}

const built = new WeakMap<
  Design['parts'],
  { readonly materials: Design['materials']; readonly rungs: readonly Rung[] }
>();

/** The ladder of a list of parts; worked out once as long as list and materials are the same. */
function rungsOf(parts: Design['parts'], design: Design): readonly Rung[] {
  const known = built.get(parts);
  if (known && known.materials === design.materials) return known.rungs;
  const { rungs } = buildRungs({ ...design, parts });
  built.set(parts, { materials: design.materials, rungs });
  return rungs;
}

function fittedText({ design }: Rung): string {
  return JSON.stringify(design.parts.filter((part) => !part.hidden));
}
