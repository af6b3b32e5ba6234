import { SECTION_NAMES, SECTIONS, type SectionName } from '../../../design/sections';
import type { SectionField, SectionSet } from '../../../design/sections/section';
import { partText } from '../../../messages';
import type { DisplayUnits } from '../../../state/settings';
import { shownText, shownUnit } from '../../../state/shownUnits';
import { notesFor } from '../../../state/words/conditionNotes';
import type { ReportInputs } from '../inputs';
import { type Block, type Fact, type FactsBlock, list, words } from '../model';
import { t } from '../roomText';

/** Sections that have a part of the report of their own. */
const ELSEWHERE: ReadonlySet<SectionName> = new Set(['clearance', 'tolerance']);

/** Readings of drag that are listed; the file has them all. */
const MOST_READINGS = 10;
const NOTED = ['conditions', 'slider', 'servo', 'friction', 'air', 'bladeBolt'];

/** Every number of the design that belongs to no part, under its heading, and what follows from it. */
export function conditionBlocks(inputs: ReportInputs): Block[] {
  const groups = SECTION_NAMES.filter((name) => !ELSEWHERE.has(name)).flatMap((section) =>
    groupsOf(section, inputs),
  );
  return [...groups, list(noteItems(inputs)), words(t('report.usualNote'), 'quiet')];
}

/** What follows from the numbers, a line a heading. */
function noteItems({ reading, units }: ReportInputs): string[] {
  return NOTED.flatMap((topic) => {
    const notes = notesFor(topic, reading, units);
    const title = partText(`conditions.${topic}`, topic);
    return notes.length === 0 ? [] : [t('report.note', { title, notes: notes.join(' ') })];
  });
}

function groupsOf(section: SectionName, inputs: ReportInputs): FactsBlock[] {
  const set: SectionSet = SECTIONS[section];
  const titles = [...new Set(Object.values(set).map((field) => field.group ?? section))];
  return titles.map((title) => ({
    kind: 'facts',
    title: partText(`conditions.${title}`, title),
    facts: [
      ...Object.entries(set)
        .filter(([, field]) => (field.group ?? section) === title)
        .map(([key, field]) => sectionFact(section, key, field, inputs)),
      ...moreFacts(title, inputs),
    ],
  }));
}

/** One number or choice with its unit; told where nobody gave it. */
export function sectionFact(
  section: SectionName,
  key: string,
  field: SectionField,
  { design, units }: ReportInputs,
): Fact {
  const written = (design[section] as Readonly<Record<string, unknown>> | undefined)?.[key];
  const label = partText(`${section}.${key}.label`, field.label);
  const value = written ?? field.default;
  if (value === null) {
    return { label, value: partText(`${section}.${key}.none`, t('conditions.none')) };
  }
  const text = valueText(section, key, field, value, units);
  return { label, value: written === undefined ? t('report.usual', { value: text }) : text };
}

function valueText(
  section: SectionName,
  key: string,
  field: SectionField,
  value: unknown,
  units: DisplayUnits,
): string {
  if (field.type === 'number') return shownText(Number(value), shownUnit(field.unit, units));
  if (field.type === 'choice') {
    return partText(`${section}.${key}.${String(value)}`, field.optionLabels[String(value)]);
  }
  if (section === 'counted') return t(value ? 'report.on' : 'report.off');
  return t(value ? 'report.yes' : 'report.no');
}

/** What stands in the file beside a section's fields. */
function moreFacts(title: string, { design, units }: ReportInputs): Fact[] {
  const { friction, air, weighedTotal } = design;
  const [mm, newtons, grams] = (['mm', 'N', 'g'] as const).map((unit) => shownUnit(unit, units));
  if (title === 'friction') {
    const drag = friction?.drag ?? [];
    const rows = drag.slice(0, MOST_READINGS).map(({ travelMm, forceN }) =>
      t('report.dragRow', {
        travel: shownText(travelMm, mm),
        force: shownText(forceN, newtons),
      }),
    );
    const more = drag.length - rows.length;
    if (more > 0) rows.push(t('report.andMore', { count: more }));
    const value = rows.length > 0 ? rows.join('; ') : t('conditions.none');
    return [{ label: t('report.drag'), value }];
  }
  if (title === 'air' && air?.polar) {
    return [{ label: t('report.polar'), value: air.polar.name }];
  }
  if (title === 'rotor' && weighedTotal) {
    const mass = shownText(weighedTotal.massGrams, grams);
    const { massStepGrams } = weighedTotal;
    const value =
      massStepGrams === undefined
        ? mass
        : t('report.weighedStep', { mass, step: shownText(massStepGrams, grams) });
    return [{ label: t('report.weighedTotal'), value }];
  }
  return [];
}
