import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { projectRoot } from '../tools/source-files.ts';

interface LockedPackage {
  readonly resolved?: string;
  readonly integrity?: string;
  readonly link?: boolean;
}

type LockFile = { readonly packages: Readonly<Record<string, LockedPackage>> };

const readJson = <T>(path: string): T => JSON.parse(readFileSync(join(projectRoot, path), 'utf8')) as T;

const packagesOf = (lock: LockFile): readonly (readonly [string, LockedPackage])[] =>
  Object.entries(lock.packages).filter(([path]) => path !== '');

const withAddress = (lock: LockFile): readonly string[] =>
  packagesOf(lock)
    .filter(([, locked]) => locked.resolved !== undefined)
    .map(([path]) => path);

const withoutHash = (lock: LockFile): readonly string[] =>
  packagesOf(lock)
    .filter(([, locked]) => locked.integrity === undefined)
    .map(([path]) => path);

const lock = readJson<LockFile>('package-lock.json');

it('the lock file ties no package to an address, so that it installs from wherever npm is set to look', () => {
  expect(packagesOf(lock).length).toBeGreaterThan(100);
  expect(withAddress(lock)).toEqual([]);
});

it('the lock file ties every package to its content', () => {
  expect(withoutHash(lock)).toEqual([]);
});

it('an address and a missing hash would be seen', () => {
  const faulty: LockFile = { packages: { '': {}, 'node_modules/a': { resolved: 'https://example.org/a.tgz' } } };
  expect(withAddress(faulty)).toEqual(['node_modules/a']);
  expect(withoutHash(faulty)).toEqual(['node_modules/a']);
});

it('every dependency is pinned to one version', () => {
  const manifest = readJson<Record<'dependencies' | 'devDependencies', Record<string, string>>>('package.json');
  const ranges = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies }).filter(
    ([, version]) => !/^\d+\.\d+\.\d+$/.test(version),
  );
  expect(ranges).toEqual([]);
});
