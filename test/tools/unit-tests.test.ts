import { expect, it } from 'vitest';
import { createVitest } from 'vitest/node';
import { filesUnder, projectRoot } from './source-files.ts';
import { PROJECTS, projectOf } from './unit-tests.ts';

it.each([
  ['calls functions', "import { fromSi } from '../../src/engine/units.ts';", 'shared'],
  ['registers a language', "registerLanguage('es', () => spanish);", 'own'],
  ['stops the clock', 'vi.useFakeTimers();', 'own'],
  ['loads a module now', "await import('../../src/index.ts');", 'own'],
  ['measures time', 'const start = performance.now();', 'own'],
  ['starts a program', "import { spawn } from 'node:child_process';", 'own'],
  ['needs the package', "import { packedPackage } from '../tools/packed-package.ts';", 'own'],
  ['opens a browser', "import { openChromium } from '../tools/open-chromium.ts';", 'browser'],
  ['opens one by its driver', "import { launch } from 'puppeteer-core';", 'browser'],
] as const)('a test that %s', (_what, source, project) => {
  expect(projectOf('test/example.test.ts', source)).toBe(project);
});

it('a test that asks how long something takes runs by itself', () => {
  expect(projectOf('test/example.timed.test.ts', 'const start = performance.now();')).toBe('timed');
});

it('each test file of Node belongs to one project', async () => {
  const vitest = await createVitest('test', { config: 'test/vitest.config.ts', root: projectRoot, watch: false });
  try {
    const found = await vitest.globTestSpecifications();
    const paths = found.map(({ moduleId }) => moduleId.slice(projectRoot.length)).sort();
    expect(paths).toEqual(filesUnder('test', '.test.ts'));
    expect(new Set(found.map(({ project }) => project.name))).toEqual(new Set(Object.values(PROJECTS)));
  } finally {
    await vitest.close();
  }
}, 60_000);
