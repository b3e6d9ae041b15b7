import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { REACH_TESTS } from './tools/reach-tests.ts';
import { PROJECTS, unitTests } from './tools/unit-tests.ts';
import { commonSettings } from './tools/vitest-settings.ts';

const own = unitTests('own');
const browser = unitTests('browser');

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    ...commonSettings,
    // Many of the tests wait for a browser or a compiler of their own: left to itself, the runner keeps one core free.
    maxWorkers: '100%',
    projects: [
      // Most tests call pure functions: to load the sources once for all of them takes half the time.
      {
        extends: true,
        test: {
          name: PROJECTS.shared,
          include: ['test/**/*.test.ts'],
          exclude: [...own, ...browser, ...REACH_TESTS],
          isolate: false,
        },
      },
      { extends: true, test: { name: PROJECTS.reach, include: [...REACH_TESTS], isolate: false } },
      { extends: true, test: { name: PROJECTS.own, include: own } },
      { extends: true, test: { name: PROJECTS.browser, include: browser } },
    ],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text', 'json-summary'],
      reportsDirectory: 'coverage',
    },
  },
});
