import type { Design } from '../../design/design';
import { SECTION_NAMES, SECTIONS } from '../../design/sections';
import type { SectionField, SectionSet } from '../../design/sections/section';

const SECTION_TITLES: Readonly<Record<(typeof SECTION_NAMES)[number], string>> = {
  rotor: 'Rotor',
  counted: 'Counted',
  control: 'Control',
  friction: 'Friction',
  air: 'Air',
  bladeBolt: 'Blade on its bolt',
  clearance: 'Clearance',
  tolerance: 'Tolerances',
};

/** What holds for the numbers of a head: its name, note, and every value of its sections that is written, with its unit. */
export function conditionLines(design: Design): string[] {
  const lines = [`Design: ${design.name}`];
  if (design.note) lines.push(`Note: ${design.note}`);
  for (const name of SECTION_NAMES) {
    const written = design[name] as Readonly<Record<string, unknown>> | undefined;
    if (!written) continue;
    const fields: SectionSet = SECTIONS[name];
    const said = Object.entries(fields).flatMap(([key, field]) => {
      const text = valueText(field, written[key]);
      return text === null ? [] : [`${field.label} ${text}`];
    });
    if (said.length > 0) lines.push(`${SECTION_TITLES[name]}: ${said.join('; ')}`);
  }
  return lines;
}

/** Null where nothing is written. */
function valueText(field: SectionField, value: unknown): string | null {
  if (field.type === 'number' && typeof value === 'number') {
    return field.unit === '1' ? String(value) : `${value} ${field.unit}`;
  }
  if (field.type === 'switch' && typeof value === 'boolean') return value ? 'yes' : 'no';
  if (field.type === 'choice' && typeof value === 'string') {
    return field.optionLabels[value] ?? value;
  }
  return null;
}
