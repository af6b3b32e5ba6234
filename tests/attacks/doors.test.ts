import { readFileSync } from 'node:fs';
import { deflateRawSync, crc32 as nodeCrc32 } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { previewReadings } from '../../src/bench/readings/preview';
import { analyseDesign } from '../../src/design/analysis';
import type { Design } from '../../src/design/design';
import { describeFault } from '../../src/design/faultText';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { NO_MATERIALS } from '../../src/design/resolve';
import { parsePolarText } from '../../src/engine/air/polarText';
import { readLesson } from '../../src/lessons/course/readLesson';
import { LINK_MARK, readShareLink } from '../../src/output/share/shareLink';
import { parseShelf, serializeShelf } from '../../src/state/shelfFile';
import { itemOf } from '../../src/state/shelfItem';
import { type Attack, jsonAttacks } from './named';

function asset(path: string): string {
  return readFileSync(new URL(`../../assets/${path}`, import.meta.url), 'utf8');
}

const DESIGN = asset('designs/4-turned-nut.json');
const LESSON = asset('lessons/1-two-lumps.json');

type Answer = { readonly ok: true; readonly value: unknown } | { readonly ok: false };

/** What a door said to each attack that it may not say. */
function wrongAnswers(attacks: readonly Attack[], door: (text: string) => Answer): string[] {
  const wrong: string[] = [];
  for (const { name, text, must } of attacks) {
    try {
      const answer = door(text);
      if (answer.ok && must === 'refuse') wrong.push(`${name}: taken`);
    } catch (error) {
      wrong.push(`${name}: threw ${String(error).slice(0, 200)}`);
    }
    if ('polluted' in {}) {
      wrong.push(`${name}: reached the prototype of every object`);
      Reflect.deleteProperty(Object.prototype, 'polluted');
    }
  }
  return wrong;
}

const workedOut = new Set<string>();

/** A design that was taken is whole: it is written and read again as it is, and everything about it is a number. */
function takenWhole(design: Design): void {
  const again = parseDesign(serializeDesign(design));
  if (!again.ok) throw new Error(`not read again: ${describeFault(again.error)}`);
  if (serializeDesign(again.value) !== serializeDesign(design)) throw new Error('changed');
  // Hostile names change no number: what has been worked out once is not worked out again.
  const numbers = serializeDesign(design).replace(/"(?:[^"\\]|\\.)*"/g, '');
  if (workedOut.has(numbers)) return;
  workedOut.add(numbers);
  const worked = analyseDesign(design, { fromDeg: -20, toDeg: 20, stepDeg: 20 });
  if (worked.ok && hasNonNumber(worked.value)) throw new Error('a number that is none');
}

function linkWith(text: string): string {
  const bytes = Buffer.from(text, 'utf8');
  const head = Buffer.alloc(5);
  head.writeUInt8(1, 0);
  head.writeUInt32BE(nodeCrc32(bytes), 1);
  return `${LINK_MARK}${Buffer.concat([head, deflateRawSync(bytes)]).toString('base64url')}`;
}

describe('the named attacks', () => {
  it('are refused or harmless as a design file', () => {
    const attacks = jsonAttacks(DESIGN);
    expect(attacks.length).toBeGreaterThan(500);
    const wrong = wrongAnswers(attacks, (text) => {
      const read = parseDesign(text);
      if (read.ok) takenWhole(read.value);
      else describeFault(read.error);
      return read;
    });
    expect(wrong).toEqual([]);
  });

  it('are refused or harmless as a lesson file', () => {
    const attacks = jsonAttacks(LESSON);
    expect(attacks.length).toBeGreaterThan(500);
    expect(wrongAnswers(attacks, readLesson)).toEqual([]);
  });

  it('are refused or harmless as a shelf of parts', () => {
    const read = parseDesign(DESIGN);
    if (!read.ok) throw new Error('the demo design is not read');
    const identity = { id: 'kept', savedAt: 1, name: 'Kept' };
    const shelf = serializeShelf([itemOf(read.value.parts[0], NO_MATERIALS, identity)]);
    expect(parseShelf(shelf).ok).toBe(true);
    expect(wrongAnswers(jsonAttacks(shelf), parseShelf)).toEqual([]);
  });

  it('are refused or harmless inside a link', () => {
    // Behind the link's own door is that of a design file: a share of them shows that nothing goes round it.
    const attacks = jsonAttacks(DESIGN).filter((_, k) => k < 20 || k % 20 === 0);
    expect(readShareLink(linkWith(DESIGN)).ok).toBe(true);
    expect(wrongAnswers(attacks, (text) => readShareLink(linkWith(text)))).toEqual([]);
  });
});

describe('a hostile table', () => {
  const HEAD = 'pitch (deg),force (N)\n';
  const attacks: Attack[] = [
    { name: 'a million columns', text: 'a,'.repeat(1_000_000), must: 'refuse' },
    {
      name: 'a cell of a million characters',
      text: `${HEAD}0,${'9'.repeat(1_000_000)}\n`,
      must: 'notThrow',
    },
    {
      name: 'an open quote to the end',
      text: `${HEAD}0,"${'x'.repeat(1_000_000)}`,
      must: 'notThrow',
    },
    {
      name: 'a heading of a million characters',
      text: `${'h'.repeat(1_000_000)},b\n1,2\n`,
      must: 'notThrow',
    },
    { name: '__proto__ as headings', text: '__proto__,constructor\n1,2\n3,4\n', must: 'notThrow' },
    { name: 'numbers beyond a double', text: `${HEAD}0,1e400\n5,-1e400\n`, must: 'notThrow' },
    { name: 'numbers at its edge', text: `${HEAD}0,1e308\n5,-1e308\n-0,-0\n`, must: 'notThrow' },
    { name: 'NaN and Infinity', text: `${HEAD}0,NaN\n5,Infinity\n`, must: 'notThrow' },
    { name: 'lone surrogates', text: `\ud800,\udfff\n1,2\n\ud800,3\n`, must: 'notThrow' },
    { name: 'NUL between all', text: `${HEAD}0\0,\0${'1\0'.repeat(1000)}\n`, must: 'notThrow' },
    {
      name: 'formulas',
      text: `=cmd|'/c calc'!A0,force (N)\n=1+1,2\n@SUM(A1),3\n`,
      must: 'notThrow',
    },
    { name: 'a million empty lines', text: '\n'.repeat(1_000_000), must: 'refuse' },
    { name: 'a million open quotes', text: `${HEAD}${'"'.repeat(1_000_001)}`, must: 'notThrow' },
  ];

  it('is refused or read as numbers, never thrown on', () => {
    const wrong = wrongAnswers(attacks, (text) => {
      const read = previewReadings(text);
      const taken = read.ok && read.value.derived.ok ? read.value.derived.value.readings : [];
      if (hasNonNumber(taken)) throw new Error('a number that is none');
      return read;
    });
    expect(wrong).toEqual([]);
  });

  it('of a blade section is refused or read as numbers, never thrown on', () => {
    const wrong = wrongAnswers(attacks, (text) => {
      const read = parsePolarText(text);
      if (read.ok && hasNonNumber(read.value)) throw new Error('a number that is none');
      return read;
    });
    expect(wrong).toEqual([]);
  });
});

/** Whether any number in it is infinite; NaN stands for a reading that is not there. */
function hasNonNumber(value: unknown): boolean {
  if (typeof value === 'number') return Math.abs(value) === Number.POSITIVE_INFINITY;
  if (typeof value !== 'object' || value === null) return false;
  if (ArrayBuffer.isView(value)) return Array.from(value as Float64Array).some(hasNonNumber);
  return Object.values(value).some(hasNonNumber);
}
