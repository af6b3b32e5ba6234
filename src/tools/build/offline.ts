import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'vite';
import type { BuiltFile, Release } from '../../offline/release';

/** Larger files are the CAD kernels: kept when they are first used. */
const LARGE = 5_000_000;
/** For the readme only. */
const NOT_OF_THE_PAGE = ['screenshot.png'];
const SERVICE = 'service.js';

/** Writes the service worker, with the list of the files that it keeps, beside the built page. */
export function offline(): Plugin {
  let folder = '';
  return {
    name: 'offline',
    apply: 'build',
    configResolved(config) {
      folder = config.build.outDir;
    },
    closeBundle: {
      order: 'post',
      sequential: true,
      async handler(error?: Error) {
        if (!error) writeFileSync(join(folder, SERVICE), await serviceText(releaseOf(folder)));
      },
    },
  };
}

/** What lies in a built folder. */
export function releaseOf(folder: string): Release {
  const paths = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path !== SERVICE && !NOT_OF_THE_PAGE.includes(path))
    // By code unit: the same on every machine.
    .toSorted((a, b) => (a < b ? -1 : 1));
  const files: BuiltFile[] = [];
  const later: BuiltFile[] = [];
  for (const path of paths) {
    const bytes = readFileSync(join(folder, path));
    const file = {
      path: path === 'index.html' ? '' : path,
      sha256: createHash('sha256').update(bytes).digest('base64'),
    };
    (bytes.length > LARGE ? later : files).push(file);
  }
  const whole = createHash('sha256').update(JSON.stringify([files, later]));
  return { version: whole.digest('hex').slice(0, 16), files, later };
}

async function serviceText(release: Release): Promise<string> {
  const entry = fileURLToPath(new URL('../../offline/service.ts', import.meta.url));
  const made = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    define: { STILLGRIP_RELEASE: JSON.stringify(release) },
    build: {
      write: false,
      target: 'es2022',
      modulePreload: false,
      lib: { entry, formats: ['iife'], name: 'stillgripService', fileName: () => SERVICE },
    },
  });
  const output = Array.isArray(made) ? made[0] : made;
  if (!output || !('output' in output)) throw new Error('offline(): nothing was built');
  return output.output[0].code;
}
