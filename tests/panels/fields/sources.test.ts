import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import type { ChoiceField, Field, NumberField } from '../../../src/panels/fields/fieldModel';
import { parameterFields, parameterSections } from '../../../src/panels/fields/parameterFields';
import { createSession } from '../../../src/state/createSession';
import { METRIC_UNITS } from '../../../src/state/settings';

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
const read = parseDesign(readFileSync(file, 'utf8'));
const demo = (read as { value: Design }).value;
const bolt = demo.parts.find((part) => part.kind === 'bolt') as Part;
const SCREW = { standard: 'ISO 4762', size: 'M3', lengthMm: 25 };

function open() {
  const session = createSession(demo, (callback) => callback());
  const now = () => session.live.model.placed(bolt.id)?.part as Part;
  const fields = parameterFields(session, bolt);
  const field = (key: string) => fields.find((one) => one.key === key) as NumberField;
  return { ...session, session, now, fields, field };
}
const noteOf = (field: Field) => (field as NumberField | ChoiceField).note?.text(METRIC_UNITS);

describe('a field of a part from the catalogue', () => {
  it('says nothing while its value is the row\u2019s', () => {
    const { actions, field } = open();
    expect(noteOf(field('headHeightMm'))).toBeNull();
    expect(actions.setCatalogue(bolt.id, SCREW).ok).toBe(true);
    expect(noteOf(field('headHeightMm'))).toBeNull();
    expect(field('lengthMm').read()).toBe(25);
  });

  it('says the standard\u2019s value where its own is another, and goes back to it in one undo step', () => {
    const { actions, field, now } = open();
    actions.setCatalogue(bolt.id, SCREW);
    const head = field('headHeightMm');
    expect(head.commit(3.2)).toBeNull();
    expect(noteOf(head)).toBe('standard 3\u00a0mm');
    expect(head.note?.resetLabel(METRIC_UNITS)).toBe('Back to the standard, 3\u00a0mm');
    expect(head.note?.reset()).toBeNull();
    expect(head.read()).toBe(3);
    expect(now()).not.toHaveProperty('headHeightMm');
    actions.undo();
    expect(head.read()).toBe(3.2);
  });

  it('takes an odd length to the nearest listed one', () => {
    const { actions, field, now } = open();
    actions.setCatalogue(bolt.id, SCREW);
    const length = field('lengthMm');
    expect(length.commit(24)).toBeNull();
    expect(noteOf(length)).toContain('not a standard length');
    expect(length.note?.resetLabel(METRIC_UNITS)).toBe('Set to 25\u00a0mm');
    expect(length.note?.reset()).toBeNull();
    expect(now().catalogue).toEqual(SCREW);
    expect(noteOf(length)).toBeNull();
  });

  it('keeps its dimensions when it leaves the catalogue', () => {
    const { actions, field, fields } = open();
    actions.setCatalogue(bolt.id, SCREW);
    const values = () => fields.map((one) => one.kind !== 'vector' && one.read());
    const before = values();
    expect(actions.setCatalogue(bolt.id, null).ok).toBe(true);
    expect(values()).toEqual(before);
    expect(noteOf(field('headHeightMm'))).toBeNull();
  });
});

describe('a density and its material', () => {
  it('stand together, and the number wins without letting go of the material', () => {
    const { actions, field, fields, now } = open();
    const at = fields.findIndex((one) => one.key === 'densityKgM3');
    const material = fields[at - 1];
    if (material.kind !== 'material') throw new Error('the material stands before its density');
    expect(material.read()).toBe('Steel');
    expect(actions.setMaterial(bolt.id, 'densityKgM3', null).ok).toBe(true);
    expect(material.read()).toBe('Own density');
    expect(actions.setMaterial(bolt.id, 'densityKgM3', 'nylon').ok).toBe(true);
    expect(material.read()).toBe('Nylon, unfilled (PA 66)');
    const density = field('densityKgM3');
    expect(density.read()).toBe(1140);
    expect(noteOf(density)).toBeNull();
    expect(density.commit(1150)).toBeNull();
    expect(now()).toMatchObject({ material: 'nylon', densityKgM3: 1150 });
    expect(noteOf(density)).toBe(
      'own value instead of Nylon, unfilled (PA 66) 1140\u00a0kg/m\u00b3',
    );
    expect(material.read()).toBe('Nylon, unfilled (PA 66), own value');
    expect(density.note?.reset()).toBeNull();
    expect(density.read()).toBe(1140);
  });
});

describe('fields under headings', () => {
  it('are all fields once, those without a heading first', () => {
    const { session, fields } = open();
    const sections = parameterSections(session, bolt);
    expect(sections[0].group).toBeNull();
    expect(sections.length).toBeGreaterThan(1);
    const keys = sections.flatMap((one) => one.fields.map(({ key }) => key));
    expect(keys.toSorted()).toEqual(fields.map(({ key }) => key).toSorted());
  });

  it('count what is written and is not the usual value', () => {
    const { session, actions, now } = open();
    const changed = () =>
      parameterSections(session, now()).find(({ group }) => group === 'head')?.changed;
    expect(changed()).toBe(0);
    actions.setParameter(bolt.id, 'headForm', 'button');
    expect(changed()).toBe(1);
    actions.setParameter(bolt.id, 'headForm', 'cap');
    expect(changed()).toBe(0);
  });
});
