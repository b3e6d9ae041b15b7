/**
 * How much of the kit a page loads, minified and compressed, without Lit, the grid's and the chart's libraries. What every element loads
 * at once and what comes late have limits of their own.
 */
import { gzipSync } from 'node:zlib';
import { type BuildOptions, type BuildResult, build, type Metafile } from 'esbuild';
import { beforeAll, describe, expect, it } from 'vitest';
import { compactTemplates } from '../../.build/steps/compact-templates.ts';
import { bundleJoined } from '../../.build/steps/joined-chunks.ts';
import { CHUNK_NAMES, WORKER_ENTRY } from '../../.build/steps/page-bundle.ts';
import { lateWords } from '../../src/language/late-words.ts';
import { projectRoot } from '../tools/source-files.ts';

const LIBRARIES = ['lit', '@lit/*', 'handsontable', 'chart.js'];
const KIB = 1024;

/** What a worker runs is loaded late, where one starts. */
const WORKER = `size/${WORKER_ENTRY.out}.js`;

/** The entry's own definitions, without what it merely gives out by name. */
const DEFINITIONS = "import './src/index.ts';";

const optionsFor = (contents: string): BuildOptions => ({
  stdin: { contents, resolveDir: projectRoot, loader: 'ts' },
  minify: true,
  format: 'esm',
  target: 'es2022',
  legalComments: 'none',
  external: LIBRARIES,
  outdir: 'size',
  // As in the page bundle.
  chunkNames: CHUNK_NAMES,
  plugins: [compactTemplates],
});

function bundled(contents: string, options: BuildOptions = {}): Promise<BuildResult<{ metafile: true; write: false }>> {
  const plugins = [compactTemplates, ...(options.plugins ?? [])];
  return build({ ...optionsFor(contents), ...options, plugins, bundle: true, metafile: true, write: false });
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

  const holds = (chunk: string, file: RegExp): boolean =>
    Object.keys(outputs[chunk]?.inputs ?? {}).some((path) => file.test(path));

  /** The tables of places and of plants, which come when somebody types the name of one, have limits of their own. */
  const isPlaces = (chunk: string): boolean => holds(chunk, /\/places\.data\.ts$/);
  const isPlants = (chunk: string): boolean => holds(chunk, /\/plants\.data\.ts$/);

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
    const options = { ...optionsFor(DEFINITIONS), absWorkingDir: projectRoot, entryPoints: [WORKER_ENTRY] };
    const { metafile, outputFiles } = await bundleJoined(options, 'size/stdin.js', WORKER);
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
    expect(sizes.has(WORKER)).toBe(true);
    const tooLarge = [...late, WORKER]
      .map((path) => ({ path, bytes: sizeOf([...closure(path)].filter((chunk) => !atOnce.has(chunk))) }))
      .filter(({ path, bytes }) => !(bytes <= (isPlaces(path) ? 330 : 30) * KIB));
    expect(tooLarge).toEqual([]);
  });

  /** What writes and reads workbooks comes when somebody asks for one, and has a limit of its own. */
  const isOfWorkbook = (chunk: string): boolean => holds(chunk, /\/workbook-(?:writing|work)\.ts$/);

  it('loads at most 280 KiB besides if it shows all there is, 16 for plants, and 45 for workbooks', () => {
    const plants = [...sizes.keys()].filter(isPlants);
    expect(plants).toHaveLength(1);
    expect(sizeOf(plants)).toBeLessThanOrEqual(16 * KIB);
    const late = [...sizes.keys()].filter((chunk) => ![...atOnce, ...plants].includes(chunk) && !isPlaces(chunk));
    const workbook = late.filter(isOfWorkbook);
    expect(workbook).toHaveLength(2);
    expect(sizeOf(workbook)).toBeLessThanOrEqual(45 * KIB);
    expect(sizeOf(late.filter((chunk) => !isOfWorkbook(chunk)))).toBeLessThanOrEqual(280 * KIB);
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
  expect(words.length).toBeGreaterThan(1);
  const bytes = await bytesOf(words.map((path, index) => `export * as area${index} from './${path}';`).join('\n'));
  expect(bytes).toBeLessThanOrEqual(12 * KIB);
});

it('the calculation alone takes at most 24 KiB', async () => {
  expect(await bytesOf("export * from './src/engine/index.ts';")).toBeLessThanOrEqual(24 * KIB);
});

describe('another language, beside what a page has already,', () => {
  const there = ['../../engine/*', '../format/*', '../area.ts'];

  it('takes at most 25 KiB', async () => {
    expect(await bytesOf("export { en } from './src/language/en.ts';", there)).toBeLessThanOrEqual(25 * KIB);
  });

  it.each(Object.entries(lateWords))('and for its late part “%s” at most 12', async (_, areas) => {
    const fileOf = (area: string) => area.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
    const entry = Object.keys(areas).map((area) => `export { ${area} } from './src/language/en/${fileOf(area)}.ts';`);
    expect(await bytesOf(entry.join('\n'), there)).toBeLessThanOrEqual(12 * KIB);
  });
});
