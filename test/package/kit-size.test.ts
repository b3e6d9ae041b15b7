/**
 * How much of the kit a page loads, minified and compressed, without Lit, the grid's and the chart's libraries. What every element loads
 * at once and what comes late have limits of their own.
 */
import { gzipSync } from 'node:zlib';
import { type BuildOptions, type BuildResult, build, type Metafile } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { projectRoot } from '../tools/source-files.ts';

const LIBRARIES = ['lit', '@lit/*', 'handsontable', 'chart.js'];
const KIB = 1024;

/** The entry's own definitions, without what it merely gives out by name. */
const DEFINITIONS = "import './src/index.ts';";

function bundled(contents: string, options: BuildOptions = {}): Promise<BuildResult<{ metafile: true; write: false }>> {
  return build({
    stdin: { contents, resolveDir: projectRoot, loader: 'ts' },
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    legalComments: 'none',
    external: LIBRARIES,
    outdir: 'size',
    ...options,
    metafile: true,
    write: false,
  });
}

const compressed = (contents: Uint8Array): number => gzipSync(contents, { level: 9 }).length;

async function bytesOf(contents: string, external: readonly string[] = []): Promise<number> {
  const { outputFiles } = await bundled(contents, { external: [...LIBRARIES, ...external] });
  return outputFiles.reduce((sum, file) => sum + compressed(file.contents), 0);
}

describe('a page that defines every element', () => {
  let outputs: Metafile['outputs'];
  let sizes: ReadonlyMap<string, number>;
  let atOnce: ReadonlySet<string>;

  /** A chunk and all that it imports before it runs. */
  function closure(chunk: string, found = new Set<string>()): ReadonlySet<string> {
    if (found.has(chunk)) return found;
    found.add(chunk);
    for (const { path, kind, external } of outputs[chunk]?.imports ?? []) {
      if (kind === 'import-statement' && !external) closure(path, found);
    }
    return found;
  }

  const sizeOf = (chunks: Iterable<string>): number =>
    [...chunks].reduce((sum, chunk) => sum + (sizes.get(chunk) ?? Number.NaN), 0);

  beforeAll(async () => {
    const { metafile, outputFiles } = await bundled(DEFINITIONS, { splitting: true });
    outputs = metafile.outputs;
    sizes = new Map(
      Object.keys(outputs).map((path) => [
        path,
        compressed(outputFiles.find((file) => file.path.endsWith(path))?.contents ?? new Uint8Array()),
      ]),
    );
    const entry = Object.keys(outputs).find((path) => outputs[path]?.entryPoint === '<stdin>');
    atOnce = closure(entry ?? '');
  });

  it('gets no late part of more than 30 KiB', () => {
    const late = [...new Set(Object.values(outputs).flatMap(({ imports }) => imports))]
      .filter(({ kind, external }) => kind === 'dynamic-import' && !external)
      .map(({ path }) => path);
    expect(late.length).toBeGreaterThan(5);
    const tooLarge = late
      .map((path) => ({ path, bytes: sizeOf([...closure(path)].filter((chunk) => !atOnce.has(chunk))) }))
      .filter(({ bytes }) => !(bytes <= 30 * KIB));
    expect(tooLarge).toEqual([]);
  });

  it('loads at most 280 KiB if it shows all there is', () => {
    expect(sizeOf(sizes.keys())).toBeLessThanOrEqual(280 * KIB);
  });
});

/** What is imported late stays out, as it does in a page until it is wanted. */
const withoutLateParts: BuildOptions = {
  plugins: [
    {
      name: 'without-late-parts',
      setup({ onResolve }) {
        onResolve({ filter: /./ }, ({ path, kind }) =>
          kind === 'dynamic-import' ? { path, external: true } : undefined,
        );
      },
    },
  ],
};

it('defining every element takes at most 90 KiB at once, of which words 12', async () => {
  const { metafile, outputFiles } = await bundled(DEFINITIONS, withoutLateParts);
  expect(outputFiles.reduce((sum, file) => sum + compressed(file.contents), 0)).toBeLessThanOrEqual(90 * KIB);
  const words = Object.values(metafile.outputs).flatMap(({ inputs }) =>
    Object.keys(inputs).filter((path) => path.startsWith('src/language/en/')),
  );
  expect(words.length).toBeGreaterThan(3);
  const bytes = await bytesOf(words.map((path, index) => `export * as area${index} from './${path}';`).join('\n'));
  expect(bytes).toBeLessThanOrEqual(12 * KIB);
});

it('the calculation alone takes at most 24 KiB', async () => {
  expect(await bytesOf("export * from './src/engine/index.ts';")).toBeLessThanOrEqual(24 * KIB);
});

it('a whole language takes at most 34 KiB beside what a page has already', async () => {
  const there = ['../../engine/*', '../format/*', '../area.ts'];
  expect(await bytesOf("export { en } from './src/language/en.ts';", there)).toBeLessThanOrEqual(34 * KIB);
});
