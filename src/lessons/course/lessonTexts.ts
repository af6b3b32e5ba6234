import { joinPath } from '../../design/path';

/** The fields of a lesson file that a person reads, with their paths; all else is the same in every language. */
const READ_BY_PEOPLE =
  /^(?:title|sentences\[\d+\]|scene\.design\.(?:name|note|parts\[\d+\]\.name)|scene\.(?:knobs|watch)\[\d+\]\.label|steps\[\d+\]\.(?:question|instruction|hint|because|choices\[\d+\]\.text)|teacher\.notes\[\d+\]|sources\[\d+\])$/;

/** What is to stand for the text at a path of a lesson file. */
type Say = (path: string, text: string) => string;

/** A lesson file's JSON with every text said anew; numbers, names of fields and all else as they are. */
export function saidAnew(
  value: unknown,
  say: Say,
  steps: readonly (string | number)[] = [],
): unknown {
  if (typeof value === 'string') {
    const path = joinPath(steps);
    return READ_BY_PEOPLE.test(path) ? say(path, value) : value;
  }
  if (Array.isArray(value)) return value.map((each, at) => saidAnew(each, say, [...steps, at]));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, saidAnew(each, say, [...steps, key])]),
  );
}

/** Every text of a lesson file's JSON with its path, in the file's order. */
export function textsOf(lesson: unknown): (readonly [string, string])[] {
  const texts: (readonly [string, string])[] = [];
  saidAnew(lesson, (path, text) => {
    texts.push([path, text]);
    return text;
  });
  return texts;
}
