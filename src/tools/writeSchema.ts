import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { jsonSchemaText } from '../design/jsonSchema';

/** Writes the design file's JSON Schema to assets; run it after a change of parameters. */
const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
writeFileSync(join(root, 'assets', 'stillgrip-design.schema.json'), jsonSchemaText());
