import type { Design, Part } from '../design/design';
import { type Materials, materialsOf, valueOrigin, valuesOf } from '../design/resolve';
import type { PartValues } from '../design/values';
import { weighPart } from '../design/weighPart';
import { withValue } from '../design/writeValue';
import { createMoments, M } from '../engine/mass/moments';
import { type CatalogueReference, catalogueValues } from '../parts/catalogue';
import { isUsed, type PartType, type SeatSize } from '../parts/contract';
import { findMaterial } from '../parts/materials';
import { partType } from '../parts/registry';
import type { Choice } from './choices';
import { knobRange, sameKnob } from './knobs';
import type { KnobSpec } from './request';

/** Material that a maker turns weights from, lightest first. */
export const TURNED_MATERIALS: readonly string[] = [
  'aluminium-7075',
  'titanium',
  'steel',
  'stainless-a2',
  'brass',
  'tungsten-alloy-1',
];

/** Something that a search may choose of the head as it is, with a key that stays the same while the head is dragged. */
export interface Offer {
  readonly key: string;
  readonly what: 'catalogue' | 'count' | 'material' | 'option';
  readonly part: string;
  /** The density or the choice that it is about. */
  readonly field: string | null;
  readonly choice: Choice;
  /** The part is one that carries weight out along the bolt, or is stacked on it. */
  readonly usual: boolean;
}

/** How far a search goes beyond what a length is now: this many diameters. */
const REACH_DIAMETERS = 4;

/** Height of a nut over its thread diameter under which it is not made shorter: its thread would give way (common practice). */
const ENGAGED = 0.8;

/**
 * Numbers that are worth turning: the lengths that carry mass out along the bolt, from as short as they can be (a nut keeps
 * its thread) to some diameters more than they are.
 */
export function suggestedKnobs(design: Design): readonly KnobSpec[] {
  const found: KnobSpec[] = [];
  for (const part of design.parts) {
    if (part.hidden) continue;
    const type = partType(part.kind);
    const values = valuesOf(part, materialsOf(design));
    const seat = type.seatSize?.(values);
    (type.trims?.(values) ?? []).forEach((trim, i) => {
      const ref = { part: part.id, field: trim.length };
      const range = knobRange(design, ref);
      if (!range || found.some((one) => sameKnob(one.ref, ref))) return;
      const now = values[trim.length] as unknown as number;
      const across = values[trim.diameter] as unknown as number;
      const thread = i === 0 && seat?.kind === 'thread' ? ENGAGED * seat.diameterMm : range.min;
      found.push({
        ref,
        min: Math.max(range.min, Math.min(now, thread)),
        max: Math.min(range.max, Math.ceil(now + REACH_DIAMETERS * across)),
        step: 0.1,
      });
    });
  }
  return found;
}

/** What may be chosen from lists: standard parts that fit the same seat, how many of a stack, materials, forms. */
export function offersOf(design: Design): readonly Offer[] {
  const materials = materialsOf(design);
  return design.parts
    .filter((part) => !part.hidden)
    .flatMap((part) => [
      ...catalogueOffer(part, materials),
      ...countOffer(part),
      ...materialOffers(part, materials),
      ...optionOffers(part, materials),
    ]);
}

function catalogueOffer(part: Part, materials: Materials): readonly Offer[] {
  const type = partType(part.kind);
  // A part that turns mass about is what this is for; a bearing is not swapped for its weight.
  if (!type.catalogue || !(type.trims || type.stackHeight)) return [];
  const now = valuesOf(part, materials);
  const own = type.seatSize?.(now);
  if (!own) return [];
  const rows = type.catalogue.standards.flatMap((standard) =>
    standard.sizes.flatMap(({ size, lengthsMm }): CatalogueReference[] => {
      const reference = { standard: standard.standard, size };
      const all = lengthsMm
        ? nearLengths(lengthsMm, part, materials).map((lengthMm) => ({ ...reference, lengthMm }))
        : [reference];
      return all.filter((one) => {
        const found = catalogueValues(type, one);
        if (!found.ok) return false;
        const values = { ...now, ...found.value } as PartValues;
        return sameSeat(type.seatSize?.(values), own) && sameUse(type, values, now);
      });
    }),
  );
  if (rows.length === 0) return [];
  return [
    {
      key: `${part.id} catalogue`,
      what: 'catalogue',
      part: part.id,
      field: null,
      choice: { kind: 'catalogue', part: part.id, rows },
      usual: true,
    },
  ];
}

/** A locking nut is not swapped for a plain one, nor a bolt with a head for one without. */
function sameUse(type: PartType, values: PartValues, now: PartValues): boolean {
  if (type.retention?.(now) === 'prevailing' && type.retention(values) !== 'prevailing')
    return false;
  const [head, before] = [values, now].map((one) => (type.fastener?.(one).headHeight ?? 0) > 0);
  return head === before;
}

/** Listed lengths from what the part is now to twice that. */
function nearLengths(
  lengths: readonly number[],
  part: Part,
  materials: Materials,
): readonly number[] {
  const name = partType(part.kind).catalogue?.lengthParameter;
  const now = name === undefined ? 0 : (valuesOf(part, materials)[name] as unknown as number);
  return lengths.filter((one) => one >= 0.6 * now && one <= 2 * now);
}

/** Sizes are typed decimals. */
const SAME_MM = 0.26;

/** The same thread, or a hole or shank of about the same width. */
function sameSeat(a: SeatSize | undefined, b: SeatSize): boolean {
  if (a?.kind !== b.kind) return false;
  if (a.kind === 'thread' && b.kind === 'thread') {
    return Math.abs(a.diameterMm - b.diameterMm) < 1e-3 && Math.abs(a.pitchMm - b.pitchMm) < 1e-3;
  }
  return Math.abs(a.diameterMm - b.diameterMm) <= (a.kind === 'hole' ? SAME_MM : 1e-3);
}

const MOST_OF_A_STACK = 4;

function countOffer(part: Part): readonly Offer[] {
  if (!part.socket || !partType(part.kind).stackHeight) return [];
  const counts = Array.from({ length: MOST_OF_A_STACK + 1 }, (_, count) => count);
  return [
    {
      key: `${part.id} count`,
      what: 'count',
      part: part.id,
      field: null,
      choice: { kind: 'count', part: part.id, counts },
      usual: true,
    },
  ];
}

function materialOffers(part: Part, materials: Materials): readonly Offer[] {
  const type = partType(part.kind);
  const values = valuesOf(part, materials);
  return Object.entries(type.parameters).flatMap(([field, parameter]): Offer[] => {
    if (parameter.type !== 'number' || parameter.materialKey !== 'material') return [];
    if (!isUsed(parameter, values) || valueOrigin(part, field) === 'catalogue') return [];
    const known = TURNED_MATERIALS.filter((id) => findMaterial(id, materials));
    return [
      {
        key: `${part.id} ${field}`,
        what: 'material',
        part: part.id,
        field,
        choice: { kind: 'material', part: part.id, field, materials: known },
        usual: type.trims !== undefined,
      },
    ];
  });
}

/** Choices of a part that change where its mass lies. */
function optionOffers(part: Part, materials: Materials): readonly Offer[] {
  const type = partType(part.kind);
  if (!type.trims) return [];
  const values = valuesOf(part, materials);
  return Object.entries(type.parameters).flatMap(([field, parameter]): Offer[] => {
    if (parameter.type !== 'choice' || !isUsed(parameter, values)) return [];
    const options = parameter.options.filter(
      (option) =>
        option !== (values[field] as unknown) && weighsAnew(part, field, option, materials),
    );
    if (options.length === 0) return [];
    return [
      {
        key: `${part.id} ${field}`,
        what: 'option',
        part: part.id,
        field,
        choice: { kind: 'option', part: part.id, field, options },
        usual: true,
      },
    ];
  });
}

/** A choice that changes the mass by less than this share is about something else than weight. */
const WORTH_A_CHOICE = 0.05;

function weighsAnew(part: Part, field: string, option: string, materials: Materials): boolean {
  const next = withValue(part, field, option, materials);
  const values = valuesOf(next, materials);
  if (partType(part.kind).problems(values).length > 0) return false;
  const [before, after] = [createMoments(), createMoments()];
  const known =
    weighPart(part, valuesOf(part, materials), before).ok && weighPart(next, values, after).ok;
  return known && Math.abs(after[M] - before[M]) > WORTH_A_CHOICE * before[M];
}

/** Bolts that a new weight can go on. */
export function boltsOf(design: Design): readonly Part[] {
  const materials = materialsOf(design);
  return design.parts.filter(
    (part) =>
      !part.hidden &&
      partType(part.kind)
        .sockets(valuesOf(part, materials))
        .some(({ mates }) => mates === 'boltEnd' || mates === 'headTop'),
  );
}
