import { readFileSync } from 'node:fs';
import type { Design, Part } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { partOf } from '../design/designs';
import { type Seeded, seeded } from '../support/seeded';

/** A design and the two states between which one of its parts is dragged to and fro. */
export interface Dragged {
  readonly design: Design;
  readonly states: readonly [Part, Part];
}

/** Two invented heads of different make-up, the nut of each a little higher and lower: no one shape to specialise on. */
export function demoHeads(): readonly [Dragged, Dragged] {
  return [dragged('4-turned-nut'), dragged('5-both-sides')];
}

export function demo(name: string): Design {
  const path = new URL(`../../assets/designs/${name}.json`, import.meta.url);
  const read = parseDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(`demo(): ${read.error.path}`);
  return read.value;
}

function dragged(name: string): Dragged {
  const design = demo(name);
  const nut = design.parts.find(({ kind }) => kind === 'nut') as Part & { heightMm: number };
  const higher = { ...nut, heightMm: nut.heightMm + 0.1 } as Part;
  return { design, states: [nut, higher] };
}

/** The head of `dragged` among so many lumps that it has `count` parts. */
export function grown({ design, states }: Dragged, count: number): Dragged {
  const random = seeded(count);
  const lumps = Array.from({ length: Math.max(0, count - design.parts.length) }, (_, i) =>
    partOf('pointMass', `lump ${i}`, {
      massGrams: 0.1 + random.unit(),
      pose: { positionMm: position(random), rotationDeg: [0, 0, 0] },
    }),
  );
  return { design: { ...design, parts: [...design.parts, ...lumps] }, states };
}

function position(random: Seeded): readonly number[] {
  return [random.between(0, 40), random.between(-10, 10), random.between(-10, 10)];
}
