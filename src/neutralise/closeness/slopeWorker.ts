import type { Design } from '../../design/design';
import { holdLife } from '../../worker/life';
import { turn } from '../../worker/turn';
import { type Derivative, derivativeOf, variedNumbers } from './derivatives';
import { HeadProbe, hasKeptTerms } from './headProbe';
import type { SlopeQuestion, SlopeReply } from './slopeMessages';

const lives = holdLife();

/** Answers the latest question; one that came in between ends the work on the one before. */
let latest = 0;

self.addEventListener('message', ({ data: question }: MessageEvent<SlopeQuestion>) => {
  latest = question.id;
  void answer(question);
});

async function answer({ id, design, pitchesDeg }: SlopeQuestion): Promise<void> {
  await lives;
  await turn();
  if (latest !== id) return;
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
  const reply = (message: SlopeReply) => self.postMessage(message);
  for (const terms of ['nominal', 'anew'] as const) {
    if (terms === 'anew' && !hasKeptTerms(design)) return;
    const derivatives = await derivativesUnless(() => latest !== id, design, pitchesDeg, terms);
    if (!derivatives) return;
    reply({ id, terms, derivatives });
  }
}

/** Time at a stretch, ms, after which a new question is let in. */
const STRETCH = 20;

async function derivativesUnless(
  stopped: () => boolean,
  design: Design,
  pitchesDeg: readonly number[],
  terms: SlopeReply['terms'],
): Promise<readonly Derivative[] | null> {
  const probe = HeadProbe.of(design, pitchesDeg, terms);
  if (!probe.ok) return null;
  const derivatives: Derivative[] = [];
  let began = performance.now();
  for (const ref of variedNumbers(design)) {
    const found = derivativeOf(design, probe.value, ref);
    if (found) derivatives.push(found);
    if (performance.now() - began < STRETCH) continue;
    await turn();
    if (stopped()) return null;
    began = performance.now();
  }
  return derivatives;
}
