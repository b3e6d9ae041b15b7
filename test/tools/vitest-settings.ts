/** What holds for every run of tests in Node. */
export const commonSettings = {
  environment: 'node',
  globals: false,
  allowOnly: false,
  passWithNoTests: false,
  testTimeout: 20_000,
} as const;
