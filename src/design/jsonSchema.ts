import * as z from 'zod/mini';
import { designSchema, partSchemaSet } from './schema';
import { schemaTexts } from './schemaNumbers';

/** The design file's JSON Schema (draft 2020-12) as text, generated from the schema that files are read with. */
export function jsonSchemaText(): string {
  const schema = z.toJSONSchema(designSchema, {
    metadata: schemaTexts,
    override: ({ zodSchema, jsonSchema }) => {
      if (zodSchema === designSchema) jsonSchema.title = 'Stillgrip design';
      if (partSchemaSet.has(zodSchema)) {
        jsonSchema.oneOf = [{ required: ['pose'] }, { required: ['socket'] }];
      }
    },
  });
  for (const list of ['otherGrips', 'tryOuts']) pointToParts(schema, list);
  return `${JSON.stringify(schema, null, 2)}\n`;
}

/** The parts of a list's entries are told once, with the design's own. */
function pointToParts(schema: z.core.JSONSchema.BaseSchema, list: string): void {
  const entry = (schema.properties?.[list] as z.core.JSONSchema.BaseSchema | undefined)?.items;
  const { properties } = entry as z.core.JSONSchema.BaseSchema;
  if (!properties?.parts) throw new Error(`pointToParts(): ${list} has no parts`);
  properties.parts = { $ref: '#/properties/parts' };
}
