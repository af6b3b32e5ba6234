import { fail, type Result, succeed } from '../../engine/result';
import {
  ALWAYS_PLACED,
  MAX_COORDINATE,
  MAX_TRIANGLES,
  type MeshFileFault,
  type MeshFormat,
  type RawMesh,
} from '../types';

/** Share of the reading that is done, in [0, 1]. */
export type ShareDone = (share: number) => void;
export type MeshReader = (bytes: Uint8Array, progress: ShareDone) => Result<RawMesh, MeshFileFault>;

/**
 * Carries a fault out of the depth of a reader; never leaves `reader` below. The readers are deep in loops and
 * callbacks where a Result at every step would cost more than the reading.
 */
class FaultSignal extends Error {
  constructor(readonly fault: MeshFileFault) {
    super(fault.kind);
  }
}

export function refuse(fault: MeshFileFault): never {
  throw new FaultSignal(fault);
}

/** `detail` completes "the file cannot be read because it ...". */
export function malformed(format: MeshFormat, detail: string): never {
  throw new FaultSignal({ kind: 'malformed', format, detail });
}

/** Makes a reader that ends in a Result whatever its body throws. */
export function reader(read: (bytes: Uint8Array, progress: ShareDone) => RawMesh): MeshReader {
  return (bytes, progress) => {
    try {
      return succeed(read(bytes, progress));
    } catch (thrown) {
      return fail(faultOf(thrown));
    }
  };
}

/** The fault that something thrown stands for: a reader's own, or whatever the machine gave up with. */
export function faultOf(thrown: unknown): MeshFileFault {
  if (thrown instanceof FaultSignal) return thrown.fault;
  return {
    kind: 'readerFailed',
    detail: thrown instanceof Error ? thrown.message : String(thrown),
  };
}

export function checkTriangleCount(count: number, format: MeshFormat): void {
  if (count > MAX_TRIANGLES) refuse({ kind: 'tooManyTriangles', count, limit: MAX_TRIANGLES });
  if (count === 0) refuse({ kind: 'noTriangles', format });
}

/**
 * Refuses what a small file comes to by placing the same bodies over and over (`ALWAYS_PLACED`): time and memory go by that,
 * not by its bytes.
 */
export function checkPlacedCount(count: number, bytes: number, format: MeshFormat): void {
  const limit = Math.max(ALWAYS_PLACED, bytes);
  if (count > limit) malformed(format, `places more than ${limit} triangles with ${bytes} bytes`);
}

/** A coordinate that is a place: finite and within the limit. `where` reads "triangle 7" or "line 12". */
export function checkCoordinate(value: number, format: MeshFormat, where: () => string): number {
  if (Math.abs(value) <= MAX_COORDINATE) return value;
  return malformed(
    format,
    Number.isFinite(value)
      ? `has a coordinate of ${value} in ${where()}, beyond ${MAX_COORDINATE}`
      : `has a coordinate that is not a number in ${where()}`,
  );
}
