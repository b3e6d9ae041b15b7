/** What holds for every run of tests in Node. */
export const commonSettings = {
  environment: 'node',
  globals: false,
  allowOnly: false,
  passWithNoTests: false,
  // The other runners may want the same cores, and hooks start programs or build pages.
  testTimeout: 120_000,
  hookTimeout: 180_000,
  setupFiles: 'test/tools/random-seed.ts',
} as const;
