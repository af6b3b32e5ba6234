import { type Expression, type Names, readExpression } from './plainExpression';

/**
 * Functions from text without `eval`, for workers that load a CAD kernel.
 *
 * The kernels' loaders (Emscripten's embind) write a small function as text for every kind of call that crosses into the
 * kernel and hand it to `Function`, which the content policy forbids. What they write has one shape, `return function
 * (names) { statements }`, each statement a call and no more. In such a worker `Function` is replaced by one that reads
 * this shape and puts it together from closures: no text is ever evaluated, the kernels stay unchanged, and the policy
 * holds for them as for the page. Any other text is refused with an EvalError, as the browser itself would.
 */
export function makeFunctionsPlainly(scope: { Function: FunctionConstructor } = globalThis): void {
  const { prototype } = scope.Function;
  function PlainFunction(...texts: readonly unknown[]): Maker {
    return functionFromText(texts.slice(0, -1).flatMap(namesIn), String(texts.at(-1) ?? ''));
  }
  Object.defineProperty(PlainFunction, 'prototype', { value: prototype });
  // The loaders ask whether a value is a function by `instanceof`.
  Object.defineProperty(PlainFunction, Symbol.hasInstance, {
    value: (value: unknown) => typeof value === 'function',
  });
  scope.Function = PlainFunction as unknown as FunctionConstructor;
}

/** What `new Function` gives for such a text: called with values for the outer names, it gives the inner function. */
type Maker = (...bound: readonly unknown[]) => (...values: readonly unknown[]) => unknown;

interface Step {
  /** Of the variable that it sets. */
  readonly name: string | null;
  readonly value: Expression;
  readonly isEnd: boolean;
}

const SHAPE = /^\s*return function \(([\w, ]*)\) ?\{([^{}]*)\}\s*;?\s*$/;

/** What `new Function(...outer, body)` would be. Throws an EvalError where the text is of another shape. */
export function functionFromText(outer: readonly string[], body: string): Maker {
  const shape = SHAPE.exec(body);
  if (!shape)
    throw new EvalError(`functionFromText(): not of the shape of a kernel's call: ${body}`);
  const inner = namesIn(shape[1]);
  const lines = shape[2].split(/[;\n]/).map((line) => line.trim());
  const steps = lines.filter((line) => line !== '').map(stepOf);
  return (...bound) => {
    const closed: Names = new Map(outer.map((name, i) => [name, bound[i]]));
    return function plain(this: unknown, ...values) {
      const names: Names = new Map(closed);
      for (const [i, name] of inner.entries()) names.set(name, values[i]);
      for (const { name, value, isEnd } of steps) {
        const found = value(names, this);
        if (isEnd) return found;
        if (name !== null) names.set(name, found);
      }
      return undefined;
    };
  };
}

function namesIn(list: unknown): string[] {
  const names = String(list).split(',');
  return names.map((name) => name.trim()).filter((name) => name !== '');
}

function stepOf(line: string): Step {
  const [, name, value] = /^var (\w+) = (.+)$/.exec(line) ?? [];
  if (name) return { name, value: readExpression(value), isEnd: false };
  const end = /^return (.+)$/.exec(line)?.[1];
  return { name: null, value: readExpression(end ?? line), isEnd: end !== undefined };
}
