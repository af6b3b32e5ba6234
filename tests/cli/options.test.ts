import { describe, expect, test } from 'vitest';
import { readArguments } from '../../src/cli/options';

describe('the arguments of analyse', () => {
  test('have a range of their own when only the file is named', () => {
    expect(readArguments(['a.json'])).toEqual({
      ok: true,
      value: {
        kind: 'analyse',
        file: 'a.json',
        range: { fromDeg: -90, toDeg: 90, stepDeg: 1 },
        csv: false,
      },
    });
  });

  test('take negative and fractional numbers, in either spelling, in any order', () => {
    const range = { fromDeg: -12.5, toDeg: 40, stepDeg: 0.25 };
    for (const args of [
      ['--from', '-12.5', 'a.json', '--to', '+40', '--step', '.25', '--csv'],
      ['--csv', '--step=25e-2', '--to=40', '--from=-12.5', 'a.json'],
    ]) {
      expect(readArguments(args)).toMatchObject({ ok: true, value: { range, csv: true } });
    }
  });

  test.each([
    [[], 'no file is named; see --help'],
    [[''], 'no file is named; see --help'],
    [['-'], '-: standard input is not read; name a file'],
    [['a', 'b'], '"b": only one file is read at a time'],
    [['a', '--form', '3'], '"--form": is not a known option; see --help'],
    [['a', '-x'], '"-x": is not a known option; see --help'],
    [['a', '--csv=yes'], '"--csv=yes": is not a known option; see --help'],
    [['a', '--step'], '--step: needs a number of degrees; found nothing'],
    [['a', '--step', 'one'], '--step: needs a number of degrees; found "one"'],
    [['a', '--step', '1,5'], '--step: needs a number of degrees; found "1,5"'],
    [['a', '--step', '0x10'], '--step: needs a number of degrees; found "0x10"'],
    [['a', '--step', ''], '--step: needs a number of degrees; found ""'],
    [['a', '--to', '1e999'], '--to: needs a number of degrees; found "1e999"'],
    [['a', '--to', 'NaN'], '--to: needs a number of degrees; found "NaN"'],
    [['a', '--step', '0'], '--step: must be above 0; found 0'],
    [['a', '--step', '-1'], '--step: must be above 0; found -1'],
    [['a', '--from', '10', '--to', '5'], '--from: must not be above --to (5); found 10'],
    [['a', '--to', '400'], '--to: must lie between -360 and 360; found 400'],
    [['a', '--step', '0.001'], '--step: makes 180001 pitches; at most 100001 are computed'],
  ])('%j are refused in one line', (args, line) => {
    expect(readArguments(args)).toEqual({ ok: false, error: line });
  });

  test('may make as many pitches as are allowed', () => {
    expect(readArguments(['a', '--from', '0', '--to', '100', '--step', '0.001']).ok).toBe(true);
  });

  test('with --help among them ask for help', () => {
    expect(readArguments(['--bad', '--help'])).toEqual({ ok: true, value: { kind: 'help' } });
  });
});
