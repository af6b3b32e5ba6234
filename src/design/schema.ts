import * as z from 'zod/mini';
import type { Parameter } from '../parts/contract';
import { PART_TYPES } from '../parts/registry';
import { DESIGN_FORMAT, DESIGN_VERSION } from './design';
import {
  MAX_ID,
  MAX_NAME,
  MAX_NOTE,
  MAX_PARTS,
  type NumberLimits,
  POSITION_LIMITS,
  ROTOR_LIMITS,
  TURN_LIMITS,
} from './limits';

// The page's content policy forbids code from strings. Must come before the first schema.
z.config({ jitless: true });

interface SchemaText {
  readonly title?: string;
  readonly description?: string;
}

/** Words for editors that read the JSON Schema. */
export const schemaTexts = z.registry<SchemaText>();

function number(limits: Pick<NumberLimits, 'min' | 'max' | 'whole'>) {
  const range = [z.gte(limits.min), z.lte(limits.max)] as const;
  return limits.whole ? z.int().check(...range) : z.number().check(...range);
}

function triple(limits: Pick<NumberLimits, 'min' | 'max'>) {
  return z.tuple([number(limits), number(limits), number(limits)]);
}

function parameterSchema(spec: Parameter): z.ZodMiniType {
  const text = { title: spec.label, description: spec.help };
  switch (spec.type) {
    case 'number':
      return number(spec).register(schemaTexts, text);
    case 'vector':
      return triple(spec).register(schemaTexts, text);
    default:
      return z.enum(spec.options as readonly [string, ...string[]]).register(schemaTexts, text);
  }
}

const id = z.string().check(z.minLength(1), z.maxLength(MAX_ID));

const pose = z
  .strictObject({ positionMm: triple(POSITION_LIMITS), rotationDeg: triple(TURN_LIMITS) })
  .register(schemaTexts, {
    description:
      'Free placement in the grip frame: turned about the fixed x, then y, then z, then moved.',
  });

const socket = z
  .strictObject({
    part: id,
    name: id,
    offsetMm: z.optional(number(POSITION_LIMITS)),
    turnDeg: z.optional(number(TURN_LIMITS)),
  })
  .register(schemaTexts, {
    description:
      "Mounted on a socket of another part: moved along the socket's z by offsetMm, turned about it by turnDeg.",
  });

const partSchemas = PART_TYPES.map((type) => {
  const own = Object.entries<Parameter>(type.parameters).map(
    ([name, spec]) => [name, parameterSchema(spec)] as const,
  );
  return z
    .strictObject({
      id,
      kind: z.literal(type.kind),
      name: z.string().check(z.maxLength(MAX_NAME)),
      hidden: z.optional(z.boolean()),
      ...Object.fromEntries(own),
      pose: z.optional(pose),
      socket: z.optional(socket),
    })
    .register(schemaTexts, { title: type.label, description: type.help });
});

/** The part schemas; each still wants exactly one of `pose` and `socket`, which `checkPart` and the JSON Schema say. */
export const partSchemaSet: ReadonlySet<unknown> = new Set(partSchemas);

type PartSchema = (typeof partSchemas)[number];

/**
 * Form of a design document of the present version: names, types and limits of every field, from the registry's
 * parameters. Unknown keys are refused. What one schema cannot see (rules between parameters, ids, mounts) is checked
 * by `checkParts`.
 */
export const designSchema = z.strictObject({
  format: z.literal(DESIGN_FORMAT),
  version: z.literal(DESIGN_VERSION),
  name: z.string().check(z.maxLength(MAX_NAME)),
  note: z.optional(z.string().check(z.maxLength(MAX_NOTE))),
  rotor: z.strictObject({
    speedRpm: number(ROTOR_LIMITS.speedRpm),
    bladeCount: number(ROTOR_LIMITS.bladeCount),
    torqueOffsetMm: number(ROTOR_LIMITS.torqueOffsetMm),
    preconeDeg: number(ROTOR_LIMITS.preconeDeg),
    usedPitchDeg: z.optional(number(ROTOR_LIMITS.usedPitchDeg)),
  }),
  parts: z
    .array(z.discriminatedUnion('kind', partSchemas as [PartSchema, ...PartSchema[]]))
    .check(z.maxLength(MAX_PARTS)),
});
