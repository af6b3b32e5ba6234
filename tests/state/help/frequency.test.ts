import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { HeadForces } from '../../../src/design/forces/headForces';
import { createHeadRun } from '../../../src/design/release/headRun';
import { radians } from '../../../src/engine/units';
import { createSession } from '../../../src/state/createSession';
import { helpHead } from '../../../src/state/help/helpHead';
import { TOPICS } from '../../../src/state/help/topics';

/**
 * Bug: the frequency in Words left the push rod out, which is a third of the inertia on the full-size head; the same grip let
 * go swung an eighth slower than Words said. Held here to the integrated motion (itself held to an independent multibody
 * engine). A swing of 1e-3 rad: the curvature of the moment and the 0.1 degrees over which the stiffness is taken change the
 * period by some 1e-4.
 */
test.each(['1-bare-grip', '3-ordinary-bolt', '6-full-size'])(
  '%s swings in Let go as fast as Words says',
  (name) => {
    const file = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
    const read = parseDesign(readFileSync(file, 'utf8'));
    if (!read.ok) throw new Error(read.error.path);
    const design = { ...read.value, counted: { ...read.value.counted, friction: false } };
    const head = helpHead(createSession(design, (update) => update()));
    const found = TOPICS.frequency.work?.(head);
    const said =
      found?.kind === 'worked' ? found.lines.find(({ result }) => result.symbol === 'f') : null;
    const { equilibria } = head.reading;
    if (!said || equilibria.kind !== 'found') throw new Error('no frequency');
    const rests = equilibria.roots.filter(({ kind }) => kind === 'stable');
    const rest = rests.toSorted((a, b) => Math.abs(a.pitch) - Math.abs(b.pitch))[0].pitch;
    const plain = { dampingPercent: 0, restitution: 0, sliderMassGrams: 0 };
    const made = createHeadRun(new HeadForces(head.model), plain, radians(rest + 1e-3));
    if (!made.ok) throw new Error(made.error.kind);
    const { release } = made.value;
    let [turns, first, last] = [0, 0, 0];
    for (let i = 0; i < 200 && release.turns < 9; i++) {
      release.advance(1 / said.result.value / 20, (now) => {
        if (now.turns === turns) return;
        turns = now.turns;
        if (turns === 1) first = now.time;
        if (turns === 9) last = now.time;
      });
    }
    expect(turns).toBeGreaterThanOrEqual(9);
    expect(Math.abs(4 / (last - first) / said.result.value - 1)).toBeLessThan(1e-3);
  },
);
