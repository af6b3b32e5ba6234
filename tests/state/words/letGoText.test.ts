import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { HeadForces } from '../../../src/design/forces/headForces';
import { HeadModel } from '../../../src/design/headModel';
import { createHeadRun } from '../../../src/design/release/headRun';
import { radiansFromDegrees } from '../../../src/engine/units';
import { createReading } from '../../../src/state/createReading';
import { heldText, runText } from '../../../src/state/words/letGoText';

const UNITS = { length: 'mm', mass: 'g', force: 'N', moment: 'N mm' } as const;
const PLAIN = { dampingPercent: 0, restitution: 0, sliderMassGrams: 0 };

/** A block on the axis, its long way along the chord (blade-like) or across it (bolt-like); nothing else. */
function blockHead(chordMm: number, acrossMm: number, speedRpm = 10_000): Design {
  const read = parseDesign(
    JSON.stringify({
      format: 'stillgrip-design',
      version: 1,
      name: 'A block',
      rotor: { speedRpm, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0, usedPitchDeg: 20 },
      parts: [
        {
          id: 'block',
          kind: 'block',
          name: 'Block',
          sizeMm: [20, chordMm, acrossMm],
          densityKgM3: 1500,
          pose: { positionMm: [40, 0, 0], rotationDeg: [0, 0, 0] },
        },
      ],
    }),
  );
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

function said(design: Design, pitchDeg: number) {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) throw new Error(loaded.error.path);
  const reading = createReading(model);
  reading.refresh(design);
  const made = createHeadRun(new HeadForces(model), PLAIN, radiansFromDegrees(pitchDeg));
  if (made.ok) made.value.finish();
  return {
    held: heldText(reading, pitchDeg, UNITS),
    run: made.ok ? runText(made.value, UNITS) : null,
  };
}

describe('what is said of a grip that nothing turns', () => {
  it('at a rest angle: that it stays, without a warning', () => {
    const { held, run } = said(blockHead(30, 3), 0);
    expect(held).not.toMatch(/least touch/);
    expect(run).toMatch(/It stays at 0\.0°/);
  });

  it('on the very top of a hill: that the least touch sends it off', () => {
    // Bug: an over-balanced grip at exactly flat pitch was told of as one that stays.
    const { held, run } = said(blockHead(3, 30), 0);
    expect(held).toMatch(/flee angle.*least touch/);
    expect(run).toMatch(/flee angle.*least touch/);
  });

  it('where the rotor stands still: that, at every pitch', () => {
    for (const pitch of [0, 17]) {
      expect(said(blockHead(3, 30, 0), pitch).held).toMatch(/rotor stands still/);
    }
  });

  it('where there is no mass: that there is nothing to let go', () => {
    const empty = { ...blockHead(30, 3), parts: [] };
    const { held, run } = said(empty, 5);
    expect(held).toMatch(/no mass to let go/);
    expect(run).toBeNull();
  });
});

describe('friction', () => {
  it('is not given as what holds a grip that no moment turns', () => {
    const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
    const read = parseDesign(readFileSync(file, 'utf8'));
    if (!read.ok) throw new Error(read.error.path);
    const still = { ...read.value, rotor: { ...read.value.rotor, speedRpm: 0 } };
    expect(said(still, 12).run).toMatch(/nothing turns it/);
    expect(said(read.value, 0).run).toMatch(/friction holds it/);
  });
});
