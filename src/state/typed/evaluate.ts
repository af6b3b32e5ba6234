/**
 * Value of a sum of plain numbers with + - * / and brackets; "1 1/8" is a mixed fraction. Null where the text is no
 * sum; infinite or NaN where it divides by zero. Nothing else is understood: no names, no functions, no code.
 */
export function evaluate(text: string): number | null {
  if (text.length > 200) return null;
  const tokens = text
    .replace(/(\d+) (\d+) ?\/ ?(\d+)/g, '($1+$2/$3)')
    .match(/\d+\.?\d*(?:e[+-]?\d+)?|\.\d+(?:e[+-]?\d+)?|[-+*/()]|[^\s]/gi);
  if (!tokens) return null;
  const reader = { tokens, at: 0 };
  const value = readSum(reader, 0);
  return reader.at === tokens.length ? value : null;
}

interface Reader {
  readonly tokens: readonly string[];
  at: number;
}

function readSum(reader: Reader, depth: number): number | null {
  let total = readProduct(reader, depth);
  while (total !== null) {
    const sign = reader.tokens[reader.at];
    if (sign !== '+' && sign !== '-') return total;
    reader.at++;
    const next = readProduct(reader, depth);
    total = next === null ? null : sign === '+' ? total + next : total - next;
  }
  return null;
}

function readProduct(reader: Reader, depth: number): number | null {
  let product = readFactor(reader, depth);
  while (product !== null) {
    const sign = reader.tokens[reader.at];
    if (sign !== '*' && sign !== '/') return product;
    reader.at++;
    const next = readFactor(reader, depth);
    product = next === null ? null : sign === '*' ? product * next : product / next;
  }
  return null;
}

function readFactor(reader: Reader, depth: number): number | null {
  if (depth > 50) return null;
  const token = reader.tokens[reader.at++];
  if (token === undefined) return null;
  if (token === '-' || token === '+') {
    const value = readFactor(reader, depth + 1);
    return value === null ? null : token === '-' ? -value : value;
  }
  if (token === '(') {
    const value = readSum(reader, depth + 1);
    return reader.tokens[reader.at++] === ')' ? value : null;
  }
  return /^[\d.]/.test(token) && token !== '.' ? Number(token) : null;
}
