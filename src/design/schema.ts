import * as z from 'zod/mini';
import type { PartCatalogue } from '../parts/catalogue';
import type { Parameter, PartType } from '../parts/contract';
import { PART_TYPES, partType } from '../parts/registry';
import { DESIGN_FORMAT, DESIGN_VERSION } from './design';
import {
  MATERIAL_LIMITS,
  MAX_ID,
  MAX_NAME,
  MAX_NOTE,
  MAX_OWN_MATERIALS,
  MAX_PARTS,
  MAX_TRY_OUTS,
  POSITION_LIMITS,
  TURN_LIMITS,
} from './limits';
import {
  MAX_SWINGS,
  MEASURED_LIMITS,
  SWING_AXES,
  SWING_LIMITS,
  SWING_REQUIRED,
  WEIGHED_TOTAL_LIMITS,
} from './measured';
import { benchSchema } from './schemaBench';
import { number, numbers, schemaTexts, triple } from './schemaNumbers';
import { sectionSchemas } from './schemaSections';
import { MAX_OTHER_GRIPS, OTHER_GRIP_LIMITS, PART_MASS_LIMITS } from './sections/grips';

function parameterSchema(spec: Parameter): z.ZodMiniType {
  const text = { title: spec.label, description: spec.help };
  switch (spec.type) {
    case 'number':
      return number(spec).register(schemaTexts, text);
    case 'vector':
      return triple(spec).register(schemaTexts, text);
    case 'numbers':
      return z.array(number(spec)).check(z.maxLength(spec.maxCount)).register(schemaTexts, text);
    case 'text':
      return z.string().check(z.maxLength(spec.maxLength)).register(schemaTexts, text);
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

const swing = z
  .strictObject({ about: z.enum(SWING_AXES), ...numbers(SWING_LIMITS, SWING_REQUIRED) })
  .register(schemaTexts, {
    description: 'A timing on the two-string pendulum, hung with the axis upright.',
  });

const measured = z
  .strictObject({
    ...numbers(MEASURED_LIMITS),
    swings: z.optional(z.array(swing).check(z.maxLength(MAX_SWINGS))),
  })
  .register(schemaTexts, {
    description: 'What was measured of the part; it wins over what the dimensions give.',
  });

const ownMaterial = z.strictObject({
  id: z.string().check(z.minLength(1), z.maxLength(MAX_ID)),
  name: z.string().check(z.maxLength(MAX_NAME)),
  ...numbers(MATERIAL_LIMITS, ['densityKgM3']),
  source: z.optional(z.string().check(z.maxLength(MAX_NOTE))),
  note: z.optional(z.string().check(z.maxLength(MAX_NOTE))),
});

function catalogueSchema(catalogue: PartCatalogue) {
  const names = catalogue.standards.map((one) => one.standard);
  const lengths = catalogue.lengthLimitsMm;
  return z
    .strictObject({
      standard: z.enum(names as [string, ...string[]]),
      size: z.string().check(z.minLength(1), z.maxLength(MAX_ID)),
      ...(lengths ? { lengthMm: z.optional(number({ min: lengths[0], max: lengths[1] })) } : {}),
    })
    .register(schemaTexts, {
      description: 'A row of a standard: it gives every dimension that is not written beside it.',
    });
}

const partSchemas = PART_TYPES.map((one) => {
  const type: PartType = partType(one.kind);
  const specs = Object.entries<Parameter>(type.parameters);
  // Where a row or a material may give a value, only `resolveValues` can tell that it is missing.
  const own = specs.map(([name, spec]) => {
    const schema = parameterSchema(spec);
    const given = spec.optional || type.catalogue || (spec.type === 'number' && spec.materialKey);
    return [name, given ? z.optional(schema) : schema] as const;
  });
  const materials = specs.flatMap(([, spec]) =>
    spec.type === 'number' && spec.materialKey ? [[spec.materialKey, z.optional(id)] as const] : [],
  );
  return z
    .strictObject({
      id,
      kind: z.literal(one.kind),
      name: z.string().check(z.maxLength(MAX_NAME)),
      hidden: z.optional(z.boolean()),
      ...(type.catalogue ? { catalogue: z.optional(catalogueSchema(type.catalogue)) } : {}),
      ...Object.fromEntries(materials),
      ...Object.fromEntries(own),
      measured: z.optional(measured),
      pose: z.optional(pose),
      socket: z.optional(socket),
    })
    .register(schemaTexts, { title: type.label, description: type.help });
});

/** The part schemas; each still wants exactly one of `pose` and `socket`, which `checkPart` and the JSON Schema say. */
export const partSchemaSet: ReadonlySet<unknown> = new Set(partSchemas);

type PartSchema = (typeof partSchemas)[number];

const partList = z
  .array(z.discriminatedUnion('kind', partSchemas as [PartSchema, ...PartSchema[]]))
  .check(z.maxLength(MAX_PARTS));

const otherGrip = z
  .strictObject({
    name: z.string().check(z.maxLength(MAX_NAME)),
    ...numbers(OTHER_GRIP_LIMITS),
    partMassesGrams: z.optional(z.record(id, number(PART_MASS_LIMITS))),
    parts: z.optional(partList),
  })
  .register(schemaTexts, {
    description: 'Another grip of the rotor: like the one drawn, unless it says otherwise.',
  });

const tryOut = z
  .strictObject({
    id,
    name: z.string().check(z.maxLength(MAX_NAME)),
    note: z.optional(z.string().check(z.maxLength(MAX_NOTE))),
    adopted: z.optional(z.literal(true)),
    parts: z.optional(partList),
  })
  .register(schemaTexts, {
    description:
      "A variant of the head with its own parts. Exactly one has none: its parts are the design's own.",
  });

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
  ...sectionSchemas,
  materials: z.optional(z.array(ownMaterial).check(z.maxLength(MAX_OWN_MATERIALS))),
  weighedTotal: z.optional(
    z
      .strictObject(numbers(WEIGHED_TOTAL_LIMITS, ['massGrams']))
      .register(schemaTexts, { description: 'The whole grip on the scale.' }),
  ),
  otherGrips: z.optional(z.array(otherGrip).check(z.maxLength(MAX_OTHER_GRIPS))),
  tryOuts: z.optional(z.array(tryOut).check(z.maxLength(MAX_TRY_OUTS))),
  bench: z.optional(benchSchema),
  parts: partList,
});
