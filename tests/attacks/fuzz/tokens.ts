import type { Seeded } from '../../support/seeded';

/** Words, numbers, quoted texts, tags and single marks, of any of the text formats. */
const TOKEN =
  /"(?:[^"\\\n]|\\.)*"|<\/?[A-Za-z:]+|[-+]?\d+\.?\d*(?:[eE][-+]?\d+)?|[A-Za-z_]+|\s+|[^]/g;
const NUMBER = /^[-+]?\d/;

/** Numbers as no honest file has them. */
const NUMBERS =
  '0 -0 1 -1 1e308 -1e308 1e400 5e-324 1e-400 NaN Infinity -inf 1.#QNAN 0x10 1,5 1.234.5 9007199254740993 ' +
  '4294967295 4294967296 -1 2147483648 0.1e 1e 1e+ .5 5. 00 1e9 1e10 99999999999999999999999999999999999999';
const WEIRD_NUMBERS = NUMBERS.split(' ');
const WEIRD_TEXTS = [
  '""',
  '"__proto__"',
  '"constructor"',
  '"\\ud800"',
  '"\\u0000"',
  '"<script>alert(1)</script>"',
  '"=1+1"',
  '{}',
  '[]',
  'null',
  'true',
  '[[]]',
  '\u0000',
  '\uFEFF',
  '\r',
  '\t',
  '\u2028',
  '<!DOCTYPE a>',
  '&amp;',
  '<!--',
  ']]>',
  '/*',
  "'",
];

type Change = (tokens: string[], random: Seeded, other: readonly string[]) => void;

const CHANGES: readonly Change[] = [
  // A number for a number; twice as likely as anything else.
  changeNumber,
  changeNumber,
  (tokens, random) => {
    const [a, b] = [numberPlace(tokens, random), numberPlace(tokens, random)];
    [tokens[a], tokens[b]] = [tokens[b], tokens[a]];
  },
  (tokens, random) => void (tokens[place(tokens, random)] = random.pick(WEIRD_TEXTS)),
  (tokens, random, other) => void (tokens[place(tokens, random)] = random.pick(other)),
  (tokens, random) => void tokens.splice(place(tokens, random), 1),
  (tokens, random) => void tokens.splice(place(tokens, random), random.whole(1, 40)),
  (tokens, random) => {
    const from = place(tokens, random);
    tokens.splice(from, 0, ...tokens.slice(from, from + random.whole(1, 60)));
  },
  (tokens, random) => {
    const piece = tokens.splice(place(tokens, random), random.whole(1, 30));
    tokens.splice(place(tokens, random), 0, ...piece);
  },
  (tokens, random, other) => {
    const from = random.whole(0, Math.max(0, other.length - 1));
    const piece = other.slice(from, from + random.whole(1, 60));
    tokens.splice(place(tokens, random), random.pick([0, piece.length]), ...piece);
  },
  // One word over and over: what stands in a loop somewhere.
  (tokens, random) => {
    const at = place(tokens, random);
    tokens[at] = (tokens[at] ?? '').slice(0, 40).repeat(random.pick([2, 30, 1000]));
  },
  (tokens, random) => {
    const [open, close] = random.pick(['[]', '{}', '()', '<>', '""']);
    const deep = random.pick([1, 20, 40, 500]);
    const at = place(tokens, random);
    tokens[at] = open.repeat(deep) + (tokens[at] ?? '') + close.repeat(deep);
  },
];

/** One to six changes to a text's words and numbers, so that what comes out is often still nearly sound. */
export function mutatedText(good: string, random: Seeded, other: string): string {
  const tokens = tokensOf(good);
  const others = tokensOf(other);
  const count = Math.ceil(6 * random.unit() ** 2);
  for (let k = 0; k < count; k++) random.pick(CHANGES)(tokens, random, others);
  return tokens.join('');
}

function tokensOf(text: string): string[] {
  return text.match(TOKEN) ?? [''];
}

function changeNumber(tokens: string[], random: Seeded): void {
  const at = numberPlace(tokens, random);
  const old = Number(tokens[at]);
  const near = [String(-old), String(old * 10), String(old / 1000), String(old + 1), `${old}e9`];
  tokens[at] = random.pick(random.unit() < 0.4 ? near : WEIRD_NUMBERS);
}

function place(tokens: readonly string[], random: Seeded): number {
  return random.whole(0, Math.max(0, tokens.length - 1));
}

/** The next number from somewhere on; anywhere where there is none. */
function numberPlace(tokens: readonly string[], random: Seeded): number {
  const from = place(tokens, random);
  for (let k = 0; k < tokens.length; k++) {
    const at = (from + k) % tokens.length;
    if (NUMBER.test(tokens[at])) return at;
  }
  return from;
}
