import { type PitchRange, pitchCount } from '../design/analysis';
import { fail, type Result, succeed } from '../engine/result';

export interface AnalyseOptions {
  readonly file: string;
  readonly range: PitchRange;
  readonly csv: boolean;
}

export type Request = { readonly kind: 'help' } | ({ readonly kind: 'analyse' } & AnalyseOptions);

export const MAX_POINTS = 100_001;

export const HELP = `Usage: npm run -s analyse -- FILE [--from DEG] [--to DEG] [--step DEG] [--csv]

Prints what is computed of a design file as JSON: totals, parts, curve, equilibria, warnings.

  --from DEG   first pitch of the curve, -90 unless told
  --to DEG     last pitch, 90 unless told
  --step DEG   step between pitches, 1 unless told; at most ${MAX_POINTS} pitches
  --csv        prints the curve alone, as comma-separated values with units in the header
  --help       prints this

Moments raise the leading edge where positive; push-rod force is tension where positive.
A bad file or option ends with code 1 and one line on standard error.`;

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;
const DEGREES = { '--from': 'fromDeg', '--to': 'toDeg', '--step': 'stepDeg' } as const;

/** What the arguments ask for, or one line that says what is wrong with them. */
export function readArguments(args: readonly string[]): Result<Request, string> {
  if (args.includes('--help')) return succeed({ kind: 'help' });
  const range = { fromDeg: -90, toDeg: 90, stepDeg: 1 };
  let file: string | null = null;
  let csv = false;
  for (let i = 0; i < args.length; i++) {
    const [name, attached] = splitOption(args[i]);
    if (Object.hasOwn(DEGREES, name)) {
      const text = attached ?? args[++i];
      const value = text === undefined || !NUMBER.test(text) ? Number.NaN : Number(text);
      if (!Number.isFinite(value)) {
        return fail(`${name}: needs a number of degrees; found ${shown(text)}`);
      }
      range[DEGREES[name as keyof typeof DEGREES]] = value;
    } else if (name === '--csv' && attached === null) csv = true;
    else if (args[i] === '-') return fail('-: standard input is not read; name a file');
    else if (args[i].startsWith('-'))
      return fail(`${shown(args[i])}: is not a known option; see --help`);
    else if (file !== null) return fail(`${shown(args[i])}: only one file is read at a time`);
    else file = args[i];
  }
  if (file === null || file === '') return fail('no file is named; see --help');
  const wrong = rangeFault(range);
  return wrong === null ? succeed({ kind: 'analyse', file, range, csv }) : fail(wrong);
}

function splitOption(argument: string): readonly [string, string | null] {
  const equals = argument.startsWith('--') ? argument.indexOf('=') : -1;
  return equals < 0 ? [argument, null] : [argument.slice(0, equals), argument.slice(equals + 1)];
}

function rangeFault(range: PitchRange): string | null {
  const { fromDeg, toDeg, stepDeg } = range;
  for (const [name, value] of [
    ['--from', fromDeg],
    ['--to', toDeg],
  ] as const) {
    if (Math.abs(value) > 360) return `${name}: must lie between -360 and 360; found ${value}`;
  }
  if (!(stepDeg > 0)) return `--step: must be above 0; found ${stepDeg}`;
  if (fromDeg > toDeg) return `--from: must not be above --to (${toDeg}); found ${fromDeg}`;
  const count = pitchCount(range);
  return count > MAX_POINTS
    ? `--step: makes ${count} pitches; at most ${MAX_POINTS} are computed`
    : null;
}

function shown(text: string | undefined): string {
  return text === undefined ? 'nothing' : JSON.stringify(text.slice(0, 80));
}
