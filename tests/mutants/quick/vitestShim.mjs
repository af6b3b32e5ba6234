// What the tests of engine and readers use of vitest, with its own `expect`, so that they can be run a thousand times
// over in one process. Tests are only noted down here; runner.mjs runs them.
import { createRequire } from 'node:module';

const ofVitest = createRequire(createRequire(import.meta.url).resolve('vitest/package.json'));
const rules = await import(ofVitest.resolve('@vitest/expect'));
const { chai, GLOBAL_EXPECT, JestAsymmetricMatchers, JestChaiExpect, JestExtend, setState } = rules;
chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

function expectOf(value, message) {
  return chai.expect(value, message);
}
export const expect = Object.assign(expectOf, chai.expect);
setState({ assertionCalls: 0 }, expect);
globalThis[GLOBAL_EXPECT] = expect;

/** The tests found, in order, and where in the tree of files and groups the next one hangs. */
const found = { tests: [], path: [], hooks: [] };

/** Empties the list before the tests are loaded again. */
export function beginLoading() {
  Object.assign(found, { tests: [], path: [], hooks: [] });
  return found.tests;
}

export function beginFile(name) {
  found.path = [name];
  found.hooks = [];
}

export function describe(name, ...rest) {
  const before = found.hooks;
  found.path = [...found.path, String(name)];
  found.hooks = [...before];
  rest.find((one) => typeof one === 'function')();
  found.path = found.path.slice(0, -1);
  found.hooks = before;
}

export function it(name, ...rest) {
  const body = rest.find((one) => typeof one === 'function');
  const same = found.tests.filter((one) => one.name.startsWith([...found.path, name].join(' > ')));
  const full = [...found.path, name].join(' > ') + (same.length > 0 ? ` (${same.length})` : '');
  found.tests.push({ id: full, name: full, file: found.path[0], body, hooks: found.hooks });
}
export function test(...all) {
  it(...all);
}

function each(take) {
  return (table) => (name, body, more) => {
    table.forEach((row, k) => {
      const values = Array.isArray(row) ? row : [row];
      take(`${name} [${k}]`, () => body(...values), more);
    });
  };
}
describe.each = each(describe);
it.each = each(it);
test.each = it.each;

function hook(kind) {
  return (run) => {
    found.hooks = [...found.hooks, { kind, run }];
  };
}
export const beforeAll = hook('beforeAll');
export const beforeEach = hook('beforeEach');
export const afterEach = hook('afterEach');
export const afterAll = hook('afterAll');

export const vi = { setConfig() {} };
