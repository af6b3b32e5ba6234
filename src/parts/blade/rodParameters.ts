import { densityKgM3, lengthMm, type NumberParameter, type ParameterSet } from '../contract';

/** Rods along the span and weights set in: fields of the four places where there can be one. */

interface RodWords {
  /** Heading and first word of every label. */
  readonly group: string;
  /** In the middle of a sentence. */
  readonly noun: string;
  /** The parameter that is 0 where there is none. */
  readonly diameter: string;
}
const SPAR: RodWords = { group: 'Spar', noun: 'the spar', diameter: 'sparDiameterMm' };
const SPAR2: RodWords = {
  group: 'Second spar',
  noun: 'the second spar',
  diameter: 'spar2DiameterMm',
};
const WEIGHT: RodWords = {
  group: 'Tip weight',
  noun: 'the tip weight',
  diameter: 'weightDiameterMm',
};
const WEIGHT2: RodWords = {
  group: 'Second weight',
  noun: 'the second weight',
  diameter: 'weight2DiameterMm',
};

type Limits = Pick<NumberParameter, 'default' | 'min' | 'max'>;

function length(words: RodWords, name: string, help: string, limits: Limits): NumberParameter {
  const label = `${words.group}: ${name}`;
  return { ...lengthMm({ label, help, ...limits }), optional: true, group: words.group };
}

/** A length that counts only where there is a rod. */
function ownLength(words: RodWords, name: string, help: string, limits: Limits): NumberParameter {
  return { ...length(words, name, help, limits), usedWhen: { key: words.diameter } };
}

function diameter(words: RodWords): NumberParameter {
  const help = `Diameter of ${words.noun}, which lies along the span at half the height of the section; 0 for none.`;
  return length(words, 'diameter', help, { default: 0, min: 0, max: 200 });
}

function offset(words: RodWords, standard: number): NumberParameter {
  const help = `Distance of ${words.noun} from the bolt axis toward the leading edge; negative lies behind it.`;
  return ownLength(words, 'offset', help, { default: standard, min: -1000, max: 1000 });
}

function density(words: RodWords, standard: number, materialKey: string): NumberParameter {
  return densityKgM3(standard, {
    label: `${words.group}: density`,
    help: `Mass of one cubic metre of ${words.noun}: carbon rod 1550, steel 7850, brass 8500, tungsten alloy 17500.`,
    materialKey,
    usedWhen: { key: words.diameter },
    optional: true,
    group: words.group,
  });
}

function bore(words: RodWords): NumberParameter {
  const help = `Diameter of the empty bore of ${words.noun}; 0 for a full rod.`;
  return ownLength(words, 'bore', help, { default: 0, min: 0, max: 200 });
}
function start(words: RodWords): NumberParameter {
  const help = `Distance from the bolt axis to where ${words.noun} begins, in the airfoil.`;
  return ownLength(words, 'start', help, { default: 15, min: 0, max: 3000 });
}
function end(words: RodWords): NumberParameter {
  const help = `Distance from the bolt axis to where ${words.noun} ends.`;
  return ownLength(words, 'end', help, { default: 85, min: 0, max: 3000 });
}
function extent(words: RodWords): NumberParameter {
  const help = `Length of ${words.noun} along the span.`;
  return ownLength(words, 'length', help, { default: 8, min: 0.1, max: 3000 });
}
function station(words: RodWords, standard: number): NumberParameter {
  const help = `Distance from the bolt axis to the middle of ${words.noun}.`;
  return ownLength(words, 'station', help, { default: standard, min: 0, max: 3000 });
}

export const rodParameters = {
  sparDiameterMm: diameter(SPAR),
  sparBoreMm: bore(SPAR),
  sparOffsetMm: offset(SPAR, 0),
  sparStartMm: start(SPAR),
  sparEndMm: end(SPAR),
  sparDensityKgM3: density(SPAR, 1550, 'sparMaterial'),
  spar2DiameterMm: diameter(SPAR2),
  spar2BoreMm: bore(SPAR2),
  spar2OffsetMm: offset(SPAR2, -5),
  spar2StartMm: start(SPAR2),
  spar2EndMm: end(SPAR2),
  spar2DensityKgM3: density(SPAR2, 1550, 'spar2Material'),
  weightDiameterMm: diameter(WEIGHT),
  weightLengthMm: extent(WEIGHT),
  weightStationMm: station(WEIGHT, 84),
  weightOffsetMm: offset(WEIGHT, 3),
  weightDensityKgM3: density(WEIGHT, 8500, 'weightMaterial'),
  weight2DiameterMm: diameter(WEIGHT2),
  weight2LengthMm: extent(WEIGHT2),
  weight2StationMm: station(WEIGHT2, 70),
  weight2OffsetMm: offset(WEIGHT2, 3),
  weight2DensityKgM3: density(WEIGHT2, 8500, 'weight2Material'),
} as const satisfies ParameterSet;
