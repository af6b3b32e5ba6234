import { describe, expect, it } from 'vitest';
import { createBenchDesk } from '../../../src/bench/desk';
import { runsLeftWith, runsMoved, runsOfHead } from '../../../src/bench/headRuns';
import { keepBench } from '../../../src/bench/keepBench';
import type { BenchRun } from '../../../src/bench/readings/benchSection';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { addTryOut, showTryOut, tryOutsOf } from '../../../src/design/tryOuts';
import { createSession } from '../../../src/state/createSession';
import { demo } from '../heads';

const DESIGN = demo('4-turned-nut');
const ROWS = [{ pitchDeg: 10, forceN: 1 }] as const;

/** The same head with a longer nut on the stage; ids of the two try-outs. */
function withLongerNut() {
  const parts = DESIGN.parts.map((part) =>
    part.kind === 'nut' ? ({ ...part, heightMm: 6.5 } as Part) : part,
  );
  const added = addTryOut(DESIGN, parts, 'longer');
  const [before, now] = tryOutsOf(added).map(({ id }) => id);
  return { design: showTryOut(added, now), before, now };
}

function run(id: string, fitted: string, tryOut?: string): BenchRun {
  return { id, name: id, fitted, rows: ROWS, ...(tryOut === undefined ? {} : { tryOut }) };
}

function counted(runs: readonly BenchRun[], design: Design): string[] {
  return runsOfHead(runs, design).counted.map(({ id }) => id);
}

describe('which runs are of the head on the stage', () => {
  it('without try-outs all are, but those that the person left out', () => {
    const runs = [run('a', 'as designed'), { ...run('b', 'as designed'), uncounted: true }];
    expect(counted(runs, DESIGN)).toEqual(['a']);
    expect(runsOfHead(runs, DESIGN).apart).toMatchObject([{ why: 'uncounted' }]);
  });

  it('a run of the head before its nut was lengthened is not; its bare grip and its drag at rest are', () => {
    const { design, before } = withLongerNut();
    const runs = [
      run('drag', 'drag', before),
      run('bare', 'bare', before),
      run('bolt', 'bolt', before),
      run('whole', 'asDesigned', before),
      run('unsaid', '', before),
    ];
    // "With bolt" has the ordinary nut on, which is the same in both.
    expect(counted(runs, design)).toEqual(['drag', 'bare', 'bolt']);
    expect(runsOfHead(runs, design).apart.map(({ why }) => why)).toEqual([
      'otherHead',
      'otherHead',
    ]);
    expect(counted(runs, showTryOut(design, before))).toHaveLength(runs.length);
  });

  it('a run of a try-out that was taken away is of none', () => {
    const { design } = withLongerNut();
    expect(runsOfHead([run('x', 'asDesigned', 'gone')], design).apart).toMatchObject([
      { why: 'goneHead' },
    ]);
  });

  it('stay with the head before when another comes on the stage, and go along when its model is put right', () => {
    const runs = [run('a', 'asDesigned'), run('b', 'asDesigned', 'try-1')];
    expect(runsLeftWith(runs, 'try-2').map(({ tryOut }) => tryOut)).toEqual(['try-2', 'try-1']);
    expect(runsMoved(runs, 'try-1', 'try-3').map(({ tryOut }) => tryOut)).toEqual([
      undefined,
      'try-3',
    ]);
  });
});

describe('the choices of the fit', () => {
  it('are kept in the design and its file, and undone', async () => {
    const session = createSession(DESIGN, () => undefined);
    const desk = createBenchDesk({
      reader: null,
      notes: { read: () => null, write: () => true },
      newId: () => 'run-1',
    });
    keepBench(session, desk);
    desk.addRun({ name: 'one', rows: ROWS });
    const { fit: first } = desk.store.getState();
    desk.set({ fit: { ...first, friction: 'force', air: 'left', pitchSigmaDeg: 0.5 } });
    desk.countRun('run-1', false);
    // What is changed is written when it has rested for half a second.
    await new Promise((resolve) => setTimeout(resolve, 600));
    const { design } = session.store.getState();
    expect(design.bench?.fit).toMatchObject({
      friction: 'force',
      zeros: 'free',
      air: 'left',
      pitchSigmaDeg: 0.5,
    });
    expect(design.bench?.runs?.[0].uncounted).toBe(true);
    expect(parseDesign(serializeDesign(design))).toEqual({ ok: true, value: design });
    session.actions.undo();
    expect(desk.store.getState().fit).toEqual(first);
    expect(desk.store.getState().runs[0].uncounted).toBeUndefined();
  });
});
