import { cpSync, mkdtempSync, realpathSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectFolder } from '../run.mjs';

const COPIED = ['src', 'tests', 'assets', 'package.json', 'tsconfig.json', 'vite.config.ts'];

/** A copy of the project in a new temporary folder, with the same packages: the project itself is never changed. */
export function copyOfProject() {
  const copy = mkdtempSync(join(tmpdir(), 'stillgrip-mutants-'));
  for (const name of COPIED) {
    cpSync(join(projectFolder, name), join(copy, name), {
      recursive: true,
      filter: (path) => !path.endsWith('/dist'),
    });
  }
  const packages = realpathSync(join(projectFolder, 'node_modules'));
  symlinkSync(packages, join(copy, 'node_modules'), 'junction');
  return copy;
}
