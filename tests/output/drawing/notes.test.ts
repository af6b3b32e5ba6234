import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { drawSheet } from '../../../src/output/drawing/drawSheet';
import type { LengthUnit } from '../../../src/output/drawing/sheetTypes';

const FILE = new URL('../../../assets/designs/4-turned-nut.json', import.meta.url);

/** All that a sheet of the demo head says, its lines joined. */
function said(part: string, unit: LengthUnit): string {
  const read = parseDesign(readFileSync(FILE, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  const found = read.value.parts.find(({ id }) => id === part);
  if (!found) throw new Error(`no ${part}`);
  const choice = { format: 'auto', projection: 'third', unit, date: '2026-01-01' } as const;
  const sheet = drawSheet(read.value, found, choice);
  if (!sheet.ok) throw new Error(sheet.error);
  return sheet.value.entities
    .flatMap((one) => (one.shape === 'text' ? [one.text] : []))
    .join(' ')
    .replaceAll('\u00a0', ' ');
}

describe('the notes of a sheet', () => {
  // ISO 2768-1, table 1, class m (from memory): 0.1 mm up to 6, 0.2 up to 30, 0.3 up to 120; an inch is 25.4 mm.
  it('give the general tolerances in inches where lengths are, never wider than the standard', () => {
    expect(said('nut', 'in')).toContain(
      'decimals set no tolerance. General tolerances ISO 2768-m: \u00b10.0039 to 0.236, \u00b10.0078 to 1.181.',
    );
    // 22 and 10 mm end to end reach into the next row.
    expect(said('bolt', 'in')).toContain('\u00b10.0078 to 1.181, \u00b10.0118 to 4.724.');
    expect(said('nut', 'mm')).toContain('Lengths in mm. General tolerances ISO 2768-m.');
    expect(said('washer-top', 'in')).not.toContain('\u00b1');
  });

  it('ask a turned nut for the class that goes with its bolt (ISO 898-2), a bolt not', () => {
    expect(said('nut', 'mm')).toContain('nut class that goes with the bolt (ISO 898-2)');
    expect(said('bolt', 'mm')).not.toContain('898-2');
  });
});
