import { describe, expect, it } from 'vitest';
import {
  guessHeading,
  isSign,
  senseWord,
  travelSign,
  travelWord,
} from '../../../src/bench/readings/headings';
import type { ColumnRole, Travel } from '../../../src/bench/readings/types';
import { type UnitName, unitFromText } from '../../../src/bench/readings/unitNames';

/**
 * Words by which people and gauges head columns, in the languages that are read, and words that only begin or end alike.
 * What each means was written down by hand (common practice and dictionaries, from memory).
 */
const HEADED: Readonly<Partial<Record<ColumnRole, readonly string[]>>> = {
  sense: [
    'T/C',
    'TC',
    'C/T',
    'ct',
    'Sense',
    'Sign',
    'Load sense',
    'Vorzeichen',
    'Signo',
    'Signe',
    'tens/compr',
    'Tension or compression',
    'Tension compression',
    'compr/tens',
    'Compression or tension',
    'Zug/Druck',
    'Zug oder Druck',
    'ZugDruck',
    'zugdruck',
    'Trek/druk',
    'trekdruk',
  ],
  travel: [
    'Direction',
    'Dir',
    'Richtung',
    'Way',
    'Pass',
    'Sense of travel',
    'Way of travel',
    'Sens',
    'Dirección',
    'Sentido',
    'Direzione',
    'Verso',
    'Direction of travel',
  ],
  note: [
    'Note',
    'Notes',
    'Remark',
    'Remarks',
    'Comment',
    'Comments',
    'Bemerkung',
    'Bemerkungen',
    'Anmerkung',
    'Anmerkungen',
    'Remarque',
    'Remarques',
    'Nota',
    'Notas',
    'Opmerking',
    'Opmerkingen',
    'Kommentar',
  ],
  unit: ['Unit', 'Units', 'Force unit', 'Einheit', 'Unité', 'Unidad', 'Unità', 'Eenheid'],
  run: [
    'Run',
    'Runs',
    'Run no',
    'Run name',
    'Run id',
    'Run number',
    'Fitted',
    'Part on',
    'Parts on',
    'Configuration',
    'Config',
    'Setup',
    'Set up',
    'Lauf',
    'Versuch',
    'Essai',
  ],
  time: [
    'Time',
    'Elapsed',
    'Elapsed time',
    'Time stamp',
    'Timestamp',
    'T',
    'Zeit',
    'Temps',
    'Tiempo',
    'Tempo',
    'Tijd',
    'Seconds',
    'Date time',
    'Datetime',
    'Clock',
    'Zeitstempel',
    'Zeit-Stempel',
  ],
  speed: [
    'RPM',
    'Speed',
    'Rotor speed',
    'Drehzahl',
    'Head revs',
    'Omega',
    'Vitesse',
    'Velocidad',
    'Velocità',
    'Toerental',
    'Régime',
    'Rotation',
  ],
  moment: ['Moment', 'Torque', 'Drehmoment', 'Couple', 'Koppel', 'Coppia', 'Par'],
  pitch: [
    'Pitch',
    'Blade angle',
    'Theta',
    'Collective',
    'Anstellung',
    'Einstellwinkel',
    'Winkel',
    'Steigung',
    'Pas',
    'Paso',
    'Passo',
    'Hoek',
    'Vinkel',
    'Ángulo',
    'Angolo',
  ],
  force: [
    'Force',
    'Kraft',
    'Kracht',
    'Effort',
    'Fuerza',
    'Forza',
    'Push rod',
    'Pushrod',
    'Push-rod',
    'Load',
    'Gauge',
    'Tension',
    'Compression',
    'Zug',
    'Druck',
    'Pull',
    'Push',
    'F',
    'Reading',
    'Readings',
    'Value',
    'Messwert',
    'Ablesung',
    'Lecture',
    'Force sign',
  ],
  scale: [
    'Scale',
    'Slider',
    'Position',
    'Displacement',
    'Skala',
    'Weg',
    'Hub',
    'Travel',
    'Stroke',
    'Échelle',
    'Escala',
    'Scala',
  ],
};
/** Nothing that is known, though a word that is stands at one end of it. */
const NOT_HEADED = [
  'etc',
  'tcx',
  'nonsense',
  'senses',
  'redir',
  'dirt',
  'runway',
  'ways',
  'bypass',
  'passage',
  'nonsens',
  'sensor',
  'footnote',
  'noteworthy',
  'disunit',
  'unitary',
  'overrun',
  'runner',
  'elapsed again',
  'not elapsed',
  'downtime',
  'timeout',
  'coupled',
  'pulley',
  'pusher',
  'half',
  'fx',
  'misreading',
  'readingroom',
  '',
];

describe('a word over a column', () => {
  it.each(Object.entries(HEADED))('says that it is one of %s', (role, words) => {
    const others = words.filter((word) => guessHeading(word).role !== role);
    expect(others).toEqual([]);
  });

  it('says nothing where it only begins or ends like one', () => {
    expect(NOT_HEADED.filter((word) => guessHeading(word).role !== null)).toEqual([]);
  });

  it('is surer the less else it can mean, and with a unit that fits', () => {
    const sure = ['Notes', 'Force', 'Slider', 'Run', 'Reading'].map(
      (word) => guessHeading(word).confidence,
    );
    expect(sure).toEqual(sure.toSorted((a, b) => b - a));
    expect(guessHeading('Force [N]').confidence).toBeGreaterThan(guessHeading('Force').confidence);
    expect(guessHeading('Notes').confidence).toBeLessThanOrEqual(1);
    expect(guessHeading('Humidity').confidence).toBe(0);
  });
});

const WAYS: Readonly<Record<Travel, readonly string[]>> = {
  push: [
    'push',
    'Pushed',
    'pushing',
    'Druck',
    'drücken',
    'drückend',
    'schieben',
    'pousser',
    'empujar',
  ],
  pull: ['pull', 'Pulled', 'pulling', 'Zug', 'ziehen', 'ziehend', 'tirer', 'tirar'],
  up: [
    'up',
    'upward',
    'upwards',
    'increasing',
    'inc',
    'rising',
    'forward',
    'fwd',
    'auf',
    'hoch',
    'steigend',
    'rauf',
    'montée',
    'subida',
    'out',
    '\u2191',
    ' \u2191 ',
  ],
  down: [
    'down',
    'downward',
    'downwards',
    'decreasing',
    'dec',
    'falling',
    'back',
    'backward',
    'backwards',
    'ab',
    'runter',
    'fallend',
    'descente',
    'bajada',
    'return',
    '\u2193',
    ' \u2193',
  ],
  held: [
    'held',
    'hold',
    'holding',
    'static',
    'still',
    'rest',
    'gehalten',
    'statisch',
    'tenu',
    'fijo',
  ],
};

describe('a word for the way of travel', () => {
  it.each(Object.entries(WAYS))('%s is known by its words', (way, words) => {
    expect(words.filter((word) => travelWord(word) !== way)).toEqual([]);
  });

  it.each([
    'mypush',
    'pusher',
    'repull',
    'pulls',
    'pup',
    'upper',
    'shutdown',
    'downs',
    'beheld',
    'resting',
    '',
    '+',
    '-',
    '0',
  ])('%j is none', (word) => {
    expect(travelWord(word)).toBeNull();
  });

  it('may be a sign where signs are used: a minus is no empty cell there', () => {
    const marks = ['+', ' + ', '-', '\u2212', '\u2013 ', '0', '', '--', '+-', '-x', 'up'];
    expect(marks.map(travelSign)).toEqual([
      'up',
      'up',
      'down',
      'down',
      'down',
      'held',
      null,
      null,
      null,
      null,
      null,
    ]);
  });
});

describe('a word for tension or compression', () => {
  it.each([
    [
      'tension',
      [
        'T',
        't',
        ' T ',
        'tens',
        'tens.',
        'Tension',
        'tensile',
        'pull',
        'pulling',
        'Zug',
        'z',
        'trek',
        'traction',
      ],
    ],
    [
      'compression',
      [
        'C',
        'c',
        ' c',
        'comp',
        'comp.',
        'compr',
        'compr.',
        'Compression',
        'compressive',
        'push',
        'pushing',
        'Druck',
        'd',
        'druk',
      ],
    ],
    [
      null,
      [
        '',
        'x',
        'xt',
        'tx',
        'xc',
        'cx',
        'TC',
        'extension',
        'tensions',
        'decompression',
        'zugs',
        'drucks',
        '+',
        '-',
      ],
    ],
  ] as const)('is %s', (sense, words) => {
    expect(words.filter((word) => senseWord(word) !== sense)).toEqual([]);
  });

  it('may be a sign alone', () => {
    expect(['+', '-', '\u2212', ' \u2013 '].every(isSign)).toBe(true);
    expect(['', '+-', 'x+', '+x', '0', 'T'].some(isSign)).toBe(false);
  });
});

/** Spellings in which gauges, people and spreadsheets write units (common practice; from memory). */
const SPELLED: Readonly<Partial<Record<UnitName, readonly string[]>>> = {
  deg: [
    'deg',
    'degs',
    'degree',
    'degrees',
    '\u00b0',
    '\u00ba',
    'gradi',
    'grados',
    'graden',
    'degrés',
    'Grad',
    'deg.',
  ],
  rad: ['rad', 'radian', 'radians'],
  N: ['n', 'N', 'newton', 'Newtons'],
  mN: ['mN', 'mn'],
  cN: ['cN', 'cn'],
  daN: ['daN'],
  kN: ['kN'],
  ozf: [
    'ozf',
    'oz',
    'ounce',
    'ounces',
    'ouncef',
    'oz f',
    'ounce force',
    'ounce-force',
    'ounces force',
    'oz-f',
  ],
  lbf: ['lbf', 'lb', 'lbs', 'pound', 'pounds', 'lb f', 'lb-f', 'pound force'],
  gf: ['gf', 'g', 'gram', 'grams', 'g f', 'gram force', 'gram-force'],
  kgf: ['kgf', 'kg', 'kg f', 'kg-f', 'kp'],
  'N m': ['N m', 'nm', 'Nm', 'newton metre', 'newton-metre', 'N\u00d7m', 'N\u2022m'],
  'N cm': ['N cm', 'Ncm'],
  'N mm': ['N mm', 'Nmm', 'N * mm', 'N  mm', 'N\u202fmm'],
  'mN m': ['mN m', 'mNm'],
  'ozf in': ['ozf in', 'in ozf', 'oz in', 'in oz', 'ozin', 'inoz', 'oz-in'],
  'lbf in': ['lbf in', 'in lbf', 'lb in', 'in lb', 'in-lb'],
  'lbf ft': ['lbf ft', 'ft lbf', 'lb ft', 'ft lb', 'ft-lb'],
  'gf cm': ['gf cm', 'g cm', 'g-cm'],
  'kgf cm': ['kgf cm', 'kg cm', 'kg.cm'],
  rpm: [
    'rpm',
    'r/min',
    '1/min',
    '/min',
    'rev/min',
    'U/min',
    'tr/min',
    'min^-1',
    'min-1',
    'min\u207b\u00b9',
    'min\u22121',
  ],
  'rad/s': ['rad/s', 'rad s^-1', 'rad\u00b7s\u207b\u00b9'],
  Hz: ['Hz', '1/s', 'rev/s', 'rps'],
  s: ['s', 'sec', 'secs', 'second', 'seconds'],
  ms: ['ms', 'msec'],
  min: ['min', 'minutes'],
  h: ['h', 'hours'],
  mm: ['mm', 'millimetres', 'millimeters'],
  cm: ['cm'],
  m: ['m'],
  in: ['in', 'inch', 'inches', '"'],
  div: ['div', 'divs', 'divisions'],
};

describe('a unit is known', () => {
  it.each(Object.entries(SPELLED))('%s by its spellings', (unit, spellings) => {
    expect(spellings.filter((spelling) => unitFromText(spelling) !== unit)).toEqual([]);
  });

  it('and none is read into what only looks like one', () => {
    const texts = ['mega n', 'MN', 'Mn', 'toString', 'n--m', 'x deg', 'deg x', '1-min'];
    expect(texts.filter((text) => unitFromText(text) !== null)).toEqual([]);
  });
});
