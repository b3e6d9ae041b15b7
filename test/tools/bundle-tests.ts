import { join } from 'node:path';
import type { TestRunnerPlugin } from '@web/test-runner';
import { build, type OutputFile } from 'esbuild';
import { WORKER_ENTRY } from '../../.build/steps/page-bundle.ts';
import { projectRoot } from './source-files.ts';

/** Where what several tests share is served, from the root. */
const SHARED = 'browser-tests';

/**
 * Serves each of `entries`, paths from the root, with all that it imports, in files that the entries share: to load the modules of
 * sources and libraries one by one takes a page longer than most tests.
 */
export function bundleTests(entries: readonly string[]): TestRunnerPlugin {
  let files: ReadonlyMap<string, OutputFile>;
  return {
    name: 'bundle-tests',
    async serverStart() {
      files = await bundle(entries);
    },
    serve({ path }) {
      const file = files.get(path.replace(/\.ts$/, '.js'));
      return file && { body: file.text, type: path.endsWith('.map') ? 'json' : 'js' };
    },
  };
}

/** The files by the path of their address. */
async function bundle(entries: readonly string[]): Promise<ReadonlyMap<string, OutputFile>> {
  const { outputFiles } = await build({
    absWorkingDir: projectRoot,
    // Where the files that ask for it lie.
    entryPoints: [
      ...entries.map((path) => ({ in: path, out: path.replace(/\.ts$/, '') })),
      { in: WORKER_ENTRY.in, out: `${SHARED}/${WORKER_ENTRY.out}` },
    ],
    outbase: '.',
    outdir: '.',
    chunkNames: `${SHARED}/[hash]`,
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    conditions: ['browser', 'production'],
    // Answered by the runner itself.
    external: ['@web/test-runner-commands'],
    sourcemap: 'linked',
    write: false,
    allowOverwrite: true,
    logLevel: 'error',
  });
  return new Map(outputFiles.map((file) => [file.path.slice(join(projectRoot, '/').length - 1), file]));
}
