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
    ['Pushing', 'pushing', ''],
    ['Force', 'force', ''],
    ['', '', ''],
  ])('%j into %j and %j', (heading, words, unitText) => {
    expect(splitHeading(heading)).toEqual({ words, unitText });
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
  });
});
