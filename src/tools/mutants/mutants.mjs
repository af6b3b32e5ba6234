// npm run mutants [FOLDER...]: StrykerJS on the engine and the readers, folder by folder, in a copy of the project.
// Without a folder it lists them; `all` takes all. Options: --only=GLOB (files inside them), --runner=vitest,
// --at-once=NUMBER (processes, 2), --cache=FOLDER. A whole run writes the folder's list in tests/mutants/survivors.
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { endWhenAsked, projectFolder, run } from '../run.mjs';
import { copyOfProject } from './copy.mjs';
import { folders } from './folders.mjs';
import { writeList } from './list.mjs';
import { scoreLine, survivorsOf } from './report.mjs';

/** The own runner is the usual one; vitest's is there to check it by, and takes five to ten times as long. */
const RUNNERS = {
  quick: {
    plugins: ['./tests/mutants/quick/runner.mjs'],
    settings: { testRunner: 'quick', buildCommand: 'node tests/mutants/quick/bundle.mjs' },
  },
  vitest: {
    plugins: ['@stryker-mutator/vitest-runner'],
    settings: {
      testRunner: 'vitest',
      vitest: { configFile: 'tests/mutants/vitest.config.ts', related: false },
    },
  },
};

/** What StrykerJS is told; every path is inside the copy. */
function settings(folder, { only, runner, atOnce }) {
  return {
    inPlace: true,
    disableTypeChecks: false,
    mutate: only ? [only] : folder.files,
    plugins: ['./tests/mutants/messages.mjs', ...RUNNERS[runner].plugins],
    ignorers: ['messages'],
    ...RUNNERS[runner].settings,
    coverageAnalysis: 'perTest',
    incremental: true,
    incrementalFile: 'incremental.json',
    concurrency: atOnce,
    // Mutants that go round for ever are found by counting; this is for a machine that does other work as well.
    timeoutMS: 6_000,
    dryRunTimeoutMinutes: 20,
    reporters: ['json', 'progress-append-only'],
    jsonReporter: { fileName: 'mutants.json' },
    tempDirName: '.stryker',
    clearTextReporter: { allowColor: false },
  };
}

/** The files of tests of a folder, from the project. */
function testsOf({ tests, without = [] }) {
  return tests
    .flatMap((path) =>
      statSync(join(projectFolder, path)).isDirectory()
        ? readdirSync(join(projectFolder, path), { recursive: true }).map(
            (name) => `${path}/${name}`,
          )
        : [path],
    )
    .filter((path) => path.endsWith('.test.ts'))
    .filter((path) => !without.some((name) => path.endsWith(`/${name}`)));
}

async function mutate(folder, { only, runner, cache, atOnce }) {
  const name = `${folder.name.replaceAll('/', '-')}-${runner}.json`;
  const kept = join(cache, name);
  const copy = copyOfProject();
  const remove = () => rmSync(copy, { recursive: true, force: true });
  process.once('exit', remove);
  try {
    writeFileSync(
      join(copy, 'stryker.config.json'),
      JSON.stringify(settings(folder, { only, runner, atOnce })),
    );
    if (existsSync(kept)) copyFileSync(kept, join(copy, 'incremental.json'));
    const script = join(projectFolder, 'node_modules/@stryker-mutator/core/bin/stryker.js');
    const env = { MUTANT_TESTS: testsOf(folder).join(',') };
    const code = await run(process.execPath, [script, 'run'], { env, cwd: copy });
    if (code !== 0) throw new Error(`${folder.name}: StrykerJS ended with ${code}`);
    mkdirSync(dirname(kept), { recursive: true });
    copyFileSync(join(copy, 'incremental.json'), kept);
    return JSON.parse(readFileSync(join(copy, 'mutants.json'), 'utf8'));
  } finally {
    remove();
    process.off('exit', remove);
  }
}

/** What is to be told of the survivors: of a whole run the list is written, of a part of it they are only shown. */
function said({ name }, report, only) {
  const survivors = survivorsOf(report);
  if (only) return survivors.map(({ file, line, change }) => `  ${file}:${line} ${change}`);
  const list = `tests/mutants/survivors/${name.replaceAll('/', '-')}.md`;
  const unexplained = writeList(join(projectFolder, list), scoreLine(name, report), survivors);
  return [
    `  ${list}: ${unexplained.length} of ${survivors.length} survivors without an explanation`,
    ...unexplained.map((line) => `  ${line}`),
  ];
}

function optionOf(name, fallback) {
  const start = `--${name}=`;
  return process.argv.find((word) => word.startsWith(start))?.slice(start.length) ?? fallback;
}

async function main() {
  const asked = process.argv.slice(2).filter((word) => !word.startsWith('--'));
  const chosen = folders.filter(({ name }) => asked.includes('all') || asked.includes(name));
  if (chosen.length === 0) {
    console.log(`Name a folder, or all:\n${folders.map(({ name }) => `  ${name}`).join('\n')}`);
    process.exitCode = 1;
    return;
  }
  const cache = optionOf('cache', join(projectFolder, 'node_modules/.cache/mutants'));
  const lines = [];
  for (const folder of chosen) {
    const only = optionOf('only');
    const report = await mutate(folder, {
      only,
      runner: optionOf('runner', 'quick'),
      cache,
      atOnce: Number(optionOf('at-once', '2')),
    });
    lines.push(scoreLine(folder.name, report), ...said(folder, report, only));
    console.log(lines.at(-1));
  }
  console.log(`\n${lines.join('\n')}`);
}

endWhenAsked(1);
await main();
