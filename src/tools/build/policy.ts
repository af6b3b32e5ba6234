import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/** The content policy of the page, as its HTML states it: the one place where it is written. */
export function contentPolicy(page: string): string {
  const found = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(
    readFileSync(page, 'utf8'),
  )?.[1];
  if (found === undefined) throw new Error(`contentPolicy(): there is none in ${page}`);
  return found;
}

/**
 * The policy as headers, for whoever serves the built folder: a page states its policy for itself only, a header also
 * holds for what its workers do, and can forbid that others put the page in a frame.
 */
export function securityHeaders(policy: string): Record<string, string> {
  return {
    'Content-Security-Policy': `${policy}; frame-ancestors 'none'`,
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
    'Cross-Origin-Opener-Policy': 'same-origin',
  };
}

/** Has the built page served with those headers (npm start, and the browser tests). */
export function servedPolicy(page: string): Plugin {
  return {
    name: 'served-policy',
    configurePreviewServer(server) {
      const policy = contentPolicy(page);
      server.middlewares.use((_request, response, next) => {
        for (const [name, value] of Object.entries(securityHeaders(policy))) {
          response.setHeader(name, value);
        }
        next();
      });
    },
  };
}

/**
 * While developing, Vite puts styles and a refresh script in line and talks to the page over a web socket; the
 * content policy of the built page allows none of that.
 */
export const developmentPolicy: Plugin = {
  name: 'development-policy',
  apply: 'serve',
  transformIndexHtml: {
    order: 'pre',
    handler: (html) =>
      html
        .replace(/style-src 'self' '[^']+'/, "style-src 'self' 'unsafe-inline'")
        .replace("script-src 'self'", "script-src 'self' 'unsafe-inline'")
        .replace("connect-src 'self'", "connect-src 'self' data: blob: ws:")
        .replace(/; require-trusted-types-for.*?(?=")/, ''),
  },
};
