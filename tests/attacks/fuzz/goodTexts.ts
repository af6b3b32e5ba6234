import { examplePolar } from '../../../src/panels/conditions/polarDesk';
import { asset } from './asset';

export function shortPolar(): string {
  const lines = examplePolar().split('\n');
  return lines.filter((_, k) => k < 2 || k % 8 === 2).join('\n');
}

const OUTLINE =
  '1 0\n0.6 0.045\n0.3 0.06\n0.05 0.035\n0 0\n0.05 -0.035\n0.3 -0.06\n0.6 -0.045\n1 0\n';
const SIDE = '0 0\n0.05 0.035\n0.3 0.06\n0.6 0.045\n1 0\n';

/** Tables, lists and numbers, as they are typed, pasted and opened. */
export function tables(): Record<string, string> {
  const readings = asset('bench/2-bare-grip.csv');
  const plain = readings
    .split('\n')
    .filter((line) => !line.includes('#'))
    .join('\n');
  const reynolds = shortPolar().split('\n');
  return {
    'drag at rest': asset('bench/1-drag-at-rest.csv'),
    readings,
    'readings with semicolons': plain.replaceAll(',', ';').replaceAll('.', ','),
    'readings with tabs': plain.replaceAll(',', '\t'),
    'readings parted by blanks':
      'pitch(deg)  force(N)\n-10   1.5\n  0   0.25\n 10  -1.75\n 20  -2.5\n',
    cells: '-10\t1.5\tpush\tfirst\n0\t0.2 N\tpull\n10;-3.5 ozf;held;last\n20\t4 N C\n',
    polar: shortPolar(),
    'polar with Reynolds numbers': [
      ...reynolds.slice(0, 2),
      'Re = 60000',
      ...reynolds.slice(2).filter((line) => line !== ''),
      'Re = 120000',
      ...reynolds.slice(2),
    ].join('\n'),
    outline: `Own section\n${OUTLINE}`,
    'outline side by side': `Own section\n5 5\n\n${SIDE}\n${SIDE.replaceAll(' 0.0', ' -0.0')}`,
    drag: 'travel force\n-4.5  0.62\n0  0.31\n4.5  0.58\n',
    'list of numbers': '-20 -10; 0 10 20.5',
    'typed number': '1 1/8 in',
    'typed sum': '2*(3+4.5)/2 mm',
  };
}

/** What the page keeps in the browser beside the designs. */
export function notes(): Record<string, string> {
  return {
    settings: JSON.stringify({ units: { length: 'in', mass: 'oz' }, theme: 'dark', room: 'make' }),
    plan: JSON.stringify({ goal: 'centring', speeds: 'range', weightSide: 'both', knobs: null }),
    'let go': JSON.stringify({ dampingPercent: 5, restitution: 0.3, slowness: 10 }),
    'drawing choice': JSON.stringify({ format: 'A4 landscape', projection: 'third', step: 0.01 }),
    'bench draft': JSON.stringify({
      run: null,
      place: 'pitch',
      unit: 'N',
      about: { name: 'x', speedRpm: 7000 },
      rows: [{ pitch: '1', force: '2', travel: 'push', note: '' }],
    }),
  };
}
