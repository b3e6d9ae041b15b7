/** How much of the kit a page loads, minified and compressed, without Lit, the grid's and the chart's libraries. */
import { gzipSync } from 'node:zlib';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import { expect, it } from 'vitest';
import { projectRoot } from '../tools/source-files.ts';

const LIBRARIES = ['lit', '@lit/*', 'handsontable', 'chart.js'];

/** What is imported late stays out, as it does in a page until it is wanted. */
const withoutLateParts: Plugin = {
  name: 'without-late-parts',
  setup({ onResolve }) {
    onResolve({ filter: /./ }, ({ path, kind }) => (kind === 'dynamic-import' ? { path, external: true } : undefined));
  },
};

/** The entry's own definitions, without what it merely gives out by name. */
const DEFINITIONS = "import './src/index.ts';";

async function compressedBytes(contents: string, options: BuildOptions = {}): Promise<number> {
  const { outputFiles = [] } = await build({
    stdin: { contents, resolveDir: projectRoot, loader: 'ts' },
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
    external: LIBRARIES,
    write: false,
    ...options,
  });
  return outputFiles.reduce((sum, file) => sum + gzipSync(file.contents, { level: 9 }).length, 0);
}

it('defining every element takes at most 90 KB at once', async () => {
  expect(await compressedBytes(DEFINITIONS, { plugins: [withoutLateParts] })).toBeLessThanOrEqual(90 * 1024);
});

it('all of the kit with every late part in it takes no more than is known', async () => {
  expect(await compressedBytes(DEFINITIONS)).toBeLessThanOrEqual(200 * 1024);
});
