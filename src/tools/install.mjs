import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectFolder, run } from './run.mjs';

/**
 * Brings node_modules to what package-lock.json asks for, by `npm ci`, unless it is there already. npm writes its
 * own list of what it installed as the last act of an installation, so an interrupted one counts as missing.
 * Throws when npm fails.
 */
export async function install() {
  if (isInstalled()) return;
  console.log('Installing the packages named in package-lock.json ...');
  const code = await run('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], {
    shell: process.platform === 'win32',
  });
  if (code !== 0) throw new Error(`npm ci failed with exit code ${code}`);
}

function isInstalled() {
  const wanted = readPackages('package-lock.json');
  const present = readPackages('node_modules/.package-lock.json');
  return wanted !== undefined && present !== undefined && sameInstallation(wanted, present);
}

function readPackages(path) {
  try {
    return JSON.parse(readFileSync(join(projectFolder, path), 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/** Both arguments are the `packages` of a lock file: folder -> entry. Optional ones may be for other platforms. */
function sameInstallation(wanted, present) {
  const nothingMissing = Object.entries(wanted).every(([folder, entry]) => {
    if (folder === '') return true;
    const found = present[folder];
    if (found === undefined) return entry.optional === true;
    return found.version === entry.version && found.integrity === entry.integrity;
  });
  return nothingMissing && Object.keys(present).every((folder) => folder in wanted);
}
