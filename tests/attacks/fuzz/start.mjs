// npm run fuzz: the sources run as they stand, put through the page's own build tool, which knows its imports.
import { fileURLToPath } from 'node:url';
import { createServer } from 'vite';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const server = await createServer({
  configFile: false,
  root,
  logLevel: 'error',
  appType: 'custom',
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
  optimizeDeps: { noDiscovery: true },
});
try {
  await server.ssrLoadModule('/tests/attacks/fuzz/main.ts');
} finally {
  await server.close();
}
