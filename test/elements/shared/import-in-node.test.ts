import { expect, it } from 'vitest';
import { filesUnder } from '../../tools/source-files.ts';

const modules = filesUnder('src/elements', '.ts');

it('finds the elements', () => {
  expect(modules.filter((path) => path.endsWith('/define.ts')).length).toBeGreaterThanOrEqual(6);
});

it.each(modules)('%s imports in plain Node, without a window', async (path) => {
  expect(globalThis.window).toBeUndefined();
  const module = `../../../${path}`;
  await expect(import(/* @vite-ignore */ module)).resolves.toBeDefined();
});
