import { describe, expect, it } from 'vitest';
import type { Travel } from '../../../src/bench/readings/types';
import { derive, expectNear, NIST, preview, refusals } from './support';

/**
 * Awkward tables that must be read right. The delimiters and quotes are those of RFC 4180 and of what gauges and
 * spreadsheets write (common practice); every expected number was written by hand beside the table, in the unit that the
 * person who wrote the table had in mind, and turned to SI by the printed factors of NIST SP 811 (see `support`).
 */
interface Awkward {
  readonly name: string;
  readonly text: string;
  readonly row?: readonly number[];
  readonly pitchDeg?: readonly (number | null)[];
  /** Force and the newtons of its unit. */
  readonly force?: readonly (number | null)[];
  readonly newtons?: number;
  readonly momentNm?: readonly number[];
  readonly travel?: readonly (Travel | null)[];
  readonly time?: readonly number[];
  readonly scale?: readonly (number | null)[];
  readonly rpm?: readonly (number | null)[];
  readonly note?: readonly string[];
}

const TABLES: readonly Awkward[] = [
  {
    name: 'commas and a decimal point',
    text: 'Pitch [deg],Force [N]\n-10,3.5\n0,1.25\n10,-2\n',
    row: [2, 3, 4],
    pitchDeg: [-10, 0, 10],
    force: [3.5, 1.25, -2],
  },
  {
    name: 'semicolons and a decimal comma',
    text: 'Pitch [deg];Force [N]\r\n-10,5;3,5\r\n0;1,25\r\n10,5;-2\r\n',
    pitchDeg: [-10.5, 0, 10.5],
    force: [3.5, 1.25, -2],
  },
  {
    name: 'a pasted range of cells: tabs, no line end at the end',
    text: 'pitch deg\tforce ozf\n10\t4.5\n20\t6',
    pitchDeg: [10, 20],
    force: [4.5, 6],
    newtons: NIST.ozf,
  },
  {
    name: 'pipes with a frame and a rule',
    text: '| Pitch (deg) | Force (N) |\n|---|---|\n| 5 | 1.5 |\n| 10 | 2.5 |\n',
    row: [3, 4],
    pitchDeg: [5, 10],
    force: [1.5, 2.5],
  },
  {
    name: 'runs of spaces with units in brackets of their own',
    text: '  Pitch (deg)    Moment (N mm)\n   -5      12.5\n    5     -13.25\n',
    pitchDeg: [-5, 5],
    momentNm: [0.0125, -0.01325],
  },
  {
    name: 'a byte order mark left in a pasted text',
    text: '\ufeffpitch,force N\n1,2.5\n2,3.5\n',
    pitchDeg: [1, 2],
    force: [2.5, 3.5],
  },
  {
    name: 'blank rows above, between and below, some of delimiters only',
    text: '\n\nPitch;Force [N]\n\n1;2,5\n;;\n\n2;3,5\n\n\n',
    row: [5, 8],
    pitchDeg: [1, 2],
    force: [2.5, 3.5],
  },
  {
    name: 'comment lines anywhere',
    text: '# taken by hand\nPitch,Force [N]\n1,2.5\n# gauge set to zero again, "twice"\n2,3.5\n! end\n',
    row: [3, 5],
    pitchDeg: [1, 2],
    force: [2.5, 3.5],
  },
  {
    name: 'a heading behind a comment mark, columns parted by blanks',
    text: '# pitch_deg force_N\n-10 3.5\n0 1.5\n',
    pitchDeg: [-10, 0],
    force: [3.5, 1.5],
  },
  {
    name: 'a heading that is a hash for the number of the row',
    text: '#,Pitch,Force (N)\n1,-10,3.5\n2,0,1.5\n',
    pitchDeg: [-10, 0],
    force: [3.5, 1.5],
  },
  {
    name: 'letters for tension and compression beside amounts without sign',
    text: 'Pitch,Force (ozf),T/C\n-10,3.5,C\n0,0,\n10,4,T\n20,2,t\n',
    pitchDeg: [-10, 0, 10, 20],
    force: [-3.5, 0, 4, 2],
    newtons: NIST.ozf,
  },
  {
    name: 'letters that repeat the sign',
    text: 'Pitch,Force (N),sense\n-10,-3.5,C\n10,4,T\n',
    force: [-3.5, 4],
  },
  {
    name: 'letters in the cells of the force',
    text: 'Pitch,Force (N)\n-10,3.5 C\n10,4.25T\n20,C 1\n',
    force: [-3.5, 4.25, -1],
  },
  {
    name: 'words for the sense in another language',
    text: 'Winkel [°];Kraft [N];Zug/Druck\n-10;3,5;Druck\n10;4,25;Zug\n',
    pitchDeg: [-10, 10],
    force: [-3.5, 4.25],
  },
  {
    name: 'swapped signs, said by the heading',
    text: 'Pitch,Force N (compression +)\n-10,3.5\n10,-4\n',
    force: [-3.5, 4],
  },
  {
    name: 'swapped signs, said by a line above',
    text: 'sign: compression positive\nPitch,Force [N]\n-10,3.5\n10,-4\n',
    force: [-3.5, 4],
  },
  {
    name: 'a column for each sense',
    text: 'Pitch,Tension [N],Compression [N]\n-10,,3.5\n0,0,0\n10,4,\n20,5,0\n',
    pitchDeg: [-10, 0, 10, 20],
    force: [-3.5, 0, 4, 5],
  },
  {
    name: 'push and pull side by side, a row of units below',
    text: 'Pitch,Push,Pull\ndeg,ozf,ozf\n-10,3.5,-2\n10,4.5,1\n',
    row: [3, 3, 4, 4],
    pitchDeg: [-10, -10, 10, 10],
    force: [3.5, -2, 4.5, 1],
    newtons: NIST.ozf,
    travel: ['push', 'pull', 'push', 'pull'],
  },
  {
    name: 'push and pull side by side, one of them left empty',
    text: 'Pitch,Push [N],Pull [N]\n-10,3.5,\n10,,1\n',
    row: [2, 3],
    force: [3.5, 1],
    travel: ['push', 'pull'],
  },
  {
    name: 'two tables side by side under merged headings',
    text: 'Push;;Pull;\nPitch;Force;Pitch;Force\ndeg;N;deg;N\n-10;3,5;-12;2,5\n0;1,5;1;0,5\n',
    row: [4, 4, 5, 5],
    pitchDeg: [-10, -12, 0, 1],
    force: [3.5, 2.5, 1.5, 0.5],
    travel: ['push', 'pull', 'push', 'pull'],
  },
  {
    name: 'a column for the way of travel in many words',
    text: 'Pitch,Force [N],Direction\n1,2,up\n2,3,Down\n3,4,held\n4,5,increasing\n5,6,\n6,7,push\n',
    force: [2, 3, 4, 5, 6, 7],
    travel: ['up', 'down', 'held', 'up', null, 'push'],
  },
  {
    name: 'any order of columns, with some that mean nothing',
    text: 'Operator,Force (lbf),Humidity %,Pitch angle (rad)\nA,0.5,41,-0.25\nB,0.25,42,0.5\n',
    pitchDeg: [-0.25 / NIST.deg, 0.5 / NIST.deg],
    force: [0.5, 0.25],
    newtons: NIST.lbf,
  },
  {
    name: 'a gauge that shows mass',
    text: 'pitch,load (g)\n5,120\n10,-80\n',
    force: [120, -80],
    newtons: NIST.kgf / 1000,
  },
  {
    name: 'kilograms-force and a thousands blank in the speed',
    text: 'pitch;force [kgf];speed [1/min]\n5;0,12;10 200\n10;0,08;9 800\n',
    force: [0.12, 0.08],
    newtons: NIST.kgf,
    rpm: [10200, 9800],
  },
  {
    name: 'mixed units, a unit in each cell',
    text: 'Pitch,Force\n5 deg,1.5 N\n10°,5.39554 ozf\n0.1 rad,0.15 kgf\n'.replace(
      'Force',
      'Force [N]',
    ),
    pitchDeg: [5, 10, 0.1 / NIST.deg],
    force: [1.5, 5.39554 * NIST.ozf, 0.15 * NIST.kgf],
  },
  {
    name: 'mixed units, a column for the unit',
    text: 'Pitch;Force;Unit\n5;1,5;N\n10;4;ozf\n15;0,5;lbf\n',
    force: [1.5, 4 * NIST.ozf, 0.5 * NIST.lbf],
  },
  {
    name: 'moments in ounce-force inches',
    text: 'Pitch (deg),Torque (oz-in)\n-5,1.5\n5,-2\n',
    momentNm: [1.5 * NIST.ozfIn, -2 * NIST.ozfIn],
  },
  {
    name: 'moments in pound inches, a point between the factors',
    text: 'Pitch (deg),Moment [in·lbf]\n-5,0.5\n5,-0.25\n',
    momentNm: [0.5 * NIST.lbfIn, -0.25 * NIST.lbfIn],
  },
  {
    name: 'a decimal comma in quotes between commas',
    text: '"Pitch","Force [N]"\r\n"-10,5","3,5"\r\n"0","1,25"\r\n',
    pitchDeg: [-10.5, 0],
    force: [3.5, 1.25],
  },
  {
    name: 'thousands commas beside decimal points',
    text: 'Speed (rpm)\tPitch\tForce (mN)\n10,200\t5\t1,234.5\n9,800\t10\t987.5\n',
    pitchDeg: [5, 10],
    force: [1.2345, 0.9875],
    rpm: [10200, 9800],
  },
  {
    name: 'thousands points beside decimal commas',
    text: 'Drehzahl [U/min];Winkel [°];Kraft [mN]\n10.200;5;1.234,5\n9.800;10;987,5\n',
    force: [1.2345, 0.9875],
    rpm: [10200, 9800],
  },
  {
    name: 'thousands apostrophes and a real minus sign',
    text: "Pitch;Force [mN]\n\u221210;1'234.5\n10;\u2212987.5\n",
    pitchDeg: [-10, 10],
    force: [1.2345, -0.9875],
  },
  {
    name: 'three decimals everywhere, one number with a leading zero telling',
    text: 'Pitch;Force [N]\n10;1,234\n20;0,512\n30;2,345\n',
    force: [1.234, 0.512, 2.345],
  },
  {
    name: 'columns that differ in their decimal sign',
    text: 'Pitch\tForce [N]\n-10.5\t3,5\n2.25\t1,25\n',
    pitchDeg: [-10.5, 2.25],
    force: [3.5, 1.25],
  },
  {
    name: 'exponents',
    text: 'Pitch,Force [N]\n1.0E+01,3.5e-1\n-5e0,1.2E1\n',
    pitchDeg: [10, -5],
    force: [0.35, 12],
  },
  {
    name: 'numbers without a digit before or after the point',
    text: 'Pitch,Force [N]\n.5,3.\n-.5,+4.\n',
    pitchDeg: [0.5, -0.5],
    force: [3, 4],
  },
  {
    name: 'trailing delimiters in every row',
    text: 'Pitch,Force [N],\n1,2.5,\n2,3.5,,\n',
    pitchDeg: [1, 2],
    force: [2.5, 3.5],
  },
  {
    name: 'short rows whose missing cells are not needed',
    text: 'Pitch,Force [N],Note\n1,2.5\n2,3.5,steady\n',
    force: [2.5, 3.5],
    note: ['', 'steady'],
  },
  {
    name: 'quotes with line breaks, delimiters and doubled quotes in them (RFC 4180, 2.6 and 2.7)',
    text: 'Pitch,"Force\n[N]",Note\r\n1,2.5,"first, ""soft""\r\nthen hard"\r\n2,3.5,none\r\n',
    row: [2, 3],
    force: [2.5, 3.5],
    note: ['first, "soft"\r\nthen hard', 'none'],
  },
  {
    name: 'blanks round quoted cells and an inch mark inside a plain one',
    text: 'Pitch , "Force [N]" , Note\n 1 , "2.5" , 3" arm\n 2 , "3.5" , -\n',
    force: [2.5, 3.5],
    note: ['3" arm', '-'],
  },
  {
    name: 'line ends of carriage returns alone',
    text: 'Pitch,Force [N]\r1,2.5\r2,3.5\r',
    row: [2, 3],
    force: [2.5, 3.5],
  },
  {
    name: 'a line that tells the delimiter',
    text: 'sep=;\nPitch;Force [N]\n1;2,5\n2;3,5\n',
    row: [3, 4],
    force: [2.5, 3.5],
  },
  {
    name: 'the headings again in the middle of a log that was started twice',
    text: 'time [s],Force [N]\n0,2.5\n1,3.5\ntime [s],Force [N]\n2,4.5\n',
    row: [2, 3, 5],
    time: [0, 1, 2],
    force: [2.5, 3.5, 4.5],
  },
  {
    name: 'clock times with thousandths',
    text: 'Time;Force [N]\n00:00:01,250;2,5\n00:01:00,500;3,5\n',
    time: [1.25, 60.5],
    force: [2.5, 3.5],
  },
  {
    name: 'dates with times (ISO 8601), an hour apart',
    text: 'timestamp,force (N)\n1970-01-02T00:00:00,2.5\n1970-01-02T01:00:00.5,3.5\n',
    time: [86400, 90000.5],
    force: [2.5, 3.5],
  },
  {
    name: 'milliseconds',
    text: 't [ms]\tF [N]\n0\t2.5\n250\t3.5\n',
    time: [0, 0.25],
    force: [2.5, 3.5],
  },
  {
    name: 'a scale in millimetres instead of a pitch',
    text: 'slider position (mm),force (ozf)\n-2.5,3\n2.5,-4\n',
    pitchDeg: [null, null],
    scale: [-0.0025, 0.0025],
    force: [3, -4],
    newtons: NIST.ozf,
  },
  {
    name: 'a scale of plain divisions',
    text: 'Scale reading,Force [N]\n12,2.5\n14,3.5\n',
    scale: [12, 14],
    force: [2.5, 3.5],
  },
  {
    name: 'cells that say that there is no value where none is needed',
    text: 'Pitch,Force [N],Pull [N]\n1,2.5,n/a\n2,3.5,4\n'
      .replace('Pull', 'Compression')
      .replace('Force', 'Tension'),
    force: [2.5],
    row: [2],
  },
  {
    name: 'names run together with their units',
    text: 'pitchDeg,forceN,speedRpm\n1,2.5,10200\n2,3.5,10150.5\n',
    pitchDeg: [1, 2],
    force: [2.5, 3.5],
    rpm: [10200, 10150.5],
  },
  {
    name: 'a quantity over its unit (ISO 80000-1)',
    text: 'θ / deg;F / N\n1;2,5\n2;3,5\n'.replace('θ', 'pitch'),
    pitchDeg: [1, 2],
    force: [2.5, 3.5],
  },
  {
    name: 'signs of their own column for the sense, and for the way of travel',
    text: 'Pitch,Sign,Force [N],Direction\n1,+,2,+\n2,-,3,-\n3,+,4,0\n',
    force: [2, -3, 4],
    travel: ['up', 'down', 'held'],
  },
  {
    name: 'a dash for no way of travel',
    text: 'Pitch,Force [N],Direction\n1,2,up\n2,3,-\n3,4,down\n',
    travel: ['up', null, 'down'],
  },
  {
    name: 'a letter behind each of two forces',
    text: 'Pitch,Push [N],T/C,Pull [N],T/C\n1,2,T,3,C\n2,4,C,5,T\n',
    force: [2, -3, -4, 5],
    travel: ['push', 'pull', 'push', 'pull'],
  },
  {
    name: 'a peak beside the force and other lengths, known by their units only',
    text: 'Time [s],Force [N],Peak [N],Battery [%],Temperature [°C]\n0,2,9,81,20\n1,3,9,80,20\n',
    time: [0, 1],
    force: [2, 3],
  },
  {
    name: 'a line of words above that could be headings themselves',
    text: 'Speed;10200;rpm\nGauge;force gauge;\nPitch;Push (ozf);Pull (ozf);Remarks\n-20;12,5;11;stiff\n',
    row: [4, 4],
    force: [12.5, 11],
    newtons: NIST.ozf,
    note: ['stiff', 'stiff'],
  },
  {
    name: 'two columns of notes',
    text: 'Pitch,Force [N],Note,Remark\n1,2.5,a,b\n2,3.5,,d\n',
    force: [2.5, 3.5],
    note: ['a; b', 'd'],
  },
];

describe('an awkward table is read right', () => {
  it.each(TABLES)('$name', (table) => {
    const { readings } = derive(table.text);
    const newtons = table.newtons ?? 1;
    if (table.row) expect(readings.map(({ row }) => row)).toEqual(table.row);
    if (table.pitchDeg)
      expectNear(
        readings.map(({ pitch }) => pitch),
        table.pitchDeg.map((deg) => deg && deg * NIST.deg),
      );
    if (table.force)
      expectNear(
        readings.map(({ force }) => force),
        table.force.map((force) => force && force * newtons),
      );
    if (table.momentNm)
      expectNear(
        readings.map(({ moment }) => moment),
        table.momentNm,
      );
    if (table.travel) expect(readings.map(({ travel }) => travel)).toEqual(table.travel);
    if (table.time)
      expectNear(
        readings.map(({ time }) => time),
        table.time,
        1e-12,
      );
    if (table.scale)
      expectNear(
        readings.map(({ scale }) => scale),
        table.scale,
        1e-12,
      );
    if (table.rpm)
      expectNear(
        readings.map(({ speed }) => speed),
        table.rpm.map((rpm) => rpm && rpm * NIST.rpm),
      );
    if (table.note) expect(readings.map(({ note }) => note)).toEqual(table.note);
  });

  it('and none of them is refused in part, but for the one row with two forces', () => {
    const partly = TABLES.filter(({ text }) => refusals(text).length > 0).map(({ name }) => name);
    expect(partly).toEqual(['cells that say that there is no value where none is needed']);
  });

  it('and there are enough of them', () => {
    expect(TABLES.length).toBeGreaterThanOrEqual(50);
  });
});

describe('the lines above a table', () => {
  it('are kept as written and understood where they name a quantity', () => {
    const { guess } = preview(
      [
        'Bench sheet 3',
        'speed: 10,200 rpm',
        'fitted: bolt, blade',
        'Arm = 17.5 mm',
        'gauge: spring gauge, 80 ozf',
        'gauge step: 0.5 ozf',
        'date: 2026-03-01',
        'note: guard on; calm',
        'weather: dry',
        'Pitch,Force [ozf]',
        '1,2.5',
      ].join('\n'),
    );
    const { run, lines } = guess.metadata;
    expectNear([run.speed, run.arm, run.gaugeStep], [10200 * NIST.rpm, 0.0175, 0.5 * NIST.ozf]);
    expect(run.fitted).toBe('bolt, blade');
    expect(run.gauge).toBe('spring gauge, 80 ozf');
    expect(run.date).toBe('2026-03-01');
    expect(run.note).toBe('guard on; calm');
    expect(lines.find(({ name }) => name === 'weather')).toEqual({
      row: 9,
      name: 'weather',
      value: 'dry',
      field: null,
    });
  });

  it('may stand in cells of their own, with decimal commas', () => {
    const { guess } = preview(
      'Drehzahl;10200,5;1/min\ngauge step;0,5;ozf\nunit;ozf\nPitch;Force\n1;2,5\n2;3\n',
    );
    const { run, forceUnit } = guess.metadata;
    expectNear([run.speed, run.gaugeStep], [10200.5 * NIST.rpm, 0.5 * NIST.ozf]);
    expect(forceUnit).toBe('ozf');
    expect(guess.mapping[1].unit).toBe('ozf');
    expect(guess.assumedUnits).toContain(1);
  });

  it('leave a field empty that they do not tell, never zero', () => {
    const { run } = preview('speed: fast\narm: 17\nPitch,Force [N]\n1,2.5\n').guess.metadata;
    expect([run.speed, run.arm, run.gaugeStep]).toEqual([null, null, null]);
  });
});
