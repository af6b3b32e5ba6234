// A test runner for StrykerJS: the tests lie in one script (bundle.mjs), which is run afresh for every mutant in the
// same process, so that nothing of one mutant is left for the next; likely and quick tests come first. Of the thousands of
// questions whether a mutant is on, only those about the one that is tried are left in the script (oneMutant.mjs).
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { isAbsolute, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Script } from 'node:vm';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  DryRunStatus,
  determineHitLimitReached,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { partsOf } from './oneMutant.mjs';

const SCRIPT = resolve('quick/tests.cjs');
const TIMES = resolve('quick/times.json');
/** Runs what lies ready, so that it can be ended from outside when it goes round for ever. */
const RUN = new Script('globalThis.strykerRun()');
/** A package whose loader takes half a second and is no part of what is mutated: started once. */
const STARTED_ONCE = 'mujoco-js';
const STOPPED = 'ERR_SCRIPT_EXECUTION_TIMEOUT';
/** Least time for a test, ms, and how often its own time without a mutant: a busy machine is no mutant. */
const LEAST_MS = 4000;
const TIMES_OWN = 5;
const MOST_FINDERS = 12;

class QuickRunner {
  static inject = [];
  state = {};
  /** For each file that is mutated, the tests that found a mutant in it, the latest first: they find its neighbours. */
  finders = new Map();

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    this.shim = await import(addressOf(resolve('tests/mutants/quick/vitestShim.mjs')));
    const code = readFileSync(SCRIPT, 'utf8');
    const packages = new Map();
    for (const [, name] of code.matchAll(/\brequire\("([^"]+)"\)/g)) {
      if (packages.has(name)) continue;
      const module = asOldModule(await import(addressOf(name)));
      packages.set(name, name === STARTED_ONCE ? startedOnce(module) : module);
    }
    this.require = (name) => packages.get(name);
    this.whole = scriptOf(code);
    this.parts = partsOf(code);
    globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {};
    this.state = globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE];
  }

  /** The tests, from sources that were loaded now. Throws where they do not load. */
  load(script) {
    const tests = this.shim.beginLoading();
    const module = { exports: {} };
    const main = script.runInThisContext();
    within(LEAST_MS + 10_000, () => main(this.require, module, module.exports));
    return tests;
  }

  async dryRun() {
    Object.assign(this.state, { activeMutant: undefined, hitLimit: undefined });
    const tests = [];
    for (const one of this.load(this.whole)) tests.push(await this.result(one));
    // Once more as they run for a mutant: without counting they take a tenth of the time.
    const times = [];
    for (const one of this.load(scriptOf(this.parts.without()))) {
      const { id, timeSpentMs } = await this.result(one);
      times.push([id, timeSpentMs]);
    }
    writeFileSync(TIMES, JSON.stringify(Object.fromEntries(times)));
    return { status: DryRunStatus.Complete, tests, mutantCoverage: this.state.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, mutantActivation }) {
    const isStatic = mutantActivation === 'static';
    const own = { activeMutant: isStatic ? activeMutant.id : undefined, hitLimit, hitCount: 0 };
    Object.assign(this.state, own);
    const tests = [];
    try {
      const loaded = this.load(scriptOf(this.parts.only(activeMutant.id)));
      this.state.activeMutant = activeMutant.id;
      for (const one of this.likelyFirst(loaded, testFilter, activeMutant.fileName)) {
        tests.push(await this.result(one));
        if (tests.at(-1).status !== TestStatus.Failed) continue;
        this.noteFinder(activeMutant.fileName, one.id);
        break;
      }
    } catch (error) {
      if (error.code === STOPPED) return { status: DryRunStatus.Timeout };
      tests.push(failure({ id: 'loading', name: 'the tests load' }, error, 0));
    }
    const outOfHand = determineHitLimitReached(this.state.hitCount, hitLimit);
    return toMutantRunResult(outOfHand ?? { status: DryRunStatus.Complete, tests });
  }

  /** Tests that found the mutants before it in the same file, then the rest, quick ones first. */
  likelyFirst(tests, filter, fileName) {
    if (!this.times && existsSync(TIMES)) this.times = JSON.parse(readFileSync(TIMES, 'utf8'));
    const wanted = filter && new Set(filter);
    const finders = this.finders.get(fileName) ?? [];
    const rank = ({ id }) => (finders.includes(id) ? finders.indexOf(id) : finders.length);
    return tests
      .filter(({ id }) => !wanted || wanted.has(id))
      .toSorted(
        (a, b) => rank(a) - rank(b) || (this.times?.[a.id] ?? 0) - (this.times?.[b.id] ?? 0),
      );
  }

  noteFinder(fileName, id) {
    const others = (this.finders.get(fileName) ?? []).filter((one) => one !== id);
    this.finders.set(fileName, [id, ...others].slice(0, MOST_FINDERS));
  }

  async result({ id, name, file, body, hooks }) {
    const limit = LEAST_MS + TIMES_OWN * (this.times?.[id] ?? 100_000);
    const start = performance.now();
    this.state.currentTestId = id;
    try {
      for (const hook of hooks) await before(hook);
      await within(limit, body);
      for (const { kind, run } of hooks) if (kind === 'afterEach') await run();
      const timeSpentMs = performance.now() - start;
      return { id, name, fileName: resolve(file), status: TestStatus.Success, timeSpentMs };
    } catch (error) {
      if (error.code === STOPPED) throw error;
      return failure({ id, name }, error, performance.now() - start);
    } finally {
      this.state.currentTestId = undefined;
    }
  }
}

function scriptOf(code) {
  const importing = code.includes('import(')
    ? { importModuleDynamically: (name) => import(name) }
    : {};
  const text = `(function (require, module, exports) {${code}\n})`;
  return new Script(text, { filename: SCRIPT, ...importing });
}

/** What comes before a test; what comes before all of a group, once after each loading. */
async function before(hook) {
  if (hook.kind === 'beforeEach' || (hook.kind === 'beforeAll' && !hook.done)) await hook.run();
  hook.done = true;
}

function within(ms, run) {
  globalThis.strykerRun = run;
  return RUN.runInThisContext({ timeout: Math.ceil(ms) });
}

function addressOf(name) {
  return isAbsolute(name) ? pathToFileURL(name).href : name;
}

/** A module as `require` gives it: the default export itself, with the named ones to be asked of it. */
function asOldModule(module) {
  const main = module.default;
  if (main === null || !['object', 'function'].includes(typeof main)) return module;
  const get = (target, key) =>
    key !== 'default' && key in module ? module[key] : Reflect.get(target, key);
  return new Proxy(main, { get });
}

function startedOnce(start) {
  let started;
  return (...options) => (started ??= start(...options));
}

function failure({ id, name }, error, timeSpentMs) {
  return { id, name, status: TestStatus.Failed, failureMessage: String(error), timeSpentMs };
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'quick', QuickRunner)];
