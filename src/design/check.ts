import { createMoments } from '../engine/mass/moments';
import { fail, type Result } from '../engine/result';
import { type Parameter, type Problem, parameterUnit, type Socket } from '../parts/contract';
import { partType } from '../parts/registry';
import { checkMeasured } from './checkMeasured';
import { checkNumber, wrongType } from './checkNumber';
import type { Design, Part } from './design';
import { type DesignFault, fault } from './fault';
import {
  MAX_ID,
  MAX_NAME,
  MAX_NOTE,
  type NumberLimits,
  POSITION_LIMITS,
  TURN_LIMITS,
} from './limits';
import { type Materials, resolveValues } from './resolve';
import { type PartValues, valueOf } from './values';
import { weighPart } from './weighPart';

/** Offsets within this of an end of their range (mm) are at the end: ranges are sums of typed numbers. */
const OFFSET_TOLERANCE_MM = 1e-9;

function checkTriple(value: unknown, limits: NumberLimits, path: string): DesignFault | null {
  if (!Array.isArray(value)) return fault(path, wrongType('list', value));
  if (value.length !== 3)
    return fault(path, { code: 'wrongCount', count: value.length, expected: 3 });
  return checkEach(value, limits, path);
}

function checkEach(
  values: readonly unknown[],
  limits: NumberLimits,
  path: string,
): DesignFault | null {
  for (let k = 0; k < values.length; k++) {
    const found = checkNumber(values[k], limits, `${path}[${k}]`);
    if (found) return found;
  }
  return null;
}

/** The fault of a written value, or null. */
function checkParameter(value: unknown, spec: Parameter, path: string): DesignFault | null {
  switch (spec.type) {
    case 'number':
      return checkNumber(value, spec, path);
    case 'vector':
      return checkTriple(value, spec, path);
    case 'text':
      return checkText(value, 0, spec.maxLength, path);
    case 'numbers':
      if (!Array.isArray(value)) return fault(path, wrongType('list', value));
      return value.length > spec.maxCount
        ? fault(path, { code: 'tooMany', count: value.length, limit: spec.maxCount })
        : checkEach(value, spec, path);
    default:
      return checkChoice(value, spec.options, path);
  }
}

function checkChoice(value: unknown, options: readonly string[], path: string): DesignFault | null {
  const known = (options as readonly unknown[]).includes(value);
  return known ? null : fault(path, { code: 'notAChoice', found: String(value), options });
}

/** The fault of a text by its length (UTF-16 units), or null. */
function checkText(value: unknown, min: 0 | 1, max: number, path: string): DesignFault | null {
  if (typeof value !== 'string') return fault(path, wrongType('text', value));
  if (value.length < min) return fault(path, { code: 'emptyText' });
  if (value.length <= max) return null;
  return fault(path, { code: 'textTooLong', length: value.length, limit: max });
}

/** The fault of the design's own texts, or null: what is written here must open again. */
export function checkTexts({ name, note = '' }: Pick<Design, 'name' | 'note'>): DesignFault | null {
  for (const [path, text, limit] of [
    ['name', name, MAX_NAME],
    ['note', note, MAX_NOTE],
  ] as const) {
    if (text.length > limit)
      return fault(path, { code: 'textTooLong', length: text.length, limit });
  }
  return null;
}

/**
 * The first fault of a part on its own, or null: lengths of its texts, limits of what is written, its references to
 * catalogue and materials, its type's rules between parameters, what was measured of it, and its placement. `path` is
 * the part's (`parts[2]`). Whether its mount holds is `checkMount`'s question.
 */
export function checkPart(part: Part, path: string, materials: Materials): DesignFault | null {
  const type = partType(part.kind);
  const text =
    checkText(part.id, 1, MAX_ID, `${path}.id`) ??
    checkText(part.name, 0, MAX_NAME, `${path}.name`);
  if (text) return text;
  for (const name in type.parameters) {
    const value = valueOf(part, name);
    if (value === undefined) continue;
    const found = checkParameter(value, type.parameters[name], `${path}.${name}`);
    if (found) return found;
  }
  const values = checkedValues(part, path, materials);
  if (!values.ok) return values.error;
  const [problem] = type.problems(values.value);
  if (problem) return problemFault(part, problem, values.value, path);
  const placed = checkPlacement(part, path);
  if (placed || !part.measured) return placed;
  const measured = checkMeasured(part.measured, `${path}.measured`);
  if (measured) return measured;
  const weighed = weighPart(part, values.value, createMoments());
  return weighed.ok ? null : fault(`${path}.${weighed.error.path}`, weighed.error.reason);
}

function checkedValues(
  part: Part,
  path: string,
  materials: Materials,
): Result<PartValues, DesignFault> {
  const length = part.catalogue?.lengthMm;
  if (length !== undefined) {
    const [min, max] = partType(part.kind).catalogue?.lengthLimitsMm ?? [0, 0];
    const at = `${path}.catalogue.lengthMm`;
    const wrong = checkNumber(length, { min, max, unit: 'mm' }, at);
    if (wrong) return fail(wrong);
  }
  const values = resolveValues(part, materials);
  return values.ok ? values : fail(fault(`${path}.${values.error.path}`, values.error.reason));
}

function problemFault(part: Part, problem: Problem, values: PartValues, path: string): DesignFault {
  const { field } = problem;
  if (problem.rule === 'unsound') {
    return fault(`${path}.${field}`, { code: 'unsound', detail: problem.detail });
  }
  const { rule, limit, against } = problem;
  return fault(`${path}.${field}`, {
    code: 'rule',
    kind: part.kind,
    field,
    rule,
    value: values[field] as number,
    limit,
    against,
    unit: parameterUnit(partType(part.kind).parameters[field]),
  });
}

function checkPlacement(part: Part, path: string): DesignFault | null {
  const { pose, socket } = part;
  if (pose && socket) return fault(path, { code: 'poseOrSocket', found: 'both' });
  if (pose) {
    return (
      checkTriple(pose.positionMm, POSITION_LIMITS, `${path}.pose.positionMm`) ??
      checkTriple(pose.rotationDeg, TURN_LIMITS, `${path}.pose.rotationDeg`)
    );
  }
  if (!socket) return fault(path, { code: 'poseOrSocket', found: 'neither' });
  const { offsetMm, turnDeg } = socket;
  return (
    (offsetMm === undefined
      ? null
      : checkNumber(offsetMm, POSITION_LIMITS, `${path}.socket.offsetMm`)) ??
    (turnDeg === undefined ? null : checkNumber(turnDeg, TURN_LIMITS, `${path}.socket.turnDeg`))
  );
}

/**
 * The fault of a mounted part's seat, or null: its parent is there, has the socket, the socket takes such a part and
 * the offset lies in the socket's range. `sockets` are the parent's; null where there is no such parent.
 */
export function checkMount(
  part: Part,
  sockets: readonly Socket[] | null,
  path: string,
): DesignFault | null {
  const mount = part.socket;
  if (!mount) return null;
  if (!sockets) return fault(`${path}.socket.part`, { code: 'missingParent', parent: mount.part });
  const socket = socketNamed(sockets, mount.name);
  if (!socket) {
    const known = sockets.map((one) => one.name);
    const reason = {
      code: 'unknownSocket',
      socket: mount.name,
      parent: mount.part,
      known,
    } as const;
    return fault(`${path}.socket.name`, reason);
  }
  const { mates } = partType(part.kind);
  if (!mates.includes(socket.mates)) {
    return fault(`${path}.socket.name`, {
      code: 'misfit',
      kind: part.kind,
      socket: mount.name,
      socketMates: socket.mates,
      partMates: mates,
    });
  }
  const value = mount.offsetMm;
  const [low, high] = socket.offsetRangeMm;
  if (value === undefined) return null;
  if (value >= low - OFFSET_TOLERANCE_MM && value <= high + OFFSET_TOLERANCE_MM) return null;
  return fault(`${path}.socket.offsetMm`, { code: 'offsetOutOfRange', value, low, high });
}

export function socketNamed(sockets: readonly Socket[], name: string): Socket | null {
  for (const socket of sockets) if (socket.name === name) return socket;
  return null;
}
