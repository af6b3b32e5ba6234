import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { FAULT_TEXTS } from '../../src/design/faultText';
import { SECTION_NAMES, SECTIONS } from '../../src/design/sections';
import type { SectionSet } from '../../src/design/sections/section';
import type { Parameter, ParameterValue, PartType } from '../../src/parts/contract';
import { MATERIALS } from '../../src/parts/materials';
import { PART_TYPES } from '../../src/parts/registry';

/**
 * English texts that live with what they are about and not in src/messages: by the key under which another language gives
 * them (`partText`), or by themselves (`phrase`).
 */
export function keptTexts(): Readonly<Record<string, string>> {
  known ??= gathered();
  return known;
}

let known: Readonly<Record<string, string>> | undefined;

function gathered(): Readonly<Record<string, string>> {
  const texts: Record<string, string> = {};
  const keep = (key: string, text: string | undefined) => {
    if (text !== undefined && text !== '') texts[key] = text;
  };
  const phrase = (text: string | undefined) => keep(`phrase.${text}`, text);
  for (const type of Object.values(PART_TYPES) as readonly PartType[]) partTexts(type, keep);
  for (const name of SECTION_NAMES) {
    for (const [key, field] of Object.entries(SECTIONS[name] as SectionSet)) {
      keep(`${name}.${key}.label`, field.label);
      keep(`${name}.${key}.help`, field.help);
      const labels = field.type === 'choice' ? field.optionLabels : {};
      for (const [option, label] of Object.entries(labels)) keep(`${name}.${key}.${option}`, label);
    }
  }
  for (const { id, name, source, note } of MATERIALS) {
    keep(`material.${id}`, name);
    phrase(source);
    phrase(note);
  }
  for (const [code, text] of Object.entries(FAULT_TEXTS)) keep(`fault.${code}`, text);
  demoTexts(keep);
  for (const text of phrasesInSource()) phrase(text);
  for (const text of KEYS_AND_SYMBOLS) phrase(text);
  return texts;
}

type Keep = (key: string, text: string | undefined) => void;

function partTexts(type: PartType, keep: Keep): void {
  const { kind, parameters } = type;
  keep(`part.${kind}.label`, type.label);
  keep(`part.${kind}.help`, type.help);
  for (const [key, parameter] of Object.entries(parameters)) {
    keep(`part.${kind}.${key}.label`, parameter.label);
    keep(`part.${kind}.${key}.help`, parameter.help);
    keep(`group.${parameter.group}`, parameter.group);
    const labels = parameter.type === 'choice' ? parameter.optionLabels : {};
    for (const [option, label] of Object.entries(labels)) {
      keep(`part.${kind}.${key}.${option}`, label);
    }
  }
  for (const values of formsOf(parameters)) {
    for (const { name, label } of type.sockets(values as never)) {
      keep(`part.${kind}.socket.${name}`, label);
    }
  }
  for (const standard of type.catalogue?.standards ?? []) {
    keep(`phrase.${standard.title}`, standard.title);
    // Bearings have no standard that names their sizes: they stand under their kind.
    if (!/\d/.test(standard.standard)) keep(`phrase.${standard.standard}`, standard.standard);
    for (const { source, note } of standard.sizes) {
      keep(`phrase.${source}`, source);
      if (note) keep(`phrase.${note}`, note);
    }
  }
}

/** The defaults, and the defaults with each choice made otherwise: what sockets there can be. */
function formsOf(parameters: Readonly<Record<string, Parameter>>) {
  const standard: Record<string, ParameterValue> = {};
  for (const [key, parameter] of Object.entries(parameters)) standard[key] = parameter.default;
  const others = Object.entries(parameters).flatMap(([key, parameter]) =>
    parameter.type === 'choice'
      ? parameter.options.map((option) => ({ ...standard, [key]: option }))
      : [],
  );
  return [standard, ...others];
}

interface Named {
  readonly name: string;
  readonly note?: string;
  readonly parts: readonly { readonly name: string }[];
}

function demoTexts(keep: Keep): void {
  const folder = new URL('../../assets/designs/', import.meta.url);
  for (const file of readdirSync(folder)) {
    const read: unknown = JSON.parse(readFileSync(new URL(file, folder), 'utf8'));
    if (Array.isArray(read)) {
      for (const entry of read as { file: string; title: string; summary: string }[]) {
        keep(`demo.${entry.file}.title`, entry.title);
        keep(`demo.${entry.file}.summary`, entry.summary);
      }
      continue;
    }
    const { name, note, parts } = read as Named;
    for (const text of [name, note, ...parts.map((part) => part.name)]) {
      keep(`demo.name.${text}`, text);
    }
  }
}

/** Names of keys, and what stands in a formula in the place of a symbol. */
const KEYS_AND_SYMBOLS: readonly string[] = [
  'Del Esc PgUp PgDn Home End Enter'.split(' '),
  ['to spare', 'rod and air', 'pull \u2212 push', 'grip {n}', 'ISO 76, static'],
].flat();

/** Calls that say a phrase, and which of their arguments it is. */
const SAYING: Readonly<Record<string, number>> = {
  demand: 4,
  fail: 0,
  malformed: 1,
  phrase: 0,
  told: 1,
};
/** A file without any of them need not be read closely. */
const SAYS = /\b(?:demand|fail|malformed|phrase|told)\(|\b(?:against|detail|reason)\??:/;
/** Members that hold one. */
const MEMBERS = new Set(['against', 'detail', 'reason']);

/** What rules, readers and checks say of a value or a file; `{a}` stands for what their templates fill in. */
function phrasesInSource(): Set<string> {
  const found = new Set<string>();
  for (const layer of ['parts', 'design', 'meshes']) {
    const folder = fileURLToPath(new URL(`../../src/${layer}/`, import.meta.url));
    for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
      if (!file.endsWith('.ts')) continue;
      const text = readFileSync(folder + file, 'utf8');
      if (!SAYS.test(text)) continue;
      const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
      visit(source, found);
    }
  }
  return found;
}

function visit(node: ts.Node, found: Set<string>): void {
  if (ts.isCallExpression(node)) {
    const at = SAYING[node.expression.getText()] ?? saidArgument(node);
    const said = at === undefined ? undefined : node.arguments[at];
    if (said) addPhrases(said, found);
  }
  const isMember = ts.isPropertyAssignment(node) && MEMBERS.has(node.name.getText());
  if (isMember) addPhrases(node.initializer, found);
  ts.forEachChild(node, (child) => visit(child, found));
}

/** Which argument of a call is a phrase: a function of the same file has a parameter for one. */
function saidArgument(call: ts.CallExpression): number | undefined {
  const at = declared(call)?.parameters.findIndex(({ name }) => MEMBERS.has(name.getText()));
  return at === undefined || at < 0 ? undefined : at;
}

/** The function of the same file that a call means. */
function declared(call: ts.CallExpression): ts.FunctionLikeDeclaration | undefined {
  const found = ts.isIdentifier(call.expression) ? meant(call.expression) : undefined;
  return found && (ts.isFunctionDeclaration(found) || ts.isArrowFunction(found))
    ? found
    : undefined;
}

/** What a name stands for in the same file, a function or what a variable is set to: the nearest in the blocks around it. */
function meant(name: ts.Identifier): ts.Node | undefined {
  for (let around: ts.Node = name.parent; around; around = around.parent) {
    if (!ts.isBlock(around) && !ts.isSourceFile(around)) continue;
    for (const statement of around.statements) {
      if (ts.isFunctionDeclaration(statement) && statement.name?.text === name.text) {
        return statement;
      }
      if (!ts.isVariableStatement(statement)) continue;
      for (const { name: own, initializer } of statement.declarationList.declarations) {
        if (own.getText() === name.text && initializer) return initializer;
      }
    }
  }
  return undefined;
}

/** What a function gives back: of each of its returns. */
function addReturned(node: ts.Node, found: Set<string>): void {
  if (ts.isReturnStatement(node) && node.expression) addPhrases(node.expression, found);
  else ts.forEachChild(node, (child) => addReturned(child, found));
}

function addPhrases(node: ts.Node, found: Set<string>): void {
  if (ts.isConditionalExpression(node)) {
    addPhrases(node.whenTrue, found);
    addPhrases(node.whenFalse, found);
  } else if (ts.isCallExpression(node)) {
    const body = declared(node)?.body;
    if (body && ts.isBlock(body)) addReturned(body, found);
    else if (body) addPhrases(body, found);
  } else if (ts.isIdentifier(node)) {
    const value = meant(node);
    if (value && ts.isExpression(value)) addPhrases(value, found);
  } else if (ts.isStringLiteralLike(node)) {
    // A single word is the key of a parameter.
    if (node.text.includes(' ')) found.add(node.text);
  } else if (ts.isTemplateExpression(node)) {
    const pieces = node.templateSpans.map((span, i) => `{${'abcdefgh'[i]}}${span.literal.text}`);
    found.add(node.head.text + pieces.join(''));
  }
}
