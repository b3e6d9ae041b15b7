/**
 * What random gardens reach of the engine: `npx vitest run --config test/oracle/coverage.config.ts`; `npm test` runs it too.
 * Besides the season, laws ask of each garden what a page asks: its lines, its supply, its mix, its notices, its traces; and
 * of formulas by themselves what a garden does not lead to. Every input is random, and no line is left out but tables and
 * what is made of a record of weather.
 */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { REACH_TESTS } from '../tools/reach-tests.ts';
import { commonSettings } from '../tools/vitest-settings.ts';

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    ...commonSettings,
    include: [...REACH_TESTS],
    // Every file looks at the same engine: to load it once for all of them takes half the time.
    isolate: false,
    maxWorkers: 1,
    coverage: {
      enabled: true,
      provider: 'v8',
      include: ['src/engine/**/*.ts'],
      // A record of weather and its years are no part of a garden: `test/engine/record` and `test/engine/years` check them by sums by hand.
      exclude: ['src/engine/**/*.data.ts', 'src/engine/record/**', 'src/engine/years/**'],
      reporter: ['text', 'json-summary'],
      reportsDirectory: 'coverage/oracle',
      reportOnFailure: true,
      // Percent; what is out of reach, and why, stands in test/published/README.md.
      thresholds: { branches: 98, 'src/engine/season/*.ts': { branches: 99 } },
    },
  },
});
