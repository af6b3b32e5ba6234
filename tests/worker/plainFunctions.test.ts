import { readFileSync } from 'node:fs';
import loadImporter from 'occt-import-js';
import loadKernel from 'replicad-opencascadejs';
import { afterEach, beforeAll, describe, expect, it } from 'vitest';
import { functionFromText, makeFunctionsPlainly } from '../../src/worker/plainFunctions';

type Kernel = (options: object) => Promise<{ readonly [name: string]: unknown }>;

const EvaluatingFunction = globalThis.Function;
const QUIET = { print: () => {}, printErr: () => {} };
const STEP = readFileSync(new URL('../meshes/block.step', import.meta.url));
/** What the kernels' loaders hand to `Function`, one of each kind: numbers in names make no other kind. */
const texts = new Map<string, readonly string[]>();
let handed = 0;

function note(given: readonly unknown[]): void {
  const parts = given.map(String);
  handed++;
  texts.set(parts.join('|').replace(/\d+/g, '#'), parts);
}

/** Runs with a `Function` that evaluates as ever and notes what it is given. */
async function noting<Value>(work: () => Promise<Value>): Promise<Value> {
  globalThis.Function = new Proxy(EvaluatingFunction, {
    construct(target, given) {
      note(given);
      return Reflect.construct(target, given);
    },
    apply(target, self, given) {
      note(given);
      return Reflect.apply(target, self, given);
    },
  });
  try {
    return await work();
  } finally {
    globalThis.Function = EvaluatingFunction;
  }
}

async function readBlock() {
  const kernel = await loadImporter(QUIET);
  return kernel.ReadStepFile(new Uint8Array(STEP), null);
}

let block: Awaited<ReturnType<typeof readBlock>>;
beforeAll(async () => {
  block = await noting(readBlock);
  await noting(() => (loadKernel as unknown as Kernel)(QUIET));
}, 60_000);
afterEach(() => {
  globalThis.Function = EvaluatingFunction;
});

/** Every call that the function makes, with its values and what it was a method of, and what it gives. */
function trace(make: (...bound: unknown[]) => (...values: unknown[]) => unknown, outer: string[]) {
  const calls: string[] = [];
  const written = (value: unknown): string => {
    if (Array.isArray(value)) return `[${value.map(written)}]`;
    return typeof value === 'object' && value !== null && 'name' in value
      ? String(value.name)
      : String(value);
  };
  const told = (name: string) => {
    const answer = (...values: unknown[]): unknown => {
      calls.push(`${name}(${values.map(written)})`);
      if (/destructors/.test(name)) return undefined;
      return { name: `<${name}>` };
    };
    const owner = Object.assign(answer, {
      toWireType: (...values: unknown[]) => answer('toWireType', ...values),
      fromWireType: (...values: unknown[]) => answer('fromWireType', ...values),
      readValueFromPointer: (...values: unknown[]) => answer('read', ...values),
    });
    Object.defineProperty(owner, 'name', { value: name });
    return owner;
  };
  const inner = make(...outer.map(told));
  const values = [100, 200, 300, 400, 500, 600].map((value, k) =>
    k < 2 ? told(`value${k}`) : value,
  );
  const given = Reflect.apply(inner, { name: 'itself' }, values);
  return { calls, given: written(given) };
}

function namesOf(given: readonly string[]): string[] {
  return given.slice(0, -1).flatMap((list) => list.split(',').map((name) => name.trim()));
}

describe('functions put together without evaluating text', () => {
  it('call what the evaluated ones call, with the same values in the same order, for every text of both kernels', () => {
    // The reading kernel hands over a few, the writing one thousands.
    expect(handed).toBeGreaterThan(1000);
    expect(texts.size).toBeGreaterThan(50);
    let calls = 0;
    for (const given of texts.values()) {
      const outer = namesOf(given);
      const body = given.at(-1) as string;
      const plain = trace(functionFromText(outer, body), outer);
      expect(plain, body).toEqual(trace(new EvaluatingFunction(...outer, body) as never, outer));
      calls += plain.calls.length;
    }
    expect(calls).toBeGreaterThan(texts.size);
  });

  it.each([
    'return function (obj, func, destructorsRef, args) {\n  var arg0 = argType0.readValueFromPointer(args);\n  var arg1 = argType1.readValueFromPointer(args+8);\n  var rv = func.call(obj, arg0, arg1);\n  return emval_returnValue(retType, destructorsRef, rv);\n};\n',
    'return function (obj, func, destructorsRef, args) {\n  var arg0 = argType0.readValueFromPointer(args);\n  var rv = new func(arg0);\n  return emval_returnValue(retType, destructorsRef, rv);\n};\n',
    'return function (handle, methodName, destructorsRef, args) {\nreturn emval_returnValue(retType, destructorsRef, argType0(handle)[argType1(methodName)](fn(args), fn(args+16)))\n}',
    'return function (handle, methodName, destructorsRef, args) {\nreturn emval_returnValue(retType, destructorsRef, new (argType0(handle))(fn(args+8)))\n}',
  ])('do so too for the calls into the page that embind can write: %#', (body) => {
    const outer = ['retType', 'argType0', 'argType1', 'fn', 'emval_returnValue'];
    const trial = (make: (...bound: unknown[]) => (...values: unknown[]) => unknown) => {
      const log: string[] = [];
      class Made {
        readonly from: readonly unknown[];
        constructor(...from: readonly unknown[]) {
          this.from = from;
        }
      }
      const read = (add: number) => (at: number) => at + add;
      const bound = [
        'type',
        Object.assign((handle: unknown) => handle, { readValueFromPointer: read(1) }),
        Object.assign(() => 'method', { readValueFromPointer: read(2) }),
        read(3),
        (...values: unknown[]) => {
          log.push(JSON.stringify(values));
          return values.length;
        },
      ];
      const target = Object.assign(Made, {
        method(this: unknown, ...values: unknown[]) {
          return [this === target, ...values];
        },
      });
      const func = body.includes('new func') ? Made : (...values: unknown[]) => values;
      const given = body.includes('methodName')
        ? make(...bound)(target, 1, 2, 64)
        : make(...bound)({ own: 1 }, func, 2, 64);
      return { log, given };
    };
    const plain = trial(functionFromText(outer, body));
    expect(plain.log.length).toBe(1);
    expect(plain).toEqual(trial(new EvaluatingFunction(...outer, body) as never));
  });

  it('read a STEP file to the same numbers, bit for bit', async () => {
    const scope = { Function: EvaluatingFunction };
    makeFunctionsPlainly(scope);
    globalThis.Function = scope.Function;
    const plain = await readBlock();
    expect(plain.meshes.length).toBeGreaterThan(0);
    expect(plain.meshes).toEqual(block.meshes);
    expect(() => {}).toBeInstanceOf(Function);
    expect({}).not.toBeInstanceOf(Function);
  });

  it.each([
    '',
    'return this',
    'return function () { while(1){} }',
    'return function (a) {\nvar b = a = 1;\n}',
    'return function (a) {\nvar b = a`x`;\n}',
    'return function (a) {\nvar b = a(1;\n}',
    'return function (a) {\nvar b = a(1) a;\n}',
    'return function (a) {\na["\\u0061"]();\n}',
    'return function (a) {\nvar b = () => a;\n}',
    'alert(1);return function () {\n}',
  ])('are refused for any other text: %j', (body) => {
    expect(() => functionFromText(['f'], body)).toThrow(EvalError);
  });

  it('reach no name that they were not given', () => {
    const inner = functionFromText([], 'return function () {\nvar a = globalThis(1);\n}')();
    expect(inner).toThrow(ReferenceError);
  });
});
