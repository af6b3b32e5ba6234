import { type ChildProcess, spawn } from 'node:child_process';
import { type Browser, type BrowserContext, chromium, type Page } from '@playwright/test';
import { browserLaunch } from '../chromium';

/** A browser with its profile in a real folder, which can be killed as a whole: every process of it, at once. */
export interface Mortal {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Ends the browser in this moment by SIGKILL, which no process can hear coming; resolves once all of it is gone. */
  kill(): Promise<void>;
}

/** Starts a browser on a profile that may be that of one that was killed. `downloads` is where it puts downloads. */
export async function startMortal(profile: string, downloads: string): Promise<Mortal> {
  const { executablePath = chromium.executablePath(), args = [], env } = launch();
  const program = spawn(
    executablePath,
    [
      ...args,
      '--headless',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      // Wide enough for the rail of parts and the numbers, and no wider: it is drawn in software.
      '--window-size=1200,760',
      'about:blank',
    ],
    // A group of its own, so that a signal to the group reaches the renderers, the storage and the graphics process.
    { env, detached: true, stdio: ['ignore', 'ignore', 'pipe'] },
  );
  const gone = new Promise<void>((resolve) => program.once('close', () => resolve()));
  const browser = await chromium.connectOverCDP(await doorOf(program));
  await downloadInto(browser, downloads);
  const context = browser.contexts()[0];
  return {
    context,
    page: context.pages()[0] ?? (await context.newPage()),
    async kill() {
      process.kill(-(program.pid as number), 'SIGKILL');
      await gone;
      // Frees what this process holds of it.
      await browser.close().catch(() => undefined);
    },
  };
}

function launch() {
  const { executablePath, args, env } = browserLaunch(['--webgl-antialiasing-mode=none']);
  return { executablePath, args, env: env as Record<string, string> };
}

/** The address that the browser says on its error output. */
function doorOf(program: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    program.stderr?.on('data', (piece) => {
      said += piece;
      const found = /DevTools listening on (ws:\S+)/.exec(said);
      if (found) resolve(found[1]);
    });
    program.once('error', reject);
    program.once('exit', (code) => reject(new Error(`the browser ended (${code}): ${said}`)));
  });
}

async function downloadInto(browser: Browser, folder: string): Promise<void> {
  const session = await browser.newBrowserCDPSession();
  await session.send('Browser.setDownloadBehavior', {
    behavior: 'allow',
    downloadPath: folder,
  });
}
