import type { FileUnit, MeshFileFault, MeshNote, MeshReport } from '../../meshes/types';
import { t } from '../../messages';
import { phrase } from '../../messages/phrases';
import { fixed, significant } from '../../state/quantities';
import { grouped } from '../../state/shownUnits';

/** What is wrong, what was mended and what should be known, each in one sentence. */
export interface ReportLine {
  readonly tone: 'fault' | 'warning' | 'plain';
  readonly text: string;
}

function count(value: number): string {
  return grouped(String(value));
}

/** Why a file gives no mesh. */
export function meshFaultText(fault: MeshFileFault): string {
  switch (fault.kind) {
    case 'unknownFormat':
      return t('import.fault.unknownFormat', { extension: fault.extension });
    case 'fileTooLarge':
      return t('import.fault.fileTooLarge', {
        bytes: count(Math.round(fault.bytes / 1e6)),
        limit: count(Math.round(fault.limit / 1e6)),
      });
    case 'tooManyTriangles':
      return t('import.fault.tooManyTriangles', {
        count: count(fault.count),
        limit: count(fault.limit),
      });
    case 'malformed':
      return t('import.fault.malformed', { detail: phrase(fault.detail) });
    case 'unsupported':
      return t('import.fault.unsupported', { name: phrase(fault.name) });
    case 'unpacksTooLarge':
      return t('import.fault.unpacksTooLarge', {
        limit: `${count(fault.limit)} ${phrase(fault.what)}`,
      });
    case 'readerFailed':
      return t('import.fault.readerFailed', { detail: phrase(fault.detail) });
    default:
      return t(`import.fault.${fault.kind}`);
  }
}

/** The report in the order of what matters: verdict, what stops it, what was mended, what was passed over. */
export function reportLines(report: MeshReport): ReportLine[] {
  const lines: ReportLine[] = [];
  const say = (tone: ReportLine['tone'], text: string) => lines.push({ tone, text });
  const tell = (tone: ReportLine['tone'], key: Parameters<typeof t>[0], number: number) => {
    if (number > 0) say(tone, t(key, { count: count(number) }));
  };
  const verdictTone = { sound: 'plain', crossing: 'warning', cracked: 'fault' } as const;
  say(verdictTone[report.verdict], t(`import.verdict.${report.verdict}`));
  tell('fault', 'import.openEdges', report.openEdges);
  tell('fault', 'import.unorientedEdges', report.unorientedEdges);
  if (report.crowdedEdges > 0) tell('plain', 'import.crowdedEdges', report.crowdedEdges);
  const { pairs, finished, countedTwice } = report.crossing;
  if (pairs > 0) tell('warning', finished ? 'import.crossings' : 'import.crossingsMore', pairs);
  if (countedTwice && report.volume) {
    const share = significant((100 * countedTwice) / report.volume, 2);
    say('warning', t('import.countedTwice', { share }));
  }
  tell('plain', 'import.flipped', report.flippedTriangles);
  if (report.turnedInsideOut) say('plain', t('import.insideOut'));
  tell('plain', 'import.shellsTurned', report.shellsTurned);
  if (report.joinedPoints > 0) {
    const tolerance = significant(report.weldTolerance, 2);
    say('plain', t('import.joined', { count: count(report.joinedPoints), tolerance }));
  }
  tell('plain', 'import.dropped', report.degenerateTriangles + report.repeatedTriangles);
  for (const note of report.notes) say('plain', noteText(note));
  say('plain', sizeText(report));
  if (report.picture.reduced) tell('plain', 'import.reduced', report.picture.triangles);
  return lines;
}

function sizeText({ triangles, shells, cavities }: MeshReport): string {
  const pieces =
    shells === 1
      ? t('import.shellsOne')
      : t('import.shells', { count: count(shells), cavities: count(cavities) });
  return t('import.triangles', { count: count(triangles), shells: pieces });
}

const FORMATS = {
  stlBinary: 'STL',
  stlText: 'STL',
  obj: 'OBJ',
  '3mf': '3MF',
  glb: 'GLB',
  step: 'STEP',
} as const;

function noteText(note: MeshNote): string {
  switch (note.kind) {
    case 'extensionDiffers':
      return t('import.note.extensionDiffers', {
        extension: note.extension,
        format: FORMATS[note.format],
      });
    case 'trailingBytes':
      return t('import.note.trailingBytes', { bytes: count(note.bytes) });
    case 'leftOut':
      return t('import.note.leftOut', {
        count: count(note.count),
        what: t(`import.note.${note.what}`),
      });
    case 'concaveFaces':
      return t('import.note.concaveFaces', { count: count(note.count) });
    case 'tessellated':
      return t('import.note.tessellated', { deflection: significant(note.deflectionMm, 2) });
  }
}

/** "30.5 m", "42.0 mm", "0.35 mm": a size that shows a slip at once. */
export function sizeInWords(mm: number): string {
  if (mm >= 1000) return `${significant(mm / 1000)}\u00a0m`;
  return mm >= 1 ? `${fixed(mm, 1)}\u00a0mm` : `${significant(mm, 2)}\u00a0mm`;
}

export function unitName(unit: FileUnit): string {
  return t(`import.unit.${unit}`);
}

/** Shorter parts are more likely drawn in inches than so small, mm. */
const TINY_MM = 5;
/** Longer than any grip: not taken, whatever the person says. */
export const LONGEST_BODY_MM = 10_000;

/** What is to be said of the unit that is chosen: a slip, or that nothing fits. */
export function unitWarning(report: MeshReport, chosen: FileUnit): string | null {
  const { readings, slip, because } = report.unit;
  const reading = readings.find(({ unit }) => unit === chosen);
  if (!reading) return null;
  const inches = readings.find(({ unit }) => unit === 'in');
  const tiny = chosen === 'mm' && because !== 'stated' && reading.sizeMm < TINY_MM;
  if (reading.plausible && !(tiny && inches?.plausible)) return null;
  const likely = tiny ? inches : (slip?.likely ?? readings.find((one) => one.plausible));
  if (!likely) {
    return t('import.unitUnlikely', { size: sizeInWords(reading.sizeMm), unit: unitName(chosen) });
  }
  return t('import.unitSlip', {
    stated: unitName(chosen),
    size: sizeInWords(reading.sizeMm),
    likely: unitName(likely.unit),
    likelySize: sizeInWords(likely.sizeMm),
  });
}
