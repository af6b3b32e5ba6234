import { serializeDesign } from '../../design/file';
import { materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import type { PartReading } from '../../state/reading';
import { fileStem } from '../../ui/fileStem';
import { isoDay } from '../isoDay';
import type { SolidUnit } from '../solids/bodyMesh';
import { hexColour } from '../solids/colours';
import { type FileBodies, headBodies, partBodies } from '../solids/fileBodies';
import { FINENESSES, type Fineness } from '../solids/fineness';
import { glbFile } from '../solids/glbFile';
import { isExact } from '../solids/stepFit';
import type { StepRequest } from '../solids/stepTypes';
import { stlFile } from '../solids/stlFile';
import { threeMfFile } from '../solids/threeMfFile';
import type { Head } from './useRestingHead';

export const FORMATS = ['stl', 'threeMf', 'glb', 'step'] as const;
export type SolidFormat = (typeof FORMATS)[number];
export const WHATS = ['head', 'chosen', 'part'] as const;

/** What is to be saved as a solid, and how; no part of the design. */
export interface SolidChoice {
  readonly what: (typeof WHATS)[number];
  /** Parts left out of several: parts that come later are in. */
  readonly without: ReadonlySet<string>;
  /** The one part; null or gone: the first that has a body. */
  readonly part: string | null;
  readonly format: SolidFormat;
  readonly unit: SolidUnit;
  readonly fineness: Fineness;
}

export const FIRST_CHOICE: SolidChoice = {
  what: 'head',
  without: new Set(),
  part: null,
  format: 'threeMf',
  unit: 'mm',
  fineness: 'fine',
};

/** What the choice comes to in the head as it is now. */
export interface SolidContent extends FileBodies {
  readonly title: string;
  /** Of the file's name. */
  readonly stem: string;
}

export function solidContent(head: Head, choice: SolidChoice): SolidContent {
  const { design, pitchDeg, reading } = head;
  const materials = materialsOf(design);
  const stem = fileStem(design.name, 'head');
  const parts = partsOf(head);
  if (choice.what === 'part') {
    const one = chosenPart(head, choice);
    if (!one) return { bodies: [], leftOut: [], title: design.name, stem };
    const { name } = one.part;
    const part = fileStem(name, one.part.id);
    return { ...partBodies(one, materials), title: name, stem: `${stem}-${part}` };
  }
  const several = choice.what === 'chosen';
  const wanted = several ? parts.filter(({ part }) => !choice.without.has(part.id)) : parts;
  const rodAxis = reading.linkage?.rodAxisAt(pitchDeg) ?? null;
  const found = headBodies(wanted, { rotor: reading.rotor, pitchDeg, rodAxis }, materials);
  return { ...found, title: design.name, stem: `${stem}-${several ? 'parts' : 'head'}` };
}

/** Parts that have a body of their own, hidden or not. */
export function bodyParts(head: Head): PartReading[] {
  const materials = materialsOf(head.design);
  return partsOf(head).filter((one) => partBodies(one, materials).bodies.length > 0);
}

export function chosenPart(head: Head, { part }: SolidChoice): PartReading | undefined {
  const all = bodyParts(head);
  return all.find((one) => one.part.id === part) ?? all[0];
}

function partsOf({ reading }: Head): PartReading[] {
  return reading.order.flatMap((id) => reading.part(id) ?? []);
}

/** The bytes of a file of triangles. */
export function triangleFile(
  head: Head,
  choice: SolidChoice,
  format: Exclude<SolidFormat, 'step'>,
): Uint8Array {
  const { bodies, title } = solidContent(head, choice);
  if (bodies.length === 0) throw new Error(t('files.empty'));
  const segmentsPerTurn = FINENESSES[choice.fineness];
  if (format === 'stl') return stlFile(bodies, title, choice.unit, segmentsPerTurn);
  if (format === 'glb') return glbFile(bodies, title, segmentsPerTurn);
  return threeMfFile(bodies, {
    title,
    description: descriptionOf(title),
    unit: choice.unit,
    segmentsPerTurn,
    date: isoDay(new Date()),
    design: serializeDesign(head.design),
  });
}

/** What is asked of the CAD kernel: only bodies with true surfaces. */
export function stepRequest({ bodies, title }: SolidContent, unit: SolidUnit): StepRequest {
  return {
    bodies: bodies.filter(isExact).map(({ name, solids, pose, finish }) => ({
      name,
      solids,
      pose,
      colour: hexColour(finish),
    })),
    unit,
    title,
    description: descriptionOf(title),
  };
}

function descriptionOf(title: string): string {
  return t('files.description', { title, threads: t('files.threads') });
}
