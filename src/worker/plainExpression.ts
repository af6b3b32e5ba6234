/** Values of the names that an expression may use. */
export type Names = Map<string, unknown>;
/** An expression put together from closures; `self` is what `this` stands for. */
export type Expression = (names: Names, self: unknown) => unknown;

type Callable = (this: unknown, ...values: readonly unknown[]) => unknown;
type Constructable = new (...values: readonly unknown[]) => unknown;

/**
 * An expression of a kernel's call (see plainFunctions.ts): names, `this`, `null`, whole numbers, quoted words, `[]`,
 * members, calls, `new`, sums. Throws an EvalError for anything else; an unknown name throws when it is met.
 */
export function readExpression(text: string): Expression {
  return new Reader(text).whole();
}

const TOKEN = /\s*([\w$]+|'[^'\\]*'|"[^"\\]*"|[()[\].,+])/y;

class Reader {
  private readonly tokens: string[] = [];
  private at = 0;

  constructor(private readonly text: string) {
    const trimmed = text.trim();
    for (let from = 0; from < trimmed.length; from = TOKEN.lastIndex) {
      TOKEN.lastIndex = from;
      const token = TOKEN.exec(trimmed)?.[1];
      if (token === undefined) throw this.fault();
      this.tokens.push(token);
    }
  }

  whole(): Expression {
    const read = this.sum();
    if (this.at < this.tokens.length) throw this.fault();
    return read;
  }

  private sum(): Expression {
    let left = this.term();
    while (this.take('+')) left = sumOf(left, this.term());
    return left;
  }

  private term(): Expression {
    if (this.take('new')) return newOf(this.head(), this.values());
    let read = this.head();
    for (;;) {
      const key = this.key();
      if (key && this.isNext('(')) read = methodOf(read, key, this.values());
      else if (key) read = memberOf(read, key);
      else if (this.isNext('(')) read = callOf(read, this.values());
      else return read;
    }
  }

  private head(): Expression {
    if (this.take('(')) {
      const inner = this.sum();
      this.must(')');
      return inner;
    }
    if (this.take('[')) {
      this.must(']');
      return () => [];
    }
    return wordOf(this.next(/^[\w$]+$|^['"]/));
  }

  /** The member that follows, or null. */
  private key(): Expression | null {
    if (this.take('.')) {
      const name = this.next(/^[A-Za-z_$]/);
      return () => name;
    }
    if (!this.take('[')) return null;
    const key = this.sum();
    this.must(']');
    return key;
  }

  private values(): Expression[] {
    this.must('(');
    const values: Expression[] = [];
    while (!this.take(')')) {
      if (values.length > 0) this.must(',');
      values.push(this.sum());
    }
    return values;
  }

  private isNext(token: string): boolean {
    return this.tokens[this.at] === token;
  }

  private take(token: string): boolean {
    if (!this.isNext(token)) return false;
    this.at++;
    return true;
  }

  private must(token: string): void {
    if (!this.take(token)) throw this.fault();
  }

  private next(wanted: RegExp): string {
    const token = this.tokens[this.at++];
    if (token === undefined || !wanted.test(token)) throw this.fault();
    return token;
  }

  private fault(): EvalError {
    return new EvalError(`readExpression(): not an expression of a kernel's call: ${this.text}`);
  }
}

function wordOf(token: string): Expression {
  if (/^['"]/.test(token)) {
    const text = token.slice(1, -1);
    return () => text;
  }
  if (/^\d+$/.test(token)) return () => Number(token);
  if (token === 'null') return () => null;
  if (token === 'this') return (_names, self) => self;
  return (names) => {
    if (!names.has(token)) throw new ReferenceError(`${token} is not defined`);
    return names.get(token);
  };
}

function sumOf(left: Expression, right: Expression): Expression {
  return (names, self) => (left(names, self) as number) + (right(names, self) as number);
}

function memberOf(owner: Expression, key: Expression): Expression {
  return (names, self) => member(owner(names, self), key(names, self));
}

function methodOf(owner: Expression, key: Expression, values: readonly Expression[]): Expression {
  return (names, self) => {
    const held = owner(names, self);
    const method = member(held, key(names, self)) as Callable;
    return Reflect.apply(
      method,
      held,
      values.map((value) => value(names, self)),
    );
  };
}

function callOf(called: Expression, values: readonly Expression[]): Expression {
  return (names, self) =>
    (called(names, self) as Callable)(...values.map((value) => value(names, self)));
}

function newOf(made: Expression, values: readonly Expression[]): Expression {
  return (names, self) =>
    new (made(names, self) as Constructable)(...values.map((value) => value(names, self)));
}

function member(owner: unknown, key: unknown): unknown {
  return (owner as Readonly<Record<PropertyKey, unknown>>)[key as PropertyKey];
}
