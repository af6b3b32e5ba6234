import type { Parameter, Socket } from '../parts/contract';
import { partType } from '../parts/registry';
import type { Design, Part, Rotor } from './design';
import { type DesignFault, fault } from './fault';
import {
  MAX_ID,
  MAX_NAME,
  MAX_NOTE,
  type NumberLimits,
  POSITION_LIMITS,
  ROTOR_LIMITS,
  TURN_LIMITS,
} from './limits';
import { valueOf, valuesOf } from './values';

/** Offsets within this of an end of their range (mm) are at the end: ranges are sums of typed numbers. */
const OFFSET_TOLERANCE_MM = 1e-9;

/** The fault of one number against its limits (both allowed), or null. */
export function checkNumber(
  value: unknown,
  limits: NumberLimits,
  path: string,
): DesignFault | null {
  if (typeof value !== 'number') return fault(path, wrongType('number', value));
  if (!Number.isFinite(value)) return fault(path, { code: 'notFinite' });
  if (limits.whole && !Number.isInteger(value)) return fault(path, { code: 'notWhole', value });
  const { min, max, unit } = limits;
  if (value < min) return fault(path, { code: 'tooSmall', value, limit: min, unit });
  if (value > max) return fault(path, { code: 'tooLarge', value, limit: max, unit });
  return null;
}

export function wrongType(expected: string, value: unknown) {
  return { code: 'wrongType', expected, found: typeName(value) } as const;
}

/** What a JSON value is, in a person's words. */
export function typeName(value: unknown): string {
  if (value === null) return 'null';
  if (Array.isArray(value)) return 'list';
  return typeof value === 'string' ? 'text' : typeof value;
}

function checkTriple(value: unknown, limits: NumberLimits, path: string): DesignFault | null {
  if (!Array.isArray(value)) return fault(path, wrongType('list', value));
  if (value.length !== 3)
    return fault(path, { code: 'wrongCount', count: value.length, expected: 3 });
  for (let k = 0; k < 3; k++) {
    const found = checkNumber(value[k], limits, `${path}[${k}]`);
    if (found) return found;
  }
  return null;
}

function checkParameter(value: unknown, spec: Parameter, path: string): DesignFault | null {
  if (value === undefined) return fault(path, { code: 'missing' });
  if (spec.type === 'number') return checkNumber(value, spec, path);
  if (spec.type === 'vector') return checkTriple(value, spec, path);
  const known = (spec.options as readonly unknown[]).includes(value);
  return known
    ? null
    : fault(path, { code: 'notAChoice', found: String(value), options: spec.options });
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

/** The rotor's first fault, or null. */
export function checkRotor(rotor: Rotor): DesignFault | null {
  for (const name of Object.keys(ROTOR_LIMITS) as (keyof typeof ROTOR_LIMITS)[]) {
    const value = rotor[name];
    if (value === undefined && name === 'usedPitchDeg') continue;
    const found = checkNumber(value, ROTOR_LIMITS[name], `rotor.${name}`);
    if (found) return found;
  }
  return null;
}

/**
 * The first fault of a part on its own, or null: lengths of its texts, limits of its parameters and its placement, and its type's rules
 * between parameters. `path` is the part's (`parts[2]`). Whether its mount holds is `checkMount`'s question.
 */
export function checkPart(part: Part, path: string): DesignFault | null {
  const type = partType(part.kind);
  const text =
    checkText(part.id, 1, MAX_ID, `${path}.id`) ??
    checkText(part.name, 0, MAX_NAME, `${path}.name`);
  if (text) return text;
  for (const name in type.parameters) {
    const found = checkParameter(valueOf(part, name), type.parameters[name], `${path}.${name}`);
    if (found) return found;
  }
  const placed = checkPlacement(part, path);
  if (placed) return placed;
  const [problem] = type.problems(valuesOf(part));
  if (!problem) return null;
  const { field, rule, limit, against } = problem;
  const spec = type.parameters[field];
  return fault(`${path}.${field}`, {
    code: 'rule',
    kind: part.kind,
    field,
    rule,
    value: valueOf(part, field) as number,
    limit,
    against,
    unit: spec && spec.type !== 'choice' ? spec.unit : '1',
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
