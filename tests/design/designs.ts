import * as fc from 'fast-check';
import { checkPart } from '../../src/design/check';
import type { Design, Part } from '../../src/design/design';
import { NO_MATERIALS } from '../../src/design/resolve';
import type { Parameter } from '../../src/parts/contract';
import { PART_TYPES, type PartKind, partType } from '../../src/parts/registry';
import { real } from '../support/arbitrary';

export const ROTOR = { speedRpm: 10_200, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 };

export function designOf(parts: readonly Part[], rotor: Design['rotor'] = ROTOR): Design {
  return { format: 'stillgrip-design', version: 1, name: 'Test head', rotor, parts };
}

/** Every parameter at its default. */
export function defaultValues(kind: PartKind): Record<string, unknown> {
  const entries = Object.entries<Parameter>(partType(kind).parameters);
  return Object.fromEntries(entries.map(([name, spec]) => [name, spec.default]));
}

/** A part of a kind with its defaults, `more` laid over; placed at the grip's origin unless `more` says where. */
export function partOf(kind: PartKind, id: string, more: Record<string, unknown> = {}): Part {
  const place = 'socket' in more ? {} : { pose: { positionMm: [0, 0, 0], rotationDeg: [0, 0, 0] } };
  return { id, kind, name: id, ...defaultValues(kind), ...place, ...more } as unknown as Part;
}

export function mounted(kind: PartKind, id: string, part: string, name: string, more = {}): Part {
  return partOf(kind, id, { socket: { part, name }, ...more });
}

/** A head with every kind of mount in it. */
export function fullHead(): Part[] {
  return [
    partOf('grip', 'grip'),
    mounted('pitchArm', 'arm', 'grip', 'armSeat'),
    mounted('pitchLink', 'link', 'arm', 'ball'),
    mounted('bolt', 'bolt', 'grip', 'boltTop', {
      lengthMm: 30,
      threadLengthMm: 20,
    }),
    mounted('washer', 'w1', 'bolt', 'underHead'),
    mounted('washer', 'w2', 'bolt', 'underHead', { thicknessMm: 0.8 }),
    mounted('washer', 'w3', 'bolt', 'underHead', { thicknessMm: 1.1 }),
    mounted('blade', 'blade', 'grip', 'bladeRoot', {
      socket: { part: 'grip', name: 'bladeRoot', turnDeg: 4 },
    }),
    mounted('nut', 'nut', 'bolt', 'thread'),
    mounted('washer', 'w4', 'nut', 'nutFace'),
    mounted('weight', 'weight', 'bolt', 'boltEnd'),
    partOf('pointMass', 'lump', {
      pose: { positionMm: [25, 12, 4], rotationDeg: [0, 0, 0] },
    }),
  ];
}

function parameterArbitrary(spec: Parameter): fc.Arbitrary<unknown> {
  if (spec.type === 'choice') return fc.constantFrom(...spec.options);
  if (spec.type === 'text' || spec.type === 'numbers') return fc.constant(spec.default);
  const near = (value: number) =>
    fc
      .double({ min: 0.8, max: 1.25, noNaN: true })
      .map((factor) => Math.min(spec.max, Math.max(spec.min, value * factor)));
  return spec.type === 'number' ? near(spec.default) : fc.tuple(...spec.default.map(near));
}

const coordinate = real(-200, 200).map((value) => value || 0);
const turn = real(-360, 360).map((value) => value || 0);

/** A sound, freely placed part of any kind; parameters within a quarter of their defaults. */
export function partArbitrary(kind: PartKind, id: string): fc.Arbitrary<Part> {
  const own = Object.entries<Parameter>(partType(kind).parameters).map(
    ([name, spec]) => [name, parameterArbitrary(spec)] as const,
  );
  const values = fc.record(Object.fromEntries(own));
  const place = fc.tuple(coordinate, coordinate, coordinate, turn, turn, turn);
  return fc
    .tuple(values, place, fc.string({ maxLength: 40 }), fc.boolean())
    .map(([parameters, [x, y, z, a, b, c], name, hidden]) => {
      const pose = { positionMm: [x, y, z], rotationDeg: [a, b, c] };
      return { id, kind, name, ...(hidden ? { hidden } : {}), ...parameters, pose };
    })
    .map((part) => part as unknown as Part)
    .filter((part) => checkPart(part, NO_MATERIALS) === null);
}

/** A sound design with one part of every kind, and a few of the full head's mounted ones. */
export const designArbitrary: fc.Arbitrary<Design> = fc
  .tuple(
    fc.tuple(...PART_TYPES.map((type, i) => partArbitrary(type.kind, `free ${i}`))),
    fc.nat({ max: 12 }),
    fc.string({ maxLength: 60 }),
    fc.option(fc.string({ maxLength: 60 }), { nil: undefined }),
    fc.record({
      speedRpm: real(0, 200_000).map((value) => value || 0),
      bladeCount: fc.integer({ min: 1, max: 16 }),
      torqueOffsetMm: coordinate,
      preconeDeg: real(-30, 30).map((value) => value || 0),
    }),
  )
  .map(([free, count, name, note, rotor]) => ({
    ...designOf([...fullHead().slice(0, count), ...free], rotor),
    name,
    ...(note === undefined ? {} : { note }),
  }));
