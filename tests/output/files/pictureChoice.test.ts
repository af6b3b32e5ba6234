import { describe, expect, it } from 'vitest';
import { readNumber } from '../../../src/output/files/NumberRow';
import {
  FIRST_PICTURE,
  mmOf,
  PIXELS,
  pictureSize,
  pixelsOf,
  sheetOf,
  sizeFault,
} from '../../../src/output/files/pictureChoice';
import { createSession } from '../../../src/state/createSession';
import { type DisplayUnits, METRIC_UNITS } from '../../../src/state/settings';
import { shownUnit } from '../../../src/state/shownUnits';
import { DEMOS, demo } from '../solids/heads';

const design = demo(DEMOS[2]);
const { reading } = createSession(design, () => {}).live;
const head = { reading, design, pitchDeg: 5 };

describe('the size of a picture', () => {
  it('is 600 pixels for two inches at 300 an inch, and back', () => {
    expect(pixelsOf(50.8, 300)).toBe(600);
    expect(mmOf(600, 300)).toBeCloseTo(50.8, 12);
  });

  it('keeps the shape that is chosen, in pixels and on paper', () => {
    const size = pictureSize({ ...FIRST_PICTURE, shape: '4:3' }, null);
    expect(size.width / size.height).toBeCloseTo(4 / 3, 2);
    expect(size.widthMm / size.heightMm).toBeCloseTo(4 / 3, 12);
    expect(size.widthMm).toBe(160);
  });

  it('is that of the drawing where it is drawn', () => {
    const choice = { ...FIRST_PICTURE, which: 'chart' } as const;
    const sheet = sheetOf(head, METRIC_UNITS, choice);
    if (!sheet) throw new Error('no sheet');
    const size = pictureSize(choice, sheet);
    expect(size.widthMm / size.heightMm).toBeCloseTo(sheet.width / sheet.height, 12);
  });

  it('that cannot be drawn is refused with the limit, and of a drawing in SVG only millimetres count', () => {
    const fault = (more: object, units: DisplayUnits = METRIC_UNITS) => {
      const choice = { ...FIRST_PICTURE, ...more };
      return sizeFault(choice, pictureSize(choice, sheetOf(head, units, choice)), units);
    };
    expect(fault({})).toBeNull();
    expect(fault({ widthMm: 1000 })).toContain(String(PIXELS.high));
    expect(fault({ widthMm: 1 })).toContain('64');
    expect(fault({ widthMm: 1000, which: 'dial', format: 'svg' })).toBeNull();
    expect(fault({ widthMm: 1, which: 'dial', format: 'svg' })).toContain(
      '10\u00a0mm to 2000\u00a0mm',
    );
    // 10 mm and 2000 mm over 25.4, to four places.
    expect(
      fault({ widthMm: 2540, which: 'dial', format: 'svg' }, { ...METRIC_UNITS, length: 'in' }),
    ).toBe('Width: 0.3937\u00a0in to 78.7402\u00a0in, not 100\u00a0in.');
    // The tall one: its height ends it first.
    expect(fault({ widthMm: 330, shape: '3:4' })).toContain('3072');
    expect(fault({ widthMm: 330, shape: '16:10' })).toBeNull();
  });

  it('is not taken on where no density could draw it: 1e308 mm, nothing, less than nothing', () => {
    const mm = { field: 'mm', shown: shownUnit('mm', METRIC_UNITS) } as const;
    const read = (text: string) => readNumber(text, 'Width', 160, mm);
    expect(read('1e308')).toBe('Width must be at most 10000\u00a0mm. 160\u00a0mm is kept.');
    expect(read('1e400')).toBe('Width: this has no finite value.');
    for (const text of ['0', '-0', '-5']) {
      expect(read(text)).toBe('Width must be at least 1\u00a0mm. 160\u00a0mm is kept.');
    }
    expect(read('1/2 in')).toBe(12.7);
    const pixels = { field: '1', shown: { name: '', perShown: 1, decimals: 0 } } as const;
    const count = (text: string) => readNumber(text, 'Width', 1890, pixels);
    expect(count('1e308')).toBe('Width must be at most 100000. 1890 is kept.');
    expect(count('1.5')).toBe('Width must be a whole number. 1890 is kept.');
    expect(count('64')).toBe(64);
  });
});

describe('the words above a picture', () => {
  it('name design, pitch and speed, and are left out where they are not wanted', () => {
    const texts = (words: boolean) =>
      (sheetOf(head, METRIC_UNITS, { ...FIRST_PICTURE, which: 'dial', words })?.shapes ?? [])
        .flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
        .join(' | ');
    expect(texts(true)).toContain(design.name);
    expect(texts(true)).toContain('+5.0\u00b0');
    expect(texts(true)).toContain(`${design.rotor.speedRpm} rpm`);
    expect(texts(false)).not.toContain(design.name);
  });
});
