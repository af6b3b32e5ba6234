// npm run reproduce: builds twice, in different time zones and languages, and tells every file that differs.
import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { runTool } from './run.mjs';

const SURROUNDINGS = [
  { TZ: 'UTC', LANG: 'C' },
  { TZ: 'Pacific/Chatham', LANG: 'de_DE.UTF-8' },
];

function sums(folder) {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));
  const sumOf = (file) => createHash('sha256').update(readFileSync(file)).digest('hex');
  return new Map(files.map((file) => [relative(folder, file), sumOf(file)]));
}

const place = mkdtempSync(join(tmpdir(), 'stillgrip-build-'));
try {
  const built = [];
  for (const [k, env] of SURROUNDINGS.entries()) {
    const folder = join(place, String(k));
    const args = ['build', '--outDir', folder, '--emptyOutDir', '--logLevel', 'error'];
    const code = await runTool('vite/bin/vite.js', args, { env });
    if (code !== 0) throw new Error(`build ${k + 1} failed`);
    built.push(sums(folder));
  }
  const [first, second] = built;
  const names = [...new Set([...first.keys(), ...second.keys()])].toSorted();
  const differing = names.filter((name) => first.get(name) !== second.get(name));
  for (const name of differing) console.log(`differs: ${name}`);
  if (first.size === 0 || differing.length > 0) process.exitCode = 1;
  else console.log(`${first.size} files, equal to the byte`);
} finally {
  rmSync(place, { recursive: true, force: true });
}
