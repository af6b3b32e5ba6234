import type { Design } from '../../design/design';
import { SECTIONS } from '../../design/sections';
import type { SectionSet } from '../../design/sections/section';
import { anglesOf, nearestFlat } from '../../design/verdict';
import { JYY, JYZ, JZZ, M } from '../../engine/mass/moments';
import { gramSquareMmFromSi, gramsFromKilograms, mmFromMetres } from '../../engine/units';
import { type KnobRef, knobRange, knobValue } from '../../neutralise/knobs';
import type { HeadReading } from '../../state/reading';
import type { FieldUnit } from '../../state/shownUnits';

/** A head that quantities are read of: as it stands on the stage, or worked out beside it. */
export interface LessonHead {
  readonly design: Design;
  readonly reading: HeadReading;
  /** Where the pitch pointer stands. */
  readonly pitchDeg: number;
}

/** What a lesson file names to be read off a head; the value is always computed, never written in the file. */
export interface QuantityRef {
  readonly quantity: QuantityName;
  /** Pitch at which it is read; left out: where the pitch pointer stands. */
  readonly atDeg?: number;
  readonly part?: string;
  readonly section?: string;
  readonly field?: string;
  readonly component?: 0 | 1 | 2;
}

type Need = 'part' | 'section' | 'field';

interface QuantitySpec {
  /** Of the values in a lesson file. Null: the field's own. */
  readonly unit: FieldUnit | null;
  readonly needs: readonly Need[];
  /** Null where the head has no such number: no rest angle, no arm, over centre. */
  readonly value: (head: LessonHead, ref: QuantityRef) => number | null;
  /** In one line, for those who write lessons. */
  readonly help: string;
}

/** Every quantity that a lesson can name. Signs and frames are those of the program (DEVELOPERS.md). */
export const QUANTITIES = {
  spread: quantity('g mm2', [], 'J_yy - J_zz of the head: above zero it centres', ({ reading }) =>
    gramSquareMmFromSi(reading.totals[JYY] - reading.totals[JZZ]),
  ),
  product: quantity('g mm2', [], 'J_yz of the head: what tilts the rest angle', ({ reading }) =>
    gramSquareMmFromSi(reading.totals[JYZ]),
  ),
  mass: quantity('g', [], 'mass of what turns with the grip', ({ reading }) =>
    gramsFromKilograms(reading.totals[M]),
  ),
  moment: quantity('N mm', [], 'feathering moment of one grip at a pitch', (head, ref) =>
    mmFromMetres(head.reading.momentAt(pitchOf(head, ref))),
  ),
  partMoment: quantity(
    'N mm',
    ['part'],
    'share of one part in the moment at a pitch',
    (head, ref) => {
      const share = head.reading.part(ref.part ?? '');
      return share ? mmFromMetres(share.momentAt(pitchOf(head, ref))) : null;
    },
  ),
  airMoment: quantity('N mm', [], 'share of the air in the moment at a pitch', (head, ref) =>
    mmFromMetres(airMoment(head.reading, pitchOf(head, ref))),
  ),
  airShare: quantity(
    '%',
    [],
    'size of the air\u2019s share in percent of the sizes of air and mass together',
    (head, ref) => airShare(head.reading, pitchOf(head, ref)),
  ),
  force: quantity('N', [], 'push-rod force at a pitch, tension positive', (head, ref) =>
    head.reading.forceAt(pitchOf(head, ref)),
  ),
  friction: quantity('N mm', [], 'friction that holds one grip at a pitch', (head, ref) =>
    mmFromMetres(head.reading.friction.at(pitchOf(head, ref))),
  ),
  bandWidth: quantity(
    'deg',
    [],
    'width of the holding band that a pitch lies in; zero where it lies in none',
    (head, ref) => {
      const at = pitchOf(head, ref);
      const band = head.reading.bandsDeg.find(([low, high]) => low <= at && at <= high);
      return band ? band[1] - band[0] : 0;
    },
  ),
  rest: quantity('deg', [], 'rest angle nearest to flat', ({ reading }) =>
    nearestFlat(anglesOf(reading.equilibria, 'stable')),
  ),
  flee: quantity('deg', [], 'flee angle nearest to flat', ({ reading }) =>
    nearestFlat(anglesOf(reading.equilibria, 'unstable')),
  ),
  overCentre: quantity('deg', [], 'over-centre angle nearest to flat', ({ reading }) =>
    nearestFlat(reading.overCentreDeg),
  ),
  swings: quantity(
    '1',
    [],
    'small swings about flat for each turn of the rotor, sqrt((J_yy - J_zz)/(J_yy + J_zz))',
    ({ reading: { totals } }) => {
      const share = (totals[JYY] - totals[JZZ]) / (totals[JYY] + totals[JZZ]);
      return share >= 0 ? Math.sqrt(share) : null;
    },
  ),
  pull: quantity(
    'N',
    [],
    'centrifugal pull of the grip on its thrust bearing',
    ({ reading }) => reading.loadsAt(0).axialPull,
  ),
  flap: quantity(
    'N mm',
    [],
    'flapwise moment at the middle of the bearings at a pitch, positive bends the tip up',
    (head, ref) => {
      const { flap } = head.reading.loadsAt(pitchOf(head, ref));
      return mmFromMetres(flap.fromMass + (flap.fromThrust ?? 0));
    },
  ),
  bearingLoad: quantity('N', [], 'greatest radial load on one bearing at a pitch', (head, ref) => {
    const loads = head.reading.loadsAt(pitchOf(head, ref)).bearings.map(({ radial }) => radial);
    return loads.length > 0 ? Math.max(...loads) : null;
  }),
  value: quantity(
    null,
    ['part', 'field'],
    'a number of a part as in the design file',
    ({ design }, ref) => knobValue(design, knobOf(ref)) ?? null,
  ),
  setting: quantity(
    null,
    ['section', 'field'],
    'a number of a section of the design file (rotor, control, ...)',
    ({ design }, ref) => sectionNumber(design, ref),
  ),
  pitch: quantity('deg', [], 'where the pitch pointer stands', ({ pitchDeg }) => pitchDeg),
} as const satisfies Readonly<Record<string, QuantitySpec>>;

export type QuantityName = keyof typeof QUANTITIES;
export const QUANTITY_NAMES = Object.keys(QUANTITIES) as [QuantityName, ...QuantityName[]];

/** The value in the unit of `quantityUnit`; null where the head has no such number. */
export function quantityValue(head: LessonHead, ref: QuantityRef): number | null {
  const value = specOf(ref).value(head, ref);
  return value === null || Number.isNaN(value) ? null : value;
}

export function quantityUnit(design: Design, ref: QuantityRef): FieldUnit {
  const { unit } = specOf(ref);
  if (unit !== null) return unit;
  if (ref.section !== undefined) {
    const field = sectionField(ref);
    return field?.type === 'number' ? field.unit : '1';
  }
  return knobRange(design, knobOf(ref))?.unit ?? '1';
}

export function specOf(ref: QuantityRef): QuantitySpec {
  return QUANTITIES[ref.quantity];
}

export function knobOf({ part, field, component }: Partial<KnobRef>): KnobRef {
  return {
    part: part ?? '',
    field: field ?? '',
    ...(component === undefined ? {} : { component }),
  };
}

/** The field of a section that a reference names; undefined where there is none. */
export function sectionField({ section, field }: Pick<QuantityRef, 'section' | 'field'>) {
  const sets: Readonly<Record<string, SectionSet>> = SECTIONS;
  return Object.hasOwn(sets, section ?? '') ? sets[section ?? '']?.[field ?? ''] : undefined;
}

function sectionNumber(design: Design, ref: QuantityRef): number | null {
  const field = sectionField(ref);
  if (field?.type !== 'number') return null;
  const written = design as unknown as Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  const value = written[ref.section ?? '']?.[ref.field ?? ''] ?? field.default;
  return typeof value === 'number' ? value : null;
}

function airMoment(reading: HeadReading, pitchDeg: number): number {
  return reading.terms.find(({ id }) => id === 'air')?.momentAt(pitchDeg) ?? 0;
}

function airShare(reading: HeadReading, pitchDeg: number): number | null {
  const air = airMoment(reading, pitchDeg);
  const rest = reading.momentAt(pitchDeg) - air;
  const both = Math.abs(air) + Math.abs(rest);
  return both > 0 ? (100 * Math.abs(air)) / both : null;
}

/** The pitch that is meant: the one written, or where the pointer stands. */
function pitchOf(head: LessonHead, { atDeg }: QuantityRef): number {
  return atDeg ?? head.pitchDeg;
}

function quantity(
  unit: FieldUnit | null,
  needs: readonly Need[],
  help: string,
  value: QuantitySpec['value'],
): QuantitySpec {
  return { unit, needs, help, value };
}
