import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyseDesign } from '../../src/design/analysis';
import type { Design } from '../../src/design/design';
import { shortBolts } from '../../src/design/engagement';
import { parseDesign } from '../../src/design/file';
import { HeadForces } from '../../src/design/forces/headForces';
import { headLoads } from '../../src/design/forces/headLoads';
import { HeadModel } from '../../src/design/headModel';
import { radians } from '../../src/engine/units';
import { METRIC_UNITS } from '../../src/state/settings';
import { shortText } from '../../src/state/words/misfitText';

function demo(name: string): Design {
  const url = new URL(`../../assets/designs/${name}.json`, import.meta.url);
  const read = parseDesign(readFileSync(url, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

/** The demo head with an ordinary bolt and numbers of its nut or bolt changed. */
function ordinary(id: string, change: Record<string, unknown>): Design {
  const design = demo('3-ordinary-bolt');
  const parts = design.parts.map((part) => (part.id === id ? { ...part, ...change } : part));
  return { ...design, parts } as Design;
}

function looked(design: Design) {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) throw new Error(loaded.error.path);
  const [bolt] = headLoads(new HeadForces(model), radians(0)).bolts;
  return { short: shortBolts(model), retention: bolt.retention };
}

/**
 * By hand: cheeks 5.5, slot 5, cheek 5.5 and two washers of 0.5 mm take 17 of the bolt's 22 mm, so it reaches 5 mm into the nut,
 * whose squeezed collar of 1.6 mm ends at 2.4 + 1.6 = 4 mm. A locking nut locks only where the bolt has come through what
 * grips it, and a nut holds by a thread of about its standard height, 0.8 d (common practice).
 */
describe('a bolt in its nut', () => {
  it('that comes through the collar is locked, to the last hundredth', () => {
    expect(looked(demo('3-ordinary-bolt'))).toEqual({ short: [], retention: 'prevailing' });
    expect(looked(ordinary('nut', { heightMm: 3.4 }))).toEqual({
      short: [],
      retention: 'prevailing',
    });
  });

  it('is not locked by a collar that it does not reach, as on a nut made long for its weight', () => {
    const long = ordinary('nut', { heightMm: 10.1 });
    const { short, retention } = looked(long);
    expect(retention).toBe('unlocked');
    expect(short).toEqual([
      {
        bolt: 'Blade bolt M3 x 22',
        nut: 'Locking nut M3',
        lacks: 'lock',
        byMm: expect.closeTo(6.7, 9),
      },
    ]);
    expect(shortText(short, METRIC_UNITS)).toBe(
      'Blade bolt M3 x 22 ends 6.7\u00a0mm before what locks Locking nut M3: the nut can come off.',
    );
    const found = analyseDesign(long, { fromDeg: 0, toDeg: 0, stepDeg: 1 });
    if (!found.ok) throw new Error(found.error.path);
    expect(found.value.warnings.join()).toContain(
      'ends 6.70 mm before what locks "Locking nut M3"',
    );
  });

  it('holds by too little thread below 0.8 of its diameter', () => {
    const bolt = (lengthMm: number) => ordinary('bolt', { lengthMm, threadLengthMm: 6 });
    // 19.4 - 17 = 2.4 mm = 0.8 x 3 mm, and short of the collar's end; 19 leaves 2 mm.
    expect(looked(bolt(19.4)).retention).toBe('unlocked');
    const { short, retention } = looked(bolt(19));
    expect(retention).toBe('shallow');
    expect(short[0]).toMatchObject({ lacks: 'thread', byMm: expect.closeTo(0.4, 9) });
  });

  it('of every demo head is long enough', () => {
    for (const name of ['2-long-bolt', '4-turned-nut', '5-both-sides', '6-full-size']) {
      expect(looked(demo(name)).short, name).toEqual([]);
    }
  });
});
