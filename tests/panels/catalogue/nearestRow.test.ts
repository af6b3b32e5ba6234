import { describe, expect, it } from 'vitest';
import { nearestRow } from '../../../src/panels/catalogue/chosenRow';
import { boltCatalogue as bolts } from '../../../src/parts/bolt/catalogue';
import { createSession } from '../../../src/state/createSession';
import { DEMOS, demo } from '../../output/solids/heads';

describe('the row that a choice begins with', () => {
  it('is that of the part: its M3 cap screw, whatever its length', () => {
    const { model } = createSession(demo(DEMOS[2]), () => {}).live;
    const values = model.placed('bolt')?.values ?? {};
    expect(nearestRow(bolts, values)).toBe('ISO 4762 M3');
    expect(nearestRow(bolts, { ...values, lengthMm: 400 })).toBe('ISO 4762 M3');
  });

  it('is a button head for a low wide head', () => {
    // ISO 7380-1 M4: head 7.6 wide, 2.2 high, socket 2.5 mm; from memory.
    const values = { shankDiameterMm: 4, threadPitchMm: 0.7, headDiameterMm: 7.6 };
    expect(
      nearestRow(bolts, { ...values, headHeightMm: 2.2, socketAcrossMm: 2.5, socketDepthMm: 1.3 }),
    ).toMatch(/^ISO 7380\S* M4$/);
  });

  it('is none of a catalogue without rows', () => {
    expect(nearestRow({ standards: [] }, {})).toBeNull();
  });
});
