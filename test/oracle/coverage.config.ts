/**
 * What random gardens reach of the engine's calculation: `npx vitest run --config test/oracle/coverage.config.ts`; `npm test` runs it
 * too. Laws run along for what a garden by itself does not lead to: an earlier season, a supply, a refusal, a single figure.
 */
import { defineConfig } from 'vitest/config';
import base from '../vitest.config.ts';

/** A garden does not lead here: other ways into the engine do. */
const ELSEWHERE = [
  // Tables.
  'src/engine/**/*.data.ts',
  // Daily files to normals, before there is a plan.
  'src/engine/climate/monthly-normals.ts',
  // What is checked where it is typed, and formulas offered by themselves.
  'src/engine/plants/{climate-adjustment,landscape-coefficient,landscape-factor-range}.ts',
  // One day in words, for the trace; the season runs `used-water.ts`.
  'src/engine/soil/{root-zone-day,stress-coefficient}.ts',
  // Read what a season came to.
  'src/engine/season/cumulative.ts',
];

export default defineConfig({
  ...base,
  test: {
    ...base.test,
    include: ['test/oracle/agreement.test.ts', 'test/laws/{cells,kept-season,plain-numbers,refused}.test.ts'],
    coverage: {
      enabled: true,
      provider: 'v8',
      include: ['src/engine/{climate,plants,rain,season,soil}/*.ts', 'src/engine/{spread-week-totals,weather}.ts'],
      exclude: ELSEWHERE,
      reporter: ['text', 'json-summary'],
      reportsDirectory: 'coverage/oracle',
      reportOnFailure: true,
      // Percent. Out of reach are refusals of what no garden can hold (an unknown crop or texture, a slope below 0, a run without
      // end, months other than twelve, a soil that takes in nothing), and readings of humidity that no log has a place for.
      thresholds: { branches: 98, 'src/engine/season/*.ts': { branches: 99 } },
    },
  },
});
