import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { jsonSchemaText } from '../design/jsonSchema';
import { lessonSchemaText } from '../lessons/course/lessonSchema';
import { lessonTextsSchemaText } from '../lessons/course/lessonTextsSchema';

/** Writes the JSON Schemas of design and lesson files to assets; run it after a change of parameters or quantities. */
const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
writeFileSync(join(root, 'assets', 'stillgrip-design.schema.json'), jsonSchemaText());
writeFileSync(join(root, 'assets', 'stillgrip-lesson.schema.json'), lessonSchemaText());
writeFileSync(join(root, 'assets', 'stillgrip-lesson-texts.schema.json'), lessonTextsSchemaText());
