import { describe, expect, it } from 'vitest';
import { guessHeading } from '../../../src/bench/readings/headings';
import { siFrom, unitFromText, unitsOf } from '../../../src/bench/readings/unitNames';
import { NIST, NIST_RELATIVE } from './support';

describe('a unit', () => {
  it.each([
    ['deg', ['deg', 'Deg', 'degrees', '\u00b0', 'DEG.', 'Grad']],
    ['N', ['N', 'n', 'Newton', 'newtons']],
    ['ozf', ['ozf', 'oz', 'OZF', 'oz-f', 'ounces', 'ozf ']],
    ['lbf', ['lbf', 'lb', 'lbs', 'pound-force']],
    ['gf', ['gf', 'g', 'grams', 'g-f']],
    ['kgf', ['kgf', 'kg', 'kp', 'KGF']],
    ['N mm', ['N mm', 'Nmm', 'N.mm', 'N\u00b7mm', 'N*mm', 'N-mm', 'N\u00a0mm']],
    ['N m', ['N m', 'Nm', 'nm', 'N\u22c5m']],
    ['mN m', ['mNm', 'mN m']],
    ['ozf in', ['ozf in', 'oz-in', 'in-oz', 'ozf\u00b7in', 'oz.in']],
    ['rpm', ['rpm', 'RPM', 'r/min', '1/min', 'U/min', 'min\u207b\u00b9', 'min^-1', 'rev/min']],
    ['rad/s', ['rad/s']],
    ['Hz', ['Hz', 'hz', '1/s', 'rps']],
    ['ms', ['ms', 'msec']],
    ['in', ['in', 'inch', '"']],
  ] as const)('%s is known by its spellings', (name, spellings) => {
    for (const spelling of spellings) expect(unitFromText(spelling), spelling).toBe(name);
  });

  it.each(['', 'MN', 'dyn', 'grad', 'gr', '%', 'constructor', 'deg/s', 'xyz'])(
    'is none that is not known or has two meanings: %j',
    (text) => {
      expect(unitFromText(text)).toBeNull();
    },
  );

  it('is turned to SI by the factors of NIST SP 811 (2008), Appendix B.8 (from memory)', () => {
    const factors = {
      deg: NIST.deg,
      ozf: NIST.ozf,
      lbf: NIST.lbf,
      kgf: NIST.kgf,
      gf: NIST.kgf / 1000,
      'ozf in': NIST.ozfIn,
      'lbf in': NIST.lbfIn,
      'lbf ft': 1.355818,
      'kgf cm': NIST.kgf / 100,
      'N mm': 1e-3,
      rpm: NIST.rpm,
      Hz: 2 * Math.PI,
      ms: 1e-3,
      min: 60,
      h: 3600,
      in: 0.0254,
      mm: 1e-3,
    } as const;
    for (const [name, factor] of Object.entries(factors)) {
      const found = siFrom(1, name as keyof typeof factors);
      expect(Math.abs(found / factor - 1), name).toBeLessThan(NIST_RELATIVE);
    }
  });

  it('can be chosen from a list for every dimension', () => {
    expect(unitsOf('force')).toContain('ozf');
    expect(unitsOf('angle')).toEqual(['deg', 'rad']);
    expect(unitsOf('divisions')).toEqual(['div']);
  });
});

describe('a heading', () => {
  it.each([
    ['Pitch [deg]', 'pitch', 'deg'],
    ['force (ozf)', 'force', 'ozf'],
    ['kraft N', 'force', 'N'],
    ['Kraft in N', 'force', 'N'],
    ['F / N', 'force', 'N'],
    ['Pitch, deg', 'pitch', 'deg'],
    ['blade_angle_deg', 'pitch', 'deg'],
    ['pushRodForceN', 'force', 'N'],
    ['Push-rod force [lbf]', 'force', 'lbf'],
    ['Torque oz-in', 'moment', 'ozf in'],
    ['Moment N mm', 'moment', 'N mm'],
    ['Drehzahl [1/min]', 'speed', 'rpm'],
    ['RPM', 'speed', 'rpm'],
    ['Rotor speed', 'speed', null],
    ['Elapsed time (s)', 'time', 's'],
    ['t / s', 'time', 's'],
    ['Slider position (mm)', 'scale', 'mm'],
    ['Pitch scale (mm)', 'scale', 'mm'],
    ['T/C', 'sense', null],
    ['Tension or compression', 'sense', null],
    ['Direction of travel', 'travel', null],
    ['Remarks', 'note', null],
    ['Channel 3 [ozf]', 'force', 'ozf'],
    ['Humidity %', null, null],
    ['Force [dyn]', 'force', null],
  ] as const)('%j is understood', (heading, role, unit) => {
    const guess = guessHeading(heading);
    expect([guess.role, guess.unit]).toEqual([role, unit]);
  });

  it.each([
    ['Push [N]', 'push', false],
    ['Pull force (ozf)', 'pull', false],
    ['Push-rod force [N]', null, false],
    ['Force up [N]', 'up', false],
    ['Compression [N]', null, true],
    ['Tension [N]', null, false],
    ['Force N (tension +)', null, false],
    ['Force N (tension -)', null, true],
    ['Force (N, compression positive)', null, true],
    ['Zug [N]', null, false],
    ['Druck [N]', null, true],
  ] as const)('%j tells way and sign', (heading, travel, flipped) => {
    const guess = guessHeading(heading);
    expect([guess.travel, guess.flipped]).toEqual([travel, flipped]);
  });
});
