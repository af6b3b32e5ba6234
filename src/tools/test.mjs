// npm test: every check and every test, one after another, whatever fails before; the last line is the sum.
// Names of suites as arguments run only those: node src/tools/test.mjs check unit browser
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { install } from './install.mjs';
import { endWhenAsked, runTool } from './run.mjs';

const suites = { check: runChecks, unit: runUnitTests, browser: runBrowserTests };

async function runChecks() {
  return [
    await runStep('format', '@biomejs/biome/bin/biome', ['check', '--error-on-warnings']),
    await runStep('types', 'typescript/bin/tsc', ['--noEmit']),
    await runStep('lint', 'oxlint/bin/oxlint', ['--deny-warnings']),
    await runStep('unused code', 'knip/bin/knip.js', ['--no-progress']),
  ];
}

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
  return [
    suiteResult('unit tests', code, {
      passed: found?.numPassedTests ?? 0,
      failed: found?.numFailedTests ?? 0,
      skipped: (found?.numPendingTests ?? 0) + (found?.numTodoTests ?? 0),
    }),
  ];
}

async function runBrowserTests(reports) {
  const build = await runStep('build', 'vite/bin/vite.js', ['build', '--logLevel', 'warn']);
  if (build.failed > 0) return [build];
  const report = join(reports, 'browser.json');
  announce('browser tests');
  const code = await runTool(
    '@playwright/test/cli.js',
    ['test', '--config=tests/browser/playwright.config.ts', '--reporter=line,json'],
    { env: { PLAYWRIGHT_JSON_OUTPUT_FILE: report } },
  );
  const stats = readReport(report)?.stats;
  return [
    build,
    suiteResult('browser tests', code, {
      passed: stats?.expected ?? 0,
      failed: (stats?.unexpected ?? 0) + (stats?.flaky ?? 0),
      skipped: stats?.skipped ?? 0,
    }),
  ];
}

/** A tool without tests of its own counts as one test. */
async function runStep(name, script, args) {
  announce(name);
  const ok = (await runTool(script, args)) === 0;
  console.log(`${name}: ${ok ? 'passed' : 'FAILED'}`);
  return { passed: ok ? 1 : 0, failed: ok ? 0 : 1, skipped: 0 };
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
  const unknown = names.filter((name) => !Object.hasOwn(suites, name));
  if (unknown.length > 0) throw new Error(`no such suite: ${unknown.join(', ')}`);
  await install();
  const reports = mkdtempSync(join(tmpdir(), 'stillgrip-test-'));
  process.once('exit', () => rmSync(reports, { recursive: true, force: true }));
  const results = [];
  for (const name of names) results.push(...(await suites[name](reports)));
  return results;
}

async function main() {
  const asked = process.argv.slice(2);
  let results;
  try {
    results = await runSuites(asked.length > 0 ? asked : Object.keys(suites));
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
