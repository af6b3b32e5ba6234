import {
  DESIGN_FORMAT,
  DESIGN_VERSION,
  type Design,
  type Mount,
  type Part,
} from '../design/design';
import { type DesignFault, fault } from '../design/fault';
import { designFrom } from '../design/file';
import { freePoseOf } from '../design/placement';
import type { Pose } from '../engine/math/pose';
import { fail, type Result, succeed } from '../engine/result';
import { placesFor } from './places';

/** Names the text on the clipboard as ours. */
const FORMAT = 'stillgrip-part';
const MAX_LENGTH = 100_000;

/** A part as text for the clipboard, with where it stands, so that it can be put into another head too. */
export function copyText(part: Part, pose_G: Pose): string {
  const { pose: _pose, socket, hidden: _hidden, ...own } = part;
  return JSON.stringify({ format: FORMAT, part: own, socket, pose: freePoseOf(pose_G) }, null, 2);
}

/** Whether clipboard text is a part of ours; what is not is left to others. */
export function isPartText(text: string): boolean {
  return text.length < MAX_LENGTH && text.includes(`"${FORMAT}"`);
}

/**
 * The part in clipboard text, ready to be put into `design`: on the socket it came from where that is there and free,
 * else where it stood in the grip frame. Checked as a file is checked.
 */
export function partFrom(text: string, design: Design): Result<Part, DesignFault> {
  const copied = read(text);
  if (!copied) return fail(fault('', { code: 'wrongFormat', found: '', expected: FORMAT }));
  const checked = designFrom({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    name: design.name,
    rotor: design.rotor,
    parts: [{ ...copied.part, pose: copied.pose }],
  });
  if (!checked.ok) return checked;
  const [part] = checked.value.parts;
  if (!seatIsFree(design, part.kind, copied.socket)) return succeed(part);
  const { pose: _, ...unplaced } = part;
  return succeed({ ...unplaced, socket: copied.socket } as Part);
}

interface Copied {
  readonly part: object;
  readonly socket: unknown;
  readonly pose: unknown;
}

function read(text: string): Copied | null {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return null;
    const { format, part, socket, pose } = value as Record<string, unknown>;
    if (format !== FORMAT || typeof part !== 'object' || part === null) return null;
    return { part, socket, pose };
  } catch {
    return null;
  }
}

function seatIsFree(design: Design, kind: string, mount: unknown): mount is Mount {
  if (typeof mount !== 'object' || mount === null) return false;
  const { part: id, name } = mount as Mount;
  return placesFor(design, kind).some(({ part, socket }) => part.id === id && socket.name === name);
}
