import { INCH_MM } from '../../../src/engine/units';
import type { Sheet } from '../../../src/output/drawing/sheetTypes';
import { threadNamed } from '../../../src/output/drawing/threadName';
import type { Values } from '../../parts/sample';

/** A size as a machinist reads it off the sheet, mm; undefined where it is not printed. */
type Read = (feature: string, pattern?: RegExp) => number | undefined;

function reader(sheet: Sheet): Read {
  const factor = sheet.unit === 'in' ? INCH_MM : 1;
  const printed = new Map(
    sheet.entities.flatMap((one) =>
      one.shape === 'text' && one.dimension !== undefined ? [[one.dimension, one.text]] : [],
    ),
  );
  return (feature, pattern = /([\d.]+)/) => {
    const text = printed.get(feature);
    if (text === undefined) return undefined;
    const found = pattern.exec(text);
    if (!found) throw new Error(`${feature}: "${text}" has no ${pattern}`);
    return Number(found[1]) * factor;
  };
}

/** The text of a dimension. */
export function printedText(sheet: Sheet, feature: string): string | undefined {
  const found = sheet.entities.find((one) => one.shape === 'text' && one.dimension === feature);
  return found?.shape === 'text' ? found.text : undefined;
}

/** All texts of the sheet, in one. */
export function wordsOf(sheet: Sheet): string {
  return sheet.entities.flatMap((one) => (one.shape === 'text' ? [one.text] : [])).join('\n');
}

function thread(sheet: Sheet): { diameterMm: number; pitchMm: number } {
  const text = printedText(sheet, 'thread');
  if (text === undefined) throw new Error('no thread is called out');
  const named = threadNamed(text.replace(/,.*$/, '').trim());
  if (!named) throw new Error(`thread "${text}" is not understood`);
  return named;
}

function density(sheet: Sheet): number {
  const found = /([\d.]+) kg\/m\u00b3$/m.exec(wordsOf(sheet));
  if (!found) throw new Error('no density is printed');
  return Number(found[1]);
}

function rebuildBolt(sheet: Sheet, read: Read): Values {
  const text = printedText(sheet, 'thread') ?? '';
  const hexagon = printedText(sheet, 'headDiameterMm')?.startsWith('AF') === true;
  // A head and its extension of one diameter are one cylinder: the total alone.
  const headed = read('headHeightMm') !== undefined || read('headTotal') !== undefined;
  const button = read('headTopDiameterMm') !== undefined;
  const total = read('headTotal');
  const headHeight = read('headHeightMm') ?? total ?? 0;
  const lengthMm = read('lengthMm') ?? Number.NaN;
  const { diameterMm, pitchMm } = thread(sheet);
  const full = /to the head|full length/.test(text);
  return {
    lengthMm,
    headForm: !headed ? 'none' : button ? 'button' : hexagon ? 'hexagon' : 'cap',
    headHeightMm: headHeight,
    headDiameterMm: read('headDiameterMm') ?? 1,
    headChamferMm: read('headChamferMm') ?? 0,
    headTopDiameterMm: read('headTopDiameterMm') ?? 1,
    headRimHeightMm: read('headRimHeightMm') ?? 0,
    extensionLengthMm: read('extensionLengthMm') ?? (total === undefined ? 0 : total - headHeight),
    extensionDiameterMm: read('extensionDiameterMm') ?? 1,
    threadLengthMm: full ? lengthMm : (read('threadLengthMm') ?? Number.NaN),
    shankDiameterMm: diameterMm,
    threadPitchMm: pitchMm,
    threadForm: wordsOf(sheet).includes('Thread rolled') ? 'rolled' : 'basic',
    threadRunOutMm: read('threadRunOutMm') ?? 0,
    pointDiameterMm: read('pointDiameterMm') ?? 0,
    socketAcrossMm: read('socket', /AF ([\d.]+)/) ?? 1,
    socketDepthMm: read('socket', /, ([\d.]+)[^,]* deep/) ?? 0,
    densityKgM3: density(sheet),
    propertyClass: 'unknown',
  };
}

function rebuildNut(sheet: Sheet, read: Read): Values {
  const heightMm = read('heightMm') ?? Number.NaN;
  const throughThread = read('threadTotal');
  const collarHeightMm =
    read('collarHeightMm') ?? (throughThread === undefined ? 0 : throughThread - heightMm);
  const total = read('total');
  const ring = /Locking ring: ([\d.]+)/.exec(wordsOf(sheet));
  const { diameterMm, pitchMm } = thread(sheet);
  return {
    form: printedText(sheet, 'acrossMm')?.startsWith('AF') === true ? 'hex' : 'round',
    acrossMm: read('acrossMm') ?? Number.NaN,
    heightMm,
    threadDiameterMm: diameterMm,
    threadPitchMm: pitchMm,
    collarDiameterMm: read('collarDiameterMm') ?? 1,
    collarHeightMm,
    collarGrip: wordsOf(sheet).includes('Collar squeezed') ? 'squeezed' : 'plain',
    closedEndMm:
      read('closedEndMm') ?? (total === undefined ? 0 : total - heightMm - collarHeightMm),
    chamferMm: read('chamferMm') ?? 0,
    countersinkDiameterMm: read('countersinkDiameterMm') ?? 0,
    insertHeightMm: read('insertHeightMm') ?? 0,
    insertInnerDiameterMm: read('insertInnerDiameterMm') ?? 1,
    insertOuterDiameterMm: read('insertOuterDiameterMm') ?? 1,
    insertDensityKgM3: ring ? Number(ring[1]) : 1000,
    densityKgM3: density(sheet),
  };
}

function rebuildWeight(sheet: Sheet, read: Read): Values {
  const stalkLengthMm = read('stalkLengthMm') ?? 0;
  const total = read('total');
  return {
    diameterMm: read('diameterMm') ?? Number.NaN,
    lengthMm: read('lengthMm') ?? (total === undefined ? Number.NaN : total - stalkLengthMm),
    boreMm: read('boreMm') ?? 0,
    stalkDiameterMm: read('stalkDiameterMm') ?? 1,
    stalkLengthMm,
    densityKgM3: density(sheet),
  };
}

function rebuildWasher(sheet: Sheet, read: Read): Values {
  return {
    outerDiameterMm: read('outerDiameterMm') ?? Number.NaN,
    innerDiameterMm: read('innerDiameterMm') ?? Number.NaN,
    thicknessMm: read('thicknessMm') ?? Number.NaN,
    densityKgM3: density(sheet),
  };
}

const BUILDERS: Readonly<Record<string, (sheet: Sheet, read: Read) => Values>> = {
  bolt: rebuildBolt,
  nut: rebuildNut,
  weight: rebuildWeight,
  washer: rebuildWasher,
};

/** The part's numbers, from nothing but what is printed on its sheet. */
export function rebuilt(kind: string, sheet: Sheet): Values {
  return BUILDERS[kind](sheet, reader(sheet));
}
