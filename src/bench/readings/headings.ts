import type { ColumnRole, Travel } from './types';
import { type Dimension, dimensionOf, type UnitName, unitFromText } from './unitNames';

/** What a column's heading says by itself. */
export interface HeadingGuess {
  readonly role: ColumnRole | null;
  readonly unit: UnitName | null;
  /** A unit in brackets that is none of those known. */
  readonly unknownUnit: string;
  readonly travel: Travel | null;
  readonly flipped: boolean;
  /** From 0 to 1: a word that can mean only this, a word and its unit, or a unit alone. */
  readonly confidence: number;
}

/** How sure a column is that only its unit speaks for. */
export const BY_UNIT_ALONE = 0.5;

/** Words of headings in several languages, tried in this order; all against small letters without accents. */
const ROLE_WORDS: readonly (readonly [ColumnRole, RegExp, number])[] = [
  [
    'sense',
    /^(?:t ?c|c ?t|sense|sign|load sense|vorzeichen|signo|signe)$|tens\w* (?:or )?compr|compr\w* (?:or )?tens|zug ?(?:oder )?druck|trek ?druk/,
    0.9,
  ],
  [
    'travel',
    /direction|^dir$|richtung|^way$|^pass$|sense of travel|way of travel|^sens$|direccion|sentido|direzione|verso/,
    0.9,
  ],
  [
    'note',
    /^(?:notes?|remarks?|comments?|bemerkung(?:en)?|anmerkung(?:en)?|remarques?|notas?|opmerking(?:en)?|kommentar)$/,
    0.95,
  ],
  ['unit', /^(?:force )?(?:units?|einheit|unite|unidad|unita|eenheid)$/, 0.8],
  [
    'run',
    /^(?:runs?|run (?:no|name|id|number)|fitted|parts? on|configuration|config|set ?up|lauf|versuch|essai)$/,
    0.8,
  ],
  [
    'time',
    /^(?:elapsed(?: time)?|t|temps|tiempo|tempo|tijd|seconds|date ?time|clock|(?:zeit|time) ?(?:stamp|stempel)?)$/,
    0.9,
  ],
  [
    'speed',
    /\brpm\b|speed|drehzahl|revs\b|\bomega\b|vitesse|velocidad|velocita|toerental|regime|rotation/,
    0.9,
  ],
  ['moment', /moment|torque|couple\b|koppel|coppia|\bpar\b/, 0.9],
  [
    'pitch',
    /pitch|angle|theta|collective|anstell|einstellwinkel|\bwinkel|steigung|\bpas\b|paso|passo|hoek|vinkel|angulo|angolo/,
    0.9,
  ],
  [
    'force',
    /force|kraft|kracht|effort|fuerza|forza|\bpush ?rod\b|\bload\b|\bgauge\b|tension|compression|\bzug\b|\bdruck\b|\bpull\b|\bpush\b|^f$/,
    0.9,
  ],
  [
    'scale',
    /scale|slider|position|displacement|skala|\bweg\b|\bhub\b|travel|stroke|echelle|scala/,
    0.85,
  ],
  ['force', /^(?:reading|value|messwert|ablesung|lecture)s?$/, 0.4],
];

const ROLE_DIMENSION: Partial<Readonly<Record<ColumnRole, readonly Dimension[]>>> = {
  pitch: ['angle'],
  scale: ['length', 'divisions'],
  force: ['force'],
  moment: ['moment'],
  speed: ['speed'],
  time: ['time'],
};
const DIMENSION_ROLE: Readonly<Record<Dimension, ColumnRole>> = {
  angle: 'pitch',
  length: 'scale',
  divisions: 'scale',
  force: 'force',
  moment: 'moment',
  speed: 'speed',
  time: 'time',
};

/** Dimensions that a role's unit may have; undefined where the role has no unit. */
export function dimensionsOf(role: ColumnRole): readonly Dimension[] | undefined {
  return ROLE_DIMENSION[role];
}

/** What a heading says: its words, a unit in one of many spellings, a way of travel ("push"), a sign ("compression"). */
export function guessHeading(heading: string): HeadingGuess {
  const { words, unitText } = splitHeading(heading);
  const unit = unitFromText(unitText);
  const unknownUnit = unit === null ? unitText : '';
  const named = ROLE_WORDS.find(([, pattern]) => pattern.test(words));
  const { role, confidence } = roleOf(named, unit);
  const isForce = role === 'force' || role === 'moment';
  return {
    role,
    unit,
    unknownUnit,
    travel: isForce ? travelOf(words) : null,
    flipped: isForce && isFlipped(words, heading),
    confidence,
  };
}

function roleOf(
  named: (typeof ROLE_WORDS)[number] | undefined,
  unit: UnitName | null,
): { role: ColumnRole | null; confidence: number } {
  const [role, , sure] = named ?? [null, null, 0];
  const byUnit = unit && DIMENSION_ROLE[dimensionOf(unit)];
  if (role === null) return { role: byUnit, confidence: byUnit ? BY_UNIT_ALONE : 0 };
  const fits = unit === null ? undefined : ROLE_DIMENSION[role]?.includes(dimensionOf(unit));
  // "Pitch scale (mm)": the unit knows better than the word.
  if (unit && fits === false) return { role: byUnit, confidence: BY_UNIT_ALONE };
  return { role, confidence: fits ? sure + 0.1 : sure };
}

/** Words in small letters without accents, and the text of the unit where one stands in the heading. */
export function splitHeading(heading: string): { words: string; unitText: string } {
  const bracket = /^(.*?)[([{<]([^()[\]{}<>]*)[)\]}>](.*)$/.exec(heading);
  if (!bracket) return splitTail(heading.trim());
  const [, before, inside, after] = bracket;
  const unitText = inside.split(/[,;]/)[0].trim();
  if (isRemark(unitText)) {
    const rest = splitTail(`${before} ${after}`.trim());
    return { words: `${rest.words} ${plainWords(inside)}`.trim(), unitText: rest.unitText };
  }
  return { words: plainWords(`${before} ${after}`), unitText };
}

/** A unit at the end of a heading without brackets, and without blanks round it. */
function splitTail(heading: string): { words: string; unitText: string } {
  // "N mm" over a column is no "n" in mm. A letter alone may be a number's or a name's.
  const whole = heading.replace('_', ' ');
  if (heading.length > 1 && unitFromText(whole) !== null)
    return { words: plainWords(heading), unitText: whole };
  // "F / N" and "pitch in deg", "force, ozf", "pitch_deg", "kraft N", "forceN", "pitchDeg".
  const tail =
    /^(.+?)(?:\s*\/\s*|\sin\s+|,|_|\s|(?<=[a-z])(?=[A-Z]))((?:N|mN|cN|kN|ozf?|lbf?|k?gf?|kp)[ _](?:m|cm|mm|in|ft)|[^\s_,]+)$/.exec(
      heading,
    );
  if (tail) {
    const unitText = tail[2].replace('_', ' ');
    if (unitFromText(unitText) !== null && !isOnlyUnit(tail[1]))
      return { words: plainWords(tail[1]), unitText };
  }
  // "pushRodForceN": the last capital begins the unit.
  const camel = /^(.*[a-z])([A-Z][A-Za-z]*)$/.exec(heading);
  if (camel && unitFromText(camel[2]) !== null)
    return { words: plainWords(camel[1]), unitText: camel[2] };
  return { words: plainWords(heading), unitText: '' };
}

/** The beginning of a bracket that explains instead of naming a unit: "(tension +)", "(T/C)", "(corrected)". */
function isRemark(head: string): boolean {
  return (
    unitFromText(head) === null &&
    (head.length > 8 || /^(?:t\/?c|[+-]|tens|compr|up|down|push|pull)/i.test(head))
  );
}

/** "rev / min" is no quantity over a unit. */
function isOnlyUnit(text: string): boolean {
  return /^(?:r|rev|1|u|tr)$/i.test(text);
}

export function plainWords(text: string): string {
  return text
    .replace(/(?<=[a-z])(?=[A-Z])/g, ' ')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/[^a-z]+/g, ' ')
    .trim();
}

const TRAVEL_WORDS: readonly (readonly [Travel, RegExp])[] = [
  ['push', /^(?:push(?:ed|ing)?|druck(?:end?)?|schieben|pousser|empujar)$/],
  ['pull', /^(?:pull(?:ed|ing)?|zug|ziehend?|tirer|tirar)$/],
  [
    'up',
    /^(?:up(?:wards?)?|increasing|inc|rising|forward|fwd|auf|hoch|steigend|rauf|montee|subida|out)$/,
  ],
  [
    'down',
    /^(?:down(?:wards?)?|decreasing|dec|falling|back(?:wards?)?|ab|runter|fallend|descente|bajada|return)$/,
  ],
  ['held', /^(?:held|hold|holding|static|still|rest|gehalten|statisch|tenu|fijo)$/],
];

/** The way of travel that one word or arrow names. */
export function travelWord(text: string): Travel | null {
  const mark = text.trim();
  if (mark === '\u2191') return 'up';
  if (mark === '\u2193') return 'down';
  const word = plainWords(mark);
  return TRAVEL_WORDS.find(([, pattern]) => pattern.test(word))?.[0] ?? null;
}

/** The same in a column that has plus signs: there a minus is a way and no empty cell. */
export function travelSign(text: string): Travel | null {
  const mark = text.trim();
  if (mark === '+') return 'up';
  if (/^[-\u2212\u2013]$/.test(mark)) return 'down';
  return mark === '0' ? 'held' : null;
}

function travelOf(words: string): Travel | null {
  // The push rod is a part, no way of travel; "Zug" and "Druck" in a heading are tension and compression.
  for (const [word] of words.matchAll(/\b(?!push rod\b|zug\b|druck\b)[a-z]+/g)) {
    const travel = travelWord(word);
    if (travel) return travel;
  }
  return null;
}

function isFlipped(words: string, heading: string): boolean {
  const tight = heading.replace(/\s/g, '');
  if (/compression(?:is|=)?(?:[-\u2212]|neg)/i.test(tight)) return false;
  if (/compression(?:is|=)?(?:\+|pos)|tension(?:is|=)?(?:[-\u2212]|neg)/i.test(tight)) return true;
  return /compression|\bdruck\b/.test(words) && !/tension|\bzug\b/.test(words);
}

/** Tension or compression from a letter or word of a column for it; null for what says neither. */
export function senseWord(text: string): 'tension' | 'compression' | null {
  const mark = text.trim();
  if (/^(?:t|tens\.?|tension|tensile|pull|pulling|zug|z|trek|traction)$/i.test(mark))
    return 'tension';
  if (/^(?:c|comp\.?|compr\.?|compression|compressive|push|pushing|druck|d|druk)$/i.test(mark))
    return 'compression';
  return null;
}

/** The same in a column that has plus signs: which sense plus is, the force column's own convention says. */
export function isSign(text: string): boolean {
  return /^[-+\u2212\u2013]$/.test(text.trim());
}
