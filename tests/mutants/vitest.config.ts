import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/**
 * Only the tests asked for (MUTANT_TESTS: files parted by commas), in node, without the page's plugins: for
 * `npm run mutants FOLDER -- --runner=vitest`, which is slower than the own runner and shares nothing with it.
 */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: process.env.MUTANT_TESTS?.split(',') ?? [],
    environment: 'node',
    isolate: false,
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
