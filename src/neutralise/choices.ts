import type { Design, Part } from '../design/design';
import { type Materials, materialsOf, valuesOf } from '../design/resolve';
import { withCatalogue, withMaterial, withoutValue, withValue } from '../design/writeValue';
import { t } from '../messages';
import type { CatalogueReference } from '../parts/catalogue';
import type { Socket } from '../parts/contract';
import { partType } from '../parts/registry';
import { type KnobRef, knobPart, withKnob } from './knobs';

/** Something about a head that can be one of a list: every entry is tried, and so is the head as it is. */
export type Choice =
  /** A number from a list: bar diameters, the lengths that a screw is sold in. */
  | { readonly kind: 'values'; readonly ref: KnobRef; readonly values: readonly number[] }
  /** A row of a standard in place of the part's dimensions. */
  | {
      readonly kind: 'catalogue';
      readonly part: string;
      readonly rows: readonly CatalogueReference[];
    }
  | {
      readonly kind: 'material';
      readonly part: string;
      /** The density that the material is for. */
      readonly field: string;
      readonly materials: readonly string[];
    }
  | {
      readonly kind: 'option';
      readonly part: string;
      readonly field: string;
      readonly options: readonly string[];
    }
  /** So many of a part that stacks on its seat (washers); 0 leaves it out. */
  | { readonly kind: 'count'; readonly part: string; readonly counts: readonly number[] };

/** One entry of a choice as it was picked: plain data, for words and for the worker. Null of a choice: as it is. */
export type Pick =
  | { readonly kind: 'values'; readonly ref: KnobRef; readonly value: number }
  | { readonly kind: 'catalogue'; readonly part: string; readonly row: CatalogueReference }
  | {
      readonly kind: 'material';
      readonly part: string;
      readonly field: string;
      readonly material: string;
    }
  | {
      readonly kind: 'option';
      readonly part: string;
      readonly field: string;
      readonly option: string;
    }
  | { readonly kind: 'count'; readonly part: string; readonly count: number };

/** Everything that a choice can come to; null first, the head as it is. */
export function picksOf(choice: Choice): readonly (Pick | null)[] {
  switch (choice.kind) {
    case 'values':
      return [
        null,
        ...choice.values.map((value) => ({ kind: choice.kind, ref: choice.ref, value })),
      ];
    case 'catalogue':
      return [null, ...choice.rows.map((row) => ({ kind: choice.kind, part: choice.part, row }))];
    case 'material': {
      const { kind, part, field } = choice;
      return [null, ...choice.materials.map((material) => ({ kind, part, field, material }))];
    }
    case 'option': {
      const { kind, part, field } = choice;
      return [null, ...choice.options.map((option) => ({ kind, part, field, option }))];
    }
    default:
      return [
        null,
        ...choice.counts.map((count) => ({ kind: choice.kind, part: choice.part, count })),
      ];
  }
}

/**
 * The design with a pick put in. Nothing is checked: the model refuses what breaks a rule. Null where it changes
 * nothing, so that the head as it is is not tried twice.
 */
export function withPick(design: Design, pick: Pick): Design | null {
  if (pick.kind === 'count') return withCount(design, pick.part, pick.count);
  const id = pick.kind === 'values' ? pick.ref.part : pick.part;
  const index = design.parts.findIndex((part) => part.id === id);
  if (index < 0) return null;
  const old = design.parts[index];
  const next = changedPart(old, pick, design);
  return next === old ? null : { ...design, parts: design.parts.with(index, next) };
}

function changedPart(part: Part, pick: Exclude<Pick, { kind: 'count' }>, design: Design): Part {
  const materials = materialsOf(design);
  switch (pick.kind) {
    case 'values':
      return withKnob(part, pick.ref, pick.value, materials);
    case 'catalogue':
      return sameRow(part.catalogue, pick.row) ? part : withRow(part, pick.row, materials);
    case 'material': {
      const next = withMaterial(part, pick.field, pick.material);
      const same = valuesOf(next, materials)[pick.field] === valuesOf(part, materials)[pick.field];
      return same ? part : next;
    }
    default:
      return withValue(part, pick.field, pick.option, materials);
  }
}

/** The part as the row has it. Its strength is not carried over to another form (a button head is not rated as a cap is). */
function withRow(part: Part, row: CatalogueReference, materials: Materials): Part {
  const next = withCatalogue(part, row);
  const { parameters } = partType(part.kind);
  const [before, after] = [valuesOf(part, materials), valuesOf(next, materials)];
  const names = Object.keys(parameters);
  const strength = names.filter((name) => parameters[name].group === 'Strength');
  const reformed = names.some(
    (name) =>
      parameters[name].type === 'choice' &&
      !strength.includes(name) &&
      parameters[name].group !== 'thread' &&
      before[name] !== after[name],
  );
  return reformed ? strength.reduce(withoutValue, next) : next;
}

function sameRow(a: CatalogueReference | undefined, b: CatalogueReference): boolean {
  return a?.standard === b.standard && a.size === b.size && a.lengthMm === b.lengthMm;
}

/** The part itself and the others of its kind on the same seat count; the new ones are copies of the part. */
function withCount(design: Design, id: string, count: number): Design | null {
  const part = design.parts.find((one) => one.id === id);
  if (!part?.socket) return null;
  const { socket } = part;
  const alike = design.parts.filter(
    (one) =>
      one.kind === part.kind &&
      !one.hidden &&
      one.socket?.part === socket.part &&
      one.socket.name === socket.name,
  );
  if (alike.length === count) return null;
  const others = design.parts.filter((one) => !alike.includes(one));
  const taken = new Set(others.map((one) => one.id));
  const at = others.filter((one) => design.parts.indexOf(one) < design.parts.indexOf(part)).length;
  const copies = Array.from({ length: count }, (_, k) => {
    if (k < alike.length) return alike[k];
    const copy = { ...part, id: freeId(taken, id) };
    taken.add(copy.id);
    return copy;
  });
  return { ...design, parts: others.toSpliced(at, 0, ...copies) };
}

function freeId(taken: ReadonlySet<string>, stem: string): string {
  for (let n = 1; ; n++) if (!taken.has(`${stem}-${n}`)) return `${stem}-${n}`;
}

/** Common diameters of bright round bar, mm (common practice; a supplier's list may differ). */
export const BAR_DIAMETERS_MM: readonly number[] = [
  2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18, 20, 22, 25, 28,
  30, 32, 35, 36, 40, 45, 50, 55, 60,
];

/** A weight to be turned and put on the bolt: on its head, on its far end, or one on both. */
export interface NewWeight {
  /** Id of the bolt. */
  readonly bolt: string;
  readonly side: 'headTop' | 'boltEnd' | 'both';
  readonly diameterMm: number;
  readonly material: string;
  /** Where its length starts, mm. */
  readonly lengthMm: number;
}

/** The ids of the new weights and the design with them; null where the bolt has no such place or it is taken. */
export function withWeight(
  design: Design,
  weight: NewWeight,
): { readonly design: Design; readonly ids: readonly string[] } | null {
  const bolt = knobPart(design, { part: weight.bolt, field: '' });
  if (!bolt) return null;
  const sockets = partType(bolt.kind).sockets(valuesOf(bolt, materialsOf(design)));
  const wanted = weight.side === 'both' ? (['headTop', 'boltEnd'] as const) : [weight.side];
  const seats = wanted.map((mates) => freeSeat(design, bolt.id, sockets, mates));
  if (seats.includes(null)) return null;
  const taken = new Set(design.parts.map(({ id }) => id));
  const made = seats.map((name, i): Part => {
    const id = freeId(taken, 'weight');
    taken.add(id);
    return {
      id,
      kind: 'weight',
      name: t(`goal.weightName.${wanted[i]}`),
      material: weight.material,
      diameterMm: weight.diameterMm,
      lengthMm: weight.lengthMm,
      boreMm: 0,
      stalkDiameterMm: weight.diameterMm,
      stalkLengthMm: 0,
      socket: { part: bolt.id, name },
    } as Part;
  });
  return {
    design: { ...design, parts: [...design.parts, ...made] },
    ids: made.map(({ id }) => id),
  };
}

function freeSeat(
  design: Design,
  bolt: string,
  sockets: readonly Socket[],
  mates: Socket['mates'],
): string | null {
  const seat = sockets.find((socket) => socket.mates === mates);
  if (!seat) return null;
  const taken = design.parts.some(
    ({ socket }) => socket?.part === bolt && socket.name === seat.name,
  );
  return taken ? null : seat.name;
}
