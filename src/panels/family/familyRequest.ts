import type { Design, Part } from '../../design/design';
import { materialsOf, valuesOf } from '../../design/resolve';
import type { FamilyRequest } from '../../neutralise/family';
import type { Trim } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { type Plan, requestOf } from '../../state/plan';

/** A length and a diameter of a part of the head that a family can be of. */
export interface FamilyChoice {
  readonly key: string;
  readonly part: Part;
  readonly trim: Trim;
}

export function familyChoices(design: Design): readonly FamilyChoice[] {
  return design.parts
    .filter(({ hidden }) => !hidden)
    .flatMap((part) =>
      (partType(part.kind).trims?.(valuesOf(part, materialsOf(design))) ?? []).map((trim) => ({
        key: `${part.id}/${trim.length}`,
        part,
        trim,
      })),
    );
}

/** The chosen one, or where it is gone the first of a nut, a weight ... whatever comes last in the head: it is usual to turn that. */
export function chosenFamily(plan: Plan, choices: readonly FamilyChoice[]): FamilyChoice | null {
  return choices.find(({ key }) => key === plan.trim) ?? usualChoice(choices);
}

function usualChoice(choices: readonly FamilyChoice[]): FamilyChoice | null {
  const firsts = choices.filter(({ part }, i) => choices[i - 1]?.part !== part);
  return firsts[firsts.length - 1] ?? null;
}

/** Where the chart ends, mm. */
export interface FamilyWindow {
  readonly diametersMm: readonly [number, number];
  readonly lengthsMm: readonly [number, number];
}

/** The chart from what the part is now to some diameters more. */
export function usualWindow({ part, trim }: FamilyChoice, design: Design): FamilyWindow {
  const values = valuesOf(part, materialsOf(design)) as unknown as Record<string, number>;
  const across = values[trim.diameter];
  const length = values[trim.length];
  return {
    diametersMm: [tidy(0.8 * across), Math.ceil(Math.max(2.4 * across, across + 4))],
    lengthsMm: [0.2, Math.ceil(Math.max(1.6 * length, 3.5 * across))],
  };
}

function tidy(value: number): number {
  return Number(value.toFixed(1));
}

export interface FamilyWish {
  readonly choice: FamilyChoice;
  readonly window: FamilyWindow;
}

/** Thickest bar where none is given: three quarters of the way across the chart. */
export function usualBar({ window }: FamilyWish): number {
  const [low, high] = window.diametersMm;
  return Math.round(low + 0.75 * (high - low));
}

/** The material of a part is named under this key. */
const MATERIAL_KEY = 'material';

/** What is to be worked out for the open design. */
export function familyRequest(
  plan: Plan,
  design: Design,
  { choice, window }: FamilyWish,
): FamilyRequest {
  const { part, trim } = choice;
  const density = Object.entries(partType(part.kind).parameters).find(
    ([, parameter]) => parameter.type === 'number' && parameter.materialKey === MATERIAL_KEY,
  );
  const own = density ? plan.familyMaterials : [];
  return {
    design,
    wanted: requestOf(plan, design).wanted,
    length: { part: part.id, field: trim.length },
    diameter: { part: part.id, field: trim.diameter },
    density: own.length > 0 && density ? density[0] : null,
    materials: own,
    lengthsMm: window.lengthsMm,
    diametersMm: window.diametersMm,
    largestBarMm: plan.largestBarMm ?? usualBar({ choice, window }),
  };
}

/**
 * Whether two requests ask for the same family: it is the same wherever along it the head is, so that length, diameter
 * and material of the part do not count, nor do name, note and try-outs.
 */
export function sameFamily(a: FamilyRequest, b: FamilyRequest): boolean {
  const { design: designA, ...restA } = a;
  const { design: designB, ...restB } = b;
  if (JSON.stringify(restA) !== JSON.stringify(restB)) return false;
  const { parts: partsA } = designA;
  const { parts: partsB } = designB;
  const own = [a.length.field, a.diameter.field, a.density, MATERIAL_KEY, 'name'];
  const without = (part: Part) =>
    JSON.stringify(part, (key, value: unknown) => (own.includes(key) ? undefined : value));
  const sameParts =
    partsA.length === partsB.length &&
    partsA.every(
      (part, i) =>
        part === partsB[i] || (part.id === a.length.part && without(part) === without(partsB[i])),
    );
  return sameParts && JSON.stringify(conditions(designA)) === JSON.stringify(conditions(designB));
}

function conditions({ parts: _p, name: _n, note: _t, tryOuts: _o, ...rest }: Design) {
  return rest;
}
