import { readFileSync } from 'node:fs';
import type { Design, Part } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { MAX_NAME, MAX_TRY_OUTS } from '../../src/design/limits';
import { PAYLOADS } from './payloads';

const DEMO = new URL('../../assets/designs/3-ordinary-bolt.json', import.meta.url);

/**
 * The demo head with hostile texts wherever a design holds a text: every payload is the name of a part, of a run of the bench
 * and the note of one of its readings, and a cell of its table; names and notes of try-outs, materials and the design too.
 */
export function hostileDesign(): Design {
  const read = parseDesign(readFileSync(DEMO, 'utf8'));
  if (!read.ok) throw new Error(`hostileDesign(): ${read.error}`);
  const { parts } = read.value;
  const own = parts.map((part, k) => ({ ...part, name: PAYLOADS[k] }) as Part);
  const note = PAYLOADS.join(' ').slice(0, 4000);
  return {
    ...read.value,
    name: '<img src=x onerror=window.brokenInto=1>',
    note,
    materials: PAYLOADS.slice(0, 20).map((name, k) => ({
      id: `own-${k}`,
      name,
      note: name,
      source: name,
      densityKgM3: 7850,
    })),
    tryOuts: [
      { id: 'now', name: PAYLOADS[0], note },
      ...PAYLOADS.slice(1, MAX_TRY_OUTS).map((name, k) => ({
        id: `try-${k}`,
        name,
        note: name,
        parts: own.slice(0, 2),
      })),
    ],
    bench: { runs: [typedRun(note), ...tableRuns()] },
    parts: [...own, ...PAYLOADS.slice(parts.length).map(bar)],
  };
}

/** A small pin beside the grip. */
function bar(name: string, k: number): Part {
  return {
    id: `bar${k}`,
    kind: 'cylinder',
    name,
    pose: { positionMm: [20 + k / 10, 0, 0], rotationDeg: [0, 0, 0] },
    lengthMm: 1,
    diameterMm: 1,
    boreMm: 0,
    densityKgM3: 1000,
  };
}

function typedRun(note: string) {
  return {
    id: 'typed',
    name: PAYLOADS[0],
    fitted: PAYLOADS[1],
    gauge: PAYLOADS[2],
    date: PAYLOADS[3],
    note,
    speedRpm: 10_000,
    rows: PAYLOADS.map((text, k) => ({ pitchDeg: (k % 21) - 10, forceN: k / 100, note: text })),
  };
}

/** Tables whose headings and cells are payloads; those that would break a row in two are left to the typed notes. */
function tableRuns() {
  const cells = PAYLOADS.filter((text) => !/[\r\n\t\0\u2028\u2029\u0085"]/.test(text));
  return cells.slice(0, 60).map((text, k) => ({
    id: `table-${k}`,
    name: text.slice(0, MAX_NAME),
    speedRpm: 10_000,
    table: {
      encoding: 'UTF-8',
      delimiter: '\t' as const,
      text: `pitch [deg]\tforce [N]\t${text}\n-10\t1\t${text}\n10\t-1\t${text}\n`,
      columns: [
        { role: 'pitch' as const, unit: 'deg', flipped: false, travel: null },
        { role: 'force' as const, unit: 'N', flipped: false, travel: null },
        { role: 'note' as const, unit: null, flipped: false, travel: null },
      ],
    },
  }));
}
