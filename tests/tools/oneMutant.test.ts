import { expect, test } from 'vitest';

/** A script without types, which node runs as it is. */
const { partsOf } = await import(new URL('../mutants/quick/oneMutant.mjs', import.meta.url).href);

/** As StrykerJS instruments `(a) => { if (a < 1) return a; return -a; }`, bundled. */
const INSTRUMENTED = `(a) => {
  if (stryMutAct_9fa48$2("0")) {} else {
    stryCov_9fa48$2("0");
    if (stryMutAct_9fa48$2("2") ? a <= 1 : stryMutAct_9fa48$2("1") ? true : (stryCov_9fa48$2("1", "2"), a < 1)) return a;
    return stryMutAct_9fa48("10") ? +a : (stryCov_9fa48("10"), -a);
  }
}`;

/** Runs a script with that mutant on; gives what it says of 1, and which mutants it asked about. */
function run(code: string, active: string | null) {
  const asked: string[] = [];
  const ask = (id: string) => {
    asked.push(id);
    return id === active;
  };
  const count = () => {
    throw new Error('counted');
  };
  const names = ['stryMutAct_9fa48', 'stryMutAct_9fa48$2', 'stryCov_9fa48', 'stryCov_9fa48$2'];
  const made = new Function(...names, `return ${code}`)(ask, ask, count, count);
  return { value: made(1), asked };
}

test('a script put together for one mutant does what it does, asks about it alone and counts nothing', () => {
  const parts = partsOf(INSTRUMENTED);
  expect(run(parts.only('2'), '2')).toEqual({ value: 1, asked: ['2'] });
  expect(run(parts.only('10'), '10')).toEqual({ value: 1, asked: ['10'] });
  expect(run(parts.only('0'), '0')).toEqual({ value: undefined, asked: ['0'] });
  // 1 is no beginning of 10.
  expect(run(parts.only('1'), '1')).toEqual({ value: 1, asked: ['1'] });
});

test('without any mutant it is the script as it was written', () => {
  expect(run(partsOf(INSTRUMENTED).without(), null)).toEqual({ value: -1, asked: [] });
});
