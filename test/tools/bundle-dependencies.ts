import { createHash } from 'node:crypto';
import { existsSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { TestRunnerPlugin } from '@web/test-runner';
import { build } from 'esbuild';
import { filesUnder, projectRoot } from './source-files.ts';

/** Lit is left alone: test helpers import it too, and two copies of it in a page would not know each other's templates. */
const isLit = (name: string): boolean => name === 'lit' || name.startsWith('@lit/');

const packageName = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

/** The modules of `packages` that `sources` import by name, `chart.js` as well as `handsontable/base`. */
export function importedModules(sources: readonly string[], packages: ReadonlySet<string>): readonly string[] {
  const found = sources.flatMap((source) =>
    [...source.matchAll(/\b(?:from|import)\s*\(?\s*['"]([^'".][^'"]*)['"]/g)].map((match) => match[1] ?? ''),
  );
  return [...new Set(found.filter((specifier) => packages.has(packageName(specifier))))].sort();
}

function readDependencies(): ReadonlySet<string> {
  const manifest = JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>;
  };
  return new Set(['axe-core', ...Object.keys(manifest.dependencies)].filter((name) => !isLit(name)));
}

/**
 * Serves each library that the kit stands on as one file. Some of them are hundreds of modules, which a test page would
 * load one by one, and some are no ES modules at all, which a browser cannot import.
 */
export function bundleDependencies(): TestRunnerPlugin {
  const addresses = new Map<string, string>();
  return {
    name: 'bundle-dependencies',
    async serverStart() {
      const sources = [...filesUnder('src', '.ts'), ...filesUnder('test', '.ts')];
      const modules = importedModules(
        sources.map((path) => readFileSync(join(projectRoot, path), 'utf8')),
        readDependencies(),
      );
      const lock = readFileSync(join(projectRoot, 'package-lock.json'), 'utf8');
      const key = createHash('sha256').update(modules.join()).update(lock).digest('hex').slice(0, 16);
      const folder = `node_modules/.cache/browser-tests/${key}`;
      if (!existsSync(join(projectRoot, folder))) await bundle(modules, folder);
      for (const [index, specifier] of modules.entries()) addresses.set(specifier, `/${folder}/module-${index}.js`);
    },
    resolveImport: ({ source }) => addresses.get(source),
  };
}

async function bundle(modules: readonly string[], folder: string): Promise<void> {
  const unfinished = join(projectRoot, `${folder}.${process.pid}`);
  await build({
    entryPoints: modules.map((specifier, index) => ({ in: specifier, out: `module-${index}` })),
    absWorkingDir: projectRoot,
    outdir: unfinished,
    bundle: true,
    splitting: true,
    format: 'esm',
    target: 'es2022',
    logLevel: 'error',
  });
  // Two runs may start at once: the first to finish keeps its folder.
  try {
    renameSync(unfinished, join(projectRoot, folder));
  } catch {
    rmSync(unfinished, { recursive: true, force: true });
  }
}
