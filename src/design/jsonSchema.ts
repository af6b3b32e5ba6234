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
  return `${JSON.stringify(schema, null, 2)}\n`;
}
