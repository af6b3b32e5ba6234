import { createMoments } from '../engine/mass/moments';
import { type Parameter, type Problem, parameterUnit, type Socket } from '../parts/contract';
import { partType } from '../parts/registry';
import { checkMeasured } from './checkMeasured';
import { checkNumber, wrongType } from './checkNumber';
import type { Design, Mount, Part } from './design';
import { type DesignFault, fault, within } from './fault';
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

/**
 * What follows says where a fault is from the value that it looks at: `[1]` in a list of numbers, nothing in a number.
 */
function checkTriple(value: unknown, limits: NumberLimits): DesignFault | null {
  if (!Array.isArray(value)) return fault('', wrongType('list', value));
  if (value.length !== 3)
    return fault('', { code: 'wrongCount', count: value.length, expected: 3 });
  return checkEach(value, limits);
}

function checkEach(values: readonly unknown[], limits: NumberLimits): DesignFault | null {
  for (let k = 0; k < values.length; k++) {
    const found = checkNumber(values[k], limits, '');
    if (found) return within(`[${k}]`, found);
  }
  return null;
}

/** The fault of a written value, or null. */
function checkParameter(value: unknown, spec: Parameter): DesignFault | null {
  switch (spec.type) {
    case 'number':
      return checkNumber(value, spec, '');
    case 'vector':
      return checkTriple(value, spec);
    case 'text':
      return checkText(value, 0, spec.maxLength);
    case 'numbers':
      if (!Array.isArray(value)) return fault('', wrongType('list', value));
      return value.length > spec.maxCount
        ? fault('', { code: 'tooMany', count: value.length, limit: spec.maxCount })
        : checkEach(value, spec);
    default:
      return checkChoice(value, spec.options);
  }
}

function checkChoice(value: unknown, options: readonly string[]): DesignFault | null {
  const known = (options as readonly unknown[]).includes(value);
  return known ? null : fault('', { code: 'notAChoice', found: String(value), options });
}

/** The fault of a text by its length (UTF-16 units), or null. */
function checkText(value: unknown, min: 0 | 1, max: number): DesignFault | null {
  if (typeof value !== 'string') return fault('', wrongType('text', value));
  if (value.length < min) return fault('', { code: 'emptyText' });
  if (value.length <= max) return null;
  return fault('', { code: 'textTooLong', length: value.length, limit: max });
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
 * catalogue and materials, its type's rules between parameters, what was measured of it, and its placement. Its path leads
 * on from the part's (`.lengthMm`). Whether its mount holds is `checkMount`'s question.
 */
export function checkPart(part: Part, materials: Materials): DesignFault | null {
  const id = checkText(part.id, 1, MAX_ID);
  if (id) return within('.id', id);
  const name = checkText(part.name, 0, MAX_NAME);
  if (name) return within('.name', name);
  const written = checkWritten(part) ?? checkReference(part);
  if (written) return written;
  const resolved = resolveValues(part, materials);
  if (!resolved.ok) return within('.', resolved.error);
  const [problem] = partType(part.kind).problems(resolved.value);
  if (problem) return problemFault(part, problem, resolved.value);
  return checkPlacement(part) ?? checkWeighed(part, resolved.value);
}

function checkWritten(part: Part): DesignFault | null {
  const { parameters } = partType(part.kind);
  for (const name in parameters) {
    const value = valueOf(part, name);
    if (value === undefined) continue;
    const found = checkParameter(value, parameters[name]);
    if (found) return within(`.${name}`, found);
  }
  return null;
}

/** The fault of a catalogue reference's own number. */
function checkReference({ kind, catalogue }: Part): DesignFault | null {
  const length = catalogue?.lengthMm;
  if (length === undefined) return null;
  const [min, max] = partType(kind).catalogue?.lengthLimitsMm ?? [0, 0];
  return checkNumber(length, { min, max, unit: 'mm' }, '.catalogue.lengthMm');
}

/** The fault of what was measured, each number by itself and against the part. */
function checkWeighed(part: Part, values: PartValues): DesignFault | null {
  if (!part.measured) return null;
  const measured = checkMeasured(part.measured, '.measured');
  if (measured) return measured;
  const weighed = weighPart(part, values, createMoments());
  return weighed.ok ? null : within('.', weighed.error);
}

function problemFault(part: Part, problem: Problem, values: PartValues): DesignFault {
  const { field } = problem;
  if (problem.rule === 'unsound') {
    return fault(`.${field}`, { code: 'unsound', detail: problem.detail });
  }
  const { rule, limit, against } = problem;
  return fault(`.${field}`, {
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

function checkPlacement({ pose, socket }: Part): DesignFault | null {
  if (pose && socket) return fault('', { code: 'poseOrSocket', found: 'both' });
  if (!pose && !socket) return fault('', { code: 'poseOrSocket', found: 'neither' });
  if (pose) {
    const position = checkTriple(pose.positionMm, POSITION_LIMITS);
    if (position) return within('.pose.positionMm', position);
    const rotation = checkTriple(pose.rotationDeg, TURN_LIMITS);
    return rotation && within('.pose.rotationDeg', rotation);
  }
  const { offsetMm, turnDeg } = socket as Mount;
  return (
    (offsetMm === undefined ? null : checkNumber(offsetMm, POSITION_LIMITS, '.socket.offsetMm')) ??
    (turnDeg === undefined ? null : checkNumber(turnDeg, TURN_LIMITS, '.socket.turnDeg'))
  );
}

/**
 * The fault of a mounted part's seat, or null: its parent is there, has the socket, the socket takes such a part and
 * the offset lies in the socket's range. `sockets` are the parent's; null where there is no such parent. The fault's path
 * leads on from the part's.
 */
export function checkMount(part: Part, sockets: readonly Socket[] | null): DesignFault | null {
  const mount = part.socket;
  if (!mount) return null;
  if (!sockets) return fault('.socket.part', { code: 'missingParent', parent: mount.part });
  const socket = socketNamed(sockets, mount.name);
  if (!socket) {
    const known = sockets.map((one) => one.name);
    const reason = {
      code: 'unknownSocket',
      socket: mount.name,
      parent: mount.part,
      known,
    } as const;
    return fault('.socket.name', reason);
  }
  const { mates } = partType(part.kind);
  if (!mates.includes(socket.mates)) {
    return fault('.socket.name', {
      code: 'misfit',
      kind: part.kind,
      socket: mount.name,
      socketMates: socket.mates,
      partMates: mates,
    });
  }
  const value = mount.offsetMm;
  if (value === undefined) return null;
  const low = socket.offsetRangeMm[0];
  const high = socket.offsetRangeMm[1];
  if (value >= low - OFFSET_TOLERANCE_MM && value <= high + OFFSET_TOLERANCE_MM) return null;
  return fault('.socket.offsetMm', { code: 'offsetOutOfRange', value, low, high });
}

export function socketNamed(sockets: readonly Socket[], name: string): Socket | null {
  for (let i = 0; i < sockets.length; i++) if (sockets[i].name === name) return sockets[i];
  return null;
}
