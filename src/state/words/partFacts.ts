import type { Part } from '../../design/design';
import { type Materials, materialKeyOf, valuesOf } from '../../design/resolve';
import { type PartValues, valueOf } from '../../design/values';
import { partText, t } from '../../messages';
import { isUsed, type Parameter, type ParameterValue } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { fieldLabel } from '../refusalText';
import type { DisplayUnits } from '../settings';
import { type FieldUnit, shownText, shownUnit } from '../shownUnits';
import { referenceText } from './catalogueText';
import { materialText } from './materialText';

/** One thing that can be told of a part, as it stands there: `value` to compare by, `text` to show. */
export interface PartFact {
  readonly key: string;
  readonly label: string;
  readonly value: unknown;
  readonly text: string;
}

/** Where a part stands: the other parts that it may sit on, the design's materials, the units on screen. */
interface FactContext {
  readonly parts: readonly Part[];
  readonly materials: Materials;
  readonly units: DisplayUnits;
}

/**
 * Everything of a part in which variants can differ, in the order of its fields. `byRow`: the part has a catalogue row in
 * every variant; what the row gives is then told by naming the row, and only what is written beside it by itself.
 */
export function partFacts(part: Part, byRow: boolean, context: FactContext): PartFact[] {
  const { units, materials } = context;
  return [
    fact('name', t('tryOuts.partName'), part.name, part.name),
    yesNo('hidden', t('tryOuts.hidden'), part.hidden === true),
    ...catalogueFact(part),
    ...parameterFacts(part, byRow, materials, units),
    ...placeFacts(part, context),
    fact(
      'measured',
      t('tryOuts.measured'),
      JSON.stringify(part.measured ?? null),
      measuredText(part, units),
    ),
  ];
}

function fact(key: string, label: string, value: unknown, text: string): PartFact {
  return { key, label, value, text };
}

function yesNo(key: string, label: string, value: boolean): PartFact {
  return fact(key, label, value, t(value ? 'tryOuts.yes' : 'tryOuts.no'));
}

function catalogueFact({ kind, catalogue }: Part): PartFact[] {
  if (!partType(kind).catalogue) return [];
  const text = catalogue ? referenceText(catalogue) : t('tryOuts.noStandard');
  return [fact('catalogue', t('tryOuts.standard'), text, text)];
}

function parameterFacts(
  part: Part,
  byRow: boolean,
  materials: Materials,
  units: DisplayUnits,
): PartFact[] {
  const values = valuesOf(part, materials);
  return Object.entries(partType(part.kind).parameters).flatMap(([key, parameter]) => {
    if (!isUsed(parameter, values)) return [];
    const compared = byRow ? (valueOf(part, key) ?? null) : values[key];
    const own = fact(
      key,
      fieldLabel(part, key),
      JSON.stringify(compared),
      valueText(part, key, parameter, values, units),
    );
    const materialKey = materialKeyOf(parameter);
    if (materialKey === undefined) return [own];
    const named = materialText(part, key, materials);
    return [fact(materialKey, materialLabel(part, key, materialKey), named, named), own];
  });
}

function materialLabel(part: Part, density: string, materialKey: string): string {
  const { parameters } = partType(part.kind);
  const only = Object.values(parameters).filter(materialKeyOf).length === 1;
  const usual = only
    ? t('materials.material')
    : t('materials.materialOf', { part: fieldLabel(part, density).replace(/:? density$/i, '') });
  return partText(`part.${part.kind}.${materialKey}.label`, usual);
}

function valueText(
  part: Part,
  key: string,
  parameter: Parameter,
  values: PartValues,
  units: DisplayUnits,
): string {
  const value: ParameterValue = values[key];
  switch (parameter.type) {
    case 'number':
      return numberText(value as number, parameter.unit, units);
    case 'vector':
      return listText(value as readonly number[], parameter.unit, units);
    case 'choice':
      return partText(
        `part.${part.kind}.${key}.${String(value)}`,
        parameter.optionLabels[String(value)],
      );
    default: {
      // What comes from a file is long: that it is another shows in the marks.
      const { length } = value as string | readonly number[];
      return length === 0 ? t('tryOuts.fileNone') : t('tryOuts.fromFile', { count: length });
    }
  }
}

function numberText(value: number, unit: FieldUnit, units: DisplayUnits): string {
  return shownText(value, shownUnit(unit, units));
}

/** "3, 4, 5 mm": the unit once. */
function listText(values: readonly number[], unit: FieldUnit, units: DisplayUnits): string {
  const shown = shownUnit(unit, units);
  const bare = { ...shown, name: '' };
  return values
    .map((value, i) => shownText(value, i === values.length - 1 ? shown : bare))
    .join(', ');
}

function placeFacts(part: Part, { parts, materials, units }: FactContext): PartFact[] {
  const { socket, pose } = part;
  if (!socket) {
    const { positionMm = [], rotationDeg = [] } = pose ?? {};
    const position = listText(positionMm, 'mm', units);
    const rotation = listText(rotationDeg, 'deg', units);
    return [
      fact('seat', t('tryOuts.seat'), 'free', t('tryOuts.free')),
      fact('positionMm', t('fields.position'), JSON.stringify(positionMm), position),
      fact('rotationDeg', t('fields.rotation'), JSON.stringify(rotationDeg), rotation),
    ];
  }
  const parent = parts.find((one) => one.id === socket.part);
  const seat = t('fields.seatOn', {
    part: parent?.name ?? socket.part,
    socket: parent ? socketLabel(parent, socket.name, materials) : socket.name,
  });
  const { offsetMm, turnDeg = 0 } = socket;
  const offset = offsetMm === undefined ? t('tryOuts.usual') : numberText(offsetMm, 'mm', units);
  return [
    fact('seat', t('tryOuts.seat'), `${socket.part} ${socket.name}`, seat),
    fact('offsetMm', t('fields.offset'), offsetMm ?? null, offset),
    fact('turnDeg', t('fields.turn'), turnDeg, numberText(turnDeg, 'deg', units)),
  ];
}

function socketLabel(parent: Part, name: string, materials: Materials): string {
  const sockets = partType(parent.kind).sockets(valuesOf(parent, materials));
  const own = sockets.find((socket) => socket.name === name)?.label ?? name;
  return partText(`part.${parent.kind}.socket.${name}`, own);
}

function measuredText({ measured }: Part, units: DisplayUnits): string {
  if (!measured) return t('tryOuts.notMeasured');
  const { massGrams, swings, centreXMm, centreYMm, centreZMm } = measured;
  const centred = [centreXMm, centreYMm, centreZMm].some((one) => one !== undefined);
  const what = [
    massGrams === undefined ? null : numberText(massGrams, 'g', units),
    centred ? t('tryOuts.measuredCentre') : null,
    swings && swings.length > 0 ? t('tryOuts.measuredSwings') : null,
  ].filter((one) => one !== null);
  return t('tryOuts.measuredOther', { what: what.join(', ') });
}
