/** Inputs that a door did not stand up to once, made small; each is named for what was wrong. `input` as text in UTF-8. */
export interface Found {
  readonly name: string;
  readonly door: string;
  readonly input: string;
  /** Seed and number of the input that it was made small from; absent where it was found by the repeats or by reading. */
  readonly seed?: readonly [seed: number, index: number];
}

const CARRYING = '<svg><design xmlns="urn:stillgrip:design">{}</design>';
const HEAD = 'pitch (deg)  force (N)\n';

export const FOUND: readonly Found[] = [
  {
    name: 'a run with a negative gauge step could not be kept in the design, nor any run beside it',
    door: 'readings file',
    input: 'step:-1N\r[deg],[N]\n,0',
    seed: [2, 8621],
  },
  {
    name: 'a gauge step of 1e38 N likewise',
    door: 'pasted readings',
    input: 'step:999999e33N\r[deg],[N]\n-',
    seed: [2, 7893],
  },
  {
    name: 'a name of the gauge of 1019 letters likewise',
    door: 'readings file',
    input: `gauge:al, ${'('.repeat(1019)}\n[deg],[N]\n0,0`,
    seed: [1, 3518],
  },
  {
    name: 'what was fitted in 3964 letters likewise',
    door: 'pasted readings',
    input: `#fitted:${'t'.repeat(3964)}\n[deg],[N]\n0,0`,
    seed: [2, 22392],
  },
  {
    name: 'a speed of 1e308 rpm likewise',
    door: 'pasted readings',
    input: 'speed: 1e308 rpm\narm: 1e300 mm\n[deg],[N]\n0,0',
  },
  {
    name: '64 kB of blanks in a line took eight seconds',
    door: 'readings file',
    input: `x${' '.repeat(65_536)}!`,
    seed: [2, 46934],
  },
  {
    name: 'blanks between two cells likewise',
    door: 'readings file',
    input: `${HEAD}0${' '.repeat(65_536)}1\n`,
  },
  {
    name: 'tabs likewise',
    door: 'pasted readings',
    input: `x${'\t'.repeat(65_536)}!`,
  },
  {
    name: 'a number of 64 kB was gone through by every pattern',
    door: 'typed number',
    input: '1a'.repeat(32_768),
  },
  {
    name: '30 kB of blanks in a list of numbers took 0.6 s',
    door: 'list of numbers',
    input: `-20${' '.repeat(30_000)}5`,
    seed: [1, 47534],
  },
  {
    name: '64 kB of blanks in a cell of the grid took 4.4 s',
    door: 'cells pasted into the grid',
    input: `x${' '.repeat(65_536)}!`,
  },
  {
    name: '64 kB of commas in a table of drag took 3.4 s',
    door: 'table of drag',
    input: ','.repeat(65_536),
  },
  {
    name: '1e308 inches were an infinite number of millimetres',
    door: 'typed number',
    input: '1e308in',
    seed: [1, 224547],
  },
  {
    name: 'more rows of drag than are kept were each held against all others',
    door: 'table of drag',
    input: Array.from({ length: 60_000 }, (_, k) => `${k / 1000} 1`).join('\n'),
  },
  {
    name: 'elements nested 21,845 deep in a drawing that carries a design took four seconds',
    door: 'design in an SVG',
    input: CARRYING + '<a>'.repeat(21_845),
  },
];
