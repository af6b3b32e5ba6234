import { POSITION_LIMITS } from '../../design/limits';
import { fail, type Result, succeed } from '../../engine/result';
import { type PlainNumberFault, plainNumber } from '../../state/typed/plainNumber';

/** Why typed text is no station. */
export type StationFault = PlainNumberFault | 'outside';

/** Reads a typed station in mm: one decimal number, with point or comma, within the limits of a position. */
export function readStation(typed: string): Result<number, StationFault> {
  const read = plainNumber(typed);
  if (!read.ok) return read;
  const { min, max } = POSITION_LIMITS;
  return read.value >= min && read.value <= max ? succeed(read.value) : fail('outside');
}
