import fc from 'fast-check';
import type { Design, Part } from '../../../src/design/design';
import { drawSheet, type SheetChoice } from '../../../src/output/drawing/drawSheet';
import { FORMATS } from '../../../src/output/drawing/paper';
import type { Sheet } from '../../../src/output/drawing/sheetTypes';
import type { PartKind } from '../../../src/parts/registry';
import { EMPTY_DESIGN } from '../../../src/state/store';
import { type Values, validValues } from '../../parts/sample';

/** One seeded drawing, and words that find it again. */
export interface Drawn {
  readonly label: string;
  readonly kind: PartKind;
  readonly values: Values;
  readonly design: Design;
  readonly part: Part;
  readonly choice: SheetChoice;
  /** Null where it was said that the part does not fit. */
  readonly sheet: Sheet | null;
}

const LONG_NAME =
  'Balance weight for the outer end of the blade bolt, second attempt, longer stalk (left side)';
const LONG_NOTE = `Turn between centres. ${'Deburr every edge by hand and wash before weighing. '.repeat(8)}`;

const KINDS: readonly (readonly [PartKind, share: number])[] = [
  ['bolt', 0.4],
  ['nut', 0.4],
  ['weight', 0.12],
  ['washer', 0.08],
];

/**
 * Parts within limits and rules, the same on every machine; units, projections, sheets, words and tolerances of single
 * numbers change from one to the next. `format`: all on 'auto', or on every sheet in turn.
 */
export function seededDrawings(seed: number, count: number, format: 'auto' | 'each'): Drawn[] {
  return KINDS.flatMap(([kind, share]) =>
    fc
      .sample(validValues(kind), { seed, numRuns: Math.round(share * count) })
      .map((values, i) => drawnOf(`${kind} ${i} of seed ${seed}`, kind, values, i, format)),
  );
}

function drawnOf(
  name: string,
  kind: PartKind,
  values: Values,
  i: number,
  format: 'auto' | 'each',
): Drawn {
  const pose = { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] };
  const words = i % 5 === 0 ? LONG_NAME : `The ${kind}`;
  const part = { id: 'x', kind, name: words, pose, ...values } as unknown as Part;
  const lengths = Object.keys(values).filter(
    (key) => key.endsWith('Mm') && !key.startsWith('thread') && (values[key] as number) > 0.5,
  );
  const own = lengths
    .filter((_, k) => i % 3 === 0 && (i + k) % 2 === 0)
    .map((field) => ({ part: 'x', field, plusMinus: 0.025 }));
  const design: Design = {
    ...EMPTY_DESIGN,
    name: i % 5 === 1 ? LONG_NAME : 'Seeded parts',
    ...(i % 7 === 0 ? { note: LONG_NOTE } : {}),
    tolerance: { generalClass: 'medium', densityPercent: 1, own },
    parts: [part],
  };
  const choice: SheetChoice = {
    format: format === 'auto' ? 'auto' : FORMATS[i % FORMATS.length].name,
    projection: i % 4 < 2 ? 'first' : 'third',
    unit: i % 2 === 0 ? 'mm' : 'in',
    date: '2026-01-01',
  };
  const drawn = drawSheet(design, part, choice);
  const label = `${name} ${JSON.stringify(choice)} ${JSON.stringify(own)} ${JSON.stringify(values)}`;
  const sheet = drawn.ok ? drawn.value : null;
  return { label, kind, values, design, part, choice, sheet };
}
