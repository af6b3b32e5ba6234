import { SECTION_NAMES, SECTIONS, type SectionName } from '../../design/sections';
import type { SectionField, SectionNumber, SectionSet } from '../../design/sections/section';
import { partText, t } from '../../messages';
import { refusalText } from '../../state/refusalText';
import type { Session } from '../../state/session';
import { type ChoiceField, type Field, type NumberField, refusalIn } from '../fields/fieldModel';
import type { OptionalField } from '../measured/useOptionalEntry';

/** A switch of the design. */
export interface SwitchField {
  readonly key: string;
  readonly label: string;
  readonly help: string;
  readonly section: SectionName;
  readonly standard: boolean;
}

/** Neighbours in a section that are shown by the same means. */
export type SectionRun =
  | { readonly kind: 'fields'; readonly fields: readonly Field[] }
  | { readonly kind: 'optional'; readonly field: OptionalField; readonly none: string }
  | { readonly kind: 'switch'; readonly field: SwitchField };

/** A heading of the panel with its rows. */
export interface SectionGroup {
  readonly section: SectionName;
  /** Key of the heading: the section, or a group within it. */
  readonly title: string;
  readonly runs: readonly SectionRun[];
}

/** Every section's fields under their headings, in the order of the sets: nothing is listed by hand. */
export function sectionGroups(session: Session): readonly SectionGroup[] {
  return SECTION_NAMES.flatMap((section) => {
    const set: SectionSet = SECTIONS[section];
    const titles = [...new Set(Object.values(set).map((field) => field.group ?? section))];
    return titles.map((title) => ({
      section,
      title,
      runs: runsOf(
        session,
        section,
        Object.entries(set).filter(([, field]) => (field.group ?? section) === title),
      ),
    }));
  });
}

function runsOf(
  session: Session,
  section: SectionName,
  entries: readonly (readonly [string, SectionField])[],
): SectionRun[] {
  const runs: SectionRun[] = [];
  for (const [key, field] of entries) {
    const text = {
      key,
      label: partText(`${section}.${key}.label`, field.label),
      help: partText(`${section}.${key}.help`, field.help),
    };
    if (field.type === 'switch') {
      runs.push({ kind: 'switch', field: { ...text, section, standard: field.default } });
    } else if (field.type === 'number' && field.default === null) {
      const none = partText(`${section}.${key}.none`, t('conditions.none'));
      runs.push({ kind: 'optional', field: optionalField(session, section, field, text), none });
    } else {
      const made =
        field.type === 'number'
          ? numberField(session, section, field, text)
          : choiceField(session, section, field, text);
      const last = runs.at(-1);
      if (last?.kind === 'fields')
        runs[runs.length - 1] = { ...last, fields: [...last.fields, made] };
      else runs.push({ kind: 'fields', fields: [made] });
    }
  }
  return runs;
}

interface FieldWords {
  readonly key: string;
  readonly label: string;
  readonly help: string;
}

/** What is written of a section's field; undefined where nothing is. */
export function writtenIn({ store }: Session, section: SectionName, key: string): unknown {
  const written: Readonly<Record<string, unknown>> = store.getState().design[section] ?? {};
  return written[key];
}

function write(session: Session, section: SectionName, key: string, value: unknown) {
  return session.actions.setSection(section, { [key]: value });
}

function numberField(
  session: Session,
  section: SectionName,
  field: SectionNumber,
  words: FieldWords,
): NumberField {
  const { unit, min, max, step } = field;
  return {
    kind: 'number',
    ...words,
    unit,
    min,
    max,
    step,
    read: () => Number(writtenIn(session, section, words.key) ?? field.default),
    commit: (value) => refusalIn(write(session, section, words.key, value)),
  };
}

function choiceField(
  session: Session,
  section: SectionName,
  field: Extract<SectionField, { type: 'choice' }>,
  words: FieldWords,
): ChoiceField {
  return {
    kind: 'choice',
    ...words,
    options: field.options.map((value) => ({
      value,
      label: partText(`${section}.${words.key}.${value}`, field.optionLabels[value]),
    })),
    read: () => String(writtenIn(session, section, words.key) ?? field.default),
    commit: (value) => refusalIn(write(session, section, words.key, value)),
  };
}

function optionalField(
  session: Session,
  section: SectionName,
  field: SectionNumber,
  words: FieldWords,
): OptionalField {
  return {
    ...words,
    limits: field,
    step: field.step,
    commit(value) {
      const outcome = write(session, section, words.key, value);
      if (outcome.ok) return null;
      const { design, settings } = session.store.getState();
      return refusalText(outcome.error, design, null, settings.units);
    },
  };
}

/** How many of a group's values are written and not the usual ones. */
export function changedIn(session: Session, group: SectionGroup): number {
  const set: SectionSet = SECTIONS[group.section];
  return Object.entries(set).filter(([key, field]) => {
    const value = writtenIn(session, group.section, key);
    const own = (field.group ?? group.section) === group.title;
    return own && value !== undefined && value !== field.default;
  }).length;
}
