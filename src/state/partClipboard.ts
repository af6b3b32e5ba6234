import {
  DESIGN_FORMAT,
  DESIGN_VERSION,
  type Design,
  type Mount,
  type Part,
} from '../design/design';
import { type DesignFault, fault } from '../design/fault';
import { designFrom } from '../design/file';
import { type CarriedPart, ownMaterialsOf } from '../design/ownMaterials';
import { freePoseOf } from '../design/placement';
import { type Materials, materialsOf } from '../design/resolve';
import type { Pose } from '../engine/math/pose';
import { fail, type Result, succeed } from '../engine/result';
import { placesFor } from './places';

/** Names the text on the clipboard as ours. */
const FORMAT = 'stillgrip-part';
/** Room for a mesh with its picture. */
const MAX_LENGTH = 4_000_000;

/**
 * A part as text for the clipboard, with where it stands and the design's own materials it names, so that it can be put
 * into another head too.
 */
export function copyText(part: Part, pose_G: Pose, design: Design): string {
  const { pose: _pose, socket, hidden: _hidden, ...own } = part;
  const materials = ownMaterialsOf(part, materialsOf(design));
  const carried = { format: FORMAT, part: own, materials, socket, pose: freePoseOf(pose_G) };
  return JSON.stringify(carried, null, 2);
}

/** Whether clipboard text is a part of ours; what is not is left to others. */
export function isPartText(text: string): boolean {
  return text.length < MAX_LENGTH && text.includes(`"${FORMAT}"`);
}

/**
 * The part in clipboard text, ready to be put into `design`: on the socket it came from where that is there and free,
 * else where it stood in the grip frame. Checked as a file is checked. Its materials are those that came with it; text
 * without any (from before they did) means those of `design`.
 */
export function partFrom(text: string, design: Design): Result<CarriedPart, DesignFault> {
  const copied = read(text);
  if (!copied) return fail(fault('', { code: 'wrongFormat', found: '', expected: FORMAT }));
  const checked = designFrom({
    format: DESIGN_FORMAT,
    version: DESIGN_VERSION,
    name: design.name,
    rotor: design.rotor,
    materials: copied.materials ?? materialsOf(design),
    parts: [{ ...copied.part, pose: copied.pose }],
  });
  if (!checked.ok) return checked;
  const [part] = checked.value.parts;
  const materials: Materials = materialsOf(checked.value);
  if (!seatIsFree(design, part.kind, copied.socket)) return succeed({ part, materials });
  const { pose: _, ...unplaced } = part;
  return succeed({ part: { ...unplaced, socket: copied.socket } as Part, materials });
}

interface Copied {
  readonly part: object;
  readonly materials: unknown;
  readonly socket: unknown;
  readonly pose: unknown;
}

function read(text: string): Copied | null {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null) return null;
    const { format, part, materials, socket, pose } = value as Record<string, unknown>;
    if (format !== FORMAT || typeof part !== 'object' || part === null) return null;
    return { part, materials, socket, pose };
  } catch {
    return null;
  }
}

function seatIsFree(design: Design, kind: string, mount: unknown): mount is Mount {
  if (typeof mount !== 'object' || mount === null) return false;
  const { part: id, name } = mount as Mount;
  return placesFor(design, kind).some(({ part, socket }) => part.id === id && socket.name === name);
}
