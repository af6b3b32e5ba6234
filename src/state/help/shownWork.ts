import { degreesFromRadians, gramsFromKilograms, mmFromMetres, radians } from '../../engine/units';
import { partText, t } from '../../messages';
import { phrase } from '../../messages/phrases';
import {
  displayEnergy,
  displayForce,
  displayMass,
  displayMoment,
  displayStress,
  fixed,
  show,
  significant,
} from '../quantities';
import type { DisplayUnits } from '../settings';
import { displayPosition, grouped, secondMomentText } from '../shownUnits';
import { signedDegrees } from '../words/pitchText';
import type { Measure, Term, Worked } from './worked';

const GAP = '\u00a0';

/** Every measure as text with its unit. */
const SHOWN: Readonly<Record<Measure, (value: number, units: DisplayUnits) => string>> = {
  mass: (value, units) => show(displayMass(value, units)),
  length: (value, units) => `${displayPosition(value, units)}${GAP}${units.length}`,
  firstMoment: (value) => gramMm(value),
  secondMoment: (value, units) => secondMomentText(value, units),
  moment: (value, units) => show(displayMoment(value, units)),
  force: (value, units) => show(displayForce(value, units)),
  angle: (value) => signedDegrees(degreesFromRadians(radians(value)), 2).replace('+', ''),
  spin: (value) => `${grouped(significant(value, 4))}${GAP}rad/s`,
  frequency: (value) => `${significant(value)}${GAP}Hz`,
  rpm: (value) => `${grouped(fixed(value, 0))}${GAP}${t('unit.rpm')}`,
  energy: (value, units) => show(displayEnergy(value, units)),
  stiffness: (value, units) => `${show(displayMoment(value, units))}/rad`,
  travelPerAngle: (value, units) => `${displayPosition(value, units)}${GAP}${units.length}/rad`,
  pressure: (value, units) => show(displayStress(value, units)),
  unbalance: (value) => gramMm(value),
  grade: (value) => `${significant(1000 * value)}${GAP}mm/s`,
  count: (value) => fixed(value, 0),
  ratio: (value) => significant(value),
  time: (value) => `${significant(value)}${GAP}s`,
};

export function shownTerm(
  { measure, value }: Pick<Term, 'measure' | 'value'>,
  units: DisplayUnits,
): string {
  return SHOWN[measure](Object.is(value, -0) ? 0 : value, units);
}

/** A symbol as the language writes it: its small low words ("M_rod"), or a name that stands for one ("to spare"). */
export function symbolWords(text: string): string {
  return phrase(text).replace(
    LOW_WORD,
    (_, mark: string, word: string) => mark + partText(`symbol.${word}`, word),
  );
}
const LOW_WORD = /([_,])([a-z]{2,})(?![a-z])/g;

/** Right-hand side with the symbols in its places: "-\u03a9\u00b2 A". */
export function symbolic({ formula, terms }: Worked): string {
  return fill(formula, (name) => terms[name].symbol);
}

/**
 * The same with the numbers in. A number goes into brackets where it would not be read as one: negative, with a power
 * or a digit beside it.
 */
export function filled({ formula, terms }: Worked, units: DisplayUnits): string {
  return fill(formula, (name, before, after) => {
    const text = shownTerm(terms[name], units);
    const apart = text.startsWith('\u2212') || /[\d\u221a]$/.test(before) || after === '\u00b2';
    return apart ? `(${text})` : text;
  });
}

function fill(
  formula: string,
  textOf: (name: string, before: string, after: string) => string,
): string {
  return formula
    .replace(/\{(\w+)\}/g, (whole, name: string, at: number) =>
      textOf(name, formula.slice(0, at), formula[at + whole.length] ?? ''),
    )
    .replace(/(sin|cos)(\u00b2?) /g, '$1$2\u00a0');
}

/** As the trade and ISO 21940-11 tell it. */
function gramMm(value: number): string {
  return `${significant(gramsFromKilograms(mmFromMetres(value)))}${GAP}g${GAP}mm`;
}
