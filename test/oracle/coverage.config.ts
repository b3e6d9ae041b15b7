/**
 * What random gardens reach of the engine's calculation: `npx vitest run --config test/oracle/coverage.config.ts`. The law of kept
 * seasons runs along: an earlier season is the one input of the engine that a garden does not hold.
 */
import { defineConfig } from 'vitest/config';
import base from '../vitest.config.ts';

/** A garden does not lead here. */
const ELSEWHERE = [
  // Rules for less than full weather and for wind at other heights: no plan asks for Penman-Monteith with less.
  'src/engine/climate/{solar-radiation-from-temperature,solar-radiation-of,vapour-pressure-of,weather-estimates}.ts',
  'src/engine/climate/{wind-at-two-metres,wind-of}.ts',
  // Daily files to normals, before there is a plan.
  'src/engine/climate/monthly-normals.ts',
  // Tables and their look-up: the plan's values are already in the garden.
  'src/engine/**/*.data.ts',
  'src/engine/plants/{climate-adjustment,find-crop,landscape-coefficient,landscape-factor-range}.ts',
  'src/engine/soil/{by-slope,find-texture,intake-rate,surface-storage}.ts',
  // One day in words, for the trace; the season runs `used-water.ts`.
  'src/engine/soil/{root-zone-day,stress-coefficient}.ts',
  // Read what a season came to.
  'src/engine/season/{cumulative,planting-week,zone-week}.ts',
];

/**
 * Branches that no valid garden can reach: refusals of what cannot be (a month too few, exchanged temperatures, a negative
 * ETo, a share above 1, a timer step of 0), an elevation that is not known, the ten-day form of the simplified rain
 * relation, the soak pause, which the watering day asks for and the season does not; and one in the season, the days of
 * one planting, which the trace asks for by themselves.
 */
const BEYOND_A_GARDEN = 23;
const BEYOND_A_SEASON = 1;

export default defineConfig({
  ...base,
  test: {
    ...base.test,
    include: ['test/oracle/agreement.test.ts', 'test/laws/kept-season.test.ts'],
    coverage: {
      enabled: true,
      provider: 'v8',
      include: ['src/engine/{climate,plants,rain,season,soil}/*.ts', 'src/engine/{spread-week-totals,weather}.ts'],
      exclude: ELSEWHERE,
      reporter: ['text', 'json-summary'],
      reportsDirectory: 'coverage/oracle',
      reportOnFailure: true,
      // A negative threshold is the most that may be left uncovered.
      thresholds: { branches: -BEYOND_A_GARDEN, 'src/engine/season/*.ts': { branches: -BEYOND_A_SEASON } },
    },
  },
});
