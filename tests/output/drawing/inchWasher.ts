import type { Part } from '../../../src/design/design';
import { drawSheet } from '../../../src/output/drawing/drawSheet';
import type { LengthUnit, Sheet } from '../../../src/output/drawing/sheetTypes';
import { EMPTY_DESIGN } from '../../../src/state/store';

/** An inch outside (25.4 mm by definition), half an inch inside, an eighth thick. */
const WASHER = {
  id: 'washer',
  kind: 'washer',
  name: 'Washer \u00d825.4',
  pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] },
  outerDiameterMm: 25.4,
  innerDiameterMm: 12.7,
  thicknessMm: 3.175,
  densityKgM3: 7850,
} as unknown as Part;

/** The washer on the sheet that fits. */
export function inchWasherSheet(unit: LengthUnit): Sheet {
  const choice = { format: 'auto', projection: 'first', unit, date: '2026-01-01' } as const;
  const drawn = drawSheet({ ...EMPTY_DESIGN, parts: [WASHER] }, WASHER, choice);
  if (!drawn.ok) throw new Error('the washer does not fit any sheet');
  return drawn.value;
}
