import type { Design } from '../../design/design';
import { SECTION_NAMES, SECTIONS } from '../../design/sections';
import type { SectionField, SectionSet } from '../../design/sections/section';
import { partText, t } from '../../messages';

/** What holds for the numbers of a head: its name, note, and every value of its sections that is written, with its unit. */
export function conditionLines(design: Design): string[] {
  const lines = [t('csv.design', { name: design.name })];
  if (design.note) lines.push(t('csv.note', { note: design.note }));
  for (const name of SECTION_NAMES) {
    const written = design[name] as Readonly<Record<string, unknown>> | undefined;
    if (!written) continue;
    const fields: SectionSet = SECTIONS[name];
    const said = Object.entries(fields).flatMap(([key, field]) => {
      const text = valueText(field, `${name}.${key}`, written[key]);
      return text === null ? [] : [`${partText(`${name}.${key}.label`, field.label)} ${text}`];
    });
    if (name === 'friction') said.push(...dragText(design));
    if (said.length > 0) lines.push(`${t(`csv.section.${name}`)}: ${said.join('; ')}`);
  }
  return lines;
}

/** The table of drag at rest, row by row. */
function dragText({ friction }: Design): string[] {
  const rows = friction?.drag ?? [];
  if (rows.length === 0) return [];
  const pairs = rows.map(({ travelMm, forceN }) =>
    t('csv.dragAt', { force: String(forceN), travel: String(travelMm) }),
  );
  return [t('csv.drag', { rows: pairs.join(', ') })];
}

/** Null where nothing is written. */
function valueText(field: SectionField, key: string, value: unknown): string | null {
  if (field.type === 'number' && typeof value === 'number') {
    return field.unit === '1' ? String(value) : `${value} ${field.unit}`;
  }
  if (field.type === 'switch' && typeof value === 'boolean') return t(value ? 'csv.yes' : 'csv.no');
  if (field.type === 'choice' && typeof value === 'string') {
    return partText(`${key}.${value}`, field.optionLabels[value] ?? value);
  }
  return null;
}
