import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { analyseDesign, type DesignAnalysis } from '../../src/design/analysis';
import { parseDesign } from '../../src/design/file';

const root = fileURLToPath(new URL('../..', import.meta.url));
const lumps = fileURLToPath(new URL('../fixtures/three-lumps.json', import.meta.url));
/** What the npm script runs. */
const script = [join(root, 'node_modules/tsx/dist/cli.mjs'), 'src/cli/analyse.ts'];
const folder = mkdtempSync(join(tmpdir(), 'analyse-'));
const built = [join(folder, 'built', 'analyse.mjs')];
afterAll(() => rmSync(folder, { recursive: true }));

// The same program in one file: the script reads every source anew, a second of work for each call.
beforeAll(async () => {
  await build({
    configFile: false,
    root,
    publicDir: false,
    logLevel: 'warn',
    build: {
      ssr: 'src/cli/analyse.ts',
      outDir: join(folder, 'built'),
      emptyOutDir: true,
      rolldownOptions: { output: { entryFileNames: 'analyse.mjs' } },
    },
    ssr: { noExternal: true },
  });
}, 60_000);

interface Ending {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

function analyse(...args: string[]): Promise<Ending> {
  return runInProject(built, args);
}

function runInProject(program: readonly string[], args: readonly string[]): Promise<Ending> {
  return new Promise((resolve) => {
    const command = [...program, ...args];
    execFile(process.execPath, command, { cwd: root, maxBuffer: 1e8 }, (error, stdout, stderr) => {
      resolve({ code: error ? Number(error.code) : 0, stdout, stderr });
    });
  });
}

function fileOf(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

describe.concurrent('analyse', { timeout: 60_000 }, () => {
  test('prints the analysis that the program itself makes', async () => {
    const { code, stdout, stderr } = await runInProject(script, [lumps]);
    expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
    const design = parseDesign(readFileSync(lumps, 'utf8'));
    if (!design.ok) throw new Error('the fixture is not sound');
    const analysis = analyseDesign(design.value, { fromDeg: -90, toDeg: 90, stepDeg: 1 });
    const printed = JSON.parse(stdout) as DesignAnalysis;
    // JSON knows no negative zero.
    expect(printed).toEqual(JSON.parse(JSON.stringify(analysis.ok && analysis.value)));
    expect(Object.keys(printed)).toEqual([
      'design',
      'totals',
      'parts',
      'curve',
      'equilibria',
      'warnings',
    ]);
  });

  test('by its script ends with code 1 where it is refused, as built in one file', async () => {
    const refused = await runInProject(script, [folder]);
    expect(refused.code).toBe(1);
    expect(refused).toEqual(await analyse(folder));
  });

  test('prints the asked range', async () => {
    const { stdout } = await analyse(lumps, '--from', '-20', '--to', '20', '--step', '0.5');
    const { curve } = JSON.parse(stdout) as DesignAnalysis;
    expect(curve.map((point) => point.pitch_deg)).toEqual(
      Array.from({ length: 81 }, (_, i) => i / 2 - 20),
    );
  });

  test('prints the curve as comma-separated values, an empty field for no force', async () => {
    const { code, stdout } = await analyse(lumps, '--csv', '--step', '45');
    expect(code).toBe(0);
    const [header, ...rows] = stdout.trimEnd().split('\n');
    expect(header).toBe(
      'pitch_deg,inertialMoment_Nm,totalMoment_Nm,pushRodForce_N,sliderForce_N,sliderTravel_m',
    );
    expect(rows.length).toBe(5);
    const cells = rows.map((row) => row.split(','));
    expect(cells.map(([pitch]) => pitch)).toEqual(['-90', '-45', '0', '45', '90']);
    expect(cells.every((row) => row.length === 6 && row[3] === '')).toBe(true);
    expect(Number(cells[2][1])).toBeCloseTo(-0.042110312, 9);
  });

  test('prints help', async () => {
    const { code, stdout } = await analyse('--help');
    expect(code).toBe(0);
    for (const word of ['FILE', '--from', '--to', '--step', '--csv'])
      expect(stdout).toContain(word);
  });

  test('ends quietly when its reader has had enough', async () => {
    const line = `"${process.execPath}" "${built[0]}" "${lumps}" --step 0.01 | head -c 10`;
    const ending = await new Promise<Ending>((resolve) => {
      execFile('sh', ['-c', line], { cwd: root }, (error, stdout, stderr) =>
        resolve({ code: error ? Number(error.code) : 0, stdout, stderr }),
      );
    });
    expect(ending).toMatchObject({ code: 0, stderr: '' });
    expect(ending.stdout.length).toBe(10);
  });

  const source = readFileSync(lumps, 'utf8');
  test.each<[string, string | Uint8Array, string]>([
    [
      'cut.json',
      source.slice(0, source.indexOf('slab') + 2),
      'parts[1].name: ends too early, at line',
    ],
    ['empty.json', '', 'is empty'],
    [
      'bore.json',
      source.replace('2.2', '6'),
      'parts[2].boreMm: must be below diameterMm (5.5 mm); found 6 mm',
    ],
    [
      'long.json',
      source.replace('"lengthMm": 12', '"lengthMm": -12'),
      'parts[2].lengthMm: must be at least 0.05 mm; found -12 mm',
    ],
    [
      'kind.json',
      source.replace('"block"', '"brick"'),
      'parts[1].kind: is an unknown kind "brick"; known are grip, ',
    ],
    [
      'future.json',
      source.replace('"version": 1', '"version": 2'),
      'version: is 2, from a newer program',
    ],
    ['bytes.json', Uint8Array.of(0x7b, 0xff, 0xfe), 'is not UTF-8 text'],
  ])(
    'of %s ends with code 1 and one line that names file, field and reason',
    async (name, content, reason) => {
      const path = fileOf(name, content);
      const { code, stdout, stderr } = await analyse(path);
      expect({ code, stdout }).toEqual({ code: 1, stdout: '' });
      expect(stderr.split('\n').length).toBe(2);
      expect(stderr.startsWith(`${path}: ${reason}`)).toBe(true);
    },
  );

  test.each([
    [[join(folder, 'none.json')], `${join(folder, 'none.json')}: there is no such file\n`],
    [[folder], `${folder}: is a folder, not a file\n`],
    [['-'], '-: standard input is not read; name a file\n'],
    [[lumps, '--step', '0'], '--step: must be above 0; found 0\n'],
    [[lumps, '--steps', '1'], '"--steps": is not a known option; see --help\n'],
  ])('%j ends with code 1 and one line', async (args, line) => {
    expect(await analyse(...args)).toEqual({ code: 1, stdout: '', stderr: line });
  });
});
