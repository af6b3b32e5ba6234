import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import type { LaunchOptions } from '@playwright/test';

const require = createRequire(import.meta.url);

/**
 * How the browser of the tests is started: CHROME_PATH if set; on 64-bit Linux the Chromium that comes with the
 * installed packages; elsewhere (no path given) the one that `npx playwright install chromium` fetches.
 * `more` are arguments of the browser beside those that every test needs.
 */
export function browserLaunch(more: readonly string[] = []): LaunchOptions {
  const args = [...launchArguments, ...more];
  const given = process.env.CHROME_PATH;
  if (given) return { executablePath: given, args, env: launchEnvironment() };
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    return { args, env: launchEnvironment() };
  }
  const folder = unpackedChromium();
  return {
    executablePath: join(folder, 'chromium'),
    args,
    env: { ...launchEnvironment(), ...packedSupport(folder) },
  };
}

const launchArguments = [
  // Needed where the tests run as root; they open nothing but the page under test.
  '--no-sandbox',
  // WebGL2 in software, so that no graphics card is needed.
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
  // The page around the stage is put together without that: a page then opens in a fifth of the time or less.
  '--disable-gpu-compositing',
  // Nothing leaves this machine.
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-domain-reliability',
  '--disable-sync',
  '--no-pings',
  '--no-first-run',
  '--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE localhost, EXCLUDE 127.0.0.1',
  '--font-render-hinting=none',
];

/** Under the C locale the browser's language would read en-US@posix, which is no valid language tag. */
function launchEnvironment(): Record<string, string> {
  const inherited = Object.entries(process.env).filter((entry): entry is [string, string] => {
    return entry[1] !== undefined;
  });
  return { ...Object.fromEntries(inherited), LC_ALL: 'en_US.UTF-8' };
}

/**
 * The folder with the packed browser laid out, named by its version and by the user (the files are private to who
 * unpacked them). It is filled under another name and renamed when complete, so processes that start together
 * never see half a browser.
 */
function unpackedChromium(): string {
  const entry = require.resolve('@sparticuz/chromium');
  const version = packageVersion(join(dirname(entry), '..', '..', 'package.json'));
  const folder = join(tmpdir(), `stillgrip-chromium-${version}-${process.getuid?.() ?? 0}`);
  if (existsSync(join(folder, 'chromium'))) return folder;

  const staging = mkdtempSync(`${folder}-`);
  const script = 'import(process.argv[1]).then((module) => module.default.executablePath())';
  execFileSync(process.execPath, ['-e', script, entry], {
    // The package unpacks into the temporary folder; the second name makes it unpack its system libraries too.
    env: { ...process.env, TMPDIR: staging, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  writeFileSync(join(staging, 'fonts.conf'), fontSettings(folder));
  moveIntoPlace(staging, folder);
  return folder;
}

function packageVersion(path: string): string {
  const content = JSON.parse(readFileSync(path, 'utf8')) as { version: string };
  return content.version;
}

function moveIntoPlace(staging: string, folder: string): void {
  try {
    renameSync(staging, folder);
  } catch {
    if (existsSync(join(folder, 'chromium'))) {
      // Another process was first.
      rmSync(staging, { recursive: true });
    } else {
      // What lies there is incomplete: a cleaner of temporary files has been through it.
      rmSync(folder, { recursive: true, force: true });
      renameSync(staging, folder);
    }
  }
}

/** The machine's fonts if it has any, and the packed one, without which a bare machine would show no text. */
function fontSettings(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <dir>${folder}/fonts</dir>
  <cachedir>${folder}/fonts-cache</cachedir>
</fontconfig>
`;
}

/** Fonts always; the packed system libraries only where the machine lacks one, since they would hide its own. */
function packedSupport(folder: string): Record<string, string> {
  const fonts = { FONTCONFIG_FILE: join(folder, 'fonts.conf') };
  if (!lacksLibraries(join(folder, 'chromium'))) return fonts;
  const inherited = process.env.LD_LIBRARY_PATH;
  const libraries = join(folder, 'al2023', 'lib');
  return { ...fonts, LD_LIBRARY_PATH: inherited ? `${libraries}:${inherited}` : libraries };
}

function lacksLibraries(program: string): boolean {
  try {
    return execFileSync('ldd', [program], { encoding: 'utf8' }).includes('not found');
  } catch {
    return false;
  }
}
