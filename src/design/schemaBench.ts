import * as z from 'zod/mini';
import { MAX_ID, MAX_NAME, MAX_NOTE } from './limits';
import { number, numbers, schemaTexts } from './schemaNumbers';
import {
  BENCH_AIRS,
  BENCH_DELIMITERS,
  BENCH_FIT_LIMITS,
  BENCH_FRICTIONS,
  BENCH_NUMBER_LIMITS,
  BENCH_PAIR_LIMITS,
  BENCH_PLACES,
  BENCH_PLAN_LIMITS,
  BENCH_ROLES,
  BENCH_ROW_LIMITS,
  BENCH_RUN_LIMITS,
  BENCH_RUNGS,
  BENCH_SENSES,
  BENCH_SHARED_LIMITS,
  BENCH_STEP_LIMITS,
  BENCH_TRAVELS,
  BENCH_ZEROS,
  MAX_BENCH_COLUMNS,
  MAX_BENCH_PAIRS,
  MAX_BENCH_ROWS,
  MAX_BENCH_RUNS,
  MAX_BENCH_STEPS,
  MAX_BENCH_TEXT,
  MAX_BENCH_UNIT,
  MAX_PLAN_PITCHES,
  MAX_PLAN_SPEEDS,
  MAX_PLAN_TICKS,
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

const step = z
  .strictObject({
    ...numbers(BENCH_STEP_LIMITS, ['from', 'to', 'pitchDeg']),
    travel: z.optional(travel),
  })
  .register(schemaTexts, {
    description: 'Samples of a log, counted from 0, that were taken at one pitch.',
  });

const plan = z
  .strictObject({
    pitchesDeg: z.optional(
      z.array(number(BENCH_PLAN_LIMITS.pitchDeg)).check(z.maxLength(MAX_PLAN_PITCHES)),
    ),
    speedsRpm: z.optional(
      z.array(number(BENCH_PLAN_LIMITS.speedRpm)).check(z.maxLength(MAX_PLAN_SPEEDS)),
    ),
    senses: z.optional(z.array(z.enum(BENCH_SENSES))),
    leftOut: z.optional(z.array(z.enum(BENCH_RUNGS))),
    settleSeconds: z.optional(number(BENCH_PLAN_LIMITS.settleSeconds)),
    ticked: z.optional(z.array(short).check(z.maxLength(MAX_PLAN_TICKS))),
    tickedOn: z.optional(short),
  })
  .register(schemaTexts, { description: 'How the runs are planned, and the safety sheet.' });

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
    steps: z.optional(z.array(step).check(z.maxLength(MAX_BENCH_STEPS))),
    setAside: z.optional(z.array(z.int().check(z.gte(0)))),
    uncounted: z.optional(z.boolean()),
    tryOut: z.optional(id),
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

const fit = z
  .strictObject({
    friction: z.enum(BENCH_FRICTIONS),
    zeros: z.enum(BENCH_ZEROS),
    air: z.enum(BENCH_AIRS),
    pitchSigmaDeg: number(BENCH_FIT_LIMITS.pitchSigmaDeg),
    ...numbers(BENCH_SHARED_LIMITS),
  })
  .register(schemaTexts, { description: 'How the readings are fitted.' });

/** The document's record of the measuring bench. */
export const benchSchema = z
  .strictObject({
    place: z.optional(z.enum(BENCH_PLACES)),
    pullsAlong: z.optional(z.union([z.literal(1), z.literal(-1)])),
    ...numbers(BENCH_NUMBER_LIMITS),
    calibration: z.optional(calibration),
    fit: z.optional(fit),
    plan: z.optional(plan),
    runs: z.optional(z.array(run).check(z.maxLength(MAX_BENCH_RUNS))),
  })
  .register(schemaTexts, {
    description:
      'The measuring bench: runs as they came, gauge and calibration. No part of the model.',
  });
