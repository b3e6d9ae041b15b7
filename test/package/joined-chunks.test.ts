import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type BuildOptions, build } from 'esbuild';
import { afterAll, expect, it } from 'vitest';
import { bundleJoined } from '../../.build/steps/joined-chunks.ts';

const folder = mkdtempSync(join(tmpdir(), 'joined-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Two late parts use `ten`, and all three `more`. */
const MODULES = {
  main: "export const sum = async () => (await Promise.all([import('./one.ts'), import('./two.ts'), import('./three.ts')])).reduce((all, { own }) => all + own(), 0);",
  one: "import { ten } from './ten.ts'; import { more } from './more.ts'; export const own = () => ten + more();",
  two: "import { ten } from './ten.ts'; import { more } from './more.ts'; export const own = () => 2 * ten + more();",
  three: "import { more } from './more.ts'; export const own = () => more();",
  ten: 'export const ten = Date.UTC(1970, 0, 1, 0, 0, 0, 10);',
  more: 'export const more = () => new Date(1000).getTime();',
};

it('joins small files, and the bundle does the same', async () => {
  mkdirSync(join(folder, 'src'));
  writeFileSync(join(folder, 'package.json'), '{"type":"module","sideEffects":false}');
  for (const [name, text] of Object.entries(MODULES)) writeFileSync(join(folder, `src/${name}.ts`), text);
  const options: BuildOptions = {
    absWorkingDir: folder,
    entryPoints: ['src/main.ts'],
    outdir: 'out',
    format: 'esm',
    minify: true,
  };
  const apart = await build({ ...options, bundle: true, splitting: true, metafile: true, write: false });
  const joined = await bundleJoined(options, 'out/main.js');
  expect(apart.outputFiles).toHaveLength(6);
  expect(joined.outputFiles).toHaveLength(5);
  expect(joined.warnings).toEqual([]);
  const both = Object.values(joined.metafile.outputs).map(({ inputs }) => Object.keys(inputs).sort());
  expect(both).toContainEqual(['src/more.ts', 'src/ten.ts']);

  mkdirSync(join(folder, 'out'));
  for (const { path, contents } of joined.outputFiles) writeFileSync(join(folder, 'out', basename(path)), contents);
  const { sum } = await import(pathToFileURL(join(folder, 'out/main.js')).href);
  expect(await sum()).toBe(3030);
});
