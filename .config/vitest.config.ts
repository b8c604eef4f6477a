import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/**/*.test.ts'],
    globalSetup: ['tests/support/postgres-for-the-run.ts', 'tests/support/browser-for-the-run.ts'],
    // Tests in a browser wait more than they work: two files go side by side on two processors too.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    // On a machine that tests a change, a page that was only late is looked at once more; what is wrong stays wrong.
    retry: process.env.CI === undefined ? 0 : 1,
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
