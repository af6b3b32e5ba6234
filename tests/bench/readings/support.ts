import { expect } from 'vitest';
import { type DerivedReadings } from '../../../src/bench/readings/derive';
import type { ReadingsFault } from '../../../src/bench/readings/fault';
import { faultText } from '../../../src/bench/readings/faultText';
import {
  type PreviewChoices,
  previewReadings,
  type ReadingsPreview,
} from '../../../src/bench/readings/preview';
import { type ReadingsTable, readTable } from '../../../src/bench/readings/readTable';
import type { Reading, ReadOptions } from '../../../src/bench/readings/types';

/**
 * Factors of NIST SP 811 (2008), Appendix B.8, printed there to seven digits (from memory), not those of the program:
 * pound-force 4.448222 N, kilogram-force 9.80665 N, ounce-force 0.2780139 N, ounce-force inch 7.061552e-3 N m,
 * pound-force inch 0.1129848 N m, degree 0.01745329 rad, revolution per minute 0.1047198 rad/s.
 */
export const NIST = {
  lbf: 4.448222,
  kgf: 9.80665,
  ozf: 0.2780139,
  ozfIn: 7.061552e-3,
  lbfIn: 0.1129848,
  deg: 0.01745329,
  rpm: 0.1047198,
} as const;
/** Half a unit of the seventh digit, at its worst (leading digit 1), with room for the rounding of the product. */
export const NIST_RELATIVE = 6e-7;

export function preview(source: string | Uint8Array, choices?: PreviewChoices): ReadingsPreview {
  const read = previewReadings(source, choices);
  if (!read.ok) throw new Error(faultText(read.error));
  return read.value;
}

export function derive(source: string | Uint8Array, choices?: PreviewChoices): DerivedReadings {
  const { derived } = preview(source, choices);
  if (!derived.ok) throw new Error(derived.error.map(faultText).join(' '));
  return derived.value;
}

export function tableOf(text: string, options?: ReadOptions): ReadingsTable {
  const read = readTable(text, options);
  if (!read.ok) throw new Error(faultText(read.error));
  return read.value;
}

/** Row, column and code of a fault, as short as a test's table wants it. */
export function place({ row, column, reason }: ReadingsFault): string {
  return `${row ?? '-'}:${column ?? '-'} ${reason.code}`;
}

/** Every refusal of a table, wherever it arose. */
export function refusals(source: string | Uint8Array, choices?: PreviewChoices): string[] {
  const read = previewReadings(source, choices);
  if (!read.ok) return [place(read.error)];
  const { derived } = read.value;
  return (derived.ok ? derived.value.refused : derived.error).map(place);
}

export function expectNear(
  found: readonly (number | null)[],
  wanted: readonly (number | null)[],
  relative = NIST_RELATIVE,
): void {
  expect(found.length).toBe(wanted.length);
  for (const [k, want] of wanted.entries()) {
    const value = found[k];
    if (want === null || value === null) expect(value, `entry ${k}`).toBe(want);
    else
      expect(Math.abs(value - want), `entry ${k}: ${value} for ${want}`).toBeLessThanOrEqual(
        relative * Math.abs(want),
      );
  }
}

/** A row in which nothing was read. */
export const NO_READING: Reading = {
  row: 1,
  column: 0,
  pitch: null,
  scale: null,
  force: null,
  moment: null,
  travel: null,
  speed: null,
  time: null,
  run: '',
  note: '',
};
