/**
 * `npm run faults [WORD...]`: plants the faults of the list one at a time (those whose name or file has one of the
 * words, or all), runs the tests nearest to each and names the first that fails. A fault that no test notices, or whose
 * file no test loads, ends it with exit code 1. The sources are never changed: a fault is put in while the file is read.
 * It says something only where `npm test` passes without any fault.
 */
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import type { TestCase, TestModule, Vitest } from 'vitest/node';
import { createVitest } from 'vitest/node';
import type { Fault } from './fault';
import { FAULTS } from './list';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** The fault that is planted now, and whether any test has read its file since. */
const planted: { fault: Fault | null; read: boolean } = { fault: null, read: false };

function pathOf({ file }: Fault): string {
  return `${root}src/${file}`;
}

const plant: Plugin = {
  name: 'plant-a-fault',
  enforce: 'pre',
  transform(code, id) {
    const { fault } = planted;
    if (!fault || id.split('?')[0] !== pathOf(fault)) return undefined;
    planted.read = true;
    return code.replace(fault.find, () => fault.put);
  },
};

function openVitest(): Promise<Vitest> {
  return createVitest(
    'test',
    {
      config: false,
      root,
      include: ['tests/**/*.test.{ts,tsx}'],
      exclude: ['tests/browser/**'],
      environment: 'node',
      pool: 'threads',
      watch: false,
      bail: 1,
      reporters: [{}],
      testTimeout: 120_000,
    },
    { plugins: [plant] },
  );
}

type Outcome = { readonly caughtBy: string } | 'survived' | 'neverRead' | 'noTests';

async function outcomeOf(vitest: Vitest, fault: Fault): Promise<Outcome> {
  planted.fault = fault;
  planted.read = false;
  vitest.invalidateFile(pathOf(fault));
  vitest.state.filesMap.clear();
  const { testModules, unhandledErrors } = await vitest.start(
    fault.tests.map((one) => `tests/${one}`),
  );
  vitest.invalidateFile(pathOf(fault));
  return judged(testModules, unhandledErrors);
}

function judged(modules: readonly TestModule[], errors: readonly unknown[]): Outcome {
  const ran = modules.flatMap((module) => [...module.children.allTests()]);
  const failed = modules.flatMap(failureIn).at(0);
  if (failed) return { caughtBy: failed };
  if (errors.length > 0) return { caughtBy: String(errors[0]) };
  if (ran.length === 0) return 'noTests';
  return planted.read ? 'survived' : 'neverRead';
}

function failureIn(module: TestModule): string[] {
  const file = module.relativeModuleId;
  const failed = [...module.children.allTests('failed')].map(
    (test: TestCase) => `${file}: ${test.fullName}`,
  );
  return failed.length > 0 || module.state() !== 'failed' ? failed : [`${file}: does not load`];
}

async function main(words: readonly string[]): Promise<boolean> {
  const chosen = FAULTS.filter(
    ({ name, file }) =>
      words.length === 0 || words.some((word) => name.includes(word) || file.includes(word)),
  );
  const vitest = await openVitest();
  const missed: string[] = [];
  for (const [k, fault] of chosen.entries()) {
    let outcome = await outcomeOf(vitest, fault);
    // The end of the run before can still call off tests of this one.
    if (typeof outcome === 'string') outcome = await outcomeOf(vitest, fault);
    const said = typeof outcome === 'string' ? outcome.toUpperCase() : outcome.caughtBy;
    console.log(`${k + 1}/${chosen.length} ${fault.file}: ${fault.name}\n    ${said}`);
    if (typeof outcome === 'string') missed.push(fault.name);
  }
  await vitest.close();
  console.log(`\n${chosen.length - missed.length} of ${chosen.length} faults caught`);
  for (const name of missed) console.log(`  not caught: ${name}`);
  return missed.length === 0 && chosen.length > 0;
}

process.exitCode = (await main(process.argv.slice(2))) ? 0 : 1;
