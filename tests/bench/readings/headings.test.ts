import { describe, expect, it } from 'vitest';
import { guessHeading, plainWords, splitHeading } from '../../../src/bench/readings/headings';

describe('a heading is split', () => {
  it.each([
    ['Force [N]', 'force', 'N'],
    ['Force { N }', 'force', 'N'],
    ['Force <N>', 'force', 'N'],
    ['Force (N) peak', 'force peak', 'N'],
    ['Force (N, filtered)', 'force', 'N'],
    ['Force (N; filtered)', 'force', 'N'],
    ['Force (filtered)', 'force', 'filtered'],
    ['Force (not filtered)', 'force not filtered', ''],
    ['Force N (tension +)', 'force tension', 'N'],
    ['Force (T/C) N', 'force t c', 'N'],
    ['Force (TC)', 'force tc', ''],
    ['Force (+) N', 'force', 'N'],
    ['Force (up), N', 'force up', 'N'],
    ['Force (Down) N', 'force down', 'N'],
    ['Force (push) N', 'force push', 'N'],
    ['Force (pull) N', 'force pull', 'N'],
    ['Force (compr) N', 'force compr', 'N'],
    ['Force / N', 'force', 'N'],
    ['Force/N', 'force', 'N'],
    ['Force in N', 'force', 'N'],
    ['Force, N', 'force', 'N'],
    ['Force_N', 'force', 'N'],
    ['Force   N', 'force', 'N'],
    ['forceN', 'force', 'N'],
    ['Moment N mm', 'moment', 'N mm'],
    ['moment_N_mm', 'moment', 'N mm'],
    ['Moment kgf.cm', 'moment', 'kgf.cm'],
    ['Torque ozf in', 'torque', 'ozf in'],
    ['Torque lb-ft', 'torque', 'lb-ft'],
    ['Moment mN m', 'moment', 'mN m'],
    ['pushRodForceN', 'push rod force', 'N'],
    ['pushRodForceOzf', 'push rod force', 'Ozf'],
    ['Rev / min', 'rev min', ''],
    ['rev/min', 'rev min', 'rev/min'],
    ['1/min', 'min', '1/min'],
    ['rpm', 'rpm', 'rpm'],
    ['N', 'n', ''],
    ['N mm', 'n mm', 'N mm'],
    ['ozf_in', 'ozf in', 'ozf in'],
    ['Pushing', 'pushing', ''],
    ['Force', 'force', ''],
    ['', '', ''],
    [' Force N ', 'force', 'N'],
    ['Force in  N', 'force', 'N'],
    ['Force,N', 'force', 'N'],
    ['Force,zmm', 'force zmm', ''],
    ['momentN.m', 'moment', 'N.m'],
    ['momentN m', 'moment', 'N m'],
    ['Torque oz in', 'torque', 'oz in'],
    ['Torque lb in', 'torque', 'lb in'],
    ['Moment kg cm', 'moment', 'kg cm'],
    ['Moment g cm', 'moment', 'g cm'],
    ['Moment gf_cm', 'moment', 'gf cm'],
    ['forceN2', 'force n', ''],
    ['Force (N , filtered)', 'force', 'N'],
    ['Force (peak , N)', 'force', 'peak'],
    ['N (tension +)', 'n tension', ''],
    // A unit of more than eight letters, and texts in which a sign or a way stands, but not first.
    ['Scale (divisions)', 'scale', 'divisions'],
    ['Force (group)', 'force', 'group'],
    ['Moment (kN-m)', 'moment', 'kN-m'],
    // Only a turn over a minute is a unit as a whole.
    ['Counter / min', 'counter', 'min'],
    ['Travel / mm', 'travel', 'mm'],
  ])('%j into %j and %j', (heading, words, unitText) => {
    expect(splitHeading(heading)).toEqual({ words, unitText });
  });

  it.each([
    ['deg', 'pitch'],
    ['mm', 'scale'],
    ['div', 'scale'],
    ['ozf', 'force'],
    ['N m', 'moment'],
    ['1/min', 'speed'],
    ['ms', 'time'],
  ] as const)('and a unit alone tells what has it: %s is a %s, half sure', (unit, role) => {
    expect(guessHeading(unit)).toMatchObject({ role, confidence: 0.5 });
    expect(guessHeading(`[${unit}]`)).toMatchObject({ role, confidence: 0.5 });
  });

  it('and a unit that fits makes a word surer by a tenth, one that has no place there does not', () => {
    const sure = ['Force', 'Force [N]', 'Slider', 'Slider [mm]', 'Reading', 'Reading [N]'].map(
      (heading) => guessHeading(heading).confidence,
    );
    [0.9, 1, 0.85, 0.95, 0.4, 0.5].forEach((value, k) => expect(sure[k]).toBeCloseTo(value, 12));
    expect(guessHeading('Notes [N]')).toMatchObject({ role: 'note', confidence: 0.95 });
  });

  it('into small letters without accents, marks and digits', () => {
    expect(plainWords('  Éch\u00e8lle-2 (x_y) ')).toBe('echelle x y');
    expect(plainWords('pushRod')).toBe('push rod');
    expect(plainWords('RPM')).toBe('rpm');
  });

  it.each([
    ['Tension + [N]', false],
    ['tension positive', false],
    ['tension is pos', false],
    ['Tension=+', false],
    ['tension neg', true],
    ['tension is \u2212', true],
    ['Tension = -', true],
    ['compression positive', true],
    ['compression is +', true],
    ['compression=+', true],
    ['compression negative', false],
    ['compression is -', false],
    ['compression=\u2212', false],
    ['Compression load', true],
    ['Druckkraft', false],
    ['Druck Kraft', true],
    ['Zug Druck Kraft', false],
    ['Force tension compression', false],
    ['(compression positive, tension negative)', true],
    ['(tension positive, compression negative)', false],
  ])('%j turns the sign round: %s', (heading, flipped) => {
    expect(guessHeading(`Load ${heading}`).flipped).toBe(flipped);
  });

  it('and no pitch or speed has a way of travel or a sign of a force', () => {
    expect(guessHeading('Pitch up, compression +')).toMatchObject({
      role: 'pitch',
      travel: null,
      flipped: false,
    });
    expect(guessHeading('Moment up')).toMatchObject({ role: 'moment', travel: 'up' });
    expect(guessHeading('pushRod force, down')).toMatchObject({ role: 'force', travel: 'down' });
    expect(guessHeading('Zugkraft auf')).toMatchObject({ role: 'force', travel: 'up' });
    for (const plain of ['Push rod', 'pushrod load', 'Zug', 'Druck'])
      expect(guessHeading(plain)).toMatchObject({ role: 'force', travel: null });
  });
});
