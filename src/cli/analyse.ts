import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { analyseDesign, type CurvePoint, type DesignAnalysis } from '../design/analysis';
import { describeFault } from '../design/faultText';
import { parseDesign } from '../design/file';
import { fail, type Result } from '../engine/result';
import { type AnalyseOptions, HELP, readArguments } from './options';

/** The terminal door: a design file in, its analysis out. Code 1 and one line on standard error where that fails. */
function main(args: readonly string[]): void {
  // A reader that closes the pipe early (head) is no fault.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  const request = readArguments(args);
  if (!request.ok) return refuse(request.error);
  if (request.value.kind === 'help') {
    process.stdout.write(`${HELP}\n`);
    return;
  }
  const analysis = analyseFile(request.value);
  if (!analysis.ok) return refuse(`${request.value.file}: ${analysis.error}`);
  const text = request.value.csv ? csvOf(analysis.value) : JSON.stringify(analysis.value, null, 2);
  process.stdout.write(`${text}\n`);
  // The table has no room for them.
  if (request.value.csv) {
    for (const warning of analysis.value.warnings) process.stderr.write(`${warning}\n`);
  }
}

function refuse(line: string): void {
  process.stderr.write(`${line.replace(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ')}\n`);
  process.exitCode = 1;
}

function analyseFile({ file, range }: AnalyseOptions): Result<DesignAnalysis, string> {
  const text = readText(file);
  if (!text.ok) return text;
  const design = parseDesign(text.value);
  if (!design.ok) return fail(describeFault(design.error));
  const analysis = analyseDesign(design.value, range);
  return analysis.ok ? analysis : fail(describeFault(analysis.error));
}

function readText(file: string): Result<string, string> {
  try {
    const bytes = readFileSync(pathOf(file));
    return { ok: true, value: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOENT') return fail('there is no such file');
    if (code === 'EISDIR') return fail('is a folder, not a file');
    if (code === 'EACCES') return fail('may not be read');
    if (code === 'ERR_ENCODING_INVALID_ENCODED_DATA') return fail('is not UTF-8 text');
    return fail(`cannot be read (${code ?? 'unknown reason'})`);
  }
}

/** npm runs scripts in the package's folder; a relative name means the folder the person was in. */
function pathOf(file: string): string {
  const { INIT_CWD, npm_lifecycle_event } = process.env;
  return INIT_CWD && npm_lifecycle_event === 'analyse' ? resolve(INIT_CWD, file) : resolve(file);
}

/** Columns are those of the first point: every point has the same. */
function csvOf({ curve }: DesignAnalysis): string {
  const names = Object.keys(curve[0] ?? {}) as (keyof CurvePoint)[];
  const rows = curve.map((point) => names.map((name) => point[name] ?? '').join(','));
  return [names.join(','), ...rows].join('\n');
}

main(process.argv.slice(2));
