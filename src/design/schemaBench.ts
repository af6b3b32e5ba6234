import * as z from 'zod/mini';
import { MAX_ID, MAX_NAME, MAX_NOTE } from './limits';
import { number, numbers, schemaTexts } from './schemaNumbers';
import {
  BENCH_DELIMITERS,
  BENCH_NUMBER_LIMITS,
  BENCH_PAIR_LIMITS,
  BENCH_PLACES,
  BENCH_ROLES,
  BENCH_ROW_LIMITS,
  BENCH_RUN_LIMITS,
  BENCH_TRAVELS,
  MAX_BENCH_COLUMNS,
  MAX_BENCH_PAIRS,
  MAX_BENCH_ROWS,
  MAX_BENCH_RUNS,
  MAX_BENCH_TEXT,
  MAX_BENCH_UNIT,
} from './sections/bench';

const id = z.string().check(z.minLength(1), z.maxLength(MAX_ID));
const short = z.string().check(z.maxLength(MAX_NAME));
const note = z.string().check(z.maxLength(MAX_NOTE));
const travel = z.enum(BENCH_TRAVELS);

const column = z.strictObject({
  role: z.enum(BENCH_ROLES),
  unit: z.nullable(z.string().check(z.maxLength(MAX_BENCH_UNIT))),
  flipped: z.boolean(),
  travel: z.nullable(travel),
});

const table = z
  .strictObject({
    encoding: short,
    text: z.string().check(z.maxLength(MAX_BENCH_TEXT)),
    delimiter: z.optional(z.enum(BENCH_DELIMITERS)),
    decimal: z.optional(z.enum(['.', ','])),
    columns: z.array(column).check(z.maxLength(MAX_BENCH_COLUMNS)),
  })
  .register(schemaTexts, { description: 'A table of readings, every character as it came.' });

const row = z.strictObject({
  ...numbers(BENCH_ROW_LIMITS, ['forceN']),
  travel: z.optional(travel),
  note: z.optional(note),
});

const run = z
  .strictObject({
    id,
    name: short,
    ...numbers(BENCH_RUN_LIMITS),
    fitted: z.optional(short),
    parts: z.optional(z.array(id).check(z.maxLength(10_000))),
    gauge: z.optional(short),
    date: z.optional(short),
    note: z.optional(note),
    table: z.optional(table),
    rows: z.optional(z.array(row).check(z.maxLength(MAX_BENCH_ROWS))),
    setAside: z.optional(z.array(z.int().check(z.gte(0)))),
  })
  .register(schemaTexts, { description: 'One run: a table that was read, or rows typed by hand.' });

const calibration = z
  .strictObject({
    kind: z.enum(['line', 'linkage']),
    scaleUnit: z.enum(['mm', 'div']),
    pairs: z
      .array(
        z.strictObject({
          scale: number(BENCH_PAIR_LIMITS.scale),
          pitchDeg: number(BENCH_PAIR_LIMITS.pitchDeg),
        }),
      )
      .check(z.maxLength(MAX_BENCH_PAIRS)),
  })
  .register(schemaTexts, { description: 'Scale readings and the pitch measured there.' });

/** The document's record of the measuring bench. */
export const benchSchema = z
  .strictObject({
    place: z.optional(z.enum(BENCH_PLACES)),
    pullsAlong: z.optional(z.union([z.literal(1), z.literal(-1)])),
    ...numbers(BENCH_NUMBER_LIMITS),
    calibration: z.optional(calibration),
    runs: z.optional(z.array(run).check(z.maxLength(MAX_BENCH_RUNS))),
  })
  .register(schemaTexts, {
    description:
      'The measuring bench: runs as they came, gauge and calibration. No part of the model.',
  });
