import { describe, expect, it } from 'vitest';
import { quantityOf } from '../../../src/bench/readings/metadata';
import { preview } from './support';

describe('the lines above a table', () => {
  const fields = (...lines: string[]) =>
    preview(`${lines.join('\n')}\nPitch,Force [N]\n1,2.5\n`).guess.metadata;

  it.each([
    [
      'speed',
      [
        'speed',
        'Rotor speed',
        'head speed',
        'test speed',
        'rpm',
        'Drehzahl',
        'toerental',
        'Vitesse',
        'revs',
      ],
    ],
    ['gaugeStep', ['gauge step', 'resolution', 'step', 'Auflösung', 'least count']],
    ['forceUnit', ['unit', 'Units', 'force unit', 'Einheit']],
    ['sign', ['sign', 'Signs', 'sign convention', 'positive', 'Vorzeichen']],
    ['arm', ['arm', 'pitch arm', 'gauge arm', 'measuring arm', 'arm length', 'Hebelarm']],
    ['gauge', ['gauge', 'instrument', 'Messgerät', 'dynamometer']],
    [
      'fitted',
      [
        'fitted',
        'with',
        'part',
        'parts on',
        'configuration',
        'config',
        'setup',
        'set up',
        'build',
        'Aufbau',
        'run',
        'test',
      ],
    ],
    ['date', ['date', 'Datum', 'fecha', 'data', 'day']],
    ['note', ['note', 'notes', 'remark', 'remarks', 'comment', 'comments', 'Bemerkung', 'title']],
    [
      null,
      [
        'weather',
        'overspeed',
        'speeds',
        'rpms',
        'xrpm',
        'avitesse',
        'revsx',
        'xrevs',
        'misstep',
        'stepped',
        'community',
        'unity',
        'reinheit',
        'einheiten',
        'signal',
        'designs',
        'positively',
        'charm',
        'army',
        'instruments',
        'xinstrument',
        'within',
        'herewith',
        'party',
        'apart',
        'reconfig',
        'configs',
        'setups',
        'rebuild',
        'builder',
        'runs',
        'overrun',
        'tests',
        'contest',
        'update',
        'dates',
        'undatum',
        'datums',
        'fechas',
        'xfecha',
        'datas',
        'xdata',
        'days',
        'today',
        'notebook',
        'footnotes',
        'remarkable',
        'xremark',
        'xcomment',
        'commentary',
        'subtitle',
        'titles',
        'xhebel',
        'control unit',
        'false positive',
        'no setup',
      ],
    ],
  ] as const)('are understood as %s', (field, names) => {
    const { lines } = fields(...names.map((name) => `${name}: x`));
    expect(lines.map(({ name }) => name)).toEqual(names);
    expect(lines.filter((line) => line.field !== field)).toEqual([]);
  });

  it.each([
    ['speed: 10200 rpm', 'speed', '10200 rpm'],
    ['speed = 10200 rpm', 'speed', '10200 rpm'],
    ['# speed: 10200 rpm', 'speed', '10200 rpm'],
    ['#speed : 10200 rpm  ', 'speed', '10200 rpm'],
    ['// speed: 10200 rpm', 'speed', '10200 rpm'],
    ['%! speed: 10200 rpm', 'speed', '10200 rpm'],
    ['speed,10200,rpm', 'speed', '10200 rpm'],
    ['# gauge, spring, old', 'gauge', 'spring, old'],
    ['fitted: bolt, blade', 'fitted', 'bolt, blade'],
    ['fitted: bolt, blade,,', 'fitted', 'bolt, blade'],
    ['note: ,calm', 'note', 'calm'],
    ['note: ,, calm', 'note', 'calm'],
    ['note: soft; calm', 'note', 'soft; calm'],
    ['note: soft; calm, cold', 'note', 'soft; calm, cold'],
    ['speed:10200 rpm', 'speed', '10200 rpm'],
    ['gauge #2, spring', 'gauge #2', 'spring'],
    ['## gauge, spring', 'gauge', 'spring'],
    ['#gauge, spring', 'gauge', 'spring'],
    ['#  gauge, spring', 'gauge', 'spring'],
  ])('%j holds %j and %j', (line, name, value) => {
    expect(fields(line).lines.map((one) => [one.name, one.value])).toEqual([[name, value]]);
  });

  it('may hold several pairs, and prose holds none', () => {
    const { lines } = preview('speed: 10200 rpm;arm: 17 mm\nPitch;Force [N]\n1;2,5\n').guess
      .metadata;
    expect(lines.map(({ name, value }) => [name, value])).toEqual([
      ['speed', '10200 rpm'],
      ['arm', '17 mm'],
    ]);
    const cells = preview('fitted: bolt;M3;long\nPitch;Force [N]\n1;2,5\n').guess.metadata;
    expect(cells.lines.map(({ name, value }) => [name, value])).toEqual([
      ['fitted', 'bolt M3 long'],
    ]);
    expect(fields('It was calm', '3, 4').lines).toEqual([]);
    expect(fields('2nd try, calm').lines).toEqual([]);
    expect(fields('12 start: now').lines).toEqual([]);
    const pairs = (line: string) =>
      preview(`${line}\nPitch;Force [N]\n1;2,5\n`).guess.metadata.lines.map(({ name, value }) => [
        name,
        value,
      ]);
    expect(pairs('speed: 10200 rpm;arm: 17 mm;')).toEqual([
      ['speed', '10200 rpm'],
      ['arm', '17 mm'],
    ]);
    // A name without a value does not take the next pair for one.
    expect(pairs('speed:;arm: 17 mm')).toEqual([
      ['speed', ''],
      ['arm', '17 mm'],
    ]);
    expect(fields('speed:').run.speed).toBeNull();
  });

  it('give numbers in SI units where they have them, within what a run may have', () => {
    const runOf = (...lines: string[]) => fields(...lines).run;
    expect(runOf('arm: 17.1 mm').arm).toBeCloseTo(0.0171, 14);
    expect(runOf('arm: 17.1').arm).toBeNull();
    expect(runOf('arm: 17.1 N').arm).toBeNull();
    expect(runOf('arm: 10 m').arm).toBe(10);
    expect(runOf('arm: 10.1 m').arm).toBeNull();
    expect(runOf('arm: 0.01 mm').arm).toBeCloseTo(1e-5, 14);
    expect(runOf('arm: 0.009 mm').arm).toBeNull();
    expect(runOf('speed: 600').speed).toBeCloseTo(20 * Math.PI, 9);
    expect(runOf('speed: 10 Hz').speed).toBeCloseTo(20 * Math.PI, 9);
    expect(runOf('speed: -1').speed).toBeNull();
    expect(runOf('speed: 1000001').speed).toBeNull();
    expect(runOf('unit: N', 'gauge step: 0.1').gaugeStep).toBe(0.1);
    expect(runOf('unit: mm', 'gauge step: 0.1').gaugeStep).toBeNull();
    expect(runOf('gauge step: 0.1 N').gaugeStep).toBe(0.1);
    expect(runOf('date: today', 'note: calm', 'gauge: spring', 'fitted: bolt')).toMatchObject({
      date: 'today',
      note: 'calm',
      gauge: 'spring',
      fitted: 'bolt',
    });
    expect(fields('unit: mm').forceUnit).toBeNull();
    expect(fields().run).toEqual({
      speed: null,
      fitted: '',
      arm: null,
      gauge: '',
      gaugeStep: null,
      date: '',
      note: '',
    });
    // A number that could be either is read as those of the table.
    const arm = preview('arm: 1,234 mm\nPitch;Force [N]\n1,5;2,5\n').guess.metadata.run.arm;
    expect(arm).toBeCloseTo(0.001234, 14);
  });

  it.each([
    ['compression positive', 'compression'],
    ['tension positive', 'tension'],
    ['tension negative', 'compression'],
    ['compression is -', 'tension'],
    ['compression \u2212, tension +', 'tension'],
    ['Zug +', 'tension'],
    ['Druck +', 'compression'],
    ['Druck neg.', 'tension'],
    ['up is positive', null],
  ])('say which sense is positive: %j', (text, positive) => {
    expect(fields(`sign: ${text}`).positive).toBe(positive);
  });

  it('a text that no design keeps is another line that begins alike', () => {
    const lengths = (name: string, count: number) =>
      fields(`${name}: ${'x'.repeat(count)}`).lines[0].field;
    expect([lengths('fitted', 200), lengths('fitted', 201)]).toEqual(['fitted', null]);
    expect([lengths('gauge', 200), lengths('gauge', 201)]).toEqual(['gauge', null]);
    expect([lengths('date', 200), lengths('date', 201)]).toEqual(['date', null]);
    expect([lengths('note', 201), lengths('sign', 201)]).toEqual(['note', 'sign']);
  });

  it.each([
    ['1,5 N', ',', 1.5],
    ['1.5 N', ',', 1.5],
    ['1,234 N', ',', 1.234],
    ['1,234 N', '.', 1234],
    ['1.234,5 N', '.', 1234.5],
    ["1'234.5 N", ',', 1234.5],
    ['', '.', null],
    ['soft', '.', null],
    ['2 mm', '.', null],
    ['2', '.', null],
  ] as const)(
    'a number tells its own decimal sign or takes the table\u2019s: %j with %j',
    (text, table, wanted) => {
      expect(quantityOf(text, 'force', null, table)).toBe(wanted);
    },
  );

  it('or is none at all, whatever unit is assumed', () => {
    expect(quantityOf('soft', 'force', 'N', '.')).toBeNull();
    expect(quantityOf('1,234', 'force', 'N', '.')).toBe(1234);
  });
});
