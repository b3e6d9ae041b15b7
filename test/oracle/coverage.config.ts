/** What the random gardens reach of the engine: `npx vitest run --config test/oracle/coverage.config.ts`. */
import { defineConfig } from 'vitest/config';
import base from '../vitest.config.ts';

export default defineConfig({
  ...base,
  test: {
    ...base.test,
    include: ['test/oracle/agreement.test.ts'],
    coverage: {
      enabled: true,
      provider: 'v8',
      // Everything that a garden leads to.
      include: ['src/engine/{season,rain,climate,soil,plants}/*.ts', 'src/engine/*.ts'],
      reporter: ['text', 'json-summary'],
      reportsDirectory: 'coverage/oracle',
      reportOnFailure: true,
      thresholds: { branches: 95 },
    },
  },
});
