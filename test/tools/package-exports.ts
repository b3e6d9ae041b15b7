import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { elementNames } from '../../.build/steps/elements-manifest.ts';
import { projectRoot } from './source-files.ts';

type Target = string | { readonly types: string; readonly default?: string };

export interface PackageManifest {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  readonly exports: Readonly<Record<string, Target>>;
  readonly sideEffects: readonly string[];
  readonly files: readonly string[];
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
}

export function readPackageManifest(): PackageManifest {
  return JSON.parse(readFileSync(join(projectRoot, 'package.json'), 'utf8'));
}

/** A path of the package as its user writes it, with the files in the package that stand behind it. */
export interface ExportPath {
  readonly name: string;
  /** Undefined for a path that has types alone. */
  readonly module: string | undefined;
  readonly types: string | undefined;
}

/** Every path of the package, each star filled in: with the elements, or with the files of the page's script. */
export function exportPaths(files: readonly string[]): readonly ExportPath[] {
  const { name, exports } = readPackageManifest();
  const pageFiles = files.flatMap((file) => file.match(/^dist\/page\/(.+)$/)?.[1] ?? []);
  return Object.entries(exports).flatMap(([path, target]) => {
    const { types, default: module } = typeof target === 'string' ? { types: undefined, default: target } : target;
    const stars = !path.includes('*') ? [''] : path === './page/*' ? pageFiles : elementNames();
    return stars.map((star) => {
      const filled = (text: string | undefined) => text?.replaceAll('*', star).replace(/^\.\//, '');
      return { name: name + path.replaceAll('*', star).slice(1), module: filled(module), types: filled(types) };
    });
  });
}
