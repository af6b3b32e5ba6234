import { mmFromMetres } from '../../engine/units';
import { t } from '../../messages';
import { significant } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { shownUnit } from '../../state/shownUnits';
import { bodyMesh } from '../solids/bodyMesh';
import type { FileBodies } from '../solids/fileBodies';
import { FINENESSES, fileDeviation } from '../solids/fineness';
import { isExact } from '../solids/stepFit';
import type { SolidChoice, SolidContent } from './solidChoice';

/** More names than these are counted. */
const MOST_NAMES = 12;

/** What will be in a file of solids, a sentence each. */
export function contentLines(
  content: SolidContent,
  choice: SolidChoice,
  units: DisplayUnits,
): string[] {
  const { bodies, leftOut } = content;
  const step = choice.format === 'step';
  const inIt = step ? bodies.filter(isExact) : bodies;
  if (inIt.length === 0)
    return [t(step && bodies.length > 0 ? 'files.noStepAtAll' : 'files.empty')];
  const lines = [t('files.inIt', { parts: namesOf(inIt) })];
  const without = step ? bodies.filter((body) => !isExact(body)) : [];
  if (without.length > 0) lines.push(t('files.noStep', { parts: namesOf(without) }));
  if (leftOut.length > 0) lines.push(t('files.leftOut', { parts: leftOutText(leftOut) }));
  if (!step) lines.push(triangleText(content, choice, units));
  lines.push(noteText(choice), t('files.threads'));
  return lines;
}

function noteText({ format, unit }: SolidChoice): string {
  return format === 'stl'
    ? t('files.note.stl', { unit: t(`files.unit.${unit}`) })
    : t(`files.note.${format}`);
}

function triangleText(
  { bodies }: SolidContent,
  { fineness }: SolidChoice,
  units: DisplayUnits,
): string {
  const segments = FINENESSES[fineness];
  const count = bodies.reduce(
    (sum, body) => sum + bodyMesh(body, segments).triangles.length / 3,
    0,
  );
  const deviation = fileDeviation(bodies, segments);
  const pictures = bodies.filter(({ isPicture }) => isPicture);
  const text =
    deviation === 0
      ? t('files.deviationFlat', { count: grouped(count) })
      : t('files.deviation', { count: grouped(count), deviation: lengthText(deviation, units) });
  return [text, ...pictures.map(({ name }) => t('files.picture', { name }))].join(' ');
}

/** "0.0068 mm", rounded up: a bound must not read smaller than it is. */
export function lengthText(metres: number, units: DisplayUnits): string {
  const unit = shownUnit('mm', units);
  const shown = mmFromMetres(metres) / unit.perShown;
  const step = 10 ** (Math.floor(Math.log10(shown)) - 1);
  return `${significant(Math.ceil(shown / step - 1e-9) * step, 2)}\u00a0${unit.name}`;
}

/** Thousands set apart by a narrow blank. */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, '\u202f');
}

export function namesOf(parts: readonly { readonly name: string }[]): string {
  const names = parts.slice(0, MOST_NAMES).map(({ name }) => name);
  const rest = parts.length - names.length;
  const listed = names.join(', ');
  return rest > 0 ? t('files.more', { parts: listed, count: rest }) : listed;
}

function leftOutText(leftOut: FileBodies['leftOut']): string {
  return namesOf(
    leftOut.map(({ name, reason }) => ({
      name: t('files.leftOutPart', { name, reason: t(`files.reason.${reason}`) }),
    })),
  );
}
