// npm test: every check and every test, whatever fails before; the last line is the sum. The checks and the build run
// side by side, then the unit tests, then the browser tests.
// Names of suites as arguments run only those: node src/tools/test.mjs check unit browser
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { install } from './install.mjs';
import { endWhenAsked, runTool } from './run.mjs';

const checks = [
  { name: 'format', tool: '@biomejs/biome/bin/biome', args: ['check', '--error-on-warnings'] },
  { name: 'types', tool: 'typescript/bin/tsc', args: ['--noEmit'] },
  { name: 'lint', tool: 'oxlint/bin/oxlint', args: ['--deny-warnings'] },
  { name: 'unused code', tool: 'knip/bin/knip.js', args: ['--no-progress'] },
];
const build = { name: 'build', tool: 'vite/bin/vite.js', args: ['build', '--logLevel', 'warn'] };
const suites = ['check', 'unit', 'browser'];

async function runUnitTests(reports) {
  const report = join(reports, 'unit.json');
  announce('unit tests');
  const code = await runTool('vitest/vitest.mjs', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ]);
  const found = readReport(report);
  return suiteResult('unit tests', code, {
    passed: found?.numPassedTests ?? 0,
    failed: found?.numFailedTests ?? 0,
    skipped: (found?.numPendingTests ?? 0) + (found?.numTodoTests ?? 0),
  });
}

async function runBrowserTests(reports) {
  const report = join(reports, 'browser.json');
  announce('browser tests');
  const code = await runTool(
    '@playwright/test/cli.js',
    ['test', '--config=tests/browser/playwright.config.ts', '--reporter=line,json'],
    { env: { PLAYWRIGHT_JSON_OUTPUT_FILE: report } },
  );
  const stats = readReport(report)?.stats;
  return suiteResult('browser tests', code, {
    passed: stats?.expected ?? 0,
    failed: (stats?.unexpected ?? 0) + (stats?.flaky ?? 0),
    skipped: stats?.skipped ?? 0,
  });
}

/**
 * Runs tools side by side, most of which keep one processor busy, and shows what each has said in the order given.
 * A tool without tests of its own counts as one test.
 */
async function runSteps(steps) {
  const running = steps.map(async ({ tool, args }) => {
    const said = [];
    const code = await runTool(tool, args, { hear: (piece) => said.push(piece) });
    return { ok: code === 0, said: Buffer.concat(said) };
  });
  const results = [];
  for (const [i, { name }] of steps.entries()) {
    const { ok, said } = await running[i];
    announce(name);
    process.stdout.write(said);
    console.log(`${name}: ${ok ? 'passed' : 'FAILED'}`);
    results.push({ passed: ok ? 1 : 0, failed: ok ? 0 : 1, skipped: 0 });
  }
  return results;
}

/** A suite that ran nothing, or ended badly without naming a failed test, counts as one failure more. */
function suiteResult(name, code, counts) {
  const ranNothing = counts.passed + counts.failed === 0;
  const crashed = code !== 0 && counts.failed === 0;
  if (ranNothing) console.log(`${name}: FAILED, no test was run`);
  else if (crashed) console.log(`${name}: FAILED with exit code ${code}, outside any test`);
  return ranNothing || crashed ? { ...counts, failed: counts.failed + 1 } : counts;
}

function readReport(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return undefined;
  }
}

function announce(name) {
  console.log(`\n== ${name} ==`);
}

function sum(results, key) {
  return results.reduce((total, result) => total + result[key], 0);
}

async function runSuites(names) {
  const unknown = names.filter((name) => !suites.includes(name));
  if (unknown.length > 0) throw new Error(`no such suite: ${unknown.join(', ')}`);
  await install();
  const reports = mkdtempSync(join(tmpdir(), 'stillgrip-test-'));
  process.once('exit', () => rmSync(reports, { recursive: true, force: true }));
  const browser = names.includes('browser');
  const steps = [...(names.includes('check') ? checks : []), ...(browser ? [build] : [])];
  const results = await runSteps(steps);
  if (names.includes('unit')) results.push(await runUnitTests(reports));
  // Without a build there is nothing for them to look at; its failure has been counted.
  if (browser && results[steps.indexOf(build)].failed === 0) {
    results.push(await runBrowserTests(reports));
  }
  return results;
}

async function main() {
  const asked = process.argv.slice(2);
  let results;
  try {
    results = await runSuites(asked.length > 0 ? asked : suites);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    results = [{ passed: 0, failed: 1, skipped: 0 }];
  }
  const skipped = sum(results, 'skipped');
  const failed = sum(results, 'failed');
  const tail = skipped > 0 ? `, ${skipped} skipped` : '';
  console.log(`\n${sum(results, 'passed')} passed, ${failed} failed${tail}`);
  process.exitCode = failed > 0 ? 1 : 0;
}

endWhenAsked(1);
await main();
