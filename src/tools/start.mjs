// npm start: installs if needed, builds, and serves the app on this machine only.
// PORT chooses the port (4173 if unset; the next free one when it is taken; 0 for any free one).
// --built serves the last build as it is: the browser tests use that.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { install } from './install.mjs';
import { endWhenAsked, projectFolder } from './run.mjs';

const configFile = join(projectFolder, 'vite.config.ts');

function requestedPort() {
  const text = process.env.PORT ?? '';
  if (text === '') return 4173;
  const port = Number(text);
  if (!Number.isInteger(port) || port < 0 || port > 65535) {
    throw new Error(`PORT is not a port number: ${text}`);
  }
  return port;
}

async function buildApp() {
  await install();
  const { build } = await import('vite');
  await build({ configFile, logLevel: 'warn' });
}

async function serve(port) {
  if (!existsSync(join(projectFolder, 'dist', 'index.html'))) {
    throw new Error('There is no build to serve yet: run npm run build first');
  }
  const { preview } = await import('vite');
  const server = await preview({
    configFile,
    logLevel: 'warn',
    preview: { host: '127.0.0.1', port, strictPort: false, open: false },
  });
  console.log(`Stillgrip is at http://localhost:${server.httpServer.address().port}/`);
}

endWhenAsked(0);
try {
  const port = requestedPort();
  if (!process.argv.includes('--built')) await buildApp();
  await serve(port);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
