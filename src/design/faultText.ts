import { partText } from '../messages';
import { localNumber } from '../messages/numbers';
import { phrase } from '../messages/phrases';
import type { DesignFault, FaultReason } from './fault';

/**
 * A reason's sentence, without its path; `{name}` stands for a member of the reason. Another language gives it by key
 * `fault.<code>`.
 */
export const FAULT_TEXTS: Readonly<Record<FaultReason['code'], string>> = {
  empty: 'is empty',
  tooLong: 'has {length} characters; at most {limit} are read',
  truncated: 'ends too early, at line {line}, column {column}: the file is cut off',
  notJson: 'is not JSON: unexpected {found} at line {line}, column {column}',
  repeatedKey: '{key} is given twice, again at line {line}',
  tooDeep: 'is nested deeper than {limit} levels',
  wrongFormat: 'must be {expected}; found {found}: this is not a design file',
  badVersion: 'must be a whole number from 0 up; found {found}',
  newerVersion:
    'is {found}, from a newer program; this one reads up to {known}. Open it with that program, or update this one',
  olderVersion: 'is {found}, which this program no longer reads; the present version is {known}',
  migrationFailed: 'a file of version {from} could not be brought up to date: {detail}',
  missing: 'is missing',
  unknownKey: 'has an unknown key {key}',
  unknownKind: 'is an unknown kind {kind}; known are {known}',
  wrongType: 'must be {expected}; found {found}',
  notFinite: 'must be a finite number',
  notWhole: 'must be a whole number; found {value}',
  tooSmall: 'must be at least {limit}{unit}; found {value}{unit}',
  tooLarge: 'must be at most {limit}{unit}; found {value}{unit}',
  wrongCount: 'must hold {expected} numbers; found {count}',
  textTooLong: 'has {length} characters; at most {limit} are allowed',
  emptyText: 'must not be empty',
  notAChoice: 'must be one of {options}; found {found}',
  tooMany: 'holds {count} entries; at most {limit} are allowed',
  notInCatalogue: 'is not in the catalogue, which has {known}',
  unknownMaterial:
    'names the material {material}, which is neither in the tables nor in the design',
  unsound: 'cannot be used: {detail}',
  measuredImpossible: 'cannot be true: {detail}',
  repeatedAxis: 'is a second timing about the {axis} axis',
  tooManyParts: 'holds {count} parts; at most {limit} are allowed',
  repeatedId: 'repeats the id {id} of parts[{first}]',
  repeatedMaterial: 'repeats the id {id} of materials[{first}]',
  repeatedTryOut: 'repeats the id {id} of tryOuts[{first}]',
  shownTryOuts:
    'must have exactly one entry without parts, the one that is on the stage; {count} have none',
  adoptedTwice: 'is a second adopted one, after tryOuts[{first}]',
  tooManyTryOutParts:
    'hold {count} parts together with those on the stage; at most {limit} are allowed',
  poseOrSocket: 'must have exactly one of pose and socket; found {found}',
  missingParent: 'names a part that is not in the design: {parent}',
  unknownSocket: 'part {parent} has no socket {socket}; it has {known}',
  misfit:
    'a {kind} does not fit the socket {socket}: it takes {socketMates}, the part fits {partMates}',
  cycle: 'parts sit on one another in a circle: {ids}',
  offsetOutOfRange: 'must lie between {low} and {high} mm along the socket; found {value} mm',
  rule: 'must be {rule} {against} ({limit}{unit}); found {value}{unit}',
};

const RULES = { below: 'below', above: 'above', atMost: 'at most', atLeast: 'at least' } as const;
const UNITS = {
  mm: ' mm',
  g: ' g',
  deg: ' deg',
  'kg/m3': ' kg/m3',
  rpm: ' rpm',
  s: ' s',
  'g mm2': ' g mm2',
  MPa: ' MPa',
  GPa: ' GPa',
  m: ' m',
  N: ' N',
  'N mm': ' N mm',
  degC: ' degC',
  '%': ' %',
  '1': '',
} as const;
const TYPES: Readonly<Record<string, string>> = {
  number: 'a number',
  list: 'a list',
  object: 'an object',
};
/** Members whose text comes from the file. */
const QUOTED = new Set(['key', 'kind', 'id', 'parent', 'socket', 'ids', 'material']);

/** Members that are phrases, and what sets a limit: a parameter's key, or a phrase. */
const PHRASES = new Set(['detail', 'expected', 'found', 'against']);

/** The reason in one line of the language spoken, without the path. Text from the file is quoted, escaped and cut short. */
export function faultMessage(reason: FaultReason): string {
  if (reason.code === 'notInCatalogue') return catalogueMessage(reason);
  const members = reason as unknown as Readonly<Record<string, unknown>>;
  const text = partText(`fault.${reason.code}`, FAULT_TEXTS[reason.code]);
  return text.replace(/\{(\w+)\}/g, (_, name: string) =>
    memberText(reason.code, name, members[name]),
  );
}

function catalogueMessage(reason: FaultReason & { readonly code: 'notInCatalogue' }): string {
  if (reason.known) {
    return partText('fault.notInCatalogue', FAULT_TEXTS.notInCatalogue, {
      known: listText(reason.known, false),
    });
  }
  return phrase(
    reason.missing
      ? 'is missing: this size comes in lengths'
      : 'must be left out: this size has no length',
  );
}

/** Path and reason in one line. */
export function describeFault({ path, reason }: DesignFault): string {
  return path === '' ? faultMessage(reason) : `${quietPath(path)}: ${faultMessage(reason)}`;
}

function memberText(code: FaultReason['code'], name: string, value: unknown): string {
  if (name === 'unit') return UNITS[value as keyof typeof UNITS];
  if (name === 'expected' && code === 'wrongType')
    return phrase(TYPES[String(value)] ?? String(value));
  if (name === 'rule') return phrase(RULES[value as keyof typeof RULES]);
  if (Array.isArray(value)) return listText(value, QUOTED.has(name));
  // A limit may be a difference of typed decimals: the rounding of its last digits says nothing.
  if (name === 'limit') return localNumber(String(Number(Number(value).toPrecision(12))));
  if (typeof value !== 'string') return localNumber(String(value));
  if (name === 'found' && (code === 'notJson' || code === 'notAChoice')) return quote(value);
  if (name === 'found' && value === '') return phrase('nothing');
  if (PHRASES.has(name)) return plain(phrase(value));
  return QUOTED.has(name) ? quote(value) : plain(value);
}

function listText(values: readonly unknown[], quoted: boolean): string {
  if (values.length === 0) return phrase('none');
  const shown = values.slice(0, 24).map((value) => (quoted ? quote(String(value)) : String(value)));
  return shown.join(', ') + (values.length > shown.length ? ', ...' : '');
}

function quote(text: string): string {
  return plain(JSON.stringify(shorten(text)));
}

/** A path made of a foreign file's keys may be of any length. */
function quietPath(path: string): string {
  return plain(path.length > 160 ? `${path.slice(0, 160)}...` : path);
}

function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}...` : text;
}

/** Control and line-breaking characters would break the one line. */
function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ');
}
