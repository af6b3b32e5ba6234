import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';

/** Scripts without types, which node runs as they are. */
const tool = (name: string) =>
  import(new URL(`../../src/tools/mutants/${name}`, import.meta.url).href);
const { writeList } = await tool('list.mjs');
const { scoreLine, survivorsOf } = await tool('report.mjs');

let folder = '';
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
  folder = '';
});

/** A report as StrykerJS writes it (mutation testing report schema 2, from memory) of `a < b` in each line of a source. */
function reportOf(source: string, statuses: readonly string[], replacement = 'a <= b') {
  const lines = source.split('\n');
  const mutants = statuses.map((status, k) => {
    const line = lines.findIndex((text, i) => text.includes('a < b') && i >= k);
    const column = lines[line].indexOf('a < b') + 1;
    const location = {
      start: { line: line + 1, column },
      end: { line: line + 1, column: column + 5 },
    };
    return { status, location, mutatorName: 'EqualityOperator', replacement };
  });
  return { files: { 'src/x.ts': { source, mutants } } };
}
function listOf(report: unknown) {
  folder ||= mkdtempSync(join(tmpdir(), 'list-'));
  const path = join(folder, 'survivors/x.md');
  const unexplained = writeList(path, 'x: score', survivorsOf(report));
  return { path, unexplained, text: readFileSync(path, 'utf8') };
}

test('a list of survivors keeps the class that was given to a mutant, wherever its line has moved to', () => {
  const two = 'if (a < b) f();\nif (a < b) g();';
  const first = listOf(reportOf(two, ['Survived', 'NoCoverage']));
  expect(first.unexplained).toHaveLength(2);
  expect(first.text).toContain(
    '- 1:5 [?] EqualityOperator: `a < b` -> `a <= b` in `if (a < b) f();`',
  );
  expect(first.text).toContain('- 2:5 [?] EqualityOperator (no test):');
  writeFileSync(first.path, first.text.replace('[?]', '[1]').replace('[?]', '[4: why]'));
  const moved = listOf(reportOf(`const c = 1;\n${two}`, ['Killed', 'Survived', 'NoCoverage']));
  expect(moved.unexplained).toEqual([]);
  expect(moved.text).toContain('- 2:5 [1] ');
  expect(moved.text).toContain('- 3:5 [4: why] ');
  // Another change of the same words, and another line, are other mutants.
  expect(listOf(reportOf(two, ['Survived'], 'true')).unexplained).toHaveLength(1);
  expect(listOf(reportOf('if (a < b) h();', ['Survived'])).unexplained).toHaveLength(1);
});

test('classes of mutants that are alike go to them in their order', () => {
  const twins = '  a < b;\n  a < b;';
  const first = listOf(reportOf(twins, ['Survived', 'Survived']));
  writeFileSync(first.path, first.text.replace('[?]', '[1]').replace('[?]', '[2]'));
  const again = listOf(reportOf(twins, ['Survived', 'Survived']));
  expect(again.text).toMatch(/1:3 \[1\].*\n- 2:3 \[2\]/);
});

test('a score counts what was killed and what went on for ever among all that could be run', () => {
  const source = 'a < b;\n'.repeat(8);
  const statuses = [
    'Killed',
    'Killed',
    'Timeout',
    'Survived',
    'NoCoverage',
    'Ignored',
    'RuntimeError',
  ];
  expect(scoreLine('x', reportOf(source, statuses))).toBe(
    'x: 5 mutants, 2 killed, 1 timed out, 1 survived, 1 untested, 1 left out, 1 not runnable, score 60.0 %',
  );
  expect(scoreLine('x', reportOf(source, ['Ignored']))).toMatch(/score none$/);
});
