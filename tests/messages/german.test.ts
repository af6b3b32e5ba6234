import { describe, expect, it } from 'vitest';
import { travelWord } from '../../src/bench/readings/headings';
import { BENCH } from '../../src/messages/de/bench';
import { BENCH_FIT } from '../../src/messages/de/benchFit';
import { BENCH_PLAN } from '../../src/messages/de/benchPlan';
import { BENCH_ROOMS } from '../../src/messages/de/benchRooms';
import { CLOSENESS } from '../../src/messages/de/closeness';
import { DESIGNS_ROOM } from '../../src/messages/de/designsRoom';
import { DRAWING } from '../../src/messages/de/drawing';
import { LESSON_ROOM } from '../../src/messages/de/lessonRoom';
import { LET_GO_ROOM } from '../../src/messages/de/letGoRoom';
import { DE } from '../../src/messages/de/opening';
import { REPORT } from '../../src/messages/de/report';
import { EN } from '../../src/messages/en';
import { HELP_TEXT } from '../../src/messages/en/help';
import { LATER } from '../../src/messages/en/later';

/** Help texts are a room of their own, with a test of their own. */
const ENGLISH: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries({ ...EN, ...LATER }).filter(([key]) => !Object.hasOwn(HELP_TEXT, key)),
);
const GERMAN: Readonly<Record<string, string>> = {
  ...DE,
  ...BENCH,
  ...BENCH_FIT,
  ...BENCH_PLAN,
  ...BENCH_ROOMS,
  ...CLOSENESS,
  ...DESIGNS_ROOM,
  ...DRAWING,
  ...LESSON_ROOM,
  ...LET_GO_ROOM,
  ...REPORT,
};

/** Words that German and English share: a text may be the same in both where it says nothing else. */
const SHARED =
  'Stillgrip System Servo Rotor Moment Position Name Format Plan Pause Link Band Radial axial Letter'.split(
    ' ',
  );
/** Symbols of units and quantities, formats, keys and sizes: the same in any language. */
const SYMBOLS =
  'mm mm2 in oz ozf g N W m kg m3 rpm deg s x z J_ J_yy J_zz J_yz I_xx Ixx Jyy Jzz Jyz STL PNG SVG DXF PDF Alt Cmd A4 \u03c3 \u00d8'.split(
    ' ',
  );

/** The words of a text, places and numbers taken out. */
function wordsOf(text: string): string[] {
  return text.replace(/\{\w+\}/g, ' ').match(/\p{L}[\w\p{L}]*/gu) ?? [];
}

/** The names of a text's places, each once: a sentence may say one twice. */
function places(text: string): string[] {
  return [...new Set(text.match(/\{\w+\}/g))].toSorted();
}

/** How a text ends: blanks and the sign, a letter or digit counting as none. */
function ending(text: string): string {
  return /[\s.:;,!?…›)]*$/u.exec(text)?.[0] ?? '';
}

describe('the German texts', () => {
  it('are there for every key of the English ones, and for no other', () => {
    expect(Object.keys(GERMAN).toSorted()).toEqual(Object.keys(ENGLISH).toSorted());
    expect(Object.keys(DE).toSorted()).toEqual(Object.keys(EN).toSorted());
  });

  it('have the places of the English ones', () => {
    const differing = keysWhere((german, english) => {
      return places(german).join() !== places(english).join();
    });
    expect(differing).toEqual([]);
  });

  it('end as the English ones do: sentences with a full stop, labels without, questions with their mark', () => {
    expect(keysWhere((german, english) => ending(german) !== ending(english))).toEqual([]);
  });

  it('have no double blanks and none at the ends, where the English has none', () => {
    const untidy = (text: string) => /\s{2}|^\s|\s$/.test(text);
    expect(keysWhere((german, english) => untidy(german) && !untidy(english))).toEqual([]);
  });

  it('are empty only where the English is', () => {
    expect(keysWhere((german, english) => (german === '') !== (english === ''))).toEqual([]);
  });

  it('quote with German marks and write decimals with a comma', () => {
    // "ASME B1.1" and the licence's "LGPL-2.1" are names.
    const wrong = keysWhere(
      (german) =>
        /["\u201d]/.test(german) ||
        (german.match(/\u201e/g)?.length ?? 0) !== (german.match(/\u201c/g)?.length ?? 0) ||
        /(?<![\w.])\d+\.\d{1,2}(?![\d])/.test(german.replace(/LGPL-2\.1/g, '')),
    );
    expect(wrong).toEqual([]);
  });

  it('address nobody as Sie: they say what to do without a person', () => {
    expect(keysWhere((german) => /\p{L}en Sie\b|\bIhnen\b/u.test(german))).toEqual([]);
  });

  it('differ from the English wherever it says more than signs, symbols and words that both have', () => {
    const known = new Set([...SHARED, ...SYMBOLS]);
    const same = keysWhere((german, english) => german === english);
    const words = same.flatMap((key) => wordsOf(ENGLISH[key]));
    expect(same.filter((key) => wordsOf(ENGLISH[key]).some((word) => !known.has(word)))).toEqual(
      [],
    );
    expect(SHARED.filter((word) => !words.includes(word))).toEqual([]);
  });

  it('name ways of travel by words that a table of readings may hold', () => {
    for (const way of ['push', 'pull', 'up', 'down', 'held'] as const) {
      expect(travelWord(GERMAN[`benchRoom.travel.${way}`]), way).toBe(way);
    }
    const named = GERMAN['bench.fault.badTravel'].match(/: (.*)\.$/)?.[1].split(/, | oder /) ?? [];
    expect(named.map(travelWord)).toEqual(['push', 'pull', 'up', 'down', 'held']);
  });
});

/** Keys whose texts, German and English, are so. */
function keysWhere(holds: (german: string, english: string) => boolean): string[] {
  return Object.keys(ENGLISH).filter((key) => holds(GERMAN[key] ?? '', ENGLISH[key]));
}
