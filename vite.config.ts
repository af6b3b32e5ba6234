import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

function projectPath(path: string): string {
  return fileURLToPath(new URL(path, import.meta.url));
}

/**
 * While developing, Vite puts styles and a refresh script in line and talks to the page over a web socket; the
 * content policy of the built page allows none of that.
 */
const developmentPolicy: Plugin = {
  name: 'development-policy',
  apply: 'serve',
  transformIndexHtml: {
    order: 'pre',
    handler: (html) =>
      html
        .replace(/style-src 'self' '[^']+'/, "style-src 'self' 'unsafe-inline'")
        .replace("script-src 'self'", "script-src 'self' 'unsafe-inline'")
        .replace("connect-src 'self'", "connect-src 'self' ws:")
        .replace(/; require-trusted-types-for 'script'/, ''),
  },
};

export default defineConfig({
  root: projectPath('./src'),
  // Relative addresses: the built folder works under any path.
  base: './',
  publicDir: projectPath('./assets'),
  // Workers load parts of themselves when needed (the CAD kernel), which the classic form cannot.
  worker: { format: 'es' },
  plugins: [react(), developmentPolicy],
  build: {
    target: 'es2022',
    outDir: projectPath('./dist'),
    emptyOutDir: true,
    // three.js alone is about 700 kB before compression.
    chunkSizeWarningLimit: 900,
    rolldownOptions: {
      output: {
        // The two that change least often keep their cached files when the app changes.
        codeSplitting: {
          groups: [
            { name: 'three', test: /node_modules[\\/]three[\\/]build[\\/]/ },
            { name: 'react', test: /node_modules[\\/](react|react-dom|scheduler)[\\/]/ },
          ],
        },
      },
    },
  },
  test: {
    root: projectPath('.'),
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    environment: 'node',
  },
});
