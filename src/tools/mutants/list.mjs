// The list of a folder's survivors, tests/mutants/survivors/FOLDER.md: written by every whole run, with the class that
// a person gave each in square brackets. A class stays with its mutant as long as file, line of source and change are
// the same words, wherever the line has moved to.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

const UNKNOWN = '?';
const HEADING = /^## (?<file>.+)$/;
const ENTRY = /^- \d+:\d+ \[(?<why>[^\]]*)\] (?<change>.+)$/;

/** The classes given in a list, those of equal changes in their order: "file change" to classes. */
function classesIn(text) {
  const classes = new Map();
  let file = '';
  for (const line of text.split('\n')) {
    file = HEADING.exec(line)?.groups.file ?? file;
    const { why, change } = ENTRY.exec(line)?.groups ?? {};
    if (!change) continue;
    const key = `${file} ${change}`;
    classes.set(key, [...(classes.get(key) ?? []), why]);
  }
  return classes;
}

/** Writes the list anew; returns the lines of those that nobody has explained. */
export function writeList(path, scoreLine, survivors) {
  const classes = classesIn(existsSync(path) ? readFileSync(path, 'utf8') : '');
  const unexplained = [];
  const lines = [`# ${scoreLine}`, '', 'Classes: see [survivors](../survivors.md).'];
  let last = '';
  for (const { file, line, column, change } of survivors) {
    const why = classes.get(`${file} ${change}`)?.shift() || UNKNOWN;
    if (file !== last) lines.push('', `## ${file}`, '');
    last = file;
    lines.push(`- ${line}:${column} [${why}] ${change}`);
    if (why === UNKNOWN) unexplained.push(`${file}:${line}:${column} ${change}`);
  }
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, `${lines.join('\n')}\n`);
  return unexplained;
}
