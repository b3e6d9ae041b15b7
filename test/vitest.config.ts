import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    environment: 'node',
    include: ['test/**/*.test.ts'],
    globals: false,
    allowOnly: false,
    passWithNoTests: false,
    testTimeout: 20_000,
    // Many of the tests wait for a browser or a compiler of their own: left to itself, the runner keeps one core free.
    maxWorkers: '100%',
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text', 'json-summary'],
      reportsDirectory: 'coverage',
    },
  },
});
