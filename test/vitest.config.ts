import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { REACH_TESTS } from './tools/reach-tests.ts';
import { PROJECTS, unitTests } from './tools/unit-tests.ts';
import { commonSettings } from './tools/vitest-settings.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const own = unitTests('own');
const browser = unitTests('browser');
const timed = unitTests('timed');

export default defineConfig({
  root,
  test: {
    ...commonSettings,
    // Many of the tests wait for a browser or a compiler of their own: left to itself, the runner keeps one core free.
    maxWorkers: '100%',
    // None of them extends what stands here, so that the number of workers can still be given by the command.
    projects: [
      // Most tests call pure functions: to load the sources once for all of them takes half the time.
      {
        root,
        test: {
          ...commonSettings,
          name: PROJECTS.shared,
          include: ['test/**/*.test.ts'],
          exclude: [...own, ...browser, ...timed, ...REACH_TESTS],
          isolate: false,
        },
      },
      { root, test: { ...commonSettings, name: PROJECTS.reach, include: [...REACH_TESTS], isolate: false } },
      { root, test: { ...commonSettings, name: PROJECTS.own, include: own } },
      { root, test: { ...commonSettings, name: PROJECTS.browser, include: browser, maxWorkers: 1 } },
      { root, test: { ...commonSettings, name: PROJECTS.timed, include: timed, maxWorkers: 1 } },
    ],
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text', 'json-summary'],
      reportsDirectory: 'coverage',
    },
  },
});
