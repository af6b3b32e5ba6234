import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { createSession } from '../../../src/state/createSession';
import { type HelpHead, helpHead } from '../../../src/state/help/helpHead';
import { TOPICS } from '../../../src/state/help/topics';
import type { Topic } from '../../../src/state/help/topicTypes';
import type { Worked } from '../../../src/state/help/worked';

const TOKEN = /\{\w+\}|\d+(?:\.\d+)?|atan2|max|sin|cos|[½π√²+−·/()[\]|,]/gu;

/** Reads a formula as a person does, letter by letter, and works it out: shares nothing with the rules behind it. */
function valueOf({ formula, terms }: Worked): number {
  // "2π n / 60 s": seconds of a minute.
  const tokens = formula.replace('60 s', '60').match(TOKEN) ?? [];
  if (tokens.join('') !== formula.replace('60 s', '60').replace(/\s/g, ''))
    throw new Error(`not understood: ${formula}`);
  let at = 0;
  const took = (token: string) => tokens[at] === token && ++at > 0;
  function close<T>(token: string, value: T): T {
    if (!took(token)) throw new Error(`${formula}: ${token} is missing`);
    return value;
  }
  function sum(): number {
    let value = took('−') ? -product() : product();
    for (;;) {
      if (took('+')) value += product();
      else if (took('−')) value -= product();
      else return value;
    }
  }
  function product(): number {
    let value = power();
    for (;;) {
      if (took('·')) value *= power();
      else if (took('/')) value /= power();
      else return value;
    }
  }
  function power(): number {
    const value = primary();
    return took('²') ? value ** 2 : value;
  }
  function pair(): readonly [number, number] {
    close('(', 0);
    const first = sum();
    close(',', 0);
    return [first, close(')', sum())];
  }
  function primary(): number {
    const token = tokens[at++] ?? '';
    if (token === '(') return close(')', sum());
    if (token === '[') return close(']', sum());
    if (token === '|') return Math.abs(close('|', sum()));
    if (token === '√') return Math.sqrt(primary());
    if (token === 'sin' || token === 'cos') {
      const isSquared = took('²');
      return Math[token](primary()) ** (isSquared ? 2 : 1);
    }
    if (token === 'atan2') return Math.atan2(...pair());
    if (token === 'max') return Math.max(...pair());
    if (token === '½') return 0.5;
    if (token === 'π') return Math.PI;
    if (token.startsWith('{')) return terms[token.slice(1, -1)].value;
    const next = tokens[at] ?? '';
    // "2π" and "2t" are one number.
    return next === 'π' || next.startsWith('{') ? Number(token) * primary() : Number(token);
  }
  const value = sum();
  if (at < tokens.length) throw new Error(`${formula}: left over: ${tokens.slice(at).join(' ')}`);
  return value;
}

function headOf(name: string, pitchDeg: number, preconeDeg: number): HelpHead {
  const file = new URL(`../../../assets/designs/${name}.json`, import.meta.url);
  const read = parseDesign(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  const rotor = { ...read.value.rotor, torqueOffsetMm: 2.5, preconeDeg };
  const session = createSession({ ...read.value, rotor }, (update) => update());
  session.actions.setPitch(pitchDeg);
  return helpHead(session);
}

// With offset, so that no term is zero by luck; with precone some formulas are others.
it.each([
  ['3-ordinary-bolt', 12, 0],
  ['5-both-sides', -8, 3],
  ['6-full-size', 10, 3],
])(
  'every formula that is shown of %s gives the result that is shown beside it',
  (name, pitch, precone) => {
    const head = headOf(name, pitch, precone);
    let read = 0;
    for (const [id, topic] of Object.entries<Topic>(TOPICS)) {
      const working = topic.work?.(head);
      if (working?.kind !== 'worked') continue;
      for (const line of working.lines.filter(({ formula }) => formula !== '')) {
        // Rounding of a few dozen doubles; where a sum cancels, its terms are the measure of it.
        const size = Math.max(...Object.values(line.terms).map((one) => Math.abs(one.value)), 0);
        const off = Math.abs(valueOf(line) - line.result.value);
        expect(off, `${id}: ${line.formula}`).toBeLessThanOrEqual(
          1e-12 * Math.abs(line.result.value) + 1e-13 * size,
        );
        read++;
      }
    }
    expect(read).toBeGreaterThan(50);
  },
);
