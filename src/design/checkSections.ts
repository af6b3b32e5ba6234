import { checkNumber, wrongType } from './checkNumber';
import { checkOwnTolerances } from './checkTolerances';
import type { Air, DesignSections, Friction } from './design';
import { type DesignFault, fault } from './fault';
import { MAX_NAME } from './limits';
import { SECTION_NAMES, SECTIONS, type SectionName } from './sections';
import { MAX_POLAR_TEXT } from './sections/air';
import { DRAG_ROW_LIMITS, type DragRow, MAX_DRAG_ROWS } from './sections/friction';
import type { SectionField } from './sections/section';

/** The first fault of the document's sections, each field by itself and then the rules between them, or null. */
export function checkSections(sections: DesignSections): DesignFault | null {
  for (const name of SECTION_NAMES) {
    const found = checkSection(name, sections[name]);
    if (found) return found;
  }
  return (
    checkSpeeds(sections) ??
    checkDrag(sections.friction ?? {}) ??
    checkPolar(sections.air ?? {}) ??
    checkOwnTolerances(sections.tolerance ?? {})
  );
}

/** The first fault of one section's fields, or null. */
export function checkSection(name: SectionName, written: object | undefined): DesignFault | null {
  const given = (written ?? {}) as Readonly<Record<string, unknown>>;
  const set: Readonly<Record<string, SectionField>> = SECTIONS[name];
  for (const key in set) {
    const found = checkField(set[key], given[key], `${name}.${key}`);
    if (found) return found;
  }
  return null;
}

function checkField(field: SectionField, value: unknown, path: string): DesignFault | null {
  if (value === undefined) {
    const needed = field.type === 'number' && field.required;
    return needed ? fault(path, wrongType('number', value)) : null;
  }
  switch (field.type) {
    case 'number':
      return checkNumber(value, field, path);
    case 'switch':
      return typeof value === 'boolean' ? null : fault(path, wrongType('true or false', value));
    default: {
      const { options } = field;
      const known = (options as readonly unknown[]).includes(value);
      return known ? null : fault(path, { code: 'notAChoice', found: String(value), options });
    }
  }
}

function checkSpeeds({ rotor }: DesignSections): DesignFault | null {
  const { speedRpm, highestSpeedRpm = speedRpm, lowestSpeedRpm = 0 } = rotor;
  if (lowestSpeedRpm === 0 || lowestSpeedRpm < highestSpeedRpm) return null;
  return fault('rotor.lowestSpeedRpm', {
    code: 'rule',
    kind: 'rotor',
    field: 'lowestSpeedRpm',
    rule: 'below',
    value: lowestSpeedRpm,
    limit: highestSpeedRpm,
    against: rotor.highestSpeedRpm === undefined ? 'speedRpm' : 'highestSpeedRpm',
    unit: 'rpm',
  });
}

function checkDrag({ drag = [] }: Friction): DesignFault | null {
  if (!Array.isArray(drag)) return fault('friction.drag', wrongType('list', drag));
  if (drag.length > MAX_DRAG_ROWS) {
    return fault('friction.drag', { code: 'tooMany', count: drag.length, limit: MAX_DRAG_ROWS });
  }
  const rows: readonly DragRow[] = drag;
  for (let i = 0; i < rows.length; i++) {
    const path = `friction.drag[${i}]`;
    const found =
      checkNumber(rows[i].travelMm, DRAG_ROW_LIMITS.travelMm, `${path}.travelMm`) ??
      checkNumber(rows[i].forceN, DRAG_ROW_LIMITS.forceN, `${path}.forceN`);
    if (found) return found;
    const before = rows[i - 1];
    if (before && !(rows[i].travelMm > before.travelMm)) {
      const detail = `does not lie above the row before it (${before.travelMm} mm): rows go upward`;
      return fault(`${path}.travelMm`, { code: 'unsound', detail });
    }
  }
  return null;
}

function checkPolar({ polar }: Air): DesignFault | null {
  if (!polar) return null;
  for (const [key, limit] of [
    ['name', MAX_NAME],
    ['text', MAX_POLAR_TEXT],
  ] as const) {
    const text = polar[key];
    if (typeof text !== 'string') return fault(`air.polar.${key}`, wrongType('text', text));
    if (text.length > limit) {
      return fault(`air.polar.${key}`, { code: 'textTooLong', length: text.length, limit });
    }
  }
  return null;
}
