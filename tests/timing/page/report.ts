import { cpus } from 'node:os';

/** One line of what was measured: times in ms, bytes as packed by gzip in kB. */
export interface Row {
  readonly what: string;
  readonly unit: 'ms' | 'kB gz';
  readonly median: number;
  /** Of five openings the worst; of bytes the same as the median. */
  readonly p95: number;
  readonly worst: number;
}

/** Every row, for who looks for what changed. */
export function wholeTable(rows: readonly Row[]): string {
  const lines = rows.map(({ what, unit, median, p95, worst }) => {
    const digits = unit === 'ms' && worst < 100 ? 2 : 0;
    const texts = [median, p95, worst].map((value) => value.toFixed(digits));
    return `| ${what} | ${texts.join(' | ')} | ${unit} |`;
  });
  return [
    '| what | median | p95 | worst | unit |',
    '| --- | --- | --- | --- | --- |',
    ...lines,
  ].join('\n');
}

/** The table of the README. `rooms`: what each room sends when it is first opened. */
export function readmeTable(rows: readonly Row[], rooms: readonly Row[], frames: number): string {
  const times = rows.filter(({ unit }) => unit === 'ms');
  const sent = rows.filter(({ unit }) => unit !== 'ms');
  const ofRooms = rooms.map(({ median }) => median).toSorted((a, b) => a - b);
  return `
${cpus().length} cores, drawn in software, everything shown. Script of the page's thread in the ${frames} frames of a drag (the browser's own
trace), times of five openings without a past (95 % and worst: the slowest) from the beginning of the navigation, in milliseconds.

| in the page | median | 95 % | worst |
|---|---|---|---|
${times.map(({ what, median, p95, worst }) => `| ${what} | ${[median, p95, worst].map(milliseconds).join(' | ')} |`).join('\n')}

${sent.map(({ what, median }) => `${sentence(what)}: ${median.toFixed(0)} kB, packed.`).join(' ')} A room when it is first
opened (${rooms.length} of them): ${ofRooms[ofRooms.length >> 1].toFixed(0)} kB in the middle, ${ofRooms[ofRooms.length - 1].toFixed(0)} kB at most.
`;
}

function milliseconds(value: number): string {
  return value.toFixed(value < 10 ? 1 : 0);
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
