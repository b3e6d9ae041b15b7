import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import { compactFile } from './compact-templates.ts';
import { furtherImports } from './further-imports.ts';
import { type Bundle, withoutIdleImports } from './idle-imports.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Bundles into few small files: the bundler makes one for each set of late parts that use the same modules. Those that are nearly used
 * by the same parts become one, which the bundler does by itself once each of these parts imports all of their modules. `entry`: the path
 * of the file that all others are loaded by; `worker`: of the one that a worker begins with, where there is one.
 */
export async function bundleJoined(options: BuildOptions, entry: string, worker?: string): Promise<Bundle> {
  const apart = await bundleOnce(options);
  const imports = furtherImports(apart.metafile.outputs, { entry, worker }, { actsByItself, needsPage });
  const plugins = [importing(imports, options.absWorkingDir ?? root), ...(options.plugins ?? [])];
  return withoutIdleImports(
    await bundleOnce({ ...options, plugins }),
    worker === undefined ? [entry] : [entry, worker],
  );
}

const bundleOnce = (options: BuildOptions): Promise<Bundle> =>
  build({
    ...options,
    bundle: true,
    splitting: true,
    metafile: true,
    write: false,
    // An import without a name, of a module that does nothing by itself, is what joins.
    logOverride: { 'ignored-bare-import': 'silent' },
  });

const { sideEffects } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { sideEffects: string[] };
const ACTING = sideEffects.map((path) => new RegExp(`^${path.slice('./'.length).replaceAll('*', '[^/]+')}$`));

/** Modules of packages, and those that package.json names because they do something when they run. */
const actsByItself = (module: string): boolean =>
  !module.startsWith('src/') || ACTING.some((pattern) => pattern.test(module));

/** Floors below those that draw. */
const NEEDS_NO_PAGE = /^src\/(?:engine|plan|explain|remedies|exchange)\//;
const needsPage = (module: string): boolean => !NEEDS_NO_PAGE.test(module);

/** Has modules import others besides. Paths from `place`. */
function importing(imports: ReadonlyMap<string, readonly string[]>, place: string): Plugin {
  const byPath = new Map([...imports].map(([module, others]) => [join(place, module), others]));
  return {
    name: 'further-imports',
    setup({ onLoad }) {
      onLoad({ filter: /\/src\/.*\.ts$/ }, ({ path }) => {
        const others = byPath.get(path);
        if (others === undefined) return;
        const lines = others.map((other) => `\nimport ${JSON.stringify(join(place, other))};`);
        return { contents: compactFile(path) + lines.join(''), loader: 'ts' };
      });
    },
  };
}
