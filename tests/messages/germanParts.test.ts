import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { FAULT_TEXTS } from '../../src/design/faultText';
import { SECTIONS } from '../../src/design/sections';
import type { SectionField } from '../../src/design/sections/section';
import { searchTopics } from '../../src/lessons/words/search';
import { withTexts } from '../../src/messages';
import { CATALOGUE_TEXTS } from '../../src/messages/de/catalogueText';
import { DEMO_TEXTS } from '../../src/messages/de/demos';
import { HELP_ALSO } from '../../src/messages/de/help/also';
import { SYMBOL_WORDS } from '../../src/messages/de/help/symbols';
import { MATERIAL_NAMES } from '../../src/messages/de/materialNames';
import { PARTS } from '../../src/messages/de/parts';
import { RULE_TEXTS } from '../../src/messages/de/rules';
import { SECTION_TEXTS } from '../../src/messages/de/sections';
import { EN } from '../../src/messages/en';
import { speak } from '../../src/messages/languages';
import type { Parameter, PartType } from '../../src/parts/contract';
import { MATERIALS } from '../../src/parts/materials';
import { PART_TYPES } from '../../src/parts/registry';
import { TOPICS } from '../../src/state/help/topics';

const TYPES = PART_TYPES as unknown as readonly PartType[];
type Texts = Readonly<Record<string, string>>;
type Pair = readonly [key: string, english: string];

/** What reads the same in both languages: names of units, standards, classes, shapes, alloys and Latin words. */
const ALIKE =
  /^(?:Form|mm|cm|m|[\dA][\d.-]+|ISO 2768-1 [fmc]|Balsa|PTFE|(?:Aluminium|Magnesium) [\w-]+|Heron.*|Dunlin.*)$/;

/** Keys that the English catalogue has: they are translated with it. */
function notInCatalogue([key]: Pair): boolean {
  return !Object.hasOwn(EN, key);
}

function fieldPairs(owner: string, field: Pick<SectionField, 'label' | 'help'>): Pair[] {
  const options =
    'optionLabels' in field ? Object.entries(field.optionLabels as Texts) : ([] as const);
  return [
    [`${owner}.label`, field.label],
    [`${owner}.help`, field.help],
    ...options.map(([option, label]) => [`${owner}.${option}`, label] as const),
  ];
}

function partPairs(type: PartType): Pair[] {
  const own = `part.${type.kind}`;
  const parameters = Object.entries<Parameter>(type.parameters);
  const usual = Object.fromEntries(parameters.map(([key, { default: value }]) => [key, value]));
  // A body from a mesh has seats only in the role of a grip.
  const sockets = type.sockets({ ...usual, role: 'grip' } as never);
  return [
    [`${own}.label`, type.label],
    [`${own}.help`, type.help],
    ...parameters.flatMap(([key, parameter]) => fieldPairs(`${own}.${key}`, parameter)),
    ...parameters.flatMap(([, { group }]) =>
      group === undefined ? [] : [[`group.${group}`, group] as const],
    ),
    ...sockets.map(({ name, label }) => [`${own}.socket.${name}`, label] as const),
  ];
}

function phrases(texts: readonly (string | undefined)[]): Pair[] {
  return texts.flatMap((text) => (text === undefined ? [] : [[`phrase.${text}`, text] as const]));
}

function cataloguePairs(): Pair[] {
  return TYPES.flatMap(({ catalogue }) => catalogue?.standards ?? []).flatMap((standard) =>
    phrases([standard.title, ...standard.sizes.flatMap(({ source, note }) => [source, note])]),
  );
}

function materialPairs(): Pair[] {
  return MATERIALS.flatMap(({ id, name, source, note }) => [
    [`material.${id}`, name] as const,
    ...phrases([source, note]),
  ]);
}

function demoPairs(): Pair[] {
  const read = (file: string) =>
    JSON.parse(
      readFileSync(fileURLToPath(new URL(`../../assets/designs/${file}`, import.meta.url)), 'utf8'),
    );
  const index: readonly { file: string; title: string; summary: string }[] = read('index.json');
  return index.flatMap(({ file, title, summary }) => {
    const design: { name: string; note: string; parts: { name: string }[] } = read(file);
    const names = [design.name, design.note, ...design.parts.map(({ name }) => name)];
    return [
      [`demo.${file}.title`, title] as const,
      [`demo.${file}.summary`, summary] as const,
      ...names.map((name) => [`demo.name.${name}`, name] as const),
    ];
  });
}

function sectionPairs(): Pair[] {
  return Object.entries(SECTIONS).flatMap(([section, set]) =>
    Object.entries<SectionField>(set).flatMap(([key, field]) =>
      fieldPairs(`${section}.${key}`, field),
    ),
  );
}

const GROUPS: readonly (readonly [string, Texts, readonly Pair[]])[] = [
  ['part types', PARTS, TYPES.flatMap(partPairs).filter(notInCatalogue)],
  ['sections of the design', SECTION_TEXTS, sectionPairs()],
  ['tables of the catalogue', CATALOGUE_TEXTS, cataloguePairs()],
  ['materials', MATERIAL_NAMES, materialPairs()],
  ['demo designs', DEMO_TEXTS, demoPairs()],
];

/** Numbers of a text as they count: "7,85" and "7.85" are one, so are "1,200" and "1 200". */
function numbers(text: string): string[] {
  const plain = text
    .replace(/(\d)[\u202f\u00a0 ,](?=\d{3}\b)/g, '$1')
    .replace(/(\d),(?=\d)/g, '$1.');
  return (plain.match(/\d+(?:\.\d+)*/g) ?? []).toSorted();
}

describe('German texts that English keeps with what they belong to', () => {
  it.each(GROUPS)('has those of %s, all of them and no other', (_, german, english) => {
    expect(english.length).toBeGreaterThan(20);
    const keys = new Set(english.map(([key]) => key));
    expect(Object.keys(german).toSorted()).toEqual([...keys].toSorted());
  });

  it.each(GROUPS)('says those of %s in German, with the same numbers', (_, german, english) => {
    for (const [key, own] of english) {
      const text = german[key] ?? '';
      if (!ALIKE.test(own)) expect(text, key).not.toBe(own);
      expect(text.trim(), key).toBe(text);
      expect(text.endsWith('.'), key).toBe(own.endsWith('.'));
      expect(numbers(text), key).toEqual(numbers(own));
    }
  });

  it('has every fault of a file, by its code, with the same places', () => {
    const places = (text: string) => (text.match(/\{\w+\}/g) ?? []).toSorted();
    const german = Object.keys(RULE_TEXTS).filter((key) => key.startsWith('fault.'));
    expect(german.toSorted()).toEqual(
      Object.keys(FAULT_TEXTS)
        .map((code) => `fault.${code}`)
        .toSorted(),
    );
    for (const [code, own] of Object.entries(FAULT_TEXTS)) {
      const text = RULE_TEXTS[`fault.${code}`] ?? '';
      expect(places(text), code).toEqual(places(own));
      expect(text, code).not.toBe(own);
    }
  });

  it('has the same places in a rule or a fault as the English phrase', () => {
    const places = (text: string) => (text.match(/\{\w+\}/g) ?? []).toSorted();
    for (const [key, text] of Object.entries(RULE_TEXTS)) {
      if (key.startsWith('phrase.')) expect(places(text), key).toEqual(places(key));
    }
  });
});

describe('words in the symbols of the help', () => {
  const folder = new URL('../../src/', import.meta.url);
  const english = ['state/help/topics', 'messages/en/help'].flatMap((path) =>
    readdirSync(new URL(path, folder)).map((file) =>
      readFileSync(new URL(`${path}/${file}`, folder), 'utf8'),
    ),
  );
  /** Of a letter or two, "_" and a word of three letters or more; J_xx and the like have none. */
  const words = english.flatMap((text) =>
    [
      ...text.matchAll(
        /['({ \u2212]d?(?:[A-Za-z]|\\u03[\da-f]{2}){1,2}_([a-z]{3,8})(?:,([a-z]+))?\b/g,
      ),
    ].flatMap(([, first, second]) => (second === undefined ? [first] : [first, second])),
  );

  it('are all in German, and none is that no symbol has', () => {
    expect(new Set(Object.keys(SYMBOL_WORDS))).toEqual(
      new Set(words.map((word) => `symbol.${word}`)),
    );
  });

  it('are short enough to stand beside their letter, and letters only', () => {
    for (const word of Object.values(SYMBOL_WORDS)) expect(word).toMatch(/^[A-Za-z]{1,8}$/);
  });
});

describe('looking for a word of the help in German', () => {
  afterEach(() => speak('en'));

  it('has other words for every entry that has some in English, and no other', () => {
    const ids = Object.entries(TOPICS).flatMap(([id, topic]) => ('also' in topic ? [id] : []));
    expect(ids.length).toBeGreaterThan(50);
    expect(Object.keys(HELP_ALSO).toSorted()).toEqual(
      ids.map((id) => `help.${id}.also`).toSorted(),
    );
  });

  it('finds by name, by other words and by what is said, and by the English words still', async () => {
    await speak('de');
    await withTexts(Promise.resolve());
    expect(searchTopics('steuerst')[0]).toBe('pushRod');
    expect(searchTopics('Kippwinkel')).toContain('fleeAngle');
    expect(searchTopics('Ableseschritt nirgends')).toEqual([]);
    expect(searchTopics('hollow circle')).toContain('fleeAngle');
  });
});
