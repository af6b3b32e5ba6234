import type * as z from 'zod/mini';
import { type Parameter, parameterUnit } from '../parts/contract';
import { isPartKind, PART_TYPES, partType } from '../parts/registry';
import { typeName, wrongType } from './checkNumber';
import { type DesignFault, type FaultReason, fault } from './fault';
import { type LimitUnit, MATERIAL_LIMITS, type NumberLimits } from './limits';
import { MEASURED_LIMITS, SWING_LIMITS } from './measured';
import { joinPath, valueAt } from './path';
import { SECTIONS, type SectionName } from './sections';
import {
  BENCH_FIT_LIMITS,
  BENCH_NUMBER_LIMITS,
  BENCH_PLAN_LIMITS,
  BENCH_ROW_LIMITS,
  BENCH_RUN_LIMITS,
} from './sections/bench';
import { DRAG_ROW_LIMITS } from './sections/friction';
import { OTHER_GRIP_LIMITS, PART_MASS_LIMITS } from './sections/grips';
import type { SectionSet } from './sections/section';

type Issue = z.core.$ZodIssue;

/** The design fault that the first issue of a refused document stands for. */
export function schemaFault(issue: Issue, document: unknown): DesignFault {
  return fault(joinPath(issue.path), reasonOf(issue, document));
}

function reasonOf(issue: Issue, document: unknown): FaultReason {
  const value = valueAt(document, issue.path);
  if (value === undefined) return { code: 'missing' };
  switch (issue.code) {
    case 'unrecognized_keys':
      return { code: 'unknownKey', key: issue.keys[0] };
    case 'invalid_type':
      return typeReason(issue.expected, value);
    case 'invalid_union':
      return typeof value === 'string'
        ? { code: 'unknownKind', kind: value, known: PART_TYPES.map((type) => type.kind) }
        : wrongType('text', value);
    case 'invalid_value':
      return typeof value === 'string'
        ? { code: 'notAChoice', found: value, options: issue.values.map(String) }
        : wrongType('text', value);
    case 'too_big':
      return sizeReason(value, 'tooLarge', Number(issue.maximum), issue.path, document);
    case 'too_small':
      return sizeReason(value, 'tooSmall', Number(issue.minimum), issue.path, document);
    default:
      throw new Error(`schemaFault(): issue is not handled: ${issue.code}`);
  }
}

function typeReason(expected: string, value: unknown): FaultReason {
  if (typeof value !== 'number') return wrongType(EXPECTED[expected] ?? expected, value);
  if (!Number.isFinite(value)) return { code: 'notFinite' };
  return expected === 'int'
    ? { code: 'notWhole', value }
    : { code: 'wrongType', expected: EXPECTED[expected] ?? expected, found: typeName(value) };
}

const EXPECTED: Readonly<Record<string, string>> = {
  string: 'text',
  array: 'list',
  tuple: 'list',
  boolean: 'true or false',
};

function sizeReason(
  value: unknown,
  code: 'tooSmall' | 'tooLarge',
  limit: number,
  path: readonly PropertyKey[],
  document: unknown,
): FaultReason {
  if (typeof value === 'string') {
    return value === ''
      ? { code: 'emptyText' }
      : { code: 'textTooLong', length: value.length, limit };
  }
  if (Array.isArray(value)) {
    const count = value.length;
    if (path.at(-1) === 'parts') return { code: 'tooManyParts', count, limit };
    return isTriple(path, document)
      ? { code: 'wrongCount', count, expected: limit }
      : { code: 'tooMany', count, limit };
  }
  return { code, value: value as number, limit, unit: unitAt(path, document) };
}

/** Whether the list at a path holds three numbers, and not any count up to a limit. */
function isTriple(path: readonly PropertyKey[], document: unknown): boolean {
  return path.at(-2) === 'pose' || parameterAt(path, document)?.type === 'vector';
}

/** Where a list of parts lies within another entry (`tryOuts[1].parts[2]`): path and document from there. */
function fromParts(
  path: readonly PropertyKey[],
  document: unknown,
): readonly [readonly PropertyKey[], unknown] {
  return path[2] === 'parts' && (path[0] === 'tryOuts' || path[0] === 'otherGrips')
    ? [path.slice(2), valueAt(document, path.slice(0, 2))]
    : [path, document];
}

function parameterAt(whole: readonly PropertyKey[], root: unknown): Parameter | undefined {
  const [path, document] = fromParts(whole, root);
  const [top, index, name] = path;
  const kind = valueAt(document, [top, index, 'kind']);
  if (typeof kind !== 'string' || !isPartKind(kind)) return undefined;
  return partType(kind).parameters[String(name)];
}

/** Numbers that stand outside the parts' own parameters, by the key that holds them or a list of them. */
const LIMITS: Readonly<Record<string, NumberLimits>> = {
  ...MATERIAL_LIMITS,
  ...MEASURED_LIMITS,
  ...SWING_LIMITS,
  ...DRAG_ROW_LIMITS,
  ...OTHER_GRIP_LIMITS,
  ...BENCH_NUMBER_LIMITS,
  ...BENCH_RUN_LIMITS,
  ...BENCH_ROW_LIMITS,
  ...BENCH_FIT_LIMITS,
  settleSeconds: BENCH_PLAN_LIMITS.settleSeconds,
  pitchesDeg: BENCH_PLAN_LIMITS.pitchDeg,
  speedsRpm: BENCH_PLAN_LIMITS.speedRpm,
};

/** The unit of the number at a path, from the registry or the tables of limits. */
function unitAt(whole: readonly PropertyKey[], root: unknown): LimitUnit {
  const [path, document] = fromParts(whole, root);
  const [top, index, name, own] = path;
  const set: SectionSet | undefined = SECTIONS[top as SectionName];
  if (set) {
    const field = set[String(index)];
    if (field) return field.type === 'number' ? field.unit : '1';
  }
  if (name === 'pose') return own === 'rotationDeg' ? 'deg' : 'mm';
  if (name === 'socket') return own === 'turnDeg' ? 'deg' : 'mm';
  if (name === 'catalogue') return 'mm';
  if (top === 'otherGrips' && path.at(-2) === 'partMassesGrams') return PART_MASS_LIMITS.unit;
  if (top !== 'parts' || name === 'measured') {
    const last = String(path.findLast((step) => typeof step === 'string'));
    return Object.hasOwn(LIMITS, last) ? LIMITS[last].unit : '1';
  }
  return parameterUnit(parameterAt(path, document));
}
