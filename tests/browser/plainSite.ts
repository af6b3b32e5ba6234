import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import { fileURLToPath } from 'node:url';

const BUILT = fileURLToPath(new URL('../../dist/', import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

/** The built folder on the plainest of hosts: files under a path, their types, no header more. */
export async function openPlainSite(under: string) {
  /** Stands in the page of a newer release. */
  let mark: string | null = null;

  function fileOf(path: string): Buffer {
    const file = path === '' ? 'index.html' : path;
    const bytes = readFileSync(BUILT + file);
    if (mark === null) return bytes;
    if (file === 'index.html') return Buffer.from(newer(bytes.toString(), mark));
    if (file !== 'service.js') return bytes;
    const page = readFileSync(`${BUILT}index.html`);
    const text = bytes.toString();
    // The list of the newer release differs in its version and in the page.
    const version = /version:[`"]([0-9a-f]{16})[`"]/.exec(text)?.[1] ?? '';
    return Buffer.from(
      text
        .replace(version, sum(Buffer.from(mark), 'hex').slice(0, 16))
        .replace(sum(page, 'base64'), sum(newer(page.toString(), mark), 'base64')),
    );
  }

  const server = createServer((request, response) => {
    const path = (request.url ?? '').replace(/[?#].*/, '');
    try {
      if (!path.startsWith(`/${under}`) || path.includes('..')) throw new Error('elsewhere');
      const bytes = fileOf(path.slice(under.length + 1));
      response.setHeader('Content-Type', TYPES[extname(path) || '.html'] ?? 'text/plain');
      response.end(bytes);
    } catch {
      response.statusCode = 404;
      response.end();
    }
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://localhost:${port}/${under}`,
    release(text: string) {
      mark = text;
    },
    close() {
      server.closeAllConnections();
      return new Promise((done) => server.close(done));
    },
  };
}

function newer(page: string, mark: string): string {
  return page.replace('<title>', `<meta name="release" content="${mark}" /><title>`);
}

function sum(bytes: Buffer | string, as: 'hex' | 'base64'): string {
  return createHash('sha256').update(bytes).digest(as);
}
