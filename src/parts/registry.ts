import { bearing } from './bearing';
import { blade } from './blade';
import { block } from './block';
import { bolt } from './bolt';
import type { PartType, ValuesOf } from './contract';
import { cylinder } from './cylinder';
import { grip } from './grip';
import { keepOut } from './keepOut';
import { meshBody } from './meshBody';
import { nut } from './nut';
import { pitchArm } from './pitchArm';
import { pitchLink } from './pitchLink';
import { pointMass } from './pointMass';
import { washer } from './washer';
import { weight } from './weight';

/** Every part type there is. Order is the order of the "Add a part" list. */
export const PART_TYPES = [
  grip,
  pitchArm,
  pitchLink,
  blade,
  bolt,
  nut,
  washer,
  bearing,
  weight,
  pointMass,
  block,
  cylinder,
  meshBody,
  keepOut,
] as const;

type AnyType = (typeof PART_TYPES)[number];
export type PartKind = AnyType['kind'];

/** Parameter values of each kind, by kind. */
export type ValuesByKind = {
  readonly [T in AnyType as T['kind']]: T extends PartType<string, infer Set>
    ? ValuesOf<Set>
    : never;
};

const byKind = new Map<string, PartType>(
  PART_TYPES.map((type) => [type.kind, type as unknown as PartType]),
);

/** The type of a kind that the schema has accepted. Throws on an unknown kind: a programmer's fault. */
export function partType(kind: string): PartType {
  const type = byKind.get(kind);
  if (!type) throw new Error(`partType(): kind is not registered: ${kind}`);
  return type;
}
export function isPartKind(kind: string): kind is PartKind {
  return byKind.has(kind);
}
