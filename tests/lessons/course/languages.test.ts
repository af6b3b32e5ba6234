import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { describeFault } from '../../../src/design/faultText';
import { saidAnew, textsOf } from '../../../src/lessons/course/lessonTexts';
import {
  lessonTextsSchema,
  lessonTextsSchemaText,
} from '../../../src/lessons/course/lessonTextsSchema';
import { readLesson } from '../../../src/lessons/course/readLesson';
import { LESSON_TEXTS } from '../../../src/messages/de/lessonFiles';
import { LESSON_FILES, lessonText } from './files';

const ASSETS = fileURLToPath(new URL('../../../assets/', import.meta.url));

interface Plain {
  readonly [field: string]: unknown;
}

function translated(file: string): Plain {
  return JSON.parse(readFileSync(`${ASSETS}lessons/de/${file}`, 'utf8')) as Plain;
}

function english(file: string): Plain {
  return JSON.parse(lessonText(file)) as Plain;
}

/** English and German text of every place of a lesson. */
function pairs(file: string): (readonly [path: string, own: string, other: string])[] {
  const other = new Map(textsOf(translated(file)));
  return textsOf(english(file)).map(([path, own]) => [path, own, other.get(path) ?? '']);
}

/** As the page says it in German. */
function german(file: string): unknown {
  const lesson = english(file);
  return saidAnew(lesson, (path, own) => LESSON_TEXTS[`lesson.${lesson.id}.${path}`] ?? own);
}

function marks(text: string): string[] {
  return (text.match(/\{[^}]*\}/g) ?? []).toSorted();
}

/** Numbers outside the marks, the decimal comma as a point; digits of names and symbols count too. */
function numbers(text: string): string[] {
  const plain = text.replace(/\{[^}]*\}/g, '').replace(/(\d),(?=\d)/g, '$1.');
  return (plain.match(/\d+(?:\.\d+)?/g) ?? []).toSorted();
}

/** Symbols alone read the same in every language. */
const SYMBOLS_ALONE = new Set(['J_yy - J_zz', 'J_yz']);

/** What tells one answer of a question from another, in both languages: their order must be the same. */
const ANSWER_WORDS: readonly (readonly [RegExp, RegExp])[] = [
  [/\bhalf\b/, /Hälfte/],
  [/quarter/, /Viertel/],
  [/eighth/, /Achtel/],
  [/twice|doubles/, /doppelt/i],
  [/four times/, /viermal/],
  [/eight times/, /achtmal/],
  [/trebles/, /dreimal/],
  [/\bcentres?\b/i, /zur Mitte/],
  [/\bflee\b/i, /wegl[aä]uf|läuft weg/],
  [/\bback\b/i, /\bzurück/i],
  [/\bless\b/i, /\bweniger\b/i],
  [/\bmore\b/i, /\bmehr\b/i],
  [/negative/, /negativ/],
  [/positive/, /positiv/],
  [/grows/, /wächst/],
  [/shrinks/, /schrumpft/],
  [/sign\b/, /Vorzeichen/],
  [/upright/, /aufrecht/],
  [/nothing|nowhere/i, /nichts|nirgend/i],
];

describe('the lessons in German', () => {
  it('are files of the form that the schema in assets gives', () => {
    const files = readdirSync(`${ASSETS}lessons/de`);
    expect(files.toSorted()).toEqual(LESSON_FILES.toSorted());
    for (const file of files) {
      const read = lessonTextsSchema.safeParse(translated(file));
      expect(read.success ? '' : `${file}: ${read.error.message}`).toBe('');
      expect(translated(file).lesson).toBe(english(file).id);
    }
    expect(readFileSync(`${ASSETS}stillgrip-lesson-texts.schema.json`, 'utf8')).toBe(
      lessonTextsSchemaText(),
    );
  });

  it.each(LESSON_FILES)('%s: have every text of the English file and no other', (file) => {
    const paths = (lesson: Plain) => textsOf(lesson).map(([path]) => path);
    expect(paths(translated(file)).toSorted()).toEqual(paths(english(file)).toSorted());
    for (const [path, own, other] of pairs(file)) {
      if (!SYMBOLS_ALONE.has(own)) expect(other, path).not.toBe(own);
    }
  });

  it.each(LESSON_FILES)('%s: name the same quantities and numbers, text by text', (file) => {
    for (const [path, own, other] of pairs(file)) {
      expect(marks(other), path).toEqual(marks(own));
      expect(numbers(other), path).toEqual(numbers(own));
    }
  });

  it.each(LESSON_FILES)('%s: have the answers of a question in the same order', (file) => {
    for (const [path, own, other] of pairs(file)) {
      if (!path.includes('choices')) continue;
      for (const [ours, theirs] of ANSWER_WORDS) {
        expect(theirs.test(other), `${path}: ${own} / ${other}`).toBe(ours.test(own));
      }
    }
  });

  it.each(LESSON_FILES)('%s: are the same lesson but for its texts, and sound', (file) => {
    const empty = (lesson: unknown) => saidAnew(lesson, () => '');
    expect(empty(german(file))).toEqual(empty(english(file)));
    const read = readLesson(JSON.stringify(german(file)));
    expect(read.ok ? '' : describeFault(read.error)).toBe('');
  });
});
